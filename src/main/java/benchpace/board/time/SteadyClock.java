package benchpace.board.time;

import benchpace.live.Era;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * The board's time. It begins with the computer's clock and then goes by passing time alone; the computer's clock is
 * only compared with it.
 *
 * <ul>
 * <li>A small difference, as when a time server nudges the clock, is made up for slowly: by no more than one part in
 *     {@value #SLOWLY} of the time that passes.
 * <li>A larger one is not followed. If it stays, it is a {@link #disagreement}, and somebody says which is right.
 * <li>A sleep of the computer is passing time, where the system tells of it ({@link LivedTime#countsSleep}).
 * </ul>
 *
 * So a clock that jumps moves nothing, and the board's time never goes back unless somebody says that it should.
 */
public final class SteadyClock implements BoardTime {
    /** Larger than any nudge (ntpd steps a clock that is off by 0.128 s or more, from memory), too small to matter. */
    static final Duration SMALL = Duration.ofSeconds(2);
    private static final Duration MINUS_SMALL = SMALL.negated();
    /** A clock that jumps and comes back at once is nobody's concern. */
    static final Duration PATIENCE = Duration.ofSeconds(10);
    static final int SLOWLY = 100;

    private final InstantSource computer;
    private final LivedTime lived;
    private boolean trusted;
    private Instant board;
    private Duration last;
    /** How far off the computer's clock may stay, because somebody said that the board is right. */
    private Duration kept = Duration.ZERO;
    private Optional<Noticed> noticed = Optional.empty();

    /** A difference that is not followed. @param lived when it was first seen, in time lived */
    private record Noticed(Duration ahead, Instant since, Duration lived) { }

    /** @param likely whether a first time fits what was written down before */
    public SteadyClock(InstantSource computer, LivedTime lived, Predicate<Instant> likely) {
        this.computer = computer;
        this.lived = lived;
        this.board = computer.instant();
        this.last = lived.now();
        this.trusted = Era.isPossibleNow(board) && likely.test(board);
    }

    /** By this computer's clocks. */
    public static SteadyClock system(Predicate<Instant> likely) {
        return new SteadyClock(InstantSource.system(), AwakeAndAsleep.ofThisComputer(), likely);
    }

    @Override public synchronized Instant instant() {
        Duration now = lived.now();
        Duration passed = now.compareTo(last) > 0 ? now.minus(last) : Duration.ZERO;
        last = last.plus(passed);
        board = board.plus(passed);
        compare(Duration.between(board, computer.instant()), Duration.ofNanos(passed.toNanos() / SLOWLY));
        return board;
    }

    /** @param most how far the board may follow */
    private void compare(Duration ahead, Duration most) {
        if (small(ahead)) {
            kept = Duration.ZERO;
        }
        Duration off = ahead.minus(kept);
        if (small(off)) {
            noticed = Optional.empty();
            board = board.plusNanos(Math.max(-most.toNanos(), Math.min(most.toNanos(), off.toNanos())));
        } else if (noticed.filter(n -> small(ahead.minus(n.ahead))).isEmpty()) {
            noticed = Optional.of(new Noticed(ahead, board, last));
        }
    }

    private static boolean small(Duration difference) {
        return difference.compareTo(SMALL) <= 0 && difference.compareTo(MINUS_SMALL) >= 0;
    }

    @Override public synchronized Duration lived() {
        instant();
        return last;
    }

    @Override public synchronized boolean trusted() {
        return trusted && disagreement().isEmpty();
    }

    @Override public Instant computer() {
        return computer.instant();
    }

    @Override public synchronized Optional<ClockDisagreement> disagreement() {
        instant();
        return noticed.filter(n -> last.minus(n.lived).compareTo(PATIENCE) >= 0)
                .map(n -> new ClockDisagreement(n.since, n.ahead, !n.ahead.isNegative() && !lived.countsSleep(),
                        Era.isPossibleNow(board.plus(n.ahead))));
    }

    @Override public synchronized void keep() {
        instant();
        kept = Duration.between(board, computer.instant());
        noticed = Optional.empty();
    }

    @Override public synchronized Duration follow() {
        instant();
        Duration by = Duration.between(board, computer.instant()).truncatedTo(ChronoUnit.MILLIS);
        board = board.plus(by);
        kept = Duration.ZERO;
        noticed = Optional.empty();
        trusted = Era.isPossibleNow(board);
        return by;
    }
}
