package benchpace.web.report;

import benchpace.web.TestBoard;
import java.time.Duration;

/** An evening of eight, each step as planned, but seat 4 needs 12 minutes more for its wick and all wait for it. */
final class SlowWick {
    private SlowWick() { }

    /** Takes a class that has just been created to where every candle is poured. */
    static void pour(TestBoard board, String id) {
        pour(board, id, Duration.ofSeconds(4));
    }

    /** The same. @param between two finishes that are tapped one after the other */
    static void pour(TestBoard board, String id, Duration between) {
        board.tap(id, TestBoard.opening("welcome")).ok();
        board.testClock().advanceMinutes(5);
        allFinish(board, id, "vessel", 3, between);
        board.tap(id, TestBoard.opening("wicks")).ok();
        allFinish(board, id, "wicks", 4, between);
        board.testClock().advanceMinutes(12);
        board.tap(id, TestBoard.finish(4, "wicks")).ok();
        board.tap(id, TestBoard.opening("fragrance")).ok();
        allFinish(board, id, "fragrance", 5, between);
        board.tap(id, TestBoard.opening("before-wax")).ok();
        board.testClock().advanceMinutes(2);
        board.tap(id, TestBoard.opening("mix")).ok();
        allFinish(board, id, "mix", 4, between);
        board.tap(id, TestBoard.opening("pour")).ok();
        allFinish(board, id, "pour", 3, between);
    }

    private static void allFinish(TestBoard board, String id, String step, int minutes,
                                  Duration between) {
        board.testClock().advanceMinutes(minutes);
        for (int seat = 1; seat <= 8; seat++) {
            if (seat != 4 || !step.equals("wicks")) {
                board.testClock().advance(between);
                board.tap(id, TestBoard.finish(seat, step)).ok();
            }
        }
    }
}
