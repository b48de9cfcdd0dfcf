package benchpace.board.export;

import benchpace.board.cooling.RoomCureClock;
import benchpace.board.pacing.PosteriorPaceWatch;
import benchpace.board.view.ClassReport;
import benchpace.board.view.ViewMaker;
import benchpace.cure.room.RoomFit;
import benchpace.files.export.ClassJson;
import benchpace.files.export.ClassTable;
import benchpace.files.export.RowKind;
import benchpace.live.LiveClass;
import benchpace.live.Recorded;
import benchpace.live.TestClass;
import benchpace.plan.SeatNumber;
import benchpace.shelf.ClaimWord;
import benchpace.shelf.EntryId;
import benchpace.shelf.ShelfEntry;
import benchpace.shelf.ShelfPlace;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Classes written out, and their tables read by a reader that is not the one that wrote them. */
final class Exported {
    private static final ViewMaker MAKER = new ViewMaker(new RoomCureClock((id, room) -> RoomFit.untaught()),
            new PosteriorPaceWatch(), ZoneId.of("Europe/Berlin"));
    private static final ExportedClass EVENING = of("evening", held().live().log());

    private Exported() { }

    /** Seat 2 is slow at its wicks, seat 3 pours twice, all wait, and four candles are tried. */
    private static TestClass held() {
        TestClass c = TestClass.evening(5).open("welcome").minute(5).open("wicks").minute(10);
        List.of(1, 3, 4, 5).forEach(seat -> c.finish(seat, "wicks"));
        c.minute(17);
        List.of(1, 3, 4, 5).forEach(seat -> c.finish(seat, "blend"));
        c.minute(24).arrive(1, "Ida").minute(27).finish(2, "wicks").minute(31).finish(2, "blend");
        c.minute(32).open("pour").minute(36);
        List.of(1, 2, 3, 4, 5).forEach(seat -> c.finish(seat, "pour"));
        c.minute(37).pourAgain(3).minute(45).join(1, "labels").minute(55).quit(1, "labels").minute(60).pause(5)
                .minute(70).note(4, "gift").leave(4).minute(95);
        List.of(1, 2, 3, 5).forEach(c::judgeSet);
        return c.minute(100).open("trim").minute(103).finish(1, "trim").finish(2, "trim").minute(120).close();
    }

    /** A class of every kind of row; the candle of seat 4 stands on the shelf. */
    static ExportedClass evening() {
        return EVENING;
    }

    static ExportedClass of(String id, List<Recorded> log) {
        LiveClass live = LiveClass.of(log);
        Instant now = live.lastRecordedAt().plus(Duration.ofMinutes(1));
        ClassReport report = MAKER.report(id, live, MAKER.view(id, live, now));
        return ExportedClass.of(live, report.with(List.of(entry(1, id, 4, now), entry(2, "another", 5, now))));
    }

    private static ShelfEntry entry(long number, String classId, int seat, Instant now) {
        return new ShelfEntry(new EntryId(number), classId, new SeatNumber(seat), new ShelfPlace("=Window", 3),
                now.minusSeconds(600), now.plusSeconds(86_400), new ClaimWord("amber", 47), "Mina",
                now.minusSeconds(900), ShelfEntry.NOT_YET);
    }

    static String table(ExportedClass exported) {
        StringWriter text = new StringWriter();
        try {
            ClassTable.write(exported.file(), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    static String json(ExportedClass exported) {
        StringWriter text = new StringWriter();
        try {
            ClassJson.write(exported.file(), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    /** The rows of a table, by column, without the empty cells. */
    static List<Map<String, String>> rows(String table) {
        List<Map<String, String>> rows = new ArrayList<>();
        try (CsvReader<NamedCsvRecord> reader = CsvReader.builder().ofNamedCsvRecord(table)) {
            reader.forEach(record -> {
                Map<String, String> cells = new HashMap<>(record.getFieldsAsMap());
                cells.values().removeIf(String::isEmpty);
                rows.add(cells);
            });
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return rows;
    }

    static List<Map<String, String>> rows(String table, RowKind kind) {
        return rows(table).stream().filter(row -> kind.word().equals(row.get("row"))).toList();
    }
}
