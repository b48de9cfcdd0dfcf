package benchpace.web.screen;

import benchpace.board.view.ClassView;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the pages of one class tell at one instant, read sentence by sentence. A fact is named in plain words, such as
 * "all candles ready by"; every sentence that tells it adds what it says and where it stands.
 */
final class Telling {
    private static final Pattern PIECE = Pattern.compile(
            "</?(?:p|li|h[1-6]|dd|dt|div|td|th|tr|button|summary|title|desc|svg|text|article)\\b[^>]*>");
    private static final Pattern LABEL = Pattern.compile("aria-label=\"([^\"]*)\"");
    static final String TIME = "(\\d\\d:\\d\\d)";
    static final String SEATS = "((?:\\d+ seats|[Ss]eats? \\d+(?:(?:, | and | to )\\d+)*))";

    /** One page says of a fact. */
    record Said(String fact, String value, String where) { }

    private final Instant now;
    private final List<Said> told = new ArrayList<>();

    Telling(ClassView view) {
        this.now = view.now();
    }

    void tell(String fact, Object value, String where) {
        told.add(new Said(fact, value.toString(), where));
    }

    /** Every place where the pattern is found tells a fact. */
    void each(String pattern, String words, Consumer<Matcher> what) {
        Matcher found = Pattern.compile(pattern).matcher(words);
        while (found.find()) {
            what.accept(found);
        }
    }

    /** By fact, what is said of it by whom. */
    Map<String, List<Said>> byFact() {
        Map<String, List<Said>> facts = new LinkedHashMap<>();
        told.forEach(said -> facts.computeIfAbsent(said.fact(), f -> new ArrayList<>()).add(said));
        return facts;
    }

    /** The sentences of a page as they read without a script: clock times stand for what ticks. Labels come last. */
    static List<String> pieces(String html) {
        String body = html.replaceAll("(?s)<head\\b.*?</head>|<script\\b.*?</script>", "");
        List<String> pieces = new ArrayList<>(Arrays.stream(PIECE.split(body)).map(Telling::plain)
                .filter(words -> !words.isEmpty()).toList());
        Matcher label = LABEL.matcher(body);
        while (label.find()) {
            pieces.add(plain(label.group(1)));
        }
        return pieces;
    }

    static String plain(String html) {
        return html.replaceAll("<[^>]*>", " ").replace("&#39;", "'").replace("&amp;", "&").replaceAll("\\s+", " ")
                .replaceAll(" ([.,;:])", "$1").strip();
    }

    /** The same with what ticks as {@code clock.js} says it now. */
    List<String> aloud(String html) {
        String body = html.replaceAll("(?s)<head\\b.*?</head>|<script\\b.*?</script>", "");
        return Arrays.stream(PIECE.split(body)).map(piece -> ReadAloud.at(now, piece)).filter(w -> !w.isEmpty())
                .toList();
    }

    /** "seats 1 to 4 and 7" as numbers; of "11 seats" only that there are eleven, told by an empty set. */
    static TreeSet<Integer> seats(String words) {
        TreeSet<Integer> seats = new TreeSet<>();
        if (words.matches("\\d+ seats")) {
            return seats;
        }
        Matcher part = Pattern.compile("(\\d+)(?: to (\\d+))?").matcher(words);
        while (part.find()) {
            int from = Integer.parseInt(part.group(1));
            int to = part.group(2) == null ? from : Integer.parseInt(part.group(2));
            for (int seat = from; seat <= to; seat++) {
                seats.add(seat);
            }
        }
        return seats;
    }

    /** "in 12 min" and "in a minute" as they are told of a clock time. */
    long minutesTo(String clock) {
        return (Duration.between(now, instant(clock)).toSeconds() + 59) / 60;
    }

    static Instant instant(String clock) {
        Instant at = Evening.START.atZone(Evening.ZONE).with(LocalTime.parse(clock)).toInstant();
        return at.isBefore(Evening.START.minus(Duration.ofHours(2))) ? at.plus(Duration.ofDays(1)) : at;
    }

    static String clock(Instant at) {
        return LocalTime.ofInstant(at, Evening.ZONE).truncatedTo(ChronoUnit.MINUTES).toString();
    }

    static long minutes(String words) {
        Matcher length = Pattern.compile("(?:(\\d+) h ?)?(?:(\\d+) min)?").matcher(words);
        if (!length.matches()) {
            throw new IllegalArgumentException(words);
        }
        return (length.group(1) == null ? 0 : 60 * Long.parseLong(length.group(1)))
                + (length.group(2) == null ? 0 : Long.parseLong(length.group(2)));
    }
}
