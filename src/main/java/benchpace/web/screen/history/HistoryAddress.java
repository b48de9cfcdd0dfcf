package benchpace.web.screen.history;

import benchpace.history.Chosen;
import benchpace.history.Punctuality;
import benchpace.words.HistoryWords;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * A choice of past classes as it stands in the address: {@code ?plan=&room=&from=&until=&kept=&page=}, each left out or
 * empty where it chooses nothing. The room without a name is a space.
 *
 * @param page   from 1 on
 * @param faults what was asked for and cannot be, a sentence each; it is left out of the choice
 */
public record HistoryAddress(Chosen chosen, int page, List<String> faults) {
    private static final String PATH = "/history";
    private static final String UNNAMED = " ";
    private static final int LONGEST = 200;

    public HistoryAddress {
        faults = List.copyOf(faults);
    }

    /** @param asked what the address has under a name; empty if nothing */
    public static HistoryAddress read(Function<String, Optional<String>> asked) {
        Reading reading = new Reading(asked);
        Chosen chosen = new Chosen(reading.text("plan"), reading.text("room").map(r -> r.isBlank() ? "" : r),
                reading.day("from"), reading.day("until"), reading.kept());
        if (chosen.backwards()) {
            reading.faults.add(HistoryWords.backwards());
        }
        return new HistoryAddress(chosen, reading.page(), reading.faults);
    }

    /** The address of another page of the same choice. */
    public String to(int number) {
        Map<String, String> parts = new LinkedHashMap<>();
        chosen.planId().ifPresent(id -> parts.put("plan", id));
        chosen.place().ifPresent(place -> parts.put("room", room(place)));
        chosen.from().ifPresent(day -> parts.put("from", day.toString()));
        chosen.until().ifPresent(day -> parts.put("until", day.toString()));
        chosen.punctuality().ifPresent(p -> parts.put("kept", kept(p)));
        if (number > 1) {
            parts.put("page", String.valueOf(number));
        }
        return parts.isEmpty() ? PATH : PATH + "?" + parts.entrySet().stream()
                .map(p -> p.getKey() + "=" + URLEncoder.encode(p.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
    }

    static String room(String place) {
        return place.isEmpty() ? UNNAMED : place;
    }

    static String kept(Punctuality punctuality) {
        return switch (punctuality) {
            case ON_TIME -> "on-time";
            case LATE -> "late";
        };
    }

    private record Reading(Function<String, Optional<String>> asked, List<String> faults) {
        Reading(Function<String, Optional<String>> asked) {
            this(asked, new ArrayList<>());
        }

        Optional<String> text(String name) {
            return asked.apply(name).filter(t -> !t.isEmpty()).map(t -> t.length() > LONGEST
                    ? t.substring(0, t.offsetByCodePoints(0, Math.min(LONGEST, t.codePointCount(0, t.length())))) : t);
        }

        Optional<LocalDate> day(String name) {
            Optional<String> text = text(name).map(String::strip).filter(t -> !t.isEmpty());
            try {
                return text.map(LocalDate::parse).filter(this::isOne);
            } catch (DateTimeException e) {
                faults.add(HistoryWords.noDay(text.orElse("")));
                return Optional.empty();
            }
        }

        private boolean isOne(LocalDate day) {
            boolean one = day.getYear() >= 1 && day.getYear() <= 9999;
            if (!one) {
                faults.add(HistoryWords.noDay(day.toString()));
            }
            return one;
        }

        Optional<Punctuality> kept() {
            Optional<String> text = text("kept");
            for (Punctuality p : Punctuality.values()) {
                if (text.filter(HistoryAddress.kept(p)::equals).isPresent()) {
                    return Optional.of(p);
                }
            }
            text.ifPresent(t -> faults.add(HistoryWords.noPunctuality()));
            return Optional.empty();
        }

        /** The first, where nothing sensible is asked for. */
        int page() {
            return text("page").filter(t -> t.matches("[1-9][0-9]{0,5}")).map(Integer::parseInt).orElse(1);
        }
    }
}
