package benchpace.board.waiting;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.waiting.WaitView.CallState;
import benchpace.board.waiting.WaitView.CallView;
import benchpace.breaks.Assignment;
import benchpace.breaks.WaitEvent;
import benchpace.live.ClassEvent;
import benchpace.live.LiveClass;
import benchpace.live.Seat;
import benchpace.plan.ActivityId;
import benchpace.plan.SeatNumber;
import benchpace.plan.StepId;
import benchpace.words.Times;
import benchpace.words.WaitWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/**
 * Nobody is called to wrap a candle that is not judged set by hand. In the evening's plan a candle takes 60 minutes,
 * trimming 4, and the wrapping has four places.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class WrappingOnceSetTest {
    private static final ActivityId WRAPPING = new ActivityId("wrapping");

    /** Seats 3, 7 and 8 poured first: at the 100th minute they are likely ready, and nobody has tried them. */
    private static WaitEvening evening() {
        return new WaitEvening(8).pour(40, 3, 7, 8).pour(46, 1, 2, 4, 5, 6);
    }

    private static WaitEvening judge(WaitEvening evening, double minute, int... seats) {
        for (int seat : seats) {
            evening.record(minute, new ClassEvent.JudgedSet(new SeatNumber(seat)));
        }
        return evening;
    }

    private static List<CallView> wrapping(WaitView view) {
        return view.calls().stream().filter(c -> WaitWords.what(c.event()).equals("Gift wrapping")).toList();
    }

    private static List<Integer> called(WaitView view) {
        return wrapping(view).stream().filter(c -> c.state() == CallState.BEGUN).flatMap(c -> c.seats().stream())
                .toList();
    }

    @Test void at_the_likely_ready_moment_a_box_is_folded_and_the_candle_stays_where_it_is() {
        WaitEvening evening = evening();
        WaitChain chain = WaitEvening.chain();
        for (int minute = 60; minute <= 108; minute++) {
            WaitView view = chain.at(evening.live(), WaitEvening.at(minute));

            assertThat(wrapping(view)).as("minute %d", minute).allSatisfy(c -> {
                assertThat(c.state()).isEqualTo(CallState.AHEAD);
                assertThat(c.seats()).isEmpty();
                assertThat(c.told()).isFalse();
            });
            List<CallView> boxes = view.calls().stream().filter(c -> c.event() instanceof WaitEvent.Boxes).toList();
            if (minute >= 100) {
                assertThat(boxes).singleElement().satisfies(c -> {
                    assertThat(c.state()).isEqualTo(CallState.BEGUN);
                    assertThat(WaitWords.say(c, view.plannedAt().orElseThrow(), new Times(WaitEvening.ZONE))).isEqualTo(
                            "Fold a box or choose a ribbon now; the candle stays where it is");
                    assertThat(c.seats()).contains(3, 7, 8).hasSizeLessThanOrEqualTo(4);
                });
            } else {
                assertThat(boxes).isEmpty();
            }
        }
    }

    @Test void wrapping_is_expected_after_the_hand_test_and_the_trim() {
        WaitView view = evening().view(60);

        assertThat(wrapping(view)).singleElement().satisfies(c ->
                assertThat(c.at()).as("said to five minutes").isEqualTo(WaitEvening.at(105)));
        assertThat(view.strip(3).orElseThrow().parts()).filteredOn(p -> p.activity().equals("wrapping"))
                .singleElement().satisfies(p -> {
                    assertThat(p.status()).isEqualTo(Assignment.Status.EXPECTED);
                    assertThat(p.from()).isEqualTo(WaitEvening.at(104));
                });
    }

    @Test void what_is_judged_set_is_called_once_it_is_trimmed_as_many_at_once_as_there_are_places() {
        WaitEvening evening = judge(evening(), 101, 3, 7, 8, 1, 2);
        assertThat(called(evening.view(110))).as("the trim is not open").isEmpty();
        evening.record(110, new ClassEvent.StepOpened(new StepId("trim")));
        for (int seat : new int[] {3, 7, 8, 1, 2}) {
            evening.finish(112, "trim", seat);
        }

        assertThat(called(evening.view(112.5))).isEmpty();
        assertThat(wrapping(evening.view(112.5)).get(0).seats()).containsExactly(1, 2, 3, 7);
        assertThat(called(evening.view(114))).containsExactly(1, 2, 3, 7);
        assertThat(called(evening.view(121))).containsExactly(8);
    }

    @Test void a_trim_that_nobody_taps_takes_as_long_as_planned() {
        WaitEvening evening = judge(evening(), 101, 3);
        evening.record(104, new ClassEvent.StepOpened(new StepId("trim")));

        assertThat(called(evening.view(107.5))).isEmpty();
        assertThat(called(evening.view(109))).containsExactly(3);
    }

    @Test void a_first_tap_of_a_finish_step_says_that_the_candle_was_tried() {
        WaitEvening evening = evening().record(100, new ClassEvent.StepOpened(new StepId("trim")))
                .finish(103, "trim", 7);

        assertThat(called(evening.view(105))).containsExactly(7);
    }

    @Test void who_has_tapped_the_wrapping_step_is_not_called_to_it() {
        WaitEvening evening = judge(evening(), 101, 3).record(102, new ClassEvent.StepOpened(new StepId("trim")))
                .finish(104, "trim", 3).finish(105, "wrap", 3);

        assertThat(wrapping(evening.view(106))).allSatisfy(c -> assertThat(c.seats()).doesNotContain(3));
    }

    @Test void a_wrapping_started_by_the_instructor_calls_the_judged_and_lets_the_others_fold_boxes() {
        WaitEvening evening = judge(evening(), 90, 3);
        evening.record(91, new ClassEvent.ActivityOpened(WRAPPING));

        WaitView view = evening.view(101);

        assertThat(view.strip(3).orElseThrow().parts()).filteredOn(p -> p.activity().equals("wrapping"))
                .singleElement().satisfies(p ->
                        assertThat(p.from()).isBetween(WaitEvening.at(91), WaitEvening.at(101)));
        assertThat(view.calls()).filteredOn(c -> c.event() instanceof WaitEvent.Boxes).singleElement()
                .satisfies(c -> assertThat(c.seats()).doesNotContain(3).contains(7, 8).hasSizeLessThan(5));
    }

    @Test void two_seats_that_share_a_candle_take_one_place() {
        WaitEvening evening = new WaitEvening(8);
        evening.record(10, new ClassEvent.SeatPaired(new SeatNumber(1), new SeatNumber(2)));
        judge(evening.pour(40, 1, 3, 4, 5, 6, 7, 8), 101, 1, 3, 4, 5);
        evening.record(102, new ClassEvent.StepOpened(new StepId("trim")));

        assertThat(called(evening.view(107))).containsExactlyInAnyOrder(1, 2, 3, 4, 5);
    }

    @Test void a_judgement_taken_back_takes_the_call_back() {
        WaitEvening evening = judge(evening(), 101, 3);
        evening.record(102, new ClassEvent.StepOpened(new StepId("trim")));
        assertThat(called(evening.view(107))).containsExactly(3);
        evening.record(107.5, new ClassEvent.Undone(evening.seq() - 1));

        assertThat(wrapping(evening.view(108))).allSatisfy(c -> assertThat(c.seats()).isEmpty());
    }

    /** The turn it was told lay beyond the end of the wrapping as it is now planned. */
    @Test void a_wrapping_moved_an_hour_ahead_and_then_started_breaks_nothing() {
        for (int already = 5; already < 8; already++) {
            WaitEvening evening = judge(evening(), 101, 1, 2, 3, 4, 5, 6, 7, 8);
            evening.record(102, new ClassEvent.StepOpened(new StepId("trim")));
            for (int seat = 1; seat <= already; seat++) {
                evening.finish(105, "trim", seat).finish(106, "wrap", seat);
            }
            evening.record(106.2, new ClassEvent.ActivityMoved(WRAPPING, WaitEvening.at(166)));
            evening.record(106.4, new ClassEvent.ActivityOpened(WRAPPING));

            assertThat(evening.view(108).plannedAt()).isPresent();
        }
    }

    @Property(tries = 6)
    void no_call_that_begins_or_names_seats_names_one_whose_candle_is_not_judged_set(
            @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        Random random = new Random(seed);
        int seats = 2 + random.nextInt(9);
        WaitEvening evening = new WaitEvening(seats);
        for (int seat = 1; seat <= seats; seat++) {
            evening.pour(40 + (seat - 1) * 0.7, seat);
        }
        WaitChain chain = WaitEvening.chain();
        for (double minute = 50; minute < 130; minute += 0.5 + 2 * random.nextDouble()) {
            happens(evening, minute, random, 1 + random.nextInt(seats));
            LiveClass live = evening.live();
            WaitView view = chain.at(live, WaitEvening.at(minute));
            for (CallView call : wrapping(view)) {
                assertThat(call.seats()).as("%s, minute %s, seed %d", call, minute, seed)
                        .allSatisfy(n -> assertThat(judged(live, n)).isTrue());
                assertThat(call.state() == CallState.AHEAD || !call.seats().isEmpty()).isTrue();
            }
            view.calls().stream().filter(c -> c.event() instanceof WaitEvent.Boxes).forEach(c ->
                    assertThat(c.seats()).noneMatch(n -> judged(live, n)));
        }
    }

    private static boolean judged(LiveClass live, int seat) {
        Seat guest = live.seat(new SeatNumber(seat)).orElseThrow();
        Seat owner = guest.sharesWith().flatMap(live::seat).orElse(guest);
        return owner.judgedSetAt().isPresent() || live.progress().finishedAfterCure(owner).isPresent();
    }

    private static void happens(WaitEvening evening, double minute, Random random, int number) {
        SeatNumber seat = new SeatNumber(number);
        LiveClass live = evening.live();
        boolean judged = judged(live, number);
        switch (random.nextInt(16)) {
            case 0, 1 -> evening.join(minute, number, "wrapping");
            case 2 -> evening.record(minute, new ClassEvent.ActivityOpened(WRAPPING));
            case 3 -> evening.record(minute, new ClassEvent.ActivityMoved(WRAPPING,
                    WaitEvening.at(minute + random.nextInt(60))));
            case 4 -> evening.record(minute, new ClassEvent.ActivityExtended(WRAPPING, 5));
            case 5 -> evening.record(minute, new ClassEvent.SeatPaused(seat));
            case 6 -> evening.record(minute, new ClassEvent.SeatResumed(seat));
            case 7, 8, 9 -> {
                if (!judged && minute > 80) {
                    evening.record(minute, new ClassEvent.JudgedSet(seat));
                }
            }
            case 10 -> {
                if (live.openedAt(new StepId("trim")).isEmpty() && minute > 90) {
                    evening.record(minute, new ClassEvent.StepOpened(new StepId("trim")));
                }
            }
            case 11 -> {
                if (live.openedAt(new StepId("trim")).isPresent()) {
                    evening.finish(minute, "trim", number);
                }
            }
            case 12 -> undo(evening, minute);
            default -> { }
        }
    }

    private static void undo(WaitEvening evening, double minute) {
        LiveClass live = evening.live();
        List<Long> undoable = new ArrayList<>();
        live.history().stream().filter(r -> r.event() instanceof ClassEvent.JudgedSet
                || r.event() instanceof ClassEvent.StepOpened).filter(r -> !live.isUndone(r.seq()))
                .forEach(r -> undoable.add(r.seq()));
        if (!undoable.isEmpty()) {
            evening.record(minute, new ClassEvent.Undone(undoable.get(undoable.size() - 1)));
        }
    }
}
