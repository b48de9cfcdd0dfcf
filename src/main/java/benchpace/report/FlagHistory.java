package benchpace.report;

import benchpace.pace.ClassTrack;
import benchpace.pace.Level;
import benchpace.pace.SeatTrack;
import benchpace.pace.engine.PaceEngine;
import benchpace.pace.engine.PaceMemory;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * Which seats were flagged when, and how soon somebody answered: the class judged once more from its record, half
 * minute by half minute. What was undone or set right since counts as it stands now.
 */
public final class FlagHistory {
    private final ClassTrack track;
    private final PaceEngine engine;
    private final double endMinutes;

    private FlagHistory(ClassTrack track, PaceEngine engine, double endMinutes) {
        this.track = track;
        this.engine = engine;
        this.endMinutes = endMinutes;
    }

    /** A flag that is up. */
    private record Up(int step, Level level, double from) { }

    /** @param endMinutes how far to look */
    public static List<FlagSpan> of(ClassTrack track, PaceEngine engine, double endMinutes) {
        return new FlagHistory(track, engine, endMinutes).spans();
    }

    private List<FlagSpan> spans() {
        List<FlagSpan> spans = new ArrayList<>();
        Map<Integer, Up> up = new HashMap<>();
        PaceMemory memory = PaceMemory.EMPTY;
        for (double now = 0; now <= endMinutes; now += PaceEngine.TICK_MINUTES) {
            memory = engine.remember(track, now, memory);
            Map<Integer, Level> levels = engine.levels(track.asOf(now), now, memory);
            for (SeatTrack seat : track.seats()) {
                Level level = levels.get(seat.seat());
                Up before = up.get(seat.seat());
                if (level == Level.NONE) {
                    end(spans, up, seat, now);
                } else if (before == null) {
                    up.put(seat.seat(), new Up(memory.seats().get(seat.seat()).step(), level, now));
                } else if (level.compareTo(before.level()) > 0) {
                    up.put(seat.seat(), new Up(before.step(), level, before.from()));
                }
            }
        }
        track.seats().forEach(seat -> end(spans, up, seat, endMinutes));
        spans.sort(Comparator.comparing(FlagSpan::fromMinutes).thenComparing(FlagSpan::seat));
        return spans;
    }

    private void end(List<FlagSpan> spans, Map<Integer, Up> up, SeatTrack seat, double now) {
        Up over = up.remove(seat.seat());
        if (over != null) {
            spans.add(new FlagSpan(seat.seat(), over.step(), over.level(), over.from(), now,
                    answered(seat, over, now)));
        }
    }

    private static double answered(SeatTrack seat, Up flag, double until) {
        // who came before the flag was there when it went up
        Stream<Double> claims = seat.claims().stream().filter(c -> c.toMinutes() >= flag.from())
                .map(c -> Math.max(c.fromMinutes(), flag.from()));
        Stream<Double> answers = seat.stillAtIt().stream().map(m -> m.atMinutes());
        Stream<Double> ticks = seat.taps().stream().map(t -> t.atMinutes());
        DoubleStream all = Stream.of(claims, answers, ticks).flatMap(s -> s).mapToDouble(Double::doubleValue);
        return all.filter(at -> at >= flag.from() && at <= until).min().orElse(Double.POSITIVE_INFINITY);
    }
}
