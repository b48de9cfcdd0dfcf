package benchpace.web;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A board of its own for each test, on which one class of eight is set up and has not begun. */
public abstract class OneEvening {
    protected @TempDir Path data;
    protected TestBoard board;
    protected String id;

    @BeforeEach void openTheBoard() {
        board = TestBoard.open(data);
        id = board.evening();
    }

    @AfterEach void closeTheBoard() {
        board.close();
    }
}
