package benchpace.files.roster;

import benchpace.files.Fields;
import benchpace.files.Finding;
import benchpace.files.log.EventJson;
import benchpace.live.ClassEvent.Place;
import benchpace.plan.SeatNumber;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Who sits where, read from a CSV file (RFC 4180) or from pasted text. Lines are {@code seat,name}; semicolons and
 * tabs will do as well, a heading may stand above, a name may be left out. Lines that are names only are taken in seat
 * order.
 *
 * @param places   in seat order; what could be read, if there are problems
 * @param problems what is wrong, by line
 */
public record Roster(List<Place> places, List<Finding> problems) {
    private static final CSVFormat FORMAT = CSVFormat.RFC4180.builder()
            .setIgnoreEmptyLines(true)
            .setIgnoreSurroundingSpaces(true)
            .setTrim(true)
            .get();

    public Roster {
        places = List.copyOf(places);
        problems = List.copyOf(problems);
    }

    public boolean sound() {
        return problems.isEmpty();
    }

    /** Reads text from anywhere; nothing in it makes this throw. */
    public static Roster read(String text) {
        String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
        Reading reading = new Reading();
        try (CSVParser parser = CSVParser.builder().setReader(new StringReader(plain))
                .setFormat(FORMAT.builder().setDelimiter(delimiter(plain)).get()).get()) {
            for (CSVRecord record : parser) {
                reading.take(record, parser.getCurrentLineNumber());
            }
        } catch (IOException | UncheckedIOException | IllegalStateException broken) {
            reading.problems.add(new Finding("", "is not sound CSV: a quote is opened and not closed, or stands in the "
                    + "middle of a field"));
        }
        reading.places.sort(Comparator.comparing(Place::seat));
        return new Roster(reading.places, reading.problems);
    }

    private static char delimiter(String text) {
        String first = text.lines().filter(l -> !l.isBlank()).findFirst().orElse("");
        return first.indexOf('\t') >= 0 ? '\t' : first.indexOf(';') >= 0 ? ';' : ',';
    }

    /** The lines so far. */
    private static final class Reading {
        private final List<Place> places = new ArrayList<>();
        private final List<Finding> problems = new ArrayList<>();
        private final Set<SeatNumber> taken = new HashSet<>();

        void take(CSVRecord record, long line) {
            String first = record.get(0);
            boolean heading = record.getRecordNumber() == 1
                    && (first.equalsIgnoreCase("seat") || first.equalsIgnoreCase("name"));
            if (heading || record.stream().allMatch(String::isEmpty)) {
                return;
            }
            boolean numbered = record.size() > 1 || first.chars().allMatch(Character::isDigit);
            if (record.size() > 2 && record.stream().skip(2).anyMatch(field -> !field.isEmpty())) {
                tell(line, "has more than a seat and a name");
                return;
            }
            Optional<SeatNumber> seat = numbered ? seat(first, line) : seat("" + (places.size() + 1), line);
            String name = !numbered ? first : record.size() > 1 ? record.get(1) : "";
            if (seat.isPresent() && named(name, line)) {
                places.add(new Place(seat.get(), name));
            }
        }

        private Optional<SeatNumber> seat(String text, long line) {
            if (!text.matches("[0-9]{1,6}")) {
                tell(line, "begins with \"" + Fields.shorter(text) + "\", not with the number of a seat");
                return Optional.empty();
            }
            int number = Integer.parseInt(text);
            if (number < 1 || number > SeatNumber.MOST) {
                tell(line, "a seat number is 1 to " + SeatNumber.MOST + ", not " + number);
                return Optional.empty();
            }
            SeatNumber seat = new SeatNumber(number);
            if (!taken.add(seat)) {
                tell(line, "names seat " + seat + " a second time");
                return Optional.empty();
            }
            return Optional.of(seat);
        }

        private boolean named(String name, long line) {
            if (name.length() > EventJson.LONGEST_NAME) {
                tell(line, "the name is longer than " + EventJson.LONGEST_NAME + " characters");
            } else if (name.chars().anyMatch(Character::isISOControl) || Fields.halfCharacters(name)) {
                tell(line, "the name holds a character that cannot be shown");
            } else {
                return true;
            }
            return false;
        }

        private void tell(long line, String sentence) {
            problems.add(new Finding("line " + line, sentence));
        }
    }
}
