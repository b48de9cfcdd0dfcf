package benchpace.board.view;

import benchpace.board.cooling.CureClock;
import benchpace.board.cooling.PlanCureClock;
import benchpace.board.pacing.Pace;
import benchpace.board.pacing.PaceWatch;
import benchpace.board.pacing.PosteriorPaceWatch;
import benchpace.board.pacing.SeatFlag;
import benchpace.live.LiveClass;
import benchpace.live.Recorded;
import benchpace.live.TestClass;
import benchpace.plan.SeatNumber;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A class under test as the board watches it: asked for a minute, it shows what was recorded until then and steps there
 * by half minutes, as a board with a screen in front of it does.
 */
public final class Watched {
    public static final ZoneId ZONE = ZoneId.of("Europe/Berlin");
    private static final double EARLIEST = -10;

    private final CureClock cure = new PlanCureClock();
    private final PaceWatch watch = new PosteriorPaceWatch();
    private final TestClass told;
    private double reached = EARLIEST;

    public Watched(TestClass told) {
        this.told = told;
    }

    /** The class as it was recorded until that minute. */
    public static LiveClass until(TestClass told, double minute) {
        Instant end = TestClass.instant(minute);
        List<Recorded> history = told.live().history();
        long known = history.stream().filter(r -> !r.recordedAt().isAfter(end)).count();
        return LiveClass.of(history.subList(0, (int) Math.max(1, known)));
    }

    /** What the board says at that minute, having watched all the while. */
    public Pace at(double minute) {
        for (double then = Math.max(reached, 0); then < minute; then += 0.5) {
            look(watch, then);
        }
        reached = minute;
        return look(watch, minute);
    }

    /** What a board says that was started just now. */
    public Pace afterRestart(double minute) {
        return look(new PosteriorPaceWatch(), minute);
    }

    private Pace look(PaceWatch by, double minute) {
        LiveClass live = until(told, minute);
        Instant now = TestClass.instant(minute);
        return by.watch("test", live, cure.clocks(live, now), now);
    }

    /** The whole view at that minute, from a board started just now. */
    public ClassView view(double minute) {
        return new ViewMaker(cure, new PosteriorPaceWatch(), ZONE)
                .view("test", until(told, minute), TestClass.instant(minute));
    }

    public Optional<SeatFlag> flag(double minute, int seat) {
        return Optional.ofNullable(at(minute).flags().get(new SeatNumber(seat)));
    }

    public static Map<Integer, SeatFlag.Level> levels(Pace pace) {
        Map<Integer, SeatFlag.Level> levels = new TreeMap<>();
        pace.flags().forEach((seat, flag) -> levels.put(seat.value(), flag.level()));
        return levels;
    }

    public static double minuteOf(Instant instant) {
        return TestClass.minuteOf(instant);
    }
}
