package benchpace.board.playback;

import benchpace.board.cooling.CureClock;
import benchpace.board.pacing.ClassTracks;
import benchpace.board.pacing.PaceWatch;
import benchpace.live.ClassEvent;
import benchpace.live.LiveClass;
import benchpace.live.Recorded;
import benchpace.live.Standing;
import benchpace.pace.ClassTrack;
import benchpace.pace.Level;
import benchpace.pace.engine.PaceEngine;
import benchpace.pace.engine.PaceMemory;
import benchpace.plan.SeatNumber;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What there is to see in an evening, and when. Flags are found as the screens come to show them: judged after each
 * event and each half minute, from what was known by then.
 */
final class Marks {
    private static final Duration TICK = Duration.ofMillis(Math.round(60_000 * PaceEngine.TICK_MINUTES));
    private static final List<Class<? extends ClassEvent>> TOLD = List.of(ClassEvent.StepOpened.class,
            ClassEvent.SeatArrived.class, ClassEvent.SeatLeft.class, ClassEvent.PouredAgain.class,
            ClassEvent.SeatPaired.class, ClassEvent.TemperatureRead.class, ClassEvent.ClassNoted.class,
            ClassEvent.ClassClosed.class);

    private final String id;
    private final PlayedClass played;
    private final CureClock cure;
    private final PaceWatch pace;

    Marks(String id, PlayedClass played, CureClock cure, PaceWatch pace) {
        this.id = id;
        this.played = played;
        this.cure = cure;
        this.pace = pace;
    }

    /** What happened, in order; without flags, which have to be computed. */
    List<Mark> happened() {
        List<Mark> marks = new ArrayList<>();
        for (Recorded recorded : played.events()) {
            Instant at = played.written(recorded.seq());
            if (!at.isBefore(played.from()) && TOLD.stream().anyMatch(told -> told.isInstance(recorded.event()))) {
                marks.add(new Mark.Happened(at, recorded.event()));
            }
        }
        return marks;
    }

    /** The same with who was flagged, and when. */
    List<Mark> all() {
        List<Mark> marks = new ArrayList<>(happened());
        marks.addAll(new Judging().flags());
        marks.sort(Comparator.comparing(Mark::at));
        return marks;
    }

    /** Goes through the evening once. */
    private final class Judging {
        private final List<Mark> flags = new ArrayList<>();
        private final Map<Integer, Level> shown = new HashMap<>();
        private LiveClass live;
        private ClassTrack track;
        private Optional<Judged> last = Optional.empty();

        /** What was judged last. @param origin what its minutes count from */
        private record Judged(Instant origin, ClassTrack track, PaceMemory memory) { }

        List<Mark> flags() {
            TreeSet<Instant> events = new TreeSet<>();
            played.events().forEach(e -> events.add(played.written(e.seq())));
            for (Instant at = played.from(); !at.isAfter(played.until());) {
                look(at);
                Instant half = afterHalf(at);
                Instant event = events.higher(at);
                at = event != null && event.isBefore(half) ? event : half;
            }
            return flags;
        }

        /** The next half minute of the class's own grid. */
        private Instant afterHalf(Instant at) {
            Instant origin = ClassTracks.origin(live);
            Duration since = Duration.between(origin, at);
            return origin.plus(TICK.multipliedBy(Math.floorDiv(since.toMillis(), TICK.toMillis()) + 1));
        }

        private void look(Instant at) {
            LiveClass then = played.at(at);
            if (then != live) {
                live = then;
                track = ClassTracks.of(then, cure.clocksOf(id, then, at));
            }
            judge(at);
        }

        private void judge(Instant at) {
            Instant origin = ClassTracks.origin(live);
            double now = ClassTracks.minutes(origin, at);
            if (live.closedAt().isPresent() || live.isLeftOpen(at) || now < 0) {
                last = Optional.empty();
                shown.clear();
                return;
            }
            PaceEngine engine = pace.engine(id, live);
            PaceMemory memory = last.filter(before -> before.origin.equals(origin))
                    .map(before -> engine.follow(before.track, before.memory, track, now))
                    .orElseGet(() -> engine.remember(track, now, PaceMemory.EMPTY));
            last = Optional.of(new Judged(origin, track, memory));
            new TreeMap<>(engine.levels(track, now, memory)).forEach((seat, level) -> flag(seat, level, at));
        }

        private void flag(int seat, Level level, Instant at) {
            Level before = shown.put(seat, level);
            if (level != Level.NONE && level != before) {
                flags.add(new Mark.Flagged(at, seat, level == Level.BEHIND, stepOf(seat)));
            }
        }

        private String stepOf(int seat) {
            return live.seat(new SeatNumber(seat)).map(live.progress()::standing).flatMap(Standing::step)
                    .map(s -> s.name()).orElse("");
        }
    }
}
