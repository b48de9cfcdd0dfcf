package benchpace.board.time;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** The board's time when the computer's clock is set forwards, backwards, is nudged, or the laptop sleeps. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SteadyClockTest {
    private static final Instant EVENING = Instant.parse("2027-03-04T18:30:00Z");
    private static final Duration TWO_HOURS = Duration.ofHours(2);

    private final SettableClocks computer = new SettableClocks(EVENING, true);
    private final SteadyClock board = computer.start();

    @Test void it_tells_the_computers_time() {
        assertThat(board.instant()).isEqualTo(EVENING);
        computer.passMinutes(5);
        assertThat(board.instant()).isEqualTo(EVENING.plusSeconds(300));
        assertThat(board.disagreement()).isEmpty();
    }

    @Test void a_clock_that_jumps_ahead_moves_nothing() {
        computer.jump(TWO_HOURS);
        assertThat(board.instant()).isEqualTo(EVENING);
        computer.passMinutes(10);
        assertThat(board.instant()).isEqualTo(EVENING.plusSeconds(600));
    }

    @Test void a_clock_that_jumps_back_moves_nothing() {
        computer.jump(TWO_HOURS.negated()).passMinutes(10);
        assertThat(board.instant()).isEqualTo(EVENING.plusSeconds(600));
    }

    @Test void a_jump_that_is_taken_back_at_once_is_told_to_nobody() {
        computer.jump(TWO_HOURS);
        board.instant();
        computer.pass(Duration.ofMillis(300));
        board.instant();
        computer.jump(TWO_HOURS.negated()).passMinutes(1);

        assertThat(board.disagreement()).isEmpty();
        assertThat(board.instant()).isEqualTo(EVENING.plusMillis(60_300));
    }

    @Test void a_difference_that_stays_is_told_with_how_much_and_since_when() {
        computer.passMinutes(3).jump(TWO_HOURS);
        board.instant();
        computer.passMinutes(1);

        assertThat(board.disagreement()).contains(
                new ClockDisagreement(EVENING.plusSeconds(180), TWO_HOURS, false, true));
    }

    @Test void a_clock_set_to_an_impossible_time_is_told_as_such() {
        computer.set(Instant.parse("1999-01-01T00:00:00Z"));
        board.instant();
        computer.passMinutes(1);

        assertThat(board.disagreement()).hasValueSatisfying(d -> assertThat(d.possible()).isFalse());
    }

    @Test void once_the_board_is_said_to_be_right_nobody_is_asked_again_until_the_clock_is_set_anew() {
        disagree(TWO_HOURS);
        board.keep();
        computer.passMinutes(60);
        assertThat(board.disagreement()).isEmpty();
        assertThat(board.instant()).isEqualTo(EVENING.plusSeconds(60 + 3600));

        disagree(Duration.ofHours(1));
        assertThat(board.disagreement()).hasValueSatisfying(d ->
                assertThat(d.ahead()).isEqualTo(Duration.ofHours(3)));

        disagree(Duration.ofHours(-3));
        assertThat(board.disagreement()).as("it was set right").isEmpty();
        disagree(Duration.ofHours(2));
        assertThat(board.disagreement()).as("and is wrong again").isPresent();
    }

    private void disagree(Duration by) {
        computer.jump(by);
        board.instant();
        computer.passMinutes(1);
        board.instant();
    }

    @Test void once_the_computers_clock_is_said_to_be_right_the_board_goes_by_it() {
        disagree(TWO_HOURS.negated());

        assertThat(board.follow()).isEqualTo(TWO_HOURS.negated());
        assertThat(board.instant()).isEqualTo(EVENING.minusSeconds(7_140));
        assertThat(board.disagreement()).isEmpty();
    }

    @Test void a_nudge_is_made_up_for_slowly_and_never_backwards() {
        computer.jump(Duration.ofMillis(-1_500));
        Instant before = board.instant();
        computer.pass(Duration.ofSeconds(10));
        assertThat(board.instant()).isEqualTo(before.plusMillis(9_900));
        for (int i = 0; i < 300; i++) {
            computer.pass(Duration.ofSeconds(1));
            assertThat(board.instant()).isAfter(before);
            before = board.instant();
        }
        assertThat(before).as("the computer's time").isEqualTo(computer.instant());
        assertThat(board.disagreement()).isEmpty();
    }

    @Test void a_sleep_that_the_system_tells_of_is_passing_time() {
        computer.sleep(Duration.ofMinutes(40));

        assertThat(board.instant()).isEqualTo(EVENING.plusSeconds(2_400));
        assertThat(board.disagreement()).isEmpty();
    }

    @Test void where_a_sleep_looks_like_a_set_clock_somebody_is_asked_which_it_was() {
        SettableClocks other = new SettableClocks(EVENING, false);
        SteadyClock asking = other.start();
        other.sleep(Duration.ofMinutes(40));
        assertThat(asking.instant()).isEqualTo(EVENING);
        other.passMinutes(1);

        assertThat(asking.disagreement()).hasValueSatisfying(d -> assertThat(d.slept()).isTrue());
        other.jump(Duration.ofHours(-1)).passMinutes(1);
        asking.instant();
        other.passMinutes(1);
        assertThat(asking.disagreement()).as("no sleep sets a clock back")
                .hasValueSatisfying(d -> assertThat(d.slept()).isFalse());
    }

    @Test void a_class_with_records_from_the_future_goes_on_from_them_and_shifts_no_others_time() {
        Instant last = board.instant().plus(TWO_HOURS);
        ClassTime ahead = new ClassTime(board, last);
        ClassTime other = new ClassTime(board, board.instant().minusSeconds(60));
        assertThat(ahead.now()).isEqualTo(last);

        computer.passMinutes(5);

        assertThat(ahead.now()).isEqualTo(last.plusSeconds(300));
        assertThat(ahead.ahead()).isEqualTo(TWO_HOURS);
        assertThat(other.now()).isEqualTo(computer.instant());
        assertThat(other.ahead()).isZero();
        ahead.wrote(ahead.now());
        assertThat(other.now()).as("also after it wrote").isEqualTo(computer.instant());
    }

    @Test void what_the_board_has_lived_never_depends_on_a_clock() {
        Duration before = board.lived();
        disagree(TWO_HOURS);
        board.follow();
        disagree(Duration.ofDays(-30_000));
        board.follow();

        assertThat(board.lived().minus(before)).isEqualTo(Duration.ofMinutes(2));
    }

    @Test void nothing_is_forgotten_by_a_clock_that_is_in_doubt() {
        assertThat(board.trusted()).isTrue();
        disagree(TWO_HOURS);
        assertThat(board.trusted()).isFalse();
        board.keep();
        assertThat(board.trusted()).isTrue();
        assertThat(new SteadyClock(computer, computer, now -> false).trusted())
                .as("a first time that does not fit what was written before").isFalse();
    }
}
