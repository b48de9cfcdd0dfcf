package benchpace.board.view;

import benchpace.board.attempt.Attempts;
import benchpace.board.attempt.Missing;
import benchpace.board.attempt.Model;
import benchpace.board.cooling.CandleClock;
import benchpace.board.cooling.Cooling;
import benchpace.board.cooling.CureClock;
import benchpace.board.cooling.CureOrPlan;
import benchpace.board.cooling.CutAway;
import benchpace.board.cooling.RoomView;
import benchpace.board.cooling.SaidRange;
import benchpace.board.pacing.HomeTimes;
import benchpace.board.pacing.Pace;
import benchpace.board.pacing.PaceLines;
import benchpace.board.pacing.PaceLinesMaker;
import benchpace.board.pacing.PaceWatch;
import benchpace.board.pacing.PresentStep;
import benchpace.board.pacing.TurnsAt;
import benchpace.board.view.ClassView.Stage;
import benchpace.board.view.ClassView.StepView;
import benchpace.board.view.Computed.Moment;
import benchpace.board.waiting.WaitChain;
import benchpace.board.waiting.WaitView;
import benchpace.board.waiting.WaitViews;
import benchpace.live.LiveClass;
import benchpace.live.Progress;
import benchpace.live.Seat;
import benchpace.live.Standing;
import benchpace.live.Standing.Phase;
import benchpace.plan.Plan;
import benchpace.plan.SeatNumber;
import benchpace.plan.SeatingChart;
import benchpace.plan.Step;
import benchpace.plan.StepKind;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Derives what screens show from the class, the cure and the pace at one instant. Itself it keeps nothing: what was
 * planned before, and what failed, is in the class's {@link ClassModels}. What rooms and past classes taught is read
 * from the store, and nothing is written there: what a class starts from is fixed when it begins.
 */
public final class ViewMaker {
    private final CureClock cureClock;
    private final PaceWatch paceWatch;
    private final ZoneId zone;

    public ViewMaker(CureClock cureClock, PaceWatch paceWatch, ZoneId zone) {
        this.cureClock = cureClock;
        this.paceWatch = paceWatch;
        this.zone = zone;
    }

    /** What is to be kept beside a class while it is open; fresh. */
    public ClassModels models(String classId) {
        Attempts attempts = new Attempts(classId);
        return new ClassModels(new WaitChain(classId, new CureOrPlan(cureClock, attempts)), attempts);
    }

    /**
     * The view with the wait planned from the class's beginning; a board that is open keeps its plannings.
     *
     * @throws IllegalStateException if anything of it cannot be computed
     */
    public ClassView view(String classId, LiveClass live, Instant now) {
        ClassView view = view(classId, live, models(classId), now);
        requireWhole(classId, view.missing());
        return view;
    }

    /** The class looked back on. @throws IllegalStateException if anything of it cannot be computed */
    public ClassReport report(String classId, LiveClass live, ClassView view) {
        ClassReport report = report(classId, live, view, models(classId));
        requireWhole(classId, report.missing());
        return report;
    }

    private static void requireWhole(String classId, Missing missing) {
        if (!missing.models().isEmpty()) {
            throw new IllegalStateException("class " + classId + " without " + missing.models());
        }
    }

    /** Whatever model fails, there is a view: it says what is missing. */
    public ClassView view(String classId, LiveClass live, ClassModels models, Instant now) {
        Moment at = new Moment(live, now);
        return view(classId, at, compute(classId, at, models), models);
    }

    /** How the views of one class come about. @param models what is kept beside it @param moments the class as it is */
    public ClassViews.Making making(String classId, Supplier<ClassModels> models, Supplier<Moment> moments) {
        return new ClassViews.Making() {
            @Override public Moment moment() {
                return moments.get();
            }

            @Override public Computed compute(Moment of) {
                return ViewMaker.this.compute(classId, of, models.get());
            }

            @Override public ClassView view(Moment at, Computed computed) {
                return ViewMaker.this.view(classId, at, computed, models.get());
            }
        };
    }

    /** All that takes time of a view. Where a model fails, what stands in for it. */
    public Computed compute(String classId, Moment of, ClassModels models) {
        LiveClass live = of.live();
        Instant now = of.now();
        Attempts attempts = models.attempts();
        CureOrPlan cure = new CureOrPlan(cureClock, attempts);
        WaitView waiting = attempts.of(Model.WAIT, live.seq(), now, () -> models.waits().at(live, now),
                () -> WaitViews.unplanned(live, now));
        Cooling timed = cure.cooling(classId, live, now);
        Cooling cooling = timed.with(cure.cutOpen(classId, live, timed.clocks(), now), now);
        Pace pace = attempts.of(Model.PACE, live.seq(), now,
                () -> paceWatch.watch(classId, live, cooling.clocks(), now),
                () -> Pace.unjudged(HomeTimes.promised(live, cooling.clocks(), now)));
        return new Computed(of, cooling, pace, waiting, models.waits().nextChange(live, now));
    }

    /**
     * A view of the class at a moment, with what was computed for it; or for an earlier one, as far as that still holds
     * then. Takes next to no time.
     */
    public ClassView view(String classId, Moment at, Computed computed, ClassModels models) {
        return models.attempts().of(Model.WORDS, at.live().seq(), at.now(),
                () -> new Making(classId, at, models, computed.at(at)).view(Missing.NOTHING),
                () -> new Making(classId, at, models, byPlan(at)).view(Missing.of(List.of(Model.WORDS))));
    }

    /** What can be said without any model. */
    private Computed byPlan(Moment at) {
        Cooling cooling = cureClock.byFigure(at.live(), at.now());
        return new Computed(at, cooling, Pace.unjudged(HomeTimes.promised(at.live(), cooling.clocks(), at.now())),
                WaitViews.unplanned(at.live(), at.now()), Optional.empty());
    }

    /** The class looked back on. @param view of the same class, just now */
    public ClassReport report(String classId, LiveClass live, ClassView view, ClassModels models) {
        CureOrPlan cure = new CureOrPlan(cureClock, models.attempts());
        return new ReportMaker(live, view, cure.clocksOf(classId, live, view.now()), models)
                .report(() -> paceWatch.engine(classId, live), cureClock);
    }

    /** What the class would have saved with one thing changed. @param report of the same class, just now */
    public ClassWhatIf whatIf(String classId, LiveClass live, ClassReport report, ClassModels models) {
        CureOrPlan cure = new CureOrPlan(cureClock, models.attempts());
        return new WhatIfMaker(live, report, models).made(cure.clocksOf(classId, live, report.view().now()),
                () -> paceWatch.engine(classId, live), cureClock);
    }

    /** A seat's candle cut open as it should be now, where that is computed. */
    public Optional<CutAway> cutAway(String classId, LiveClass live, SeatNumber seat, Instant now, Attempts attempts) {
        return new CureOrPlan(cureClock, attempts).cutAway(classId, live, seat, now);
    }

    /** One view in the making. */
    private final class Making {
        private final String classId;
        private final LiveClass live;
        private final Plan plan;
        private final Progress progress;
        private final Map<SeatNumber, CandleClock> clocks;
        private final RoomView room;
        private final Pace pace;
        private final PresentStep present;
        private final WaitView waiting;
        private final ClassModels models;
        private final Instant now;
        private final Map<SeatNumber, Standing> standings = new TreeMap<>();
        private final StepViews stepViews;
        private final SeatingChart chart;
        private final List<TurnsAt> turns;
        private final Optional<Instant> waitChanges;

        /** @param computed for that very moment, or brought to it */
        Making(String classId, Moment at, ClassModels models, Computed computed) {
            this.classId = classId;
            this.live = at.live();
            this.now = at.now();
            this.plan = live.plan();
            this.progress = live.progress();
            this.clocks = computed.cooling().clocks();
            this.room = computed.cooling().room();
            this.pace = computed.pace();
            this.present = PresentStep.of(live, mayBeFirm(), now);
            this.waiting = present.isPastTheCandles(plan) ? computed.waiting().uncalled() : computed.waiting();
            this.waitChanges = computed.waitChanges();
            this.models = models;
            this.turns = TurnsAt.of(live, now);
            int setUp = live.setup().seats().stream().mapToInt(place -> place.seat().value()).max().orElseThrow();
            this.chart = SeatingChart.of(plan.table(), setUp, live.setup().numbering())
                    .with(Math.max(0, live.places() - setUp));
            live.seats().forEach(s -> standings.put(s.number(), progress.standing(s)));
            this.stepViews = new StepViews(live, standings);
        }

        /** @param also what is known to be missing from this very view */
        ClassView view(Missing also) {
            List<StepView> steps = plan.steps().stream().map(stepViews::of).toList();
            List<SeatView> seats = new SeatViews(live, clocks, pace, waiting, standings, chart, turns, now).all();
            Stage stage = Stages.of(live, now);
            ClassView.CureView cure = new CureViews(live, clocks, pace.home(), now).cure();
            PaceLines lines = tried(Model.LINES, () -> PaceLinesMaker.of(live, pace, linesEnd()),
                    () -> PaceLines.none(now));
            KnownClass known = tried(Model.OFFLINE, () -> KnownClass.of(live, clocks), () -> KnownClass.NOTHING);
            Missing missing = models.attempts().ofEveryView().without(Model.WORDS).and(also);
            return new ClassView(classId, live.name(), plan, zone, live.seq(), now, live.startsAt(), stage,
                    steps, new NowViews(live, stepViews, seats).of(stage, present),
                    new NextViews(live, standings, stepViews, pace).next(), chart, seats, cure, pace.home(),
                    help(), longest(seats), pace.silence(), turns, TakeBacks.of(live), notes(), room,
                    lines, waiting.firstReady(cure.range().filter(r -> r.phase(now) == SaidRange.Phase.BEFORE)
                            .map(SaidRange::from)), live.guestsMayTell(), known, missing, nextChange(missing));
        }

        private <T> T tried(Model model, Supplier<T> work, Supplier<T> otherwise) {
            return models.attempts().of(model, live.seq(), now, work, otherwise);
        }

        /** The lines of a closed class end with what happened, however late somebody closed it. */
        private Instant linesEnd() {
            return live.closedAt().isPresent() ? live.end(now) : now;
        }

        private Stream<Seat> makers() {
            return live.seats().stream().filter(Seat::makesCandle);
        }

        /** Whether by its clock some candle may be firm. */
        private boolean mayBeFirm() {
            return makers().map(s -> clocks.get(s.number())).anyMatch(c -> c != null && c.mayBeReady(now));
        }

        private Instant talkEnds(Step talk) {
            return live.openedAt(talk.id()).map(t -> t.plus(talk.planned())).orElse(Instant.MIN);
        }

        private List<ClassView.HelpView> help() {
            return pace.mostUrgent().stream().map(number -> {
                Seat seat = live.seat(number).orElseThrow();
                return new ClassView.HelpView(number.value(), seat.name(), pace.flags().get(number),
                        seat.claim().filter(c -> c.holds(now)).map(Seat.Claim::helper),
                        seat.claim().filter(c -> !c.holds(now))
                                .map(c -> new ClassView.WentView(c.helper(), c.at())));
            }).toList();
        }

        /** Who has been longest at a step; nobody while it is the same for several, as when a step has just opened. */
        private Optional<ClassView.LongestView> longest(List<SeatView> seats) {
            Set<Integer> working = makers().filter(s -> standings.get(s.number()).phase() == Phase.WORKING)
                    .map(s -> s.number().value()).collect(Collectors.toSet());
            List<SeatView> longest = seats.stream()
                    .filter(s -> working.contains(s.seat()) && s.before().isEmpty())
                    .sorted(Comparator.comparing(this::minutesAtIt).reversed()).toList();
            boolean tied = longest.size() > 1 && minutesAtIt(longest.get(0)) == minutesAtIt(longest.get(1));
            return longest.stream().findFirst().filter(s -> !tied && minutesAtIt(s) > 0)
                    .map(s -> new ClassView.LongestView(s.seat(),
                            standings.get(new SeatNumber(s.seat())).step().orElseThrow().name()));
        }

        /** Whole ones, as the tiles count them. */
        private long minutesAtIt(SeatView seat) {
            return Duration.between(seat.countFrom(), now).toMinutes();
        }

        private List<ClassView.NoteView> notes() {
            List<ClassView.NoteView> notes = new ArrayList<>();
            live.notes().forEach(n -> notes.add(new ClassView.NoteView(Optional.empty(), n.at(), n.text(), n.seq())));
            live.seats().forEach(s -> s.notes().forEach(n -> notes.add(
                    new ClassView.NoteView(Optional.of(s.number().value()), n.at(), n.text(), n.seq()))));
            notes.sort(Comparator.comparing(ClassView.NoteView::seq));
            return notes;
        }

        /** When something on a screen changes although nobody taps; what is missing is tried again each minute. */
        private Optional<Instant> nextChange(Missing missing) {
            Stream<Instant> again = missing.models().isEmpty() ? Stream.empty()
                    : Stream.of(now.truncatedTo(ChronoUnit.MINUTES).plus(1, ChronoUnit.MINUTES));
            Stream<Instant> windows = values().flatMap(c -> Stream.of(c.said().from(), c.said().until()));
            Stream<Instant> claims = live.seats().stream()
                    .flatMap(s -> s.claim().map(Seat.Claim::lapsesAt).stream());
            Stream<Instant> talks = plan.steps().stream().filter(s -> s.kind() == StepKind.TALK).map(this::talkEnds);
            return Stream.of(pace.nextChange().stream(), waitChanges.stream(), again, windows, claims, talks,
                            room.nextChange().stream(), Stream.of(live.startsAt()))
                    .flatMap(s -> s)
                    .filter(t -> t.isAfter(now))
                    .min(Comparator.naturalOrder());
        }

        private Stream<CandleClock> values() {
            Collection<CandleClock> all = clocks.values();
            return all.stream().filter(c -> !c.settled());
        }
    }
}
