package benchpace.board.pacing;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.cooling.PlanCureClock;
import benchpace.board.view.ClassView;
import benchpace.board.view.SeatView;
import benchpace.board.view.ViewMaker;
import benchpace.live.TestClass;
import benchpace.plan.Stations;
import benchpace.plan.TestPlans;
import benchpace.web.screen.Evening;
import benchpace.words.TurnWords;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Six seats that pour at one tap, ten minutes each, and wrap at two tables. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class TurnsAtTest {
    private static final Stations TAP = new Stations(1, "melter tap", Duration.ofMinutes(10));
    private static final Stations TABLES = new Stations(2, "wrapping tables", Duration.ofMinutes(5));

    private static TestClass pouring() {
        TestClass c = TestClass.of(TestPlans.served(TestPlans.served(TestPlans.evening(), "pour", TAP), "wrap", TABLES),
                6).open("welcome").minute(5).open("wicks");
        for (int seat = 1; seat <= 6; seat++) {
            c.minute(10).finish(seat, "wicks").minute(seat == 5 ? 15 : 18).finish(seat, "blend");
        }
        return c.minute(20).open("pour");
    }

    private static ClassView view(TestClass c, double minute) {
        return new ViewMaker(new PlanCureClock(), new PosteriorPaceWatch(), Evening.ZONE)
                .view("c", c.live(), TestClass.instant(minute));
    }

    private static TurnsAt only(ClassView view) {
        assertThat(view.turns()).hasSize(1);
        return view.turns().get(0);
    }

    private static String line(TestClass c, double minute) {
        ClassView view = view(c, minute);
        return TurnWords.line(only(view), view.now());
    }

    @Test void the_table_is_told_who_is_at_the_tap_and_who_is_next() {
        TestClass c = pouring();

        assertThat(line(c, 21)).isEqualTo("At the melter tap: seat 1. Next: 2, then 3, 4, 5 and 6. "
                + "All have had their turn in about 59 min.");
        assertThat(line(c.minute(31).finish(1, "pour"), 31)).startsWith("At the melter tap: seat 2. Next: 3, then");
    }

    @Test void the_last_that_waits_is_the_next_and_then_nobody_is() {
        TestClass c = pouring();
        for (int seat = 1; seat <= 4; seat++) {
            c.minute(20 + 10 * seat).finish(seat, "pour");
        }
        assertThat(line(c, 61)).isEqualTo("At the melter tap: seat 5. Next: 6.");
        assertThat(line(c.minute(70).finish(5, "pour"), 71)).isEmpty();
    }

    @Test void a_tile_says_plainly_that_its_seat_waits_and_counts_no_minutes() {
        ClassView view = view(pouring(), 25);

        assertThat(view.seats()).extracting(SeatView::mark).containsExactly(SeatView.Mark.ON_PACE,
                SeatView.Mark.QUEUED, SeatView.Mark.QUEUED, SeatView.Mark.QUEUED, SeatView.Mark.QUEUED,
                SeatView.Mark.QUEUED);
        assertThat(view.seat(2).before()).contains(0);
        assertThat(view.seat(6).before()).contains(4);
        assertThat(view.seat(6).canFinish()).isTrue();
        assertThat(view.longest()).hasValueSatisfying(longest -> assertThat(longest.seat()).isEqualTo(1));
    }

    @Test void the_clock_of_a_seat_begins_with_its_turn() {
        ClassView view = view(pouring().minute(31).finish(1, "pour"), 34);

        assertThat(view.seat(2).countFrom()).isEqualTo(TestClass.instant(31));
        assertThat(view.longest()).hasValueSatisfying(longest -> assertThat(longest.seat()).isEqualTo(2));
    }

    @Test void who_waited_for_a_turn_is_not_longest_at_its_step() {
        TestClass c = pouring();
        c.minute(22).finish(6, "pour").minute(23).finish(5, "pour");

        assertThat(view(c, 34).longest()).hasValueSatisfying(longest -> assertThat(longest.seat()).isEqualTo(1));
        assertThat(view(c, 34).seat(1).countFrom()).isEqualTo(TestClass.instant(23));
    }

    @Test void who_came_first_to_the_step_is_first() {
        TestClass c = TestClass.of(TestPlans.served(TestPlans.evening(), "blend",
                new Stations(1, "scales", Duration.ofMinutes(8))), 4).open("welcome").minute(5).open("wicks")
                .minute(10).finish(3, "wicks").minute(11).finish(4, "wicks").minute(12).finish(1, "wicks");

        assertThat(only(view(c, 13)).served()).containsExactly(3);
        assertThat(only(view(c, 13)).waiting()).containsExactly(4, 1);
    }

    @Test void whoever_goes_first_all_the_same_has_gone_first() {
        TestClass c = pouring().minute(29).finish(4, "pour");

        assertThat(only(view(c, 30)).served()).containsExactly(1);
        assertThat(only(view(c, 30)).waiting()).containsExactly(2, 3, 5, 6);
    }

    @Test void a_step_after_the_cure_has_turns_as_well() {
        TestClass c = pouring();
        for (int seat = 1; seat <= 6; seat++) {
            c.minute(20 + 10 * seat).finish(seat, "pour");
        }
        c.minute(150).open("trim");
        for (int seat : List.of(6, 5, 4, 3)) {
            c.minute(160 - seat).finish(seat, "trim");
        }
        TurnsAt turns = only(view(c, 159));

        assertThat(turns.step().id().value()).isEqualTo("wrap");
        assertThat(turns.served()).containsExactly(6, 5);
        assertThat(turns.waiting()).containsExactly(4, 3);
        assertThat(view(c.minute(160).finish(6, "wrap"), 160).turns().get(0).waiting()).containsExactly(3);
    }

    /** Five of six wait ten minutes each, where all at once would be through in about a quarter of an hour. */
    @Test void the_time_everyone_goes_home_counts_the_waiting() {
        HomeTime served = view(pouring(), 21).home();
        HomeTime together = view(TestClass.atThePour(6), 21).home();

        assertThat(Duration.between(together.p50(), served.p50())).isBetween(Duration.ofMinutes(30),
                Duration.ofMinutes(55));
        assertThat(served.odds().orElseThrow().kept()).isLessThan(together.odds().orElseThrow().kept());
    }

    @Test void a_plan_without_stations_says_nothing_of_turns() {
        ClassView view = view(TestClass.of(TestPlans.evening(), 4).open("welcome").minute(5).open("wicks"), 9);

        assertThat(view.turns()).isEmpty();
        assertThat(view.seats()).allMatch(seat -> seat.before().isEmpty());
    }
}
