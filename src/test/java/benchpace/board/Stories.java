package benchpace.board;

import benchpace.live.TestClass;
import benchpace.plan.Opening;
import benchpace.plan.Plan;
import benchpace.plan.StepKind;
import benchpace.plan.TestPlans;

/** Invented evenings in which somebody gets stuck, or does not. */
public final class Stories {
    private Stories() { }

    /** Vessel 2 and wicks 4 minutes, mix 5 and pour 3, each opened by the instructor but the first; an hour of cure. */
    public static Plan plan() {
        return TestPlans.of(
                TestPlans.step("vessel", StepKind.HANDS_ON, Opening.FREE, 2),
                TestPlans.step("wicks", StepKind.HANDS_ON, Opening.LED, 4),
                TestPlans.step("mix", StepKind.HANDS_ON, Opening.LED, 5),
                TestPlans.step("pour", StepKind.POUR, Opening.LED, 3),
                TestPlans.step("cure", StepKind.CURE, Opening.FREE, 60),
                TestPlans.step("trim", StepKind.FINISH, Opening.LED, 4));
    }

    /** Everybody through the vessel, all but seat 4 through the wicks, which opened at minute 3. */
    public static TestClass stuckAtWicks(int seats) {
        TestClass c = vessel(TestClass.of(plan(), seats));
        c.minute(3).open("wicks");
        return othersTap(c, 6.5, 4, "wicks");
    }

    public static TestClass vessel(TestClass c) {
        return othersTap(c, 2, 0, "vessel");
    }

    /** Every seat at the table but one taps the step, each nine seconds after the other. */
    public static TestClass othersTap(TestClass c, double minute, int except, String step) {
        double when = minute;
        for (int seat = 1; seat <= c.live().seats().size(); seat++) {
            if (seat != except && c.seat(seat).makesCandle()) {
                c.minute(when).finish(seat, step);
                when += 0.15;
            }
        }
        return c;
    }
}
