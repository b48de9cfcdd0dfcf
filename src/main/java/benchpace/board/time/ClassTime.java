package benchpace.board.time;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;

/**
 * The time that one class goes by: the board's, and where the class has records from later than that, what has passed
 * since the last of them.
 */
public final class ClassTime {
    /** A class that is ahead by less is so because the board makes up for a nudge of the computer's clock. */
    private static final Duration SLACK = Duration.ofSeconds(5);

    private final BoardTime board;
    private volatile Written written;

    /** What was written down last. @param lived when, or when it was read at the start, in time lived */
    private record Written(Instant at, Duration lived) { }

    public ClassTime(BoardTime board, Instant last) {
        this.board = board;
        wrote(last);
    }

    /** To the millisecond, as the log keeps it. */
    public Instant now() {
        Instant now = board();
        Instant own = own();
        return now.isBefore(own) ? own : now;
    }

    /** The board's time. */
    public Instant board() {
        return board.instant().truncatedTo(ChronoUnit.MILLIS);
    }

    private Instant own() {
        Written last = written;
        Duration since = board.lived().minus(last.lived());
        return since.isNegative() ? last.at() : last.at().plus(since).truncatedTo(ChronoUnit.MILLIS);
    }

    /** How far it is ahead of the board's; zero if it is not. */
    public Duration ahead() {
        Duration ahead = Duration.between(board(), own());
        return ahead.compareTo(SLACK) > 0 ? ahead : Duration.ZERO;
    }

    public void wrote(Instant at) {
        written = new Written(at, board.lived());
    }
}
