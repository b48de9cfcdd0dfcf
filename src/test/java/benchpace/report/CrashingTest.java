package benchpace.report;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.report.ActivityNetwork.Activity;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/**
 * What a project saves when some of its activities are made shorter: the Reliable Construction Co. of F. S. Hillier and
 * G. J. Lieberman, <i>Introduction to Operations Research</i>, 7th ed., ch. 10 (PERT/CPM and crashing). Durations in
 * weeks and predecessors from memory; the book's results: 44 weeks along A-B-C-E-F-J-L-N, and 40 when J and F are
 * crashed by two weeks each.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class CrashingTest {
    private static final List<Activity<String>> HOUSE = house(
            "A 2", "B 4 A", "C 10 B", "D 6 C", "E 4 C", "F 5 E", "G 7 D", "H 9 E G", "I 7 C", "J 8 F I", "K 4 J",
            "L 5 J", "M 2 H", "N 6 K L");

    private static List<Activity<String>> house(String... rows) {
        List<Activity<String>> activities = new ArrayList<>();
        for (String row : rows) {
            List<String> words = List.of(row.split(" "));
            activities.add(new Activity<>(words.get(0), Double.parseDouble(words.get(1)),
                    Set.copyOf(words.subList(2, words.size()))));
        }
        return activities;
    }

    private static double weeksWith(Map<String, Integer> crashed) {
        return new ActivityNetwork<>(HOUSE).lengthWith(a -> a.length() - crashed.getOrDefault(a.id(), 0));
    }

    @Test void the_house_takes_44_weeks() {
        ActivityNetwork<String> network = new ActivityNetwork<>(HOUSE);
        assertThat(network.length()).isEqualTo(44);
        assertThat(network.criticalPath()).containsExactly("A", "B", "C", "E", "F", "J", "L", "N");
    }

    @Test void two_weeks_less_for_the_paint_save_two_and_with_two_less_for_the_plumbing_four() {
        assertThat(weeksWith(Map.of("J", 2))).isEqualTo(42);
        assertThat(weeksWith(Map.of("J", 2, "F", 2))).isEqualTo(40);
    }

    @Test void an_activity_beside_the_critical_path_saves_nothing_however_short() {
        assertThat(weeksWith(Map.of("H", 3))).isEqualTo(44);
        assertThat(weeksWith(Map.of("I", 2))).isEqualTo(44);
    }

    @Test void once_several_paths_are_critical_none_of_them_alone_saves_anything() {
        assertThat(weeksWith(Map.of("J", 2, "F", 2, "L", 1))).isEqualTo(40);
        assertThat(weeksWith(Map.of("J", 2, "F", 2, "D", 1))).isEqualTo(40);
        assertThat(weeksWith(Map.of("J", 2, "F", 2, "C", 1))).isEqualTo(39);
    }
}
