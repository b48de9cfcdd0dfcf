package benchpace.live;

import benchpace.plan.Activity;
import benchpace.plan.ActivityId;
import benchpace.plan.ActivityKind;
import benchpace.plan.AsTyped;
import benchpace.plan.Candle;
import benchpace.plan.Numbering;
import benchpace.plan.Opening;
import benchpace.plan.Plan;
import benchpace.plan.PlanId;
import benchpace.plan.SeatNumber;
import benchpace.plan.Stations;
import benchpace.plan.Step;
import benchpace.plan.StepId;
import benchpace.plan.StepKind;
import benchpace.plan.TableShape;
import benchpace.plan.TableTop;
import benchpace.plan.Vessel;
import benchpace.plan.Wax;
import benchpace.plan.kit.Appliance;
import benchpace.plan.kit.Circuit;
import benchpace.plan.kit.Kit;
import benchpace.plan.kit.LoadConvention;
import benchpace.plan.kit.Loads;
import benchpace.plan.kit.Melter;
import benchpace.plan.kit.Supply;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;

/** A class in which every word that somebody can write bears one mark, to be looked for wherever it must not be. */
public final class WordyClass {
    /** In every word that somebody wrote, so that it is found wherever one is left. */
    public static final String MARK = "quillon";

    public static LiveClass wordy() {
        TestClass c = TestClass.of(plan(), 3);
        List<ClassEvent.Place> places = List.of(place(1, "Ada"), place(2, "Bo"), place(3, ""));
        return c.wish(new ClassEvent.ClassSetUpAgain(new Setup(plan(), "Hen night " + MARK, TestClass.START,
                        Optional.empty(), Numbering.CLOCKWISE_FROM_LEFT, places)))
                .wish(new ClassEvent.SeatAdded(place(4, "Cy")))
                .wish(new ClassEvent.GuestCorrected(new SeatNumber(4), "Di " + MARK, "tables " + MARK, "nuts " + MARK))
                .wish(new ClassEvent.CandleChosen(new SeatNumber(1), "candle-" + MARK))
                .minute(1).open("talk-by-" + MARK).minute(5).open("wicks-" + MARK).arrive(3, "Eve " + MARK)
                .claim(2, "M" + MARK).sorted(2, "M" + MARK).note(1, "left early, " + MARK)
                .wish(new ClassEvent.ClassNoted("a draught, said " + MARK))
                .openActivity("labels-" + MARK).join(1, "labels-" + MARK).minute(9).finish(1, "wicks-" + MARK).live();
    }

    private static ClassEvent.Place place(int seat, String name) {
        return new ClassEvent.Place(new SeatNumber(seat), name.isEmpty() ? "" : name + " " + MARK, "choir " + MARK,
                Optional.of("candle-" + MARK), "allergy " + MARK);
    }

    private static Plan plan() {
        Wax wax = new Wax("wax-" + MARK, "Wax " + MARK, 900, 2100, 2200, 120_000, 38, 46, 0.2, 0.3, false);
        Vessel vessel = new Vessel("cup-" + MARK, "Cup " + MARK, Vessel.Material.GLASS, 75, 3, 90);
        Candle candle = new Candle("candle-" + MARK, "Candle " + MARK, vessel, wax, 180, 0.07, 21, 62, TableTop.WOOD,
                Optional.empty(), LoadConvention.OF_WAX, new AsTyped(Map.of("fillGrams", "180 g")));
        Activity activity = new Activity(new ActivityId("labels-" + MARK), "Labels " + MARK, ActivityKind.LABELS,
                Activity.Audience.OWN_PACE, Duration.ofMinutes(10), Duration.ofMinutes(15), 2, Set.of(), true,
                "beside " + MARK, "led by " + MARK, "say " + MARK, "mind " + MARK);
        Kit kit = new Kit(OptionalDouble.empty(), 0, 0, OptionalInt.of(150), Loads.NONE,
                List.of(new Melter("pot-" + MARK, "Pot " + MARK, "wax-" + MARK, OptionalDouble.empty(), 0,
                        OptionalDouble.empty(), OptionalDouble.empty(), Melter.ScentedIn.JUG)),
                List.of(new Appliance("hob-" + MARK, "Hob " + MARK, OptionalDouble.empty(),
                        Optional.of("pot-" + MARK), Optional.of("wall-" + MARK), 60)),
                List.of(new Circuit("wall-" + MARK, "Wall " + MARK, OptionalDouble.empty(), OptionalDouble.empty(),
                        Optional.empty())),
                List.of(supply("wax-" + MARK), supply("lid-" + MARK)));
        return new Plan(new PlanId("plan-" + MARK), "Plan " + MARK, "about " + MARK, "Loft of " + MARK, 4,
                TableShape.ROWS, List.of(step("talk-by-" + MARK, StepKind.TALK), step("wicks-" + MARK,
                StepKind.HANDS_ON)), List.of(activity), List.of(candle), kit);
    }

    private static Supply supply(String id) {
        return new Supply(id, "Supply " + MARK, 1, 0, 0, 1, 0, false, OptionalDouble.empty(), "box " + MARK);
    }

    private static Step step(String id, StepKind kind) {
        return new Step(new StepId(id), "Step " + MARK, kind, Opening.LED, Duration.ofMinutes(6), Duration.ofMinutes(3),
                "say " + MARK, "mind " + MARK, "wall " + MARK, Optional.empty(),
                kind == StepKind.TALK ? Optional.empty()
                : Optional.of(new Stations(1, "scales of " + MARK, Duration.ofMinutes(2))));
    }

    private WordyClass() { }

    /** The same as tapped by people and devices with a mark of their own. */
    public static List<Recorded> tapped(List<Recorded> log) {
        return log.stream().map(e -> new Recorded(e.seq(), e.commandId() + "-" + MARK, e.seq() % 2 == 0 ? "instructor"
                : "M" + MARK, "device " + MARK + e.seq() % 2, e.at(), e.recordedAt(), e.event())).toList();
    }
}
