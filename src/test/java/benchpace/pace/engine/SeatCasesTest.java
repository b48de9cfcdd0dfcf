package benchpace.pace.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchpace.pace.ClassTrack;
import benchpace.pace.Level;
import benchpace.pace.PaceStep;
import benchpace.pace.PaceView;
import benchpace.pace.SeatPace;
import benchpace.pace.SeatProgress;
import benchpace.pace.SeatTrack;
import benchpace.pace.UntickedSeat;
import benchpace.pace.WorkKind;
import benchpace.pace.belief.PacePriors;
import benchpace.pace.forecast.Forecast;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** What a teacher would expect of seats that are not simply there and working. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SeatCasesTest {
    /** Six seats; all but seat 4 go through, tapped promptly; seat 4 stays at wicks from minute 3 on. */
    private static Scene stuckAtWicks() {
        return Scene.led(6).othersTap(2, 4, "vessel").tap(2.3, 4, "vessel").open(3, "wicks")
                .othersTap(6.5, 4, "wicks");
    }

    @Test
    void a_seat_stuck_while_the_others_wait_is_behind_with_reason_and_price() {
        Scene scene = stuckAtWicks();
        assertThat(scene.level(7, 4)).isEqualTo(Level.NONE);
        SeatPace seat = scene.seat(20, 4);
        assertThat(seat.level()).isEqualTo(Level.BEHIND);
        assertThat(seat.priceMinutes()).isPositive();
        assertThat(seat.overMinutes()).isPositive();
        assertThat(scene.view(20).inNeed()).extracting(SeatPace::seat).containsExactly(4);
    }

    /** Seat 5 stands at the vessel since minute 0, seat 2 at wicks since 2: the pour is held by the one far behind. */
    @Test
    void the_seat_where_walking_over_saves_most_comes_first_whatever_its_number() {
        Scene scene = Scene.free(6).othersTap(2, 5, "vessel");
        for (int seat : List.of(1, 3, 4, 6)) {
            scene.tap(6, seat, "wicks").tap(11, seat, "mix").tap(14, seat, "pour");
        }
        List<SeatPace> urgent = scene.view(30).inNeed();
        assertThat(urgent).extracting(SeatPace::seat).containsExactly(5, 2);
        assertThat(urgent.get(0).savedMinutes()).isGreaterThan(urgent.get(1).savedMinutes() + 1);
    }

    /** A helper needs about a minute to get a seat going, so hardly more than the standstill itself is saved. */
    @Test
    void walking_over_saves_most_of_what_a_seat_that_surely_stands_still_costs_and_nothing_at_one_that_works() {
        Scene scene = stuckAtWicks();
        SeatPace stuck = scene.stillAtIt(19.5, 4, "wicks").seat(20, 4);
        assertThat(stuck.savedMinutes()).isBetween(0.5 * stuck.priceMinutes(), stuck.priceMinutes() + 0.5);
        assertThat(scene.seat(20, 3).savedMinutes()).isZero();
    }

    @Test
    void a_stall_is_seen_within_twenty_minutes_when_seats_are_tapped_promptly() {
        for (int seats : List.of(4, 6, 12, 24)) {
            Scene scene = Scene.led(seats).othersTap(2, 4, "vessel").tap(2.3, 4, "vessel").open(6, "wicks")
                    .othersTap(9, 4, "wicks");
            assertThat(scene.history(26).get(4)).as("%d seats", seats).contains(Level.BEHIND);
        }
    }

    @Test
    void a_seat_that_left_is_not_judged_and_does_not_hold_home_time() {
        Scene scene = stuckAtWicks();
        Forecast with = scene.forecast(20);
        scene.leave(20, 4);
        assertThat(scene.level(20, 4)).isEqualTo(Level.NONE);
        assertThat(scene.forecast(20.1).p50()).isLessThan(with.p50());
    }

    @Test
    void a_seat_that_paused_is_not_judged_for_the_minutes_away() {
        Scene scene = stuckAtWicks().pause(4, 20, 4);
        for (double now = 4; now < 20; now += 0.5) {
            assertThat(scene.level(now, 4)).isEqualTo(Level.NONE);
        }
        assertThat(scene.seat(21, 4).minutesInStep()).isCloseTo(2, within(1e-9));
        assertThat(scene.level(21, 4)).isEqualTo(Level.NONE);
    }

    @Test
    void a_seat_that_arrived_late_is_judged_from_its_arrival_on() {
        Scene scene = Scene.free(6).arrive(15, 5).othersTap(2, 5, "vessel").othersTap(6, 5, "wicks");
        assertThat(scene.level(14, 5)).isEqualTo(Level.NONE);
        SeatPace seat = scene.seat(16, 5);
        assertThat(seat.level()).isEqualTo(Level.NONE);
        assertThat(seat.minutesInStep()).isCloseTo(1, within(1e-9));
    }

    @Test
    void a_guest_not_yet_there_moves_home_time_back() {
        Scene all = Scene.free(6).othersTap(2, 0, "vessel").othersTap(6, 0, "wicks");
        Scene missing = Scene.free(6).arrive(30, 5).othersTap(2, 5, "vessel").othersTap(6, 5, "wicks");
        assertThat(missing.forecast(8).p50()).isGreaterThan(all.forecast(8).p50() + 3);
        assertThat(missing.forecast(8).driverSeat()).isEqualTo(5);
    }

    @Test
    void home_time_hangs_on_no_one_seat_once_all_candles_are_past_their_time() {
        Scene scene = Scene.free(4).othersTap(1, 0, "pour");
        assertThat(scene.forecast(20).driverPoured()).isTrue();
        assertThat(scene.forecast(200).driverSeat()).as("each may be tried now").isZero();
    }

    @Test
    void a_seat_waiting_for_a_step_that_is_closed_is_not_judged() {
        Scene scene = Scene.led(6).othersTap(2, 0, "vessel");
        for (double now = 3; now < 25; now += 1) {
            assertThat(scene.view(now).inNeed()).isEmpty();
        }
    }

    private static ClassTrack sharing(ClassTrack track, int first, int second, double firstSetMinutes) {
        return new ClassTrack(track.steps(), track.openedMinutes(), track.cureMinutes(), track.seats().stream()
                .map(s -> s.seat() != first && s.seat() != second ? s : new SeatTrack(s.seat(), 99, true,
                        s.arrivedMinutes(), s.leftMinutes(), s.pauses(), s.taps(), s.stillAtIt(), s.hints(),
                        s.claims(), s.seat() == first ? firstSetMinutes : SeatTrack.NOT_YET, s.ready())).toList());
    }

    @Test
    void a_pair_that_shares_a_candle_pours_once_whichever_seat_is_ticked() {
        ClassTrack pair = sharing(Scene.free(2).othersTap(1, 2, "pour").track(30), 1, 2, SeatTrack.NOT_YET);
        assertThat(pair.seats()).extracting(s -> SeatProgress.of(pair, s, 30).standing())
                .containsOnly(SeatProgress.Standing.POURED);
    }

    @Test
    void a_shared_candle_is_ready_once_either_seat_of_the_pair_was_judged() {
        ClassTrack pair = sharing(Scene.free(2).othersTap(1, 0, "pour").track(80), 1, 2, 62);
        assertThat(new PaceEngine(PacePriors.standard()).forecast(pair, 80).p50()).isCloseTo(62, within(1e-9));
    }

    @Test
    void still_at_it_strikes_the_forgotten_tap_and_raises_the_suspicion() {
        Scene scene = Scene.free(6).othersTap(2, 4, "vessel").othersTap(6, 4, "wicks");
        SeatPace before = scene.seat(9, 4);
        SeatPace after = scene.stillAtIt(8.9, 4, "vessel").seat(9, 4);
        assertThat(after.forgottenProbability()).isLessThan(before.forgottenProbability());
        assertThat(after.stalledProbability()).isGreaterThan(before.stalledProbability());
    }

    @Test
    void a_guest_saying_done_lowers_the_suspicion_of_a_stall() {
        Scene scene = Scene.free(6).othersTap(2, 4, "vessel").othersTap(6, 4, "wicks");
        SeatPace before = scene.seat(9, 4);
        SeatPace after = scene.saysDone(8.9, 4, "vessel").seat(9, 4);
        assertThat(after.forgottenProbability()).isGreaterThan(before.forgottenProbability());
        assertThat(after.stalledProbability()).isLessThan(before.stalledProbability());
    }

    @Test
    void a_helper_on_the_way_is_shown_and_taken_as_a_sign_of_trouble() {
        Scene scene = stuckAtWicks().claim(8.2, 4);
        assertThat(scene.seat(8, 4).helped()).isFalse();
        SeatPace seat = scene.seat(9, 4);
        assertThat(seat.helped()).isTrue();
        assertThat(seat.level()).isEqualTo(Level.BEHIND);
    }

    @Test
    void a_seat_said_to_be_sorted_is_left_in_peace_and_comes_back_if_it_was_not() {
        Scene scene = stuckAtWicks().claim(12, 4).sorted(14, 4);
        assertThat(scene.level(13, 4)).isEqualTo(Level.BEHIND);
        assertThat(scene.level(14, 4)).isEqualTo(Level.NONE);
        assertThat(scene.level(18.5, 4)).isEqualTo(Level.NONE);
        assertThat(scene.level(19, 4)).isEqualTo(Level.BEHIND);
    }

    @Test
    void sorted_silences_the_call_but_not_the_fact() {
        Scene scene = stuckAtWicks().claim(12, 4).sorted(14, 4);
        assertThat(scene.seat(13, 4).eased()).isEqualTo(Level.NONE);
        for (double now = 14; now < 19; now += 0.5) {
            assertThat(scene.seat(now, 4).eased()).as("minute %s", now).isEqualTo(Level.BEHIND);
        }
        assertThat(scene.seat(18.5, 4).overMinutes()).isGreaterThan(8);
        assertThat(scene.seat(18.5, 4).priceMinutes()).isPositive();
        assertThat(scene.seat(19, 4).eased()).isEqualTo(Level.NONE);
    }

    @Test
    void a_seat_that_a_helper_left_and_that_did_not_move_on_stays_a_question_whatever_else_explains_it() {
        Scene scene = Scene.free(6).othersTap(2, 0, "vessel").othersTap(6.5, 4, "wicks").claim(14, 4).sorted(17.2, 4);
        assertThat(scene.seat(19, 4).forgottenProbability()).as("its tap may well be missing").isGreaterThan(0.8);
        for (double now = 17.5; now < 22; now += 0.5) {
            assertThat(scene.seat(now, 4).eased()).as("minute %s", now).isNotEqualTo(Level.NONE);
        }
        assertThat(scene.level(22.5, 4)).isEqualTo(Level.SLIPPING);
        assertThat(scene.stillAtIt(22.6, 4, "wicks").level(23, 4)).as("that was answered").isEqualTo(Level.NONE);
    }

    @Test
    void a_seat_in_good_time_that_somebody_helped_is_not_called_slow() {
        Scene scene = Scene.free(6).othersTap(2, 0, "vessel").claim(3, 4).sorted(4, 4);
        assertThat(scene.seat(5.5, 4).eased()).isEqualTo(Level.NONE);
    }

    @Test
    void sorted_at_one_step_says_nothing_of_the_next() {
        Scene scene = stuckAtWicks().claim(12, 4).sorted(14, 4).tap(14.5, 4, "wicks").open(15, "mix")
                .othersTap(19, 4, "mix");
        assertThat(scene.history(32).get(4)).endsWith(Level.BEHIND);
    }

    @Test
    void a_tablet_nobody_touches_is_not_everybody_stalling() {
        Scene scene = Scene.free(8).othersTap(2, 0, "vessel");
        PaceView view = scene.view(16);
        assertThat(view.tabletSilent()).isTrue();
        assertThat(view.quietMinutes()).isGreaterThan(12);
        assertThat(view.inNeed()).isEmpty();
    }

    @Test
    void opening_the_next_step_tells_who_is_not_ticked_and_what_leaving_them_costs() {
        Scene scene = stuckAtWicks();
        List<UntickedSeat> unticked = new PaceEngine(PacePriors.standard()).beforeOpening(scene.track(16), 16, 2);
        assertThat(unticked).extracting(UntickedSeat::seat).containsExactly(4);
        assertThat(unticked.get(0).remainingMinutes()).isPositive();
        assertThat(unticked.get(0).leaveMinutes()).isPositive();
        assertThat(unticked.get(0).doneProbability()).isBetween(0.0, 1.0);
    }

    @Test
    void a_seat_that_poured_is_never_flagged_for_what_comes_after() {
        Scene scene = Scene.free(4).othersTap(1, 0, "pour");
        for (double now = 2; now < 60; now += 3) {
            assertThat(scene.view(now).inNeed()).isEmpty();
        }
    }

    @Test
    void a_talk_holds_nobody_once_its_time_box_is_over() {
        List<PaceStep> steps = List.of(new PaceStep("welcome", 5, true, WorkKind.TALK),
                new PaceStep("wicks", 4, false, WorkKind.HANDS_ON), new PaceStep("pour", 3, false, WorkKind.POUR));
        ClassTrack track = new ClassTrack(steps, List.of(1.0, 0.0, 0.0), 60, List.of(SeatTrack.present(1)));
        SeatProgress during = SeatProgress.of(track, track.seats().get(0), 4);
        SeatProgress later = SeatProgress.of(track, track.seats().get(0), 9);
        assertThat(during.standing()).isEqualTo(SeatProgress.Standing.WAITING);
        assertThat(later.standing()).isEqualTo(SeatProgress.Standing.WORKING);
        assertThat(later.workedMinutes()).isCloseTo(3, within(1e-9));
    }
}
