package benchpace.board.view;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.cooling.CandleClock;
import benchpace.board.cooling.RoomCureClock;
import benchpace.board.pacing.Eased;
import benchpace.board.pacing.HomeTime;
import benchpace.board.pacing.HomeTimes;
import benchpace.board.pacing.Pace;
import benchpace.board.pacing.PosteriorPaceWatch;
import benchpace.board.pacing.SeatFlag;
import benchpace.board.view.Computed.Moment;
import benchpace.board.view.SeatView.Mark;
import benchpace.cure.room.RoomFit;
import benchpace.live.ClassEvent;
import benchpace.live.Command;
import benchpace.live.LiveClass;
import benchpace.live.Recorded;
import benchpace.live.TestClass;
import benchpace.plan.SeatNumber;
import benchpace.plan.StepId;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/**
 * What a tap shows at once, beside what was computed before it: all that was tapped, and nothing that it contradicts.
 * {@code simulation.AtOnce} holds made-up classes to the same.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class FirstBreathTest {
    private static final String ID = "tonight";
    private static final SeatNumber SLOW = new SeatNumber(2);
    private static final SeatNumber ASKED = new SeatNumber(3);

    private final ViewMaker real = new ViewMaker(new RoomCureClock((id, room) -> RoomFit.untaught()),
            new PosteriorPaceWatch(), ZoneOffset.UTC);

    /** Four seats at the wicks since minute 5. */
    private static TestClass atTheWicks() {
        return TestClass.evening(4).open("welcome").minute(5).open("wicks").minute(20);
    }

    private static Moment at(TestClass c) {
        return new Moment(c.live(), c.now());
    }

    /** Seat 2 is behind with its wicks and home hangs on it; seat 3 is asked whether it is still at them. */
    private static Pace judged(LiveClass live, Map<SeatNumber, CandleClock> clocks, Instant now) {
        SeatFlag behind = new SeatFlag(SeatFlag.Level.BEHIND, SLOW.value(), "Step wicks", 9, 12);
        SeatFlag slipping = new SeatFlag(SeatFlag.Level.SLIPPING, ASKED.value(), "Step wicks", 4, 3);
        HomeTime plan = HomeTimes.promised(live, clocks, now);
        HomeTime home = new HomeTime(plan.p10(), plan.p50(), plan.p90(), plan.rest(), Optional.empty(),
                plan.promised(), plan.odds(), true, Optional.of(new HomeTime.Driver(SLOW.value(), false)),
                HomeTime.Basis.PACE_AND_COMPUTED_CURE);
        return new Pace(Map.of(SLOW, behind, ASKED, slipping), Map.of(), List.of(SLOW, ASKED),
                List.of(new Pace.Unticked(SLOW, 0.1, 5, 12), new Pace.Unticked(ASKED, 0.4, 3, 4)), home,
                Optional.of(Duration.ofMinutes(6)), Optional.empty());
    }

    /** @param before what it was computed of, with seats 2 and 3 flagged */
    private static ClassView after(Moment before, TestClass c) {
        ViewMaker maker = new ViewMaker(new RoomCureClock((id, room) -> RoomFit.untaught()),
                (id, live, clocks, now) -> judged(live, clocks, now), ZoneOffset.UTC);
        ClassModels models = maker.models(ID);
        return maker.view(ID, at(c), maker.compute(ID, before, models), models);
    }

    private ClassView reallyAfter(Moment before, TestClass c) {
        ClassModels models = real.models(ID);
        return real.view(ID, at(c), real.compute(ID, before, models), models);
    }

    // ---- who is called

    @Test void a_tap_moves_the_seat_and_the_counts_and_whoever_is_still_slow_stays_called() {
        TestClass c = atTheWicks();
        Moment before = at(c);

        ClassView view = after(before, c.finish(1, "wicks"));

        assertThat(view.seq()).isEqualTo(c.seq());
        assertThat(view.seat(1).stepId()).isEqualTo("blend");
        assertThat(view.steps().get(1).finished()).isEqualTo(1);
        assertThat(view.help()).extracting(ClassView.HelpView::seat).containsExactly(2, 3);
        assertThat(view.home().driver()).map(HomeTime.Driver::seat).contains(2);
    }

    @Test void a_seat_that_has_moved_on_is_called_no_more_and_nobody_waits_for_it() {
        TestClass c = atTheWicks();
        Moment before = at(c);

        ClassView view = after(before, c.finish(2, "wicks"));

        assertThat(view.seat(2).flag()).isEmpty();
        assertThat(view.help()).extracting(ClassView.HelpView::seat).containsExactly(3);
        assertThat(view.home().driver()).isEmpty();
        assertThat(view.next().orElseThrow().rows()).filteredOn(ClassView.LeftRow::judged)
                .extracting(ClassView.LeftRow::seat).containsExactly(3);
        assertThat(view.silence()).as("a tap has just come").isEmpty();
    }

    @Test void whoever_said_that_they_go_there_is_named_and_the_seat_stays_called() {
        TestClass c = atTheWicks();
        Moment before = at(c);

        ClassView view = after(before, c.claim(2, "MO"));

        assertThat(view.help().get(0).helper()).contains("MO");
    }

    @Test void sorted_eases_the_seat_at_once() {
        TestClass c = atTheWicks().claim(2, "MO");
        Moment before = at(c);

        ClassView view = after(before, c.sorted(2, "MO"));

        assertThat(view.seat(2).flag()).isEmpty();
        assertThat(view.seat(2).eased()).map(Eased::helper).contains("MO");
        assertThat(view.help()).extracting(ClassView.HelpView::seat).containsExactly(3);
    }

    @Test void still_at_it_answers_the_question_and_leaves_a_seat_that_is_behind_called() {
        TestClass c = atTheWicks();
        Moment before = at(c);

        c.wish(new ClassEvent.StillWorking(ASKED, new StepId("wicks")));
        ClassView view = after(before, c.wish(new ClassEvent.StillWorking(SLOW, new StepId("wicks"))));

        assertThat(view.help()).extracting(ClassView.HelpView::seat).containsExactly(2);
    }

    @Test void what_a_led_step_would_leave_behind_is_not_said_of_another_step() {
        TestClass c = atTheWicks();
        Moment before = at(c);

        ClassView view = after(before, c.open("pour"));

        assertThat(view.next().orElseThrow().step().id()).isEqualTo("trim");
        assertThat(view.next().orElseThrow().rows()).noneMatch(ClassView.LeftRow::judged);
    }

    @Test void a_class_that_was_closed_calls_nobody_and_opened_again_foretells_nothing() {
        TestClass c = atTheWicks();
        Moment open = at(c);
        Moment closed = at(c.close());

        assertThat(after(open, c).help()).isEmpty();
        assertThat(after(open, c).home().ended()).isPresent();

        ClassView again = after(closed, c.undoLast());
        assertThat(again.home().ended()).isEmpty();
        assertThat(again.home().promise()).isEqualTo(HomeTime.Promise.UNTOLD);
    }

    // ---- candles

    private static TestClass atThePour() {
        return TestClass.atThePour(2).minute(26).finish(1, "pour").minute(28);
    }

    @Test void a_candle_just_poured_is_counted_and_has_no_range_until_that_is_computed() {
        TestClass c = atThePour();
        Moment before = at(c);

        ClassView view = reallyAfter(before, c.finish(2, "pour"));

        assertThat(view.cure().poured()).isEqualTo(2);
        assertThat(view.seat(2).mark()).isEqualTo(Mark.SETTING);
        assertThat(view.seat(2).pouredAt()).contains(TestClass.instant(28));
        assertThat(view.seat(2).candle()).isEmpty();
        assertThat(view.seat(1).candle()).isEqualTo(reallyAfter(before, atThePour()).seat(1).candle());
    }

    @Test void a_pour_taken_back_takes_its_range_along() {
        TestClass c = atThePour();
        Moment before = at(c);

        ClassView view = reallyAfter(before, c.undoLast());

        assertThat(view.seat(1).candle()).isEmpty();
        assertThat(view.cure().poured()).isZero();
        assertThat(view.cure().range()).isEmpty();
    }

    @Test void the_hand_test_decides_at_once_and_taken_back_the_range_is_computed_anew() {
        TestClass c = atThePour().minute(95);
        Moment before = at(c);

        ClassView tried = reallyAfter(before, c.judgeSet(1));
        Moment decided = at(c);
        ClassView untried = reallyAfter(decided, c.undoLast());

        assertThat(tried.seat(1).mark()).isEqualTo(Mark.SET);
        assertThat(tried.seat(1).candle()).map(CandleClock::settled).contains(true);
        assertThat(tried.room().cutOpen()).doesNotContainKey(1);
        assertThat(untried.seat(1).candle()).isEmpty();
        assertThat(untried.seat(1).mark()).isEqualTo(Mark.SETTING);
    }

    // ---- the wait

    @Test void an_activity_is_open_at_once_and_whoever_has_joined_it_is_offered_nothing_else() {
        TestClass c = TestClass.atThePour(2).minute(26).finish(1, "pour").finish(2, "pour").minute(34);
        Moment before = at(c);
        int idle = reallyAfter(before, c).waiting().leisure().stream().mapToInt(o -> o.seat()).findFirst().orElse(1);

        ClassView view = reallyAfter(before, c.openActivity("labels").join(idle, "labels"));

        assertThat(view.waiting().activities().get(0).open()).isTrue();
        assertThat(view.waiting().activities().get(0).seats()).containsExactly(idle);
        assertThat(view.waiting().leisure(idle)).isEmpty();
    }

    // ---- what may not be carried over

    @Test void what_was_computed_by_a_clock_that_was_wrong_stands_beside_nothing() {
        TestClass c = atTheWicks();
        Computed before = real.compute(ID, at(c), real.models(ID));
        LiveClass later = c.live().apply(new Recorded(c.seq() + 1, Command.own("clock"), "instructor",
                c.now().plus(Duration.ofHours(2)), c.now().plus(Duration.ofHours(2)),
                new ClassEvent.ClockShifted(2, Duration.ofHours(2))));

        assertThat(before.mayCarry(before.of().live())).isTrue();
        assertThat(before.mayCarry(later)).isFalse();
    }
}
