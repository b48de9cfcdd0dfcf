package benchpace.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;
import static org.assertj.core.api.Assertions.within;

import benchpace.pace.ClassTrack;
import benchpace.pace.PaceStations;
import benchpace.pace.PaceStep;
import benchpace.pace.ReadyOutlook;
import benchpace.pace.SeatTrack;
import benchpace.pace.Span;
import benchpace.pace.Tap;
import benchpace.pace.WorkKind;
import benchpace.report.Part.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Small evenings whose story can be told in a sentence. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class WhatHeldTest {
    private static final double NOT_YET = SeatTrack.NOT_YET;
    private static final int WICK = 1;
    private static final int POUR = 2;
    private static final List<PaceStep> STEPS = List.of(new PaceStep("welcome", 5, true, WorkKind.TALK),
            new PaceStep("wick", 6, true, WorkKind.HANDS_ON), new PaceStep("pour", 4, true, WorkKind.POUR));

    /** A seat there from the start, with its ticks of wick and pour. */
    private static SeatTrack seat(int number, double wick, double pour) {
        return seat(number, 0, NOT_YET, wick, pour);
    }

    private static SeatTrack seat(int number, double arrived, double left, double wick, double pour) {
        List<Tap> taps = new ArrayList<>();
        if (wick < NOT_YET) {
            taps.add(new Tap(WICK, wick, false));
        }
        taps.add(new Tap(POUR, pour, false));
        return new SeatTrack(number, number, false, arrived, left, List.of(), taps, List.of(), List.of(), List.of(),
                NOT_YET, ReadyOutlook.UNKNOWN);
    }

    /** @param poured when each seat's candle was poured; all set in an hour */
    private static WhatHeld held(List<Double> opened, Map<Integer, Double> poured, SeatTrack... seats) {
        Map<Integer, CandleTime> candles = new TreeMap<>();
        poured.forEach((seat, at) -> candles.put(seat, new CandleTime(at, at + 60)));
        return WhatHeld.of(new ClassTrack(STEPS, opened, 60, List.of(seats)), candles).orElseThrow();
    }

    private static List<String> story(WhatHeld held) {
        return held.links().stream().map(l -> l.part().kind() + " " + l.part().seat() + "/" + l.part().step() + " "
                + l.minutes() + " of " + l.plannedMinutes()).toList();
    }

    /** One tap for four minutes each: seats 2 and 3 wait for it, and seat 3 takes seven. */
    @Test
    void waiting_for_a_turn_is_no_seats_fault() {
        List<PaceStep> steps = List.of(STEPS.get(0), STEPS.get(1),
                new PaceStep("pour", 4, true, WorkKind.POUR, Optional.of(new PaceStations(1, 4))));
        Map<Integer, CandleTime> candles = Map.of(1, new CandleTime(16, 76), 2, new CandleTime(20, 80), 3,
                new CandleTime(27, 87));
        WhatHeld held = WhatHeld.of(new ClassTrack(steps, List.of(0.0, 5.0, 12.0), 60,
                List.of(seat(1, 11, 16), seat(2, 11, 20), seat(3, 11, 27))), candles).orElseThrow();

        assertThat(story(held))
                .containsSubsequence("STEP 1/2 4.0 of 4.0", "STEP 2/2 4.0 of 4.0", "STEP 3/2 7.0 of 4.0");
    }

    @Test
    void one_seat_slow_at_the_wick_holds_the_pour_and_so_everybody() {
        WhatHeld held = held(List.of(0.0, 5.0, 20.0), Map.of(1, 24.0, 2, 23.0, 3, 25.0),
                seat(1, 10, 24), seat(2, 19, 23), seat(3, 11, 25));

        assertThat(held.readyMinutes()).isEqualTo(85);
        assertThat(held.lastSeat()).isEqualTo(3);
        assertThat(story(held)).containsExactly("TALK 0/0 5.0 of 5.0", "STEP 2/1 14.0 of 6.0",
                "OPENING 0/2 1.0 of 0.0", "STEP 3/2 5.0 of 4.0", "CURE 3/2 60.0 of 60.0");
        assertThat(held.bySteps()).as("all wicks in 6 min would have saved 8, all pours in 4 one more")
                .containsExactly(entry(WICK, 8.0), entry(POUR, 1.0));
        assertThat(held.bySeats()).as("without seat 2's 8 min the pour could have opened when seat 3 was done")
                .containsExactly(entry(2, 8.0), entry(3, 1.0));
        assertThat(held.byKinds()).containsExactly(entry(Kind.OPENING, 1.0));
        assertThat(held.spareMinutes()).containsExactly(entry(1, 1.0), entry(2, 2.0), entry(3, 0.0));
    }

    @Test
    void two_seats_slow_together_hold_the_class_but_neither_alone() {
        WhatHeld held = held(List.of(0.0, 5.0, 20.0), Map.of(1, 24.0, 2, 24.0), seat(1, 20, 24), seat(2, 20, 24));
        assertThat(held.bySteps()).containsExactly(entry(WICK, 9.0));
        assertThat(held.bySeats()).isEmpty();
    }

    @Test
    void a_seat_left_behind_does_not_hold_an_opening_but_its_own_candle() {
        WhatHeld held = held(List.of(0.0, 5.0, 12.0), Map.of(1, 16.0, 2, 30.0), seat(1, 11, 16), seat(2, 25, 30));
        assertThat(story(held)).containsExactly("TALK 0/0 5.0 of 5.0", "STEP 2/1 20.0 of 6.0",
                "STEP 2/2 5.0 of 4.0", "CURE 2/2 60.0 of 60.0");
        assertThat(held.bySeats()).as("15 over the plan, but seat 1 is ready 14 earlier")
                .containsExactly(entry(2, 14.0));
    }

    @Test
    void a_seat_all_waited_for_holds_the_opening_even_if_it_is_ticked_after_it() {
        WhatHeld held = held(List.of(0.0, 5.0, 28.0), Map.of(1, 33.0, 2, 32.0), seat(1, 13, 33), seat(2, 29, 32));
        assertThat(story(held)).containsExactly("TALK 0/0 5.0 of 5.0", "STEP 2/1 22.0 of 6.0", "OPENING 0/2 1.0 of 0.0",
                "STEP 1/2 5.0 of 4.0", "CURE 1/2 60.0 of 60.0");
        assertThat(held.bySeats()).as("at plan it is done at 11; the pour could open a minute after seat 1, at 14")
                .containsExactly(entry(2, 14.0), entry(1, 1.0));
        assertThat(held.byKinds()).containsExactly(entry(Kind.OPENING, 1.0));
    }

    @Test
    void two_seats_slow_at_once_in_different_steps_hold_the_class_and_neither_is_charged() {
        List<PaceStep> steps = List.of(new PaceStep("vessel", 3, false, WorkKind.HANDS_ON),
                new PaceStep("wick", 4, false, WorkKind.HANDS_ON), new PaceStep("pour", 4, true, WorkKind.POUR));
        ClassTrack track = new ClassTrack(steps, List.of(0.0, 0.0, 19.0), 60, List.of(
                ticked(1, 15, 19, 23), ticked(2, 3, 19, 23)));
        WhatHeld held = WhatHeld.of(track, Map.of(1, new CandleTime(23, 83), 2, new CandleTime(23, 83))).orElseThrow();
        assertThat(held.bySteps()).isEmpty();
        assertThat(held.bySeats()).isEmpty();
        assertThat(held.links()).anyMatch(l -> l.overMinutes() == 12);
    }

    /** A seat with ticks of all steps in order. */
    private static SeatTrack ticked(int number, double... ticks) {
        List<Tap> taps = new ArrayList<>();
        for (int k = 0; k < ticks.length; k++) {
            taps.add(new Tap(k, ticks[k], false));
        }
        return track(number, List.of(), taps);
    }

    private static SeatTrack track(int number, List<Span> pauses, List<Tap> taps) {
        return new SeatTrack(number, number, false, 0, NOT_YET, pauses, taps, List.of(), List.of(), List.of(),
                NOT_YET, ReadyOutlook.UNKNOWN);
    }

    @Test
    void a_talk_that_each_seat_hears_when_it_gets_there_is_not_charged_to_the_step_after_it() {
        List<PaceStep> steps = List.of(new PaceStep("vessel", 3, false, WorkKind.HANDS_ON),
                new PaceStep("word", 6, false, WorkKind.TALK), new PaceStep("pour", 4, false, WorkKind.POUR));
        ClassTrack track = new ClassTrack(steps, List.of(0.0, 0.0, 0.0), 60, List.of(track(1, List.of(),
                List.of(new Tap(0, 3, false), new Tap(2, 13, false)))));
        WhatHeld held = WhatHeld.of(track, Map.of(1, new CandleTime(13, 73))).orElseThrow();
        assertThat(story(held)).containsExactly("STEP 1/0 3.0 of 3.0", "TALK 1/1 6.0 of 6.0", "STEP 1/2 4.0 of 4.0",
                "CURE 1/2 60.0 of 60.0");
        assertThat(held.bySteps()).isEmpty();
    }

    @Test
    void who_was_away_for_a_moment_is_not_slow() {
        ClassTrack track = new ClassTrack(STEPS, List.of(0.0, 5.0, 26.0), 60, List.of(track(1,
                List.of(new Span(7, 22)), List.of(new Tap(WICK, 26, false), new Tap(POUR, 30, false)))));
        WhatHeld held = WhatHeld.of(track, Map.of(1, new CandleTime(30, 90))).orElseThrow();
        assertThat(held.links().get(1).awayMinutes()).isEqualTo(15);
        assertThat(held.links().get(1).overMinutes()).isZero();
        assertThat(held.bySeats()).isEmpty();
        assertThat(held.awayMinutes()).isEqualTo(15);
    }

    @Test
    void a_late_guest_is_told_apart_from_a_slow_one() {
        WhatHeld held = held(List.of(0.0, 5.0, 12.0), Map.of(1, 16.0, 2, 27.0),
                seat(1, 11, 16), seat(2, 18, NOT_YET, 23, 27));
        assertThat(story(held)).startsWith("BEGINNING 2/0 18.0 of 0.0");
        assertThat(held.byKinds()).containsExactly(entry(Kind.BEGINNING, 11.0));
        assertThat(held.bySteps()).as("in step, only late").isEmpty();
        assertThat(held.bySeats()).isEmpty();
    }

    @Test
    void a_talk_over_its_time_and_a_late_start_are_told_apart() {
        WhatHeld held = held(List.of(3.0, 12.0, 18.0), Map.of(1, 22.0), seat(1, 18, 22));
        assertThat(story(held)).containsExactly("START 0/0 3.0 of 0.0", "TALK 0/0 5.0 of 5.0",
                "OVERTIME 0/1 4.0 of 0.0", "STEP 1/1 6.0 of 6.0", "STEP 1/2 4.0 of 4.0", "CURE 1/2 60.0 of 60.0");
        assertThat(held.byKinds()).containsExactly(entry(Kind.START, 3.0), entry(Kind.OVERTIME, 4.0));
        assertThat(held.bySteps()).isEmpty();
    }

    @Test
    void a_candle_poured_again_holds_from_its_first_pour_to_its_last() {
        WhatHeld held = held(List.of(0.0, 5.0, 11.0), Map.of(1, 15.0, 2, 33.0), seat(1, 11, 15), seat(2, 11, 15));
        assertThat(story(held)).contains("POURED_AGAIN 2/2 18.0 of 0.0", "CURE 2/2 60.0 of 60.0");
        assertThat(held.byKinds()).containsExactly(entry(Kind.POURED_AGAIN, 18.0));
        assertThat(held.bySteps()).isEmpty();
    }

    @Test
    void who_went_home_holds_nobody_with_a_candle_but_did_hold_the_opening() {
        WhatHeld held = held(List.of(0.0, 5.0, 21.0), Map.of(1, 25.0), seat(1, 11, 25), seat(2, 0, 40, 21, 39));
        assertThat(held.lastSeat()).isEqualTo(1);
        assertThat(held.bySeats()).containsExactly(entry(2, 10.0));
        assertThat(held.spareMinutes()).containsOnlyKeys(1);
    }

    @Test
    void a_step_jumped_over_shares_the_time_between_two_ticks_by_plan() {
        WhatHeld held = held(List.of(0.0, 5.0, 5.0), Map.of(1, 25.0), seat(1, NOT_YET, 25));
        assertThat(held.links()).extracting(WhatHeld.Link::minutes).usingComparatorForType((a, b) ->
                Math.abs(a - b) < 1e-9 ? 0 : Double.compare(a, b), Double.class).containsExactly(5.0, 12.0, 8.0, 60.0);
    }

    @Test
    void slow_candles_are_charged_to_the_cure() {
        ClassTrack track = new ClassTrack(STEPS, List.of(0.0, 5.0, 11.0), 60, List.of(seat(1, 11, 15)));
        WhatHeld held = WhatHeld.of(track, Map.of(1, new CandleTime(15, 83))).orElseThrow();
        assertThat(held.byKinds()).containsOnlyKeys(Kind.CURE);
        assertThat(held.byKinds().get(Kind.CURE)).isCloseTo(8, within(1e-9));
    }

    @Test
    void before_anybody_poured_there_is_nothing_to_look_back_on() {
        assertThat(WhatHeld.of(new ClassTrack(STEPS, List.of(0.0, 5.0, NOT_YET), 60,
                List.of(SeatTrack.present(1))), Map.of())).isEmpty();
    }
}
