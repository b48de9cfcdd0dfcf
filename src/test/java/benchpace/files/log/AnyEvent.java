package benchpace.files.log;

import benchpace.live.ClassEvent;
import benchpace.live.Era;
import benchpace.live.Setup;
import benchpace.plan.Activity;
import benchpace.plan.ActivityId;
import benchpace.plan.ActivityKind;
import benchpace.plan.Numbering;
import benchpace.plan.Opening;
import benchpace.plan.Picture;
import benchpace.plan.Plan;
import benchpace.plan.PlanId;
import benchpace.plan.SeatNumber;
import benchpace.plan.Step;
import benchpace.plan.StepId;
import benchpace.plan.StepKind;
import benchpace.plan.TableShape;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/** Events and plans of every shape within their limits, for properties. */
public final class AnyEvent {
    private AnyEvent() { }

    static Arbitrary<SeatNumber> seat() {
        return Arbitraries.integers().between(1, SeatNumber.MOST).map(SeatNumber::new);
    }

    private static Arbitrary<String> id() {
        return Arbitraries.strings().withChars("abcxyz019-").ofMinLength(0).ofMaxLength(39).map(s -> "k" + s);
    }

    static Arbitrary<StepId> step() {
        return id().map(StepId::new);
    }

    static Arbitrary<ActivityId> activity() {
        return id().map(ActivityId::new);
    }

    static Arbitrary<Instant> instant() {
        return Arbitraries.longs().between(Instant.parse("2000-01-01T00:00:00Z").toEpochMilli(),
                Instant.parse("2199-12-31T23:59:59Z").toEpochMilli()).map(Instant::ofEpochMilli);
    }

    /** Whole characters of every plane, control characters left out. */
    static Arbitrary<String> text(int least, int most) {
        Arbitrary<String> character = Arbitraries.oneOf(
                Arbitraries.integers().between(0x20, 0x7E), Arbitraries.integers().between(0xA0, 0xD7FF),
                Arbitraries.integers().between(0xE000, 0x10FFFF)).map(Character::toString);
        return character.list().ofMinSize(least).ofMaxSize(most / 2).map(parts -> String.join("", parts))
                .filter(text -> text.strip().length() >= least);
    }

    private static Arbitrary<Duration> length(long fromMillis, Duration most) {
        return Arbitraries.longs().between(fromMillis, most.toMillis()).map(Duration::ofMillis);
    }

    public static Arbitrary<Plan> plan() {
        return Combinators.combine(id().map(PlanId::new), filled(80), text(0, 400), text(0, 80),
                Arbitraries.integers().between(1, SeatNumber.MOST), Arbitraries.of(TableShape.values()),
                steps(), activities()).as(Plan::new);
    }

    /** Not blank as the plan's own rule sees it. */
    private static Arbitrary<String> filled(int most) {
        return text(0, most - 2).map(s -> "n" + s);
    }

    private static Arbitrary<List<Step>> steps() {
        Arbitrary<List<StepKind>> before = Arbitraries.of(StepKind.TALK, StepKind.HANDS_ON).list().ofMaxSize(4);
        Arbitrary<List<StepKind>> after = Arbitraries.of(StepKind.TALK, StepKind.FINISH).list().ofMaxSize(3);
        return Combinators.combine(before, after).as((first, last) -> {
            List<StepKind> kinds = new ArrayList<>(first);
            kinds.add(StepKind.POUR);
            kinds.add(StepKind.CURE);
            kinds.addAll(last);
            return kinds;
        }).flatMap(kinds -> {
            List<Arbitrary<Step>> steps = new ArrayList<>();
            for (int i = 0; i < kinds.size(); i++) {
                steps.add(step("s" + i, kinds.get(i)));
            }
            return Combinators.combine(steps).as(all -> all);
        });
    }

    private static Arbitrary<Step> step(String id, StepKind kind) {
        return Combinators.combine(filled(60), Arbitraries.of(Opening.values()),
                length(1, Duration.ofHours(8)), length(0, Duration.ofHours(2)), text(0, 400), text(0, 400),
                text(0, 200), Arbitraries.of(Picture.values()).optional())
                .as((name, opening, planned, allowance, say, caution, wall, picture) -> new Step(new StepId(id), name,
                        kind, opening, planned, allowance, say, caution, wall, picture, Optional.empty()));
    }

    private static Arbitrary<List<Activity>> activities() {
        return Arbitraries.integers().between(0, 3).flatMap(count -> {
            List<Arbitrary<Activity>> activities = new ArrayList<>();
            for (int i = 0; i < count; i++) {
                activities.add(activity("a" + i));
            }
            return activities.isEmpty() ? Arbitraries.just(List.of()) : Combinators.combine(activities).as(all -> all);
        });
    }

    private static Arbitrary<Activity> activity(String id) {
        return Combinators.combine(Arbitraries.of(ActivityKind.values()), Arbitraries.of(Activity.Audience.values()),
                length(1, Duration.ofHours(2)), length(0, Duration.ofHours(2)),
                Arbitraries.integers().between(1, SeatNumber.MOST), Arbitraries.of(Activity.Need.values()).set(),
                Arbitraries.of(true, false), text(0, 80))
                .as((kind, audience, typical, more, places, needs, may, where) -> new Activity(new ActivityId(id),
                        "The " + id, kind, audience, typical, typical.plus(more), places, needs, may, where, where,
                        where + where, ""));
    }

    private static ClassEvent setUpAgain(Plan plan, String name, Instant at, long minutes, Numbering numbering,
                                         ClassEvent.Place place) {
        Optional<Instant> end = Optional.of(at.plus(Duration.ofMinutes(minutes))).filter(Era::holds);
        return new ClassEvent.ClassSetUpAgain(new Setup(plan, name, at, end, numbering, List.of(place)));
    }

    private static Arbitrary<ClassEvent.Place> place() {
        return Combinators.combine(seat(), text(0, 40), text(0, 40), text(0, 200)).as((seat, name, party, note) ->
                new ClassEvent.Place(seat, name, party, Optional.empty(), note));
    }

    /** Every event there is. */
    static Arbitrary<ClassEvent> event() {
        return Arbitraries.oneOf(kinds());
    }

    /** One source an event, in the order of their declaration. */
    static List<Arbitrary<ClassEvent>> kinds() {
        Arbitrary<Long> seq = Arbitraries.longs().between(1, Long.MAX_VALUE);
        Arbitrary<String> helper = text(1, 12);
        List<Arbitrary<? extends ClassEvent>> kinds = List.of(
                Combinators.combine(plan(), text(1, 80), instant(), seat().set().ofMinSize(1).ofMaxSize(8),
                        text(0, 40)).as((plan, name, at, seats, guest) -> new ClassEvent.ClassCreated(plan, name, at,
                        seats.stream().map(s -> new ClassEvent.Place(s, guest)).toList())),
                Combinators.combine(plan(), text(1, 80), instant(), Arbitraries.longs().between(1, 1440),
                        Arbitraries.of(Numbering.values()), place()).as(AnyEvent::setUpAgain),
                place().map(ClassEvent.SeatAdded::new),
                seat().map(ClassEvent.SeatTakenAway::new),
                place().map(p -> new ClassEvent.GuestCorrected(p.seat(), p.name(), p.party(), p.note())),
                step().map(ClassEvent.StepOpened::new),
                Combinators.combine(seat(), step()).as(ClassEvent.StepFinished::new),
                seq.map(ClassEvent.Undone::new),
                Combinators.combine(seq, instant()).as(ClassEvent.TapRetimed::new),
                Combinators.combine(seq, seat()).as(ClassEvent.TapReseated::new),
                seat().map(ClassEvent.SeatPaused::new),
                seat().map(ClassEvent.SeatResumed::new),
                seat().map(ClassEvent.SeatExpected::new),
                Combinators.combine(seat(), text(0, 40)).as(ClassEvent.SeatArrived::new),
                seat().map(ClassEvent.SeatLeft::new),
                Combinators.combine(seat(), seat()).as(ClassEvent.SeatPaired::new),
                seat().map(ClassEvent.SeatUnpaired::new),
                seat().map(ClassEvent.PouredAgain::new),
                Combinators.combine(seat(), text(1, 500)).as(ClassEvent.SeatNoted::new),
                text(1, 500).map(ClassEvent.ClassNoted::new),
                Combinators.combine(seat(), Arbitraries.doubles().between(-60, 500))
                        .as(ClassEvent.TemperatureRead::new),
                Combinators.combine(seat(), text(1, 40)).as(ClassEvent.CandleChosen::new),
                Arbitraries.doubles().between(-60, 500).map(ClassEvent.RoomRead::new),
                Arbitraries.doubles().between(-60, 500).map(ClassEvent.PourRead::new),
                seat().map(ClassEvent.SkinSeen::new),
                seat().map(ClassEvent.JudgedSet::new),
                Combinators.combine(seat(), helper).as(ClassEvent.HelpClaimed::new),
                Combinators.combine(seat(), helper).as(ClassEvent.HelpSorted::new),
                Combinators.combine(seat(), step()).as(ClassEvent.StillWorking::new),
                Combinators.combine(seat(), step()).as(ClassEvent.DoneHinted::new),
                Arbitraries.of(true, false).map(ClassEvent.GuestsMayTell::new),
                activity().map(ClassEvent.ActivityOpened::new),
                activity().map(ClassEvent.ActivityClosed::new),
                Combinators.combine(activity(), Arbitraries.integers().between(1, 1440))
                        .as(ClassEvent.ActivityExtended::new),
                Combinators.combine(activity(), instant()).as(ClassEvent.ActivityMoved::new),
                activity().map(ClassEvent.ActivitySkipped::new),
                Combinators.combine(seat(), activity()).as(ClassEvent.ActivityJoined::new),
                Combinators.combine(seat(), activity()).as(ClassEvent.ActivityQuit::new),
                Combinators.combine(seq, Arbitraries.longs().between(-3_000_000_000_000L, 3_000_000_000_000L))
                        .as((from, ms) -> new ClassEvent.ClockShifted(from, Duration.ofMillis(ms))),
                Arbitraries.just(new ClassEvent.ClassClosed()));
        return kinds.stream().map(kind -> kind.map(event -> (ClassEvent) event)).toList();
    }
}
