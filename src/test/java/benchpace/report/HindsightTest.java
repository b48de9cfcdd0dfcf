package benchpace.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchpace.pace.ClassTrack;
import benchpace.pace.Level;
import benchpace.pace.SeatTrack;
import benchpace.pace.engine.Scene;
import benchpace.report.Hindsight.Judged;
import benchpace.report.Hindsight.Missed;
import benchpace.report.Hindsight.Reason;
import benchpace.report.Hindsight.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Flags of seat 4 at its wicks, planned for four minutes, and what became of them. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class HindsightTest {
    private static final int WICKS = 1;
    private static final int MIX = 2;
    private static final double END = 100;

    /** Six seats; all but seat 4 have their wicks set at about 7. */
    private static Scene wicks() {
        return Scene.led(6).othersTap(2, 0, "vessel").open(3, "wicks").othersTap(6.5, 4, "wicks");
    }

    /** The same, but it is seat 1 that everybody waits for, until 19. */
    private static Scene besideSeat1() {
        return wicks().untap(1, "wicks").tap(19, 1, "wicks");
    }

    /** All mix from 20 on and pour from 30 on. */
    private static Scene toTheEnd(Scene scene) {
        return scene.open(20, "mix").othersTap(25, 0, "mix").open(30, "pour").othersTap(33, 0, "pour");
    }

    private static FlagSpan flag(int step, double from) {
        return new FlagSpan(4, step, Level.BEHIND, from, from + 1, Double.POSITIVE_INFINITY);
    }

    private static Judged judged(Scene scene, FlagSpan flag) {
        return looked(scene, List.of(flag)).flags().get(0);
    }

    private static Hindsight looked(Scene scene, List<FlagSpan> flags) {
        ClassTrack track = scene.track(END);
        Map<Integer, CandleTime> candles = new TreeMap<>();
        for (SeatTrack seat : track.seats()) {
            seat.taps().stream().filter(t -> t.step() == track.pourStep()).findFirst()
                    .ifPresent(t -> candles.put(seat.seat(), new CandleTime(t.atMinutes(), t.atMinutes() + 60)));
        }
        Optional<WhatHeld> held = WhatHeld.of(track, candles);
        return Hindsight.of(track, flags, held, END);
    }

    @Test
    void it_was_right_if_everybody_then_waited_for_that_seat() {
        Judged flag = judged(toTheEnd(wicks().tap(19, 4, "wicks")), flag(WICKS, 16));
        assertThat(flag.reason()).isEqualTo(Reason.HELD);
        assertThat(flag.verdict()).isEqualTo(Verdict.RIGHT);
        assertThat(flag.afterMinutes()).isEqualTo(3);
    }

    @Test
    void it_was_right_if_the_seat_poured_long_after_the_others_though_that_step_was_soon_done() {
        Scene scene = wicks().tap(11, 4, "wicks").open(12, "mix").othersTap(17, 4, "mix").open(18, "pour")
                .othersTap(21, 4, "pour").tap(40, 4, "mix").tap(43, 4, "pour");
        assertThat(judged(scene, flag(WICKS, 10)).reason()).isIn(Reason.LATE_POUR, Reason.HELD);
        assertThat(judged(scene, flag(MIX, 39)).verdict()).isEqualTo(Verdict.RIGHT);
    }

    @Test
    void it_was_right_if_the_seat_stayed_for_five_minutes_and_wrong_if_for_less() {
        assertThat(judged(toTheEnd(besideSeat1().tap(15, 4, "wicks")), flag(WICKS, 10)).reason())
                .isEqualTo(Reason.STAYED);
        Judged soon = judged(toTheEnd(besideSeat1().tap(14.9, 4, "wicks")), flag(WICKS, 10));
        assertThat(soon.reason()).isEqualTo(Reason.SOON_DONE);
        assertThat(soon.verdict()).isEqualTo(Verdict.WRONG);
    }

    @Test
    void time_away_from_the_table_is_no_time_at_the_step() {
        Judged away = judged(toTheEnd(besideSeat1().pause(11, 14, 4).tap(15, 4, "wicks")), flag(WICKS, 10));
        assertThat(away.afterMinutes()).isCloseTo(2, within(1e-9));
        assertThat(away.verdict()).isEqualTo(Verdict.WRONG);
    }

    @Test
    void whether_the_help_was_needed_is_left_open() {
        Judged helped = judged(toTheEnd(besideSeat1().claim(10.5, 4).sorted(12, 4).tap(12.5, 4, "wicks")),
                flag(WICKS, 10));
        assertThat(helped.reason()).isEqualTo(Reason.HELPED);
        assertThat(helped.verdict()).isEqualTo(Verdict.OPEN);
        Judged before = judged(toTheEnd(besideSeat1().claim(8, 4).sorted(9, 4).tap(12.5, 4, "wicks")),
                flag(WICKS, 10));
        assertThat(before.reason()).as("who had left again before it went up").isEqualTo(Reason.SOON_DONE);
    }

    @Test
    void a_seat_that_went_on_without_a_tick_had_been_done() {
        Scene scene = wicks().open(12, "mix").othersTap(17, 4, "mix").tap(17, 4, "mix").open(20, "pour")
                .othersTap(23, 0, "pour");
        assertThat(judged(scene, flag(WICKS, 11)).reason()).isEqualTo(Reason.UNTICKED);
    }

    @Test
    void of_a_seat_that_left_nothing_is_known_and_one_that_stayed_to_the_end_was_stuck() {
        assertThat(judged(wicks().leave(30, 4), flag(WICKS, 10)).reason()).isEqualTo(Reason.UNFINISHED);
        Judged stuck = judged(wicks(), flag(WICKS, 10));
        assertThat(stuck.reason()).isEqualTo(Reason.STAYED);
        assertThat(stuck.afterMinutes()).isEqualTo(END - 10);
        assertThat(judged(wicks(), flag(WICKS, END - 1)).reason()).isEqualTo(Reason.UNFINISHED);
    }

    @Test
    void a_stall_that_held_the_class_and_was_never_flagged_was_missed() {
        Hindsight looked = looked(toTheEnd(wicks().tap(19, 4, "wicks")), List.of());
        assertThat(looked.missed()).hasSize(1);
        Missed missed = looked.missed().get(0);
        assertThat(missed.seat()).isEqualTo(4);
        assertThat(missed.step()).isEqualTo(WICKS);
        assertThat(missed.tookMinutes()).isEqualTo(16);
        assertThat(missed.middleMinutes()).as("3.5 to 4.1 min of the others").isBetween(3.5, 4.1);
    }

    @Test
    void what_was_flagged_was_not_missed_and_neither_was_what_was_slow_for_everybody() {
        assertThat(looked(toTheEnd(wicks().tap(19, 4, "wicks")), List.of(flag(WICKS, 12))).missed()).isEmpty();
        Scene allSlow = Scene.led(6).othersTap(2, 0, "vessel").open(3, "wicks").othersTap(18, 0, "wicks");
        assertThat(looked(toTheEnd(allSlow), List.of()).missed()).isEmpty();
    }

    @Test
    void each_verdict_is_counted() {
        Hindsight looked = looked(toTheEnd(besideSeat1().tap(14, 4, "wicks")),
                List.of(flag(WICKS, 8), flag(WICKS, 12), flag(WICKS, 13)));
        List<Integer> counts = new ArrayList<>();
        for (Verdict verdict : Verdict.values()) {
            counts.add(looked.count(verdict));
        }
        assertThat(counts).as("right, wrong, open").containsExactly(1, 2, 0);
    }
}
