package benchpace.breaks.search;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.breaks.WaitPlan;
import benchpace.breaks.WaitProblem;
import benchpace.plan.Activity;
import benchpace.plan.ActivityKind;
import benchpace.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** As many activities as a plan may have: more than a wait has room for, and two to the power of twenty ways. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ManyActivitiesTest {
    private static WaitProblem with(int seats, int activities) {
        WaitProblem usual = Evenings.usual(seats, false);
        List<Activity> all = new ArrayList<>(usual.activities());
        for (int n = all.size(); n < activities; n++) {
            ActivityKind kind = n % 2 == 0 ? ActivityKind.SHORT_CRAFT : ActivityKind.LABELS; // all expected, none fits
            all.add(Evenings.activity("craft-" + n, kind, Activity.Audience.OWN_PACE, 6 + n % 9, 9 + n % 11, 3,
                    n % 4 == 0));
        }
        return WaitProblem.first(usual.now(), all, usual.seats(), usual.promisedEnd());
    }

    /** The work that the best strip of each seat alone takes. */
    private static LongStream workOfEachStrip(Timeline line) {
        return line.windows.stream().mapToLong(window -> {
            SearchWork work = new SearchWork();
            StripSearch search = new StripSearch(line, window, line.capacity, new boolean[line.slots], work);
            long before = work.done();
            search.best();
            return work.done() - before;
        });
    }

    @Test void the_strip_of_a_seat_is_searched_for_with_counted_work() {
        assertThat(workOfEachStrip(new Timeline(with(12, Plan.MOST_ACTIVITIES))).max().orElseThrow())
                .isBetween(StripSearch.MOST_WORK, 2 * StripSearch.MOST_WORK);
    }

    @Test void an_ordinary_wait_is_searched_to_its_end() {
        assertThat(workOfEachStrip(new Timeline(Evenings.usual(40, true))).max().orElseThrow())
                .isLessThan(StripSearch.MOST_WORK);
    }

    @Test void the_plan_keeps_every_rule() {
        for (int seats : new int[] {3, 30}) {
            WaitProblem problem = with(seats, Plan.MOST_ACTIVITIES);
            WaitPlan plan = WaitPlanner.plan(problem);

            assertThat(PlanFaults.of(problem, plan)).isEmpty();
            assertThat(plan.strips()).hasSize(seats);
        }
    }
}
