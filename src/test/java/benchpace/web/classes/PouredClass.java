package benchpace.web.classes;

import benchpace.board.time.SettableClocks;
import benchpace.web.TestBoard;
import benchpace.web.stream.StreamLimits;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A class whose first candle was poured at five past five, on a board whose computer's clock a test can set. */
abstract class PouredClass {
    static final Instant AFTERNOON = Instant.parse("2027-03-04T16:00:00Z");
    static final Duration TWO_HOURS = Duration.ofHours(2);

    @TempDir Path data;
    SettableClocks computer;
    TestBoard board;
    String id;

    @BeforeEach void aClassThatHasPoured() {
        open(true);
    }

    /** @param countsSleep whether the computer tells of the time it slept */
    void open(boolean countsSleep) {
        computer = new SettableClocks(AFTERNOON.minus(Duration.ofMinutes(30)), countsSleep);
        board = new TestBoard(data, log -> computer.start(log::fits), StreamLimits.USUAL);
        id = board.evening();
        for (String step : new String[] {"wicks", "fragrance", "mix"}) {
            board.tap(id, TestBoard.opening(step)).ok();
            computer.passMinutes(10);
        }
        board.tap(id, TestBoard.opening("pour")).ok();
        computer.passMinutes(5);
        pour(1);
    }

    @AfterEach void close() {
        board.close();
    }

    void pour(int seat) {
        board.tap(id, TestBoard.finish(seat, "pour")).ok();
    }

    Instant now() {
        return Instant.parse(board.state(id).text("now"));
    }

    Instant pouredAt(int seat) {
        return Instant.parse(seat(seat, "pouredAt"));
    }

    String seat(int seat, String field) {
        return board.state(id).json().get("seats").get(seat - 1).get(field).textValue();
    }
}
