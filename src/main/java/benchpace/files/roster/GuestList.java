package benchpace.files.roster;

import benchpace.files.Fields;
import benchpace.files.Finding;
import benchpace.files.Formulae;
import benchpace.files.log.EventJson;
import benchpace.plan.SeatNumber;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Who comes, read from a CSV file (RFC 4180) or from pasted text; commas, semicolons and tabs will do. Under a heading
 * the columns {@code seat}, {@code name}, {@code party}, {@code candle} and {@code note} stand in any order, and others
 * are passed over. Without one a line is a seat and a name, or a name alone.
 *
 * @param guests   in the order of the text; what could be read, if there are problems
 * @param problems what is wrong, by line
 */
public record GuestList(List<Guest> guests, List<Finding> problems) {
    private static final CSVFormat FORMAT = CSVFormat.RFC4180.builder()
            .setIgnoreEmptyLines(true)
            .setIgnoreSurroundingSpaces(true)
            .setTrim(true)
            .get();
    private static final Set<String> HEADINGS = Set.of("seat", "name", "party", "candle", "note");
    private static final Map<String, Integer> PLAIN = Map.of("seat", 0, "name", 1);

    public GuestList {
        guests = List.copyOf(guests);
        problems = List.copyOf(problems);
    }

    /** Reads text from anywhere; nothing in it makes this throw. */
    public static GuestList read(String text) {
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
        return new GuestList(reading.guests, reading.problems);
    }

    private static char delimiter(String text) {
        String first = text.lines().filter(l -> !l.isBlank()).findFirst().orElse("");
        return first.indexOf('\t') >= 0 ? '\t' : first.indexOf(';') >= 0 ? ';' : ',';
    }

    /** The lines so far. */
    private static final class Reading {
        private final List<Guest> guests = new ArrayList<>();
        private final List<Finding> problems = new ArrayList<>();
        private final Set<SeatNumber> taken = new HashSet<>();
        private Map<String, Integer> columns = Map.of();

        void take(CSVRecord record, long line) {
            if (record.getRecordNumber() == 1 && isHeading(record)) {
                columns = columns(record);
                return;
            }
            if (record.stream().allMatch(String::isEmpty)) {
                return;
            }
            if (columns.isEmpty() || PLAIN.equals(columns) || columns.equals(Map.of("name", 0))) {
                plain(record, line);
            } else {
                guest(field(record, "seat"), record, line);
            }
        }

        private static boolean isHeading(CSVRecord record) {
            String first = record.get(0).toLowerCase(Locale.ROOT);
            return first.equals("seat") || first.equals("name") || record.size() > 1
                    && record.stream().filter(f -> HEADINGS.contains(f.toLowerCase(Locale.ROOT))).count() > 1;
        }

        private static Map<String, Integer> columns(CSVRecord heading) {
            Map<String, Integer> columns = new HashMap<>();
            for (int i = 0; i < heading.size(); i++) {
                String name = heading.get(i).toLowerCase(Locale.ROOT);
                if (HEADINGS.contains(name)) {
                    columns.putIfAbsent(name, i);
                }
            }
            return columns;
        }

        private String field(CSVRecord record, String column) {
            Integer index = columns.get(column);
            return index == null || index >= record.size() ? "" : Formulae.asMeant(record.get(index));
        }

        /** A seat and a name, or a name alone. */
        private void plain(CSVRecord record, long line) {
            String first = record.get(0);
            boolean numbered = record.size() > 1 || first.chars().allMatch(Character::isDigit);
            if (record.size() > 2 && record.stream().skip(2).anyMatch(field -> !field.isEmpty())) {
                tell(line, "has more than a seat and a name");
                return;
            }
            Optional<SeatNumber> seat = numbered ? seat(first, line) : Optional.empty();
            String name = Formulae.asMeant(!numbered ? first : record.size() > 1 ? record.get(1) : "");
            if ((seat.isPresent() || !numbered) && fits("name", name, EventJson.LONGEST_NAME, line)) {
                guests.add(new Guest(seat, name, "", "", "", line));
            }
        }

        private void guest(String number, CSVRecord record, long line) {
            Optional<SeatNumber> seat = number.isEmpty() ? Optional.empty() : seat(number, line);
            Guest guest = new Guest(seat, field(record, "name"), field(record, "party"), field(record, "candle"),
                    field(record, "note"), line);
            boolean sound = fits("name", guest.name(), EventJson.LONGEST_NAME, line)
                    & fits("party", guest.party(), EventJson.LONGEST_PARTY, line)
                    & fits("candle", guest.candle(), EventJson.LONGEST_CANDLE, line)
                    & fits("note", guest.note(), EventJson.LONGEST_MIND, line);
            if (sound && (seat.isPresent() || number.isEmpty())) {
                guests.add(guest);
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

        private boolean fits(String what, String text, int most, long line) {
            if (text.length() > most) {
                tell(line, "the " + what + " is longer than " + most + " characters");
            } else if (text.chars().anyMatch(Character::isISOControl) || Fields.halfCharacters(text)) {
                tell(line, "the " + what + " holds a character that cannot be shown");
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
