package benchpace.web.screen;

import benchpace.words.Phrases;
import java.time.Duration;
import java.time.Instant;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a person reads on a page at an instant: its text, with every ticking time as {@code clock.js} says it. */
final class ReadAloud {
    private static final Pattern COUNT = Pattern.compile("<time class=\"count\"([^>]*)>([^<]*)</time>");

    private ReadAloud() { }

    static String at(Instant now, String html) {
        Matcher count = COUNT.matcher(html);
        StringBuilder read = new StringBuilder();
        while (count.find()) {
            count.appendReplacement(read, Matcher.quoteReplacement(said(count.group(1), now)));
        }
        count.appendTail(read);
        return read.toString().replaceAll("<[^>]*>", " ").replace("&#39;", "'").replace("&amp;", "&")
                .replaceAll("\\s+", " ").strip();
    }

    private static String said(String attributes, Instant now) {
        if (attributes.contains("data-count-from")) {
            return Phrases.length(Duration.between(Instant.parse(of(attributes, "data-count-from")), now));
        }
        Instant to = Instant.parse(of(attributes, "data-count-to"));
        long seconds = (Duration.between(now, to).toMillis() + 999) / 1_000;
        if (seconds <= 0) {
            return now.isBefore(Instant.parse(of(attributes, "data-until"))) ? of(attributes, "data-after")
                    : of(attributes, "data-past");
        }
        long minutes = (seconds + 59) / 60;
        String said = minutes < 2 ? "1 min" : Phrases.length(Duration.ofMinutes(minutes));
        return switch (of(attributes, "data-count-style")) {
            case "left" -> said + " left";
            case "in" -> "in " + said;
            case "try" -> "try in " + said;
            case "tried" -> "can be tried in " + said;
            case "sentence" -> "Can be tried in " + said;
            case "start" -> "We begin in " + said;
            case "mute" -> "";
            default -> said;
        };
    }

    private static String of(String attributes, String name) {
        Matcher value = Pattern.compile(name + "=\"([^\"]*)\"").matcher(attributes);
        return value.find() ? value.group(1) : "";
    }
}
