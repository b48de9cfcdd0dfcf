package benchpace.store;

import benchpace.live.ClassEvent;
import benchpace.live.Recorded;
import benchpace.plan.Opening;
import benchpace.plan.Plan;
import benchpace.plan.PlanId;
import benchpace.plan.SeatNumber;
import benchpace.plan.Step;
import benchpace.plan.StepId;
import benchpace.plan.StepKind;
import benchpace.plan.TableShape;
import java.time.Duration;
import java.time.Instant;
import java.util.List;

/** A small class to store: three seats, one step done by hand, a pour and its cure. */
public final class ClassOfThree {
    static final Instant START = Instant.parse("2027-03-04T18:30:00Z");
    static final Plan PLAN = new Plan(new PlanId("small"), "A small class", "", "", 3, TableShape.LONG_TABLE,
            List.of(step("wicks", StepKind.HANDS_ON), step("pour", StepKind.POUR), step("cure", StepKind.CURE)),
            List.of());

    private ClassOfThree() { }

    private static Step step(String id, StepKind kind) {
        return new Step(new StepId(id), "The step " + id, kind, Opening.FREE, Duration.ofMinutes(5),
                Duration.ofMinutes(3), "", "", "");
    }

    public static Recorded created() {
        return event(1, new ClassEvent.ClassCreated(PLAN, "Thursday", START, List.of(
                new ClassEvent.Place(new SeatNumber(1), "Ida"), new ClassEvent.Place(new SeatNumber(2), ""),
                new ClassEvent.Place(new SeatNumber(3), "Bo"))));
    }

    static Recorded event(long seq, ClassEvent event) {
        return new Recorded(seq, "command-" + seq, "instructor", START.plusSeconds(seq), START.plusSeconds(seq + 1),
                event);
    }

    public static Recorded note(long seq, String text) {
        return event(seq, new ClassEvent.ClassNoted(text));
    }
}
