package benchpace.board.pacing;

import benchpace.board.cooling.CandleClock;
import benchpace.board.cooling.PlanCureClock;
import benchpace.board.cooling.ReadyWindow;
import benchpace.cure.CuringCandle;
import benchpace.live.LiveClass;
import benchpace.live.Progress;
import benchpace.live.Seat;
import benchpace.pace.ClassTrack;
import benchpace.pace.Mark;
import benchpace.pace.PaceStep;
import benchpace.pace.ReadyOutlook;
import benchpace.pace.SeatTrack;
import benchpace.pace.Span;
import benchpace.pace.Tap;
import benchpace.plan.Plan;
import benchpace.plan.SeatNumber;
import benchpace.plan.Step;
import benchpace.plan.StepId;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A class as pace judges it: minutes from its beginning, undone taps gone, corrected ones where they belong. A seat
 * that shares another's candle counts as gone while it does: the candle is judged at the seat that makes it.
 */
public final class ClassTracks {
    private static final double NOT_YET = SeatTrack.NOT_YET;
    /** The distance from the median of a normal distribution to its 90th percentile, in standard deviations. */
    private static final double NORMAL_P90 = 1.2816;

    private final LiveClass live;
    private final Plan plan;
    private final Progress progress;
    private final Instant origin;
    private final Map<SeatNumber, CandleClock> clocks;
    private final Map<SeatNumber, SeatEvents> events;

    private ClassTracks(LiveClass live, Map<SeatNumber, CandleClock> clocks) {
        this.live = live;
        this.plan = live.plan();
        this.progress = live.progress();
        this.origin = origin(live);
        this.clocks = clocks;
        this.events = SeatEvents.all(live, origin);
    }

    /** The instant that minute 0 of the track stands for: when the class should begin, or did if that was earlier. */
    public static Instant origin(LiveClass live) {
        Instant meant = live.startsAt().isAfter(live.createdAt()) ? live.startsAt() : live.createdAt();
        Stream<Instant> openings = live.plan().steps().stream().flatMap(s -> live.openedAt(s.id()).stream());
        Stream<Instant> taps = live.seats().stream().flatMap(s -> s.finishes().values().stream()).map(Seat.Finish::at);
        return Stream.of(Stream.of(meant), openings, taps).flatMap(s -> s).min(Comparator.naturalOrder()).orElse(meant);
    }

    public static ClassTrack of(LiveClass live, Map<SeatNumber, CandleClock> clocks) {
        return new ClassTracks(live, clocks).track();
    }

    public static double minutes(Instant from, Instant to) {
        return Duration.between(from, to).toMillis() / 60_000.0;
    }

    private double minute(Instant at) {
        return minutes(origin, at);
    }

    private ClassTrack track() {
        return new ClassTrack(plan.steps().stream().map(PaceStep::of).toList(), openings(), cureMinutes(),
                live.seats().stream().map(this::seat).toList());
    }

    /** A led step that was passed over counts as opened with the next one that was, as for the class itself. */
    private List<Double> openings() {
        List<Double> openings = new ArrayList<>();
        double next = NOT_YET;
        for (int k = plan.steps().size() - 1; k >= 0; k--) {
            Step step = plan.steps().get(k);
            double opened = live.openedAt(step.id()).map(this::minute).orElse(next);
            next = step.led() ? Math.min(next, opened) : next;
            openings.add(0, step.led() ? opened : 0.0);
        }
        return openings;
    }

    /** The cure to expect of a candle not yet poured: what those poured tonight are computed to take, or the plan's. */
    private double cureMinutes() {
        List<Double> computed = clocks.values().stream()
                .filter(c -> c.ready().basis() == ReadyWindow.Basis.COMPUTED)
                .map(c -> minutes(c.pouredAt(), c.ready().likely()))
                .filter(m -> m > 0)
                .sorted()
                .toList();
        return computed.isEmpty() ? planCureMinutes() : computed.get(computed.size() / 2);
    }

    private double planCureMinutes() {
        return plan.plannedCure().toMillis() / 60_000.0;
    }

    private SeatTrack seat(Seat seat) {
        SeatEvents told = events.getOrDefault(seat.number(), SeatEvents.NONE);
        List<Tap> taps = seat.finishes().entrySet().stream()
                .map(f -> new Tap(plan.indexOf(f.getKey()), minute(f.getValue().at()), false))
                .sorted(Comparator.comparing(Tap::atMinutes).thenComparing(Tap::step))
                .toList();
        double since = Math.max(0, minute(seat.presenceSince()));
        boolean apart = seat.hasLeft() || seat.present() && seat.sharesWith().isPresent();
        double arrived = seat.presence() == Seat.Presence.EXPECTED ? NOT_YET
                : Math.min(apart ? Math.min(since, told.arrivedMinutes()) : since,
                        taps.stream().mapToDouble(Tap::atMinutes).min().orElse(NOT_YET));
        List<Span> pauses = seat.pauses().stream()
                .map(p -> new Span(minute(p.from()), p.until().map(this::minute).orElse(NOT_YET))).toList();
        return new SeatTrack(seat.number().value(), seat.number().value(), false, arrived, apart ? since : NOT_YET,
                pauses, taps, marks(seat.stillAt()), told.hints(), told.claims(),
                setMinutes(seat), outlook(seat));
    }

    /** When the candle was judged set, or a step after the cure says so. */
    private double setMinutes(Seat seat) {
        return progress.settledAt(seat).map(this::minute).orElse(NOT_YET);
    }

    private List<Mark> marks(List<Seat.Answer> answers) {
        return answers.stream().map(a -> mark(plan, a.step(), minute(a.at()))).flatMap(Optional::stream).toList();
    }

    static Optional<Mark> mark(Plan plan, StepId step, double minute) {
        return plan.step(step).map(s -> new Mark(plan.indexOf(step), minute));
    }

    private ReadyOutlook outlook(Seat seat) {
        CandleClock clock = clocks.get(seat.number());
        if (clock == null || clock.settled()) {
            return ReadyOutlook.UNKNOWN;
        }
        double likely = minute(clock.ready().likely());
        if (clock.ready().basis() == ReadyWindow.Basis.PLAN_FIGURE) {
            // from the first pour pace reckons itself; of a second one it knows nothing
            return seat.pouredAgainAt().isEmpty() ? ReadyOutlook.UNKNOWN
                    : new ReadyOutlook(likely, PlanCureClock.SPREAD * planCureMinutes());
        }
        double width = minutes(clock.ready().from(), clock.ready().until());
        double all = width / (2 * NORMAL_P90);
        double own = Math.min(all, CuringCandle.OWN_SD_UNCALIBRATED * Math.max(0, likely - minute(clock.pouredAt())));
        return new ReadyOutlook(likely, own, Math.sqrt(all * all - own * own));
    }
}
