package benchpace.report.whatif;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;

/** The few changes that are suggested: they can all be made together. */
class SuggestionsProperties {
    private static final Change LED = new Change.Led(1);
    private static final Change FREE = new Change.Free(2, 6);

    /** Surely a saving of so many minutes. */
    private static Answer answer(Change change, double minutes) {
        return new Answer(change, new Saving(minutes, minutes, minutes, minutes >= 1 ? 1 : 0));
    }

    private static List<Change> suggested(Answer... answers) {
        return WhatIf.suggestions(List.of(answers)).stream().map(Answer::change).toList();
    }

    @Example void of_two_changes_of_one_step_the_better_is_kept_and_the_next_of_another_step_moves_up() {
        Change wicks = new Change.Beforehand(2, 5, 9, 8);
        Change station = new Change.MoreStations(3, 2, 4);

        assertThat(suggested(answer(FREE, 9), answer(wicks, 8), answer(LED, 5), answer(station, 3)))
                .containsExactly(FREE, LED, station);
        assertThat(suggested(answer(FREE, 7), answer(wicks, 8), answer(LED, 5))).containsExactly(wicks, LED);
    }

    @Example void one_of_a_kind_that_is_left_out_for_its_step_leaves_room_for_another_of_its_kind() {
        assertThat(suggested(answer(new Change.Led(2), 9), answer(FREE, 8), answer(new Change.Free(4, 5), 3)))
                .containsExactly(new Change.Led(2), new Change.Free(4, 5));
    }

    @Example void a_step_that_is_moved_for_another_is_spoken_of_too_unless_by_less_than_anybody_says() {
        assertThat(suggested(answer(FREE, 9), answer(earlier(0.5), 8))).containsExactly(FREE);
        assertThat(suggested(answer(FREE, 9), answer(earlier(0.3), 8))).hasSize(2);
    }

    private static Change earlier(double openedSooner) {
        return new Change.Earlier(4, 5, 11, Map.of(0, 4.0), Map.of(2, openedSooner));
    }

    @Example void what_speaks_of_no_step_stands_beside_any() {
        assertThat(suggested(answer(new Change.MoreHelp(3), 9), answer(FREE, 8),
                answer(new Change.SmallerVessels(0.75, 60), 7))).hasSize(3);
    }

    @Property(tries = 500)
    void no_two_are_of_one_step_and_none_that_is_left_out_would_have_fitted(
            @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Answer> answers = new ArrayList<>();
        for (int n = random.nextInt(12); n > 0; n--) {
            answers.add(answer(change(random), 12 * random.nextDouble() - 2));
        }
        List<Answer> suggestions = WhatIf.suggestions(answers);

        assertThat(suggestions).hasSizeLessThanOrEqualTo(3).allMatch(s -> s.saving().p10() >= 2);
        Set<Integer> steps = new HashSet<>();
        assertThat(suggestions).allMatch(s -> s.change().steps().stream().allMatch(steps::add));
        assertThat(suggestions).extracting(s -> s.change().getClass()).doesNotHaveDuplicates();
        assertThat(answers.stream().filter(a -> a.saving().p10() >= 2 && !suggestions.contains(a))).allMatch(left ->
                suggestions.stream().filter(s -> s.saving().p50() >= left.saving().p50()).anyMatch(s -> clash(s, left))
                        || suggestions.size() == 3 && suggestions.stream()
                        .allMatch(s -> s.saving().p50() >= left.saving().p50()));
    }

    private static boolean clash(Answer one, Answer other) {
        return one.change().getClass() == other.change().getClass()
                || one.change().steps().stream().anyMatch(other.change().steps()::contains);
    }

    private static Change change(SplittableRandom random) {
        int step = random.nextInt(4);
        return switch (random.nextInt(6)) {
            case 0 -> new Change.Free(step, 3);
            case 1 -> new Change.Led(step);
            case 2 -> new Change.Beforehand(step, 4, 8, 6);
            case 3 -> new Change.MoreStations(step, 2, 3);
            case 4 -> new Change.Earlier(step, 4, 6, Map.of(random.nextInt(4), 2.0), Map.of());
            default -> new Change.MoreHelp(2);
        };
    }
}
