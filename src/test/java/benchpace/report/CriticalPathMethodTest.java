package benchpace.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import benchpace.report.ActivityNetwork.Activity;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/**
 * Worked networks from textbooks.
 *
 * <ul>
 * <li>Hillier and Lieberman, <i>Introduction to Operations Research</i>, 7th ed., chapter 10, the building project of
 *     fourteen activities (from memory): 44 weeks along A-B-C-E-F-J-L-N.
 * <li>Taylor, <i>Introduction to Management Science</i>, chapter 8, solved problems with activities on arrows (read at
 *     scribd.com/doc/47113515, "Critical path = 1 - 3 - 4 - 5 - 6", and the problem after it of 38 units).
 * <li>A worked handout of seven activities (read at studylib.net/doc/8378728: "the sequence: ABDEG, which requires
 *     6+2+3+4+1 = 16 hours").
 * </ul>
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class CriticalPathMethodTest {

    private static Activity<String> activity(String id, double length, String... after) {
        return new Activity<>(id, length, Set.of(after));
    }

    private static void assertTimes(ActivityNetwork<String> network, String id, double es, double ef, double ls,
                                    double lf, double slack) {
        assertThat(new double[] {network.earliestStart(id), network.earliestFinish(id), network.latestStart(id),
                network.latestFinish(id), network.slack(id)}).as(id)
                .containsExactly(new double[] {es, ef, ls, lf, slack}, within(1e-12));
    }

    @Test
    void the_building_project_of_fourteen_activities() {
        ActivityNetwork<String> network = new ActivityNetwork<>(List.of(activity("A", 2), activity("B", 4, "A"),
                activity("C", 10, "B"), activity("D", 6, "C"), activity("E", 4, "C"), activity("F", 5, "E"),
                activity("G", 7, "D"), activity("H", 9, "E", "G"), activity("I", 7, "C"),
                activity("J", 8, "F", "I"), activity("K", 4, "J"), activity("L", 5, "J"), activity("M", 2, "H"),
                activity("N", 6, "K", "L")));

        assertThat(network.length()).isEqualTo(44);
        assertThat(network.criticalPath()).containsExactly("A", "B", "C", "E", "F", "J", "L", "N");
        assertTimes(network, "D", 16, 22, 20, 26, 4);
        assertTimes(network, "G", 22, 29, 26, 33, 4);
        assertTimes(network, "H", 29, 38, 33, 42, 4);
        assertTimes(network, "I", 16, 23, 18, 25, 2);
        assertTimes(network, "K", 33, 37, 34, 38, 1);
        assertTimes(network, "M", 38, 40, 42, 44, 4);
        assertTimes(network, "N", 38, 44, 38, 44, 0);
    }

    @Test
    void two_solved_problems_with_activities_on_arrows() {
        ActivityNetwork<String> first = arrows("1-2 7", "1-3 10", "2-4 6", "3-4 5", "3-5 4", "4-5 3", "5-6 2");
        assertThat(first.criticalPath()).containsExactly("1-3", "3-4", "4-5", "5-6");
        assertTimes(first, "1-2", 0, 7, 2, 9, 2);
        assertTimes(first, "2-4", 7, 13, 9, 15, 2);
        assertTimes(first, "3-5", 10, 14, 14, 18, 4);
        assertTimes(first, "5-6", 18, 20, 18, 20, 0);

        ActivityNetwork<String> second = arrows("1-2 8", "1-3 10", "1-4 9", "2-5 6", "2-6 4", "3-5 5", "4-5 0",
                "4-7 7", "5-7 12", "5-8 15", "6-9 18", "7-8 4", "8-9 7");
        assertThat(second.length()).isEqualTo(38);
        assertTimes(second, "1-2", 0, 8, 1, 9, 1);
        assertTimes(second, "1-4", 0, 9, 6, 15, 6);
        assertTimes(second, "2-6", 8, 12, 16, 20, 8);
        assertTimes(second, "4-5", 9, 9, 15, 15, 6);
        assertTimes(second, "4-7", 9, 16, 20, 27, 11);
        assertTimes(second, "5-8", 15, 30, 16, 31, 1);
        assertTimes(second, "6-9", 12, 30, 20, 38, 8);
        assertTimes(second, "8-9", 31, 38, 31, 38, 0);
    }

    /** An arrow waits for all that end where it begins. @param arrows each "from-to length" */
    private static ActivityNetwork<String> arrows(String... arrows) {
        List<Activity<String>> activities = new ArrayList<>();
        for (String arrow : arrows) {
            String[] parts = arrow.split(" ");
            String from = parts[0].split("-")[0];
            List<String> before = new ArrayList<>();
            for (String other : arrows) {
                String id = other.split(" ")[0];
                if (id.endsWith("-" + from)) {
                    before.add(id);
                }
            }
            activities.add(activity(parts[0], Double.parseDouble(parts[1]), before.toArray(new String[0])));
        }
        return new ActivityNetwork<>(activities);
    }

    @Test
    void seven_activities_of_an_assembly() {
        ActivityNetwork<String> network = new ActivityNetwork<>(List.of(activity("A", 6), activity("B", 2, "A"),
                activity("C", 2, "A"), activity("D", 3, "B"), activity("E", 4, "D", "F"),
                activity("F", 2, "C"), activity("G", 1, "E")));
        assertThat(network.length()).isEqualTo(16);
        assertThat(network.criticalPath()).containsExactly("A", "B", "D", "E", "G");
        assertTimes(network, "C", 6, 8, 7, 9, 1);
        assertTimes(network, "F", 8, 10, 9, 11, 1);
        assertTimes(network, "E", 11, 15, 11, 15, 0);
    }

    @Test
    void what_no_end_waits_for_may_take_for_ever() {
        ActivityNetwork<String> network = new ActivityNetwork<>(List.of(activity("pour", 5), activity("chat", 50),
                activity("cure", 60, "pour")), List.of("cure"));
        assertThat(network.length()).isEqualTo(65);
        assertThat(network.slack("chat")).isInfinite();
    }

    @Test
    void rings_doubles_and_strangers_are_refused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new ActivityNetwork<>(List.of(activity("A", 1, "B"),
                activity("B", 1, "A")))).withMessageContaining("wait for one another");
        assertThatIllegalArgumentException().isThrownBy(() -> new ActivityNetwork<>(List.of(activity("A", 1),
                activity("A", 2)))).withMessageContaining("two activities named A");
        assertThatIllegalArgumentException().isThrownBy(() -> new ActivityNetwork<>(List.of(activity("A", 1)),
                List.of("Z"))).withMessageContaining("not among");
        assertThatIllegalArgumentException().isThrownBy(() -> activity("A", -1));
    }
}
