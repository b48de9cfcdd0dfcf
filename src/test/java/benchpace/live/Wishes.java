package benchpace.live;

import benchpace.plan.ActivityId;
import benchpace.plan.SeatNumber;
import benchpace.plan.StepId;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Tuple;

/**
 * Arbitrary evenings: every sort of wish, sensible and not, for an evening of up to five seats. Most wishes name things
 * the class has, so that many are let stand.
 */
public final class Wishes {
    /**
     * One wish and its moment.
     *
     * @param pauseSeconds how long after the wish before it the board hears of it
     * @param lateSeconds  how long before that it was made
     */
    public record Wish(ClassEvent event, int pauseSeconds, int lateSeconds) { }

    private Wishes() { }

    /**
     * What is wished for from a certain point of the evening on.
     *
     * @param from 0: just made; 1: at the pour; 2: everybody has poured; 3: the candles are being trimmed
     */
    public record Evening(int from, List<Wish> wishes) {
        public LiveClass begun() {
            if (from == 0) {
                return TestClass.evening(5).live();
            }
            TestClass c = TestClass.atThePour(5).minute(25);
            for (int seat = 1; seat <= 5 && from >= 2; seat++) {
                c.minute(25 + seat).finish(seat, "pour");
            }
            return from < 3 ? c.live() : c.minute(90).open("trim").minute(94).finish(1, "trim").live();
        }
    }

    public static Arbitrary<Evening> evenings() {
        return Combinators.combine(Arbitraries.integers().between(0, 3), wishes()).as(Evening::new);
    }

    /** Nothing but pauses, told late and corrected, at two seats. */
    static Arbitrary<Evening> comingsAndGoings() {
        Arbitrary<SeatNumber> seats = Arbitraries.integers().between(1, 2).map(SeatNumber::new);
        Arbitrary<ClassEvent> events = Arbitraries.oneOf(
                seats.map(ClassEvent.SeatPaused::new),
                seats.map(ClassEvent.SeatResumed::new),
                Combinators.combine(Arbitraries.longs().between(15, 30), Arbitraries.integers().between(20, 45))
                        .as((seq, minute) -> new ClassEvent.TapRetimed(seq, TestClass.instant(minute))));
        return Combinators.combine(events, Arbitraries.integers().between(0, 240),
                        Arbitraries.integers().between(0, 400)).as(Wish::new)
                .list().ofMaxSize(25).map(wishes -> new Evening(1, wishes));
    }

    private static Arbitrary<List<Wish>> wishes() {
        Arbitrary<Integer> pauses = Arbitraries.integers().between(0, 240);
        Arbitrary<Integer> late = Arbitraries.frequencyOf(
                Tuple.of(4, Arbitraries.just(0)),
                Tuple.of(1, Arbitraries.integers().between(-10, 900)));
        return Combinators.combine(events(), pauses, late).as(Wish::new).list().ofMinSize(5).ofMaxSize(60);
    }

    private static Arbitrary<ClassEvent> events() {
        Arbitrary<SeatNumber> seats = Arbitraries.integers().between(1, 6).map(SeatNumber::new);
        Arbitrary<StepId> steps = Arbitraries.of("welcome", "wicks", "blend", "pour", "cure", "trim", "wrap", "glaze")
                .map(StepId::new);
        Arbitrary<ActivityId> activities = Arbitraries.of("labels", "refreshments", "dance").map(ActivityId::new);
        Arbitrary<Long> seqs = Arbitraries.longs().between(0, 60);
        Arbitrary<String> initials = Arbitraries.of("MB", "TO");
        return Arbitraries.frequencyOf(
                Tuple.of(6, steps.map(ClassEvent.StepOpened::new)),
                Tuple.of(12, Combinators.combine(seats, steps).as(ClassEvent.StepFinished::new)),
                Tuple.of(4, Arbitraries.oneOf(
                        seqs.map(ClassEvent.Undone::new),
                        Combinators.combine(seqs, Arbitraries.integers().between(-5, 120))
                                .as((seq, minute) -> new ClassEvent.TapRetimed(seq, TestClass.instant(minute))),
                        Combinators.combine(seqs, seats).as(ClassEvent.TapReseated::new))),
                Tuple.of(6, atTheTable(seats)),
                Tuple.of(2, theSeats(seats)),
                Tuple.of(5, candle(seats, steps, initials)),
                Tuple.of(3, activity(seats, activities)),
                Tuple.of(1, Arbitraries.oneOf(
                        Arbitraries.just(new ClassEvent.ClassClosed()),
                        Arbitraries.just(new ClassEvent.ClassNoted("draughty")))));
    }

    private static Arbitrary<ClassEvent> atTheTable(Arbitrary<SeatNumber> seats) {
        return Arbitraries.oneOf(
                seats.map(ClassEvent.SeatPaused::new),
                seats.map(ClassEvent.SeatResumed::new),
                seats.map(ClassEvent.SeatExpected::new),
                seats.map(seat -> new ClassEvent.SeatArrived(seat, "")),
                seats.map(seat -> new ClassEvent.SeatArrived(seat, "Ada")),
                seats.map(ClassEvent.SeatLeft::new),
                Combinators.combine(seats, seats).as(ClassEvent.SeatPaired::new),
                seats.map(ClassEvent.SeatUnpaired::new),
                seats.map(seat -> new ClassEvent.SeatNoted(seat, "two wicks")));
    }

    private static Arbitrary<ClassEvent> theSeats(Arbitrary<SeatNumber> seats) {
        return Arbitraries.oneOf(
                seats.map(seat -> new ClassEvent.SeatAdded(new ClassEvent.Place(seat, "Io"))),
                seats.map(ClassEvent.SeatTakenAway::new),
                seats.map(seat -> new ClassEvent.GuestCorrected(seat, "Bo", "choir", "nuts")));
    }

    private static Arbitrary<ClassEvent> candle(Arbitrary<SeatNumber> seats, Arbitrary<StepId> steps,
                                                Arbitrary<String> initials) {
        return Arbitraries.oneOf(
                seats.map(ClassEvent.PouredAgain::new),
                Combinators.combine(seats, Arbitraries.of(61.5, 48.0, -3.0, Double.NaN))
                        .as(ClassEvent.TemperatureRead::new),
                Combinators.combine(seats, Arbitraries.of("glass", "small-glass", "nothing"))
                        .as(ClassEvent.CandleChosen::new),
                Arbitraries.of(21.0, 99.0, Double.NaN).map(ClassEvent.RoomRead::new),
                Arbitraries.of(62.0, 12.0, Double.NaN).map(ClassEvent.PourRead::new),
                seats.map(ClassEvent.SkinSeen::new),
                seats.map(ClassEvent.JudgedSet::new),
                Combinators.combine(seats, initials).as(ClassEvent.HelpClaimed::new),
                Combinators.combine(seats, initials).as(ClassEvent.HelpSorted::new),
                Combinators.combine(seats, steps).as(ClassEvent.StillWorking::new),
                Combinators.combine(seats, steps).as(ClassEvent.DoneHinted::new),
                Arbitraries.of(true, false).map(ClassEvent.GuestsMayTell::new));
    }

    private static Arbitrary<ClassEvent> activity(Arbitrary<SeatNumber> seats, Arbitrary<ActivityId> activities) {
        return Arbitraries.oneOf(
                activities.map(ClassEvent.ActivityOpened::new),
                activities.map(ClassEvent.ActivityClosed::new),
                activities.map(id -> new ClassEvent.ActivityExtended(id, 5)),
                activities.map(id -> new ClassEvent.ActivityMoved(id, TestClass.instant(70))),
                activities.map(ClassEvent.ActivitySkipped::new),
                Combinators.combine(seats, activities).as(ClassEvent.ActivityJoined::new),
                Combinators.combine(seats, activities).as(ClassEvent.ActivityQuit::new));
    }

    /** Puts the wish to the class as the board would; the class as it is afterwards, refused or not. */
    public static LiveClass put(LiveClass live, Wish wish) {
        Instant now = live.lastRecordedAt().plusSeconds(wish.pauseSeconds());
        Instant at = now.minus(Duration.ofSeconds(wish.lateSeconds()));
        Command command = new Command("tap-" + (live.seq() + 1), "test", at, wish.event());
        return Rules.decide(live, command, now, Plausibility.ANYTHING) instanceof Decision.Accepted accepted
                ? live.apply(new Recorded(live.seq() + 1, command.id(), "test", at, now, accepted.event()))
                : live;
    }
}
