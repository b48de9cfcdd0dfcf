package benchpace.words;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.history.Cause;
import benchpace.history.ClassFigures;
import benchpace.history.ClassFigures.ReadyBy;
import benchpace.history.CureFigures;
import benchpace.history.FlagFigures;
import benchpace.history.Lost;
import benchpace.history.Measure;
import benchpace.history.PastClass;
import benchpace.history.PastClass.Standing;
import benchpace.history.Series;
import benchpace.history.WhatCost;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

/** What is said of past classes, of small histories worked out by hand. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class HistoryWordsTest {
    private static final Instant FIRST = Instant.parse("2026-03-04T18:00:00Z");
    private static final Times TIMES = new Times(ZoneOffset.UTC);

    /** A class a week, promised for 20:00, so many minutes late, with so many minutes lost to its wicks. */
    private static PastClass past(int week, int late, double wicks, FlagFigures flags) {
        Instant start = FIRST.plus(Duration.ofDays(7L * week));
        Instant promised = start.plus(Duration.ofHours(2));
        List<Lost> lost = wicks == 0 ? List.of() : List.of(new Lost(Cause.STEP, "w", wicks));
        return new PastClass("c" + week, "Thursday", "p", "Evening", "", start, 8, false, 0, Standing.RECKONED,
                Optional.of(new ClassFigures(promised, promised.plus(Duration.ofMinutes(late)), promised,
                        Optional.of(promised), ReadyBy.HAND_TEST, lost, 8, 16, flags, new CureFigures(4, 3,
                        OptionalDouble.of(-2)))), Map.of("w", "Wicks"));
    }

    private static List<String> said(Measure measure, List<PastClass> classes) {
        return TrendWords.of(measure, classes, measure.series(classes), TIMES);
    }

    /** 4, 5 and 6 minutes late: within the five minutes are two. The middle is 5. */
    @Test void three_classes_are_told_and_no_trend_is() {
        List<PastClass> three = List.of(past(0, 4, 0, FlagFigures.NONE), past(1, 5, 0, FlagFigures.NONE),
                past(2, 6, 0, FlagFigures.NONE));

        assertThat(said(Measure.LATE, three)).containsExactly("2 of 3 classes ended on time, at most 5 min after the "
                + "promise; the middle one was 5 min later.", "That is too few to tell whether it changes.");
        assertThat(said(Measure.IDLE, three).get(0))
                .isEqualTo("In the middle of 3 classes a seat had nothing to do for 2 min of its wait.");
        assertThat(said(Measure.CURE, three).get(0)).isEqualTo("In the middle of 3 classes candles were judged set "
                + "2 min sooner than likely; 9 of 12 lay within the range said of them.");
        assertThat(said(Measure.FLAGS, three).get(0)).isEqualTo("Nobody was flagged in 3 classes.");
        assertThat(said(Measure.ANSWERS, three)).containsExactly("No flag was answered in these classes.");
    }

    /** 20, 18, ... 2 minutes: all 45 pairs go down, p = 2 / 10!; two minutes a week for nine weeks are 18. */
    @Test void a_fall_without_exception_is_told_with_its_days_and_its_size() {
        List<PastClass> ten = IntStream.range(0, 10).mapToObj(w -> past(w, 20 - 2 * w, 0, FlagFigures.NONE)).toList();

        assertThat(said(Measure.LATE, ten)).containsExactly("2 of 10 classes ended on time, at most 5 min after the "
                + "promise; the middle one was 11 min later.",
                "From 4 March 2026 to 6 May 2026 it went down, by about 18 min.");
    }

    @Test void what_goes_to_and_fro_is_said_not_to_be_told() {
        List<PastClass> ten = IntStream.range(0, 10).mapToObj(w -> past(w, w % 2, 0, FlagFigures.NONE)).toList();

        assertThat(said(Measure.LATE, ten).get(1)).isEqualTo("Whether it goes up or down cannot be told from this.");
    }

    /** Flags 3, 1 and 2, so the middle is 2; two answers are missing. */
    @Test void flags_are_counted() {
        List<PastClass> three = List.of(past(0, 0, 0, new FlagFigures(3, 2, OptionalDouble.of(1), 1)),
                past(1, 0, 0, new FlagFigures(1, 1, OptionalDouble.of(4), 0)),
                past(2, 0, 0, new FlagFigures(2, 1, OptionalDouble.of(2), 0)));

        assertThat(said(Measure.FLAGS, three).get(0)).isEqualTo("In the middle of 3 classes there were 2 flags. "
                + "Answered: 4 of 6 in all; wrong in hindsight: 1.");
        assertThat(said(Measure.ANSWERS, three).get(0))
                .isEqualTo("In the middle of 3 classes half of the answers came within 2 min.");
    }

    /** 6, 0 and 3 minutes: two of three classes, 3 min a class in the mean. */
    @Test void what_held_classes_is_the_mean_of_all_of_them() {
        List<PastClass> three = List.of(past(0, 0, 6, FlagFigures.NONE), past(1, 0, 0, FlagFigures.NONE),
                past(2, 0, 3, FlagFigures.NONE));
        List<WhatCost> costs = WhatCost.of(three);

        assertThat(costs).singleElement().satisfies(c -> {
            assertThat(c.meanMinutes()).isEqualTo(3);
            assertThat(c.classes()).isEqualTo(2);
        });
        assertThat(TrendWords.of(costs, 3, TIMES).get(0))
                .isEqualTo("Wicks held 2 of 3 classes, and costs 3 min a class in the mean.");
    }

    @Test void one_class_is_not_told_as_many() {
        assertThat(said(Measure.LATE, List.of(past(0, 0, 0, FlagFigures.NONE))).get(0))
                .isEqualTo("The one class ended on time, at most 5 min after the promise: it was just at it.");
        assertThat(said(Measure.LATE, List.of(past(0, -12, 0, FlagFigures.NONE))).get(0))
                .isEqualTo("The one class ended on time, at most 5 min after the promise: it was 12 min sooner.");
        assertThat(said(Measure.LATE, List.of(past(0, 9, 0, FlagFigures.NONE))).get(0))
                .isEqualTo("The one class did not end on time, at most 5 min after the promise: it was 9 min later.");
    }

    @Test void nothing_is_told_of_nothing() {
        for (Measure measure : Measure.values()) {
            assertThat(TrendWords.of(measure, List.of(), new Series(List.of()), TIMES)).hasSize(1);
        }
        assertThat(TrendWords.of(List.of(), 0, TIMES)).containsExactly("No class is there to tell it from.");
        assertThat(TrendWords.of(List.of(), 2, TIMES)).containsExactly("Nothing alone held any of 2 classes.");
    }

    @Test void a_row_says_what_a_class_came_to() {
        PastClass past = past(0, 7, 6.4, new FlagFigures(5, 4, OptionalDouble.of(2), 1));
        ClassFigures figures = past.figures().orElseThrow();

        assertThat(HistoryWords.badge(figures)).isEqualTo("Late by 7 min");
        assertThat(HistoryWords.held(past, figures)).isEqualTo("Held by Wicks, 6 min.");
        assertThat(HistoryWords.shelved(2)).isEqualTo("2 candles went to the shelf.");
    }
}
