package benchpace.report;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.pace.Level;
import benchpace.pace.belief.PacePriors;
import benchpace.pace.engine.PaceEngine;
import benchpace.pace.engine.Scene;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** A seat stuck at its wicks, and what the record tells of it afterwards. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class FlagHistoryTest {
    private static final int WICKS = 1;

    /** Six seats; all but seat 4 go through, tapped promptly; seat 4 stays at wicks from minute 3 on. */
    private static Scene stuckAtWicks() {
        return Scene.led(6).othersTap(2, 4, "vessel").tap(2.3, 4, "vessel").open(3, "wicks")
                .othersTap(6.5, 4, "wicks");
    }

    private static List<FlagSpan> flags(Scene scene, double end) {
        return FlagHistory.of(scene.track(end), new PaceEngine(PacePriors.standard()), end);
    }

    @Test
    void a_flag_lasts_until_the_seat_is_ticked_and_the_tick_is_its_answer() {
        List<FlagSpan> flags = flags(stuckAtWicks().tap(18, 4, "wicks"), 30);
        assertThat(flags).hasSize(1);
        FlagSpan flag = flags.get(0);
        assertThat(flag.seat()).isEqualTo(4);
        assertThat(flag.step()).isEqualTo(WICKS);
        assertThat(flag.level()).isEqualTo(Level.BEHIND);
        assertThat(flag.fromMinutes()).isBetween(7.0, 14.0);
        assertThat(flag.toMinutes()).isEqualTo(18);
        assertThat(flag.answeredMinutes()).isEqualTo(18);
    }

    @Test
    void a_helper_who_goes_there_answers_it_and_one_who_was_there_had_answered_it() {
        assertThat(flags(stuckAtWicks().claim(15, 4).tap(18, 4, "wicks"), 30).get(0).answeredMinutes()).isEqualTo(15);
        FlagSpan there = flags(stuckAtWicks().claim(5, 4).tap(18, 4, "wicks"), 30).get(0);
        assertThat(there.answeredMinutes()).isEqualTo(there.fromMinutes());
    }

    @Test
    void sorted_ends_it_and_what_comes_back_is_another_one() {
        List<FlagSpan> flags = flags(stuckAtWicks().claim(12, 4).sorted(14, 4).tap(25, 4, "wicks"), 30);
        assertThat(flags).hasSize(2);
        assertThat(flags.get(0).toMinutes()).isEqualTo(14);
        assertThat(flags.get(1).fromMinutes()).isEqualTo(19);
        assertThat(flags.get(1).answeredMinutes()).isEqualTo(25);
    }

    @Test
    void a_seat_ticked_two_steps_on_was_flagged_at_the_step_it_stood_at() {
        Scene scene = stuckAtWicks().open(12, "mix").othersTap(17, 4, "mix").tap(22, 4, "mix");
        assertThat(flags(scene, 30)).isNotEmpty().allMatch(f -> f.step() == WICKS);
    }

    @Test
    void a_flag_nobody_answers_lasts_to_the_end() {
        FlagSpan flag = flags(stuckAtWicks(), 30).get(0);
        assertThat(flag.toMinutes()).isEqualTo(30);
        assertThat(flag.answered()).isFalse();
    }

    @Test
    void a_class_in_step_has_none() {
        assertThat(flags(stuckAtWicks().tap(6.8, 4, "wicks"), 9)).isEmpty();
    }
}
