package benchpace.board.cooling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import benchpace.cure.CuringCandle;
import benchpace.cure.TableCase;
import benchpace.cure.room.CureOutlook;
import benchpace.cure.room.RoomFit;
import benchpace.cure.room.RoomPosterior;
import benchpace.cure.room.TrajectoryCache;
import benchpace.cure.solver.CandleSection;
import benchpace.cure.solver.CureSolver;
import benchpace.live.ClassEvent;
import benchpace.live.Refusal;
import benchpace.live.TestClass;
import benchpace.plan.Candle;
import benchpace.plan.Plan;
import benchpace.plan.SeatNumber;
import benchpace.plan.TestPlans;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Every seat's own countdown as computed; the solver itself is checked against published solutions beside it. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class RoomCureClockTest {
    private static final Candle GLASS = TestPlans.evening().candles().get(0);

    private final RoomCureClock clock = new RoomCureClock((id, room) -> RoomFit.untaught());

    private static TestClass poured(int... seats) {
        TestClass c = TestClass.atThePour(4).minute(25);
        for (int seat : seats) {
            c.finish(seat, "pour");
        }
        return c;
    }

    private Cooling cooling(TestClass c) {
        return drawn(c, c.now());
    }

    /** With what the candles look like inside. */
    private Cooling drawn(TestClass c, Instant now) {
        Cooling cooling = clock.cooling("test", c.live(), now);
        return cooling.with(clock.cutOpen("test", c.live(), cooling.clocks(), now), now);
    }

    private CandleClock seat(TestClass c, int seat) {
        return cooling(c).clocks().get(new SeatNumber(seat));
    }

    private static double minutes(Instant from, Instant to) {
        return Duration.between(from, to).toSeconds() / 60.0;
    }

    private static double width(CandleClock clock) {
        return minutes(clock.ready().from(), clock.ready().until());
    }

    private static CureOutlook outlook(double roomCelsius, double pourCelsius) {
        TableCase table = TableCase.of(GLASS.vessel(), GLASS.wax(), GLASS.fillGrams(), GLASS.fragranceFraction(),
                roomCelsius, pourCelsius, GLASS.tableTop(), 1);
        return CureOutlook.of(new CuringCandle("x", table.coolingCase(), false),
                RoomPosterior.of(RoomFit.untaught()), new TrajectoryCache());
    }

    @Test void a_poured_candle_has_the_ranges_of_its_own_case_counted_from_its_pour() {
        CandleClock candle = seat(poured(1), 1);
        CureOutlook expected = outlook(21, 62);

        assertThat(candle.pouredAt()).isEqualTo(TestClass.instant(25));
        assertThat(candle.ready().basis()).isEqualTo(ReadyWindow.Basis.COMPUTED);
        assertThat(minutes(candle.pouredAt(), candle.ready().from())).isCloseTo(expected.ready().p10(), within(0.02));
        assertThat(minutes(candle.pouredAt(), candle.ready().likely())).isCloseTo(expected.ready().p50(), within(0.02));
        assertThat(minutes(candle.pouredAt(), candle.ready().until())).isCloseTo(expected.ready().p90(), within(0.02));
        assertThat(candle.detail().orElseThrow().candle()).isEqualTo("glass");
        assertThat(candle.detail().orElseThrow().skin().orElseThrow().likely()).isBefore(candle.ready().until());
        assertThat(candle.detail().orElseThrow().firm().orElseThrow().likely()).isAfter(candle.ready().likely());
    }

    @Test void the_room_and_the_pour_as_measured_take_the_place_of_the_plans() {
        TestClass c = TestClass.atThePour(4).minute(24).wish(new ClassEvent.PourRead(70)).minute(25).finish(1, "pour")
                .minute(26).wish(new ClassEvent.RoomRead(25)).minute(27).wish(new ClassEvent.PourRead(60));
        CandleClock candle = seat(c, 1);

        assertThat(minutes(candle.pouredAt(), candle.ready().likely()))
                .isCloseTo(outlook(25, 70).ready().p50(), within(0.02));
    }

    @Test void a_pour_measured_only_afterwards_still_counts() {
        TestClass c = poured(1).minute(28).wish(new ClassEvent.PourRead(72));

        assertThat(minutes(seat(c, 1).pouredAt(), seat(c, 1).ready().likely()))
                .isCloseTo(outlook(21, 72).ready().p50(), within(0.02));
    }

    @Test void the_clocks_alone_are_those_of_the_whole_forecast() {
        TestClass c = poured(1, 2).minute(45).read(1, 50);
        RoomCureClock clock = new RoomCureClock((classId, room) -> RoomFit.untaught());

        assertThat(clock.clocksOf("evening", c.live(), TestClass.instant(60)))
                .isEqualTo(clock.cooling("evening", c.live(), TestClass.instant(60)).clocks()).hasSize(2);
    }

    @Test void a_smaller_candle_is_ready_sooner_than_the_plans_first() {
        TestClass c = poured(1, 2).wish(new ClassEvent.CandleChosen(new SeatNumber(2), TestPlans.CANDLE));

        assertThat(seat(c, 2).ready().likely()).isBefore(seat(c, 1).ready().likely());
    }

    @Test void a_shared_candle_has_one_clock_and_that_at_its_host() {
        TestClass c = TestClass.atThePour(4).pair(1, 2).minute(25).finish(1, "pour");

        assertThat(cooling(c).clocks()).containsOnlyKeys(new SeatNumber(1));
    }

    @Test void a_second_pour_starts_anew_and_forgets_what_was_seen_of_the_first() {
        TestClass c = poured(1).minute(45).read(1, 50).minute(50).pourAgain(1);
        CandleClock candle = seat(c, 1);

        assertThat(candle.pouredAt()).isEqualTo(TestClass.instant(50));
        assertThat(width(candle)).isCloseTo(width(seat(poured(1), 1)), within(0.05));
    }

    @Test void a_pour_noted_late_counts_from_when_it_was_made() {
        TestClass c = poured(1);
        Duration before = Duration.between(seat(c, 1).pouredAt(), seat(c, 1).ready().likely());
        c.minute(30).retime(c.seq(), 22);

        assertThat(seat(c, 1).pouredAt()).isEqualTo(TestClass.instant(22));
        assertThat(Duration.between(seat(c, 1).pouredAt(), seat(c, 1).ready().likely())).isEqualTo(before);
    }

    /** The reading that a candle with 30 per cent more loss would show, by the solver itself. */
    @Test void a_reading_narrows_every_seats_range_and_moves_it_towards_the_truth() {
        TestClass c = poured(1, 2).minute(40);
        TableCase table = ClassCandles.tableCase(GLASS, 21, 62);
        var truth = CureSolver.solve(table.coolingCase().withLossTimes(1.3)).curves();
        double ready = truth.minutesToSolidFraction(0.5);
        CandleClock before = seat(c, 2);
        double errorBefore = Math.abs(minutes(before.pouredAt(), before.ready().likely()) - ready);
        c.read(1, truth.surfaceCelsiusAt(15));
        CandleClock after = seat(c, 2);

        assertThat(after.ready().likely()).isBefore(before.ready().likely());
        assertThat(width(after)).isLessThan(width(before));
        assertThat(Math.abs(minutes(after.pouredAt(), after.ready().likely()) - ready)).isLessThan(errorBefore);
        Refit refit = cooling(c).room().refit().orElseThrow();
        assertThat(refit.seen().seat()).contains(new SeatNumber(1));
        assertThat(refit.laterMinutes().orElseThrow()).isLessThan(-1);
        assertThat(refit.moved()).isTrue();
    }

    @Test void a_range_that_has_moved_is_news_for_five_minutes_and_then_the_view_is_made_anew() {
        TestClass c = poured(1, 2).minute(40).read(1, 40);
        Refit refit = cooling(c).room().refit().orElseThrow();

        assertThat(refit.isNews(TestClass.instant(44.9))).isTrue();
        assertThat(refit.isNews(TestClass.instant(45))).isFalse();
        assertThat(drawn(c, TestClass.instant(44.5)).room().nextChange()).contains(TestClass.instant(45));
    }

    @Test void what_a_reading_changed_is_told_until_the_class_is_closed() {
        TestClass c = poured(1, 2).minute(40).read(1, 40);
        assertThat(drawn(c, c.now()).room().refit()).isPresent();

        assertThat(drawn(c.close(), c.now()).room().refit()).isEmpty();
    }

    @Test void undoing_the_reading_takes_the_refit_back() {
        TestClass c = poured(1, 2).minute(40);
        CandleClock before = seat(c, 2);
        c.read(1, 40);
        assertThat(seat(c, 2)).isNotEqualTo(before);
        c.undoLast();

        assertThat(seat(c, 2)).isEqualTo(before);
        assertThat(cooling(c).room().refit()).isEmpty();
    }

    @Test void the_hand_test_overrides_the_forecast_and_teaches_the_others() {
        TestClass c = poured(1, 2).minute(60);
        CandleClock before = seat(c, 2);
        c.judgeSet(1);

        assertThat(seat(c, 1).ready().basis()).isEqualTo(ReadyWindow.Basis.HAND_TEST);
        assertThat(seat(c, 1).judgedSetAt()).contains(TestClass.instant(60));
        assertThat(seat(c, 2).ready().likely()).isBefore(before.ready().likely());
        assertThat(cooling(c).room().refit().map(r -> r.seen().kind())).contains(Observation.Kind.JUDGED_SET);
    }

    @Test void time_alone_changes_no_range_and_past_it_somebody_should_try() {
        TestClass c = poured(1);
        CandleClock candle = seat(c, 1);
        c.minute(25 + 24 * 60);

        assertThat(seat(c, 1)).isEqualTo(candle);
        assertThat(candle.tryIt(candle.said().until().minusSeconds(1))).isFalse();
        assertThat(candle.tryIt(candle.said().until())).isTrue();
        assertThat(candle.said().until()).isAfterOrEqualTo(candle.ready().until());
    }

    @Test void a_plan_without_candles_keeps_its_own_figure() {
        Plan plan = TestPlans.evening();
        Plan bare = new Plan(plan.id(), plan.name(), plan.about(), plan.place(), plan.usualSeats(), plan.table(),
                plan.steps(), plan.activities());
        TestClass c = TestClass.of(bare, 2).open("wicks").minute(20).open("pour").minute(25).finish(1, "pour");

        assertThat(seat(c, 1).ready().basis()).isEqualTo(ReadyWindow.Basis.PLAN_FIGURE);
        assertThat(cooling(c).room()).isEqualTo(RoomView.NONE);
    }

    @Test void every_candle_waited_for_is_drawn_at_its_own_age_and_all_move_on_with_the_minutes_of_the_clock() {
        TestClass c = poured(1, 2, 3).minute(31).wish(new ClassEvent.PouredAgain(new SeatNumber(3))).minute(45.5);
        RoomView room = cooling(c).room();
        Map<Integer, CutAway> later = drawn(c, TestClass.instant(60)).room().cutOpen();

        assertThat(room.cutOpen()).containsOnlyKeys(1, 2, 3);
        assertThat(room.cutOpen().get(1).section().minutes()).isEqualTo(20, within(1e-9));
        assertThat(room.cutOpen().get(3).section().minutes()).isEqualTo(14, within(1e-9));
        assertThat(room.nextChange()).contains(TestClass.instant(46));
        room.cutOpen().forEach((seat, cut) -> assertThat(later.get(seat).section().solidFraction())
                .isGreaterThan(cut.section().solidFraction()));
        assertThat(clock.cutAway("test", c.live(), new SeatNumber(3), c.now())).contains(room.cutOpen().get(3));
    }

    @Test void a_candle_that_cannot_be_cut_open_is_left_out_and_the_others_are_drawn() {
        TestClass c = poured(1, 2, 3).wish(new ClassEvent.CandleChosen(new SeatNumber(2), TestPlans.CANDLE)).minute(45);
        double fails = ClassCandles.of(c.live()).poured().get(1).curing().coolingCase().waxMassG();
        RoomCureClock failing = new RoomCureClock((id, room) -> RoomFit.untaught(), new Sections(cooled -> {
            if (cooled.waxMassG() == fails) {
                throw new ArithmeticException("of this vessel");
            }
            return CandleSection.everyMinute(cooled, 0, 30);
        }, () -> 0));
        Map<SeatNumber, CandleClock> clocks = failing.clocks(c.live(), c.now());

        assertThat(failing.cutOpen("test", c.live(), clocks, c.now())).containsOnlyKeys(1, 3);
    }

    @Test void where_no_candle_can_be_cut_open_the_drawings_fail_as_a_whole() {
        TestClass c = poured(1, 2).minute(45);
        RoomCureClock failing = new RoomCureClock((id, room) -> RoomFit.untaught(), new Sections(cooled -> {
            throw new ArithmeticException("of every vessel");
        }, () -> 0));
        Map<SeatNumber, CandleClock> clocks = failing.clocks(c.live(), c.now());

        assertThatThrownBy(() -> failing.cutOpen("test", c.live(), clocks, c.now()))
                .isInstanceOf(ArithmeticException.class);
    }

    @Test void what_a_class_taught_is_empty_unless_something_was_seen() {
        assertThat(clock.lesson(poured(1).live(), RoomFit.untaught())).isEmpty();

        Optional<RoomFit> lesson = clock.lesson(poured(1).minute(45).read(1, 38).live(), RoomFit.untaught());
        assertThat(lesson.orElseThrow().observations()).isEqualTo(1);
        assertThat(lesson.orElseThrow().lossMedian()).isGreaterThan(1);
    }

    @Test void once_a_hand_has_decided_nothing_is_computed_of_the_candle_any_more() {
        TestClass judged = poured(1, 2).minute(60).judgeSet(1);
        TestClass trimmed = poured(1, 2).minute(60).open("trim").minute(61).finish(1, "trim");

        for (TestClass c : List.of(judged, trimmed)) {
            assertThat(seat(c, 1).settled()).isTrue();
            assertThat(seat(c, 1).detail().orElseThrow().skin()).isEmpty();
            assertThat(seat(c, 1).detail().orElseThrow().firm()).isEmpty();
            assertThat(clock.cutAway("test", c.live(), new SeatNumber(1), c.now())).isEmpty();
            assertThat(cooling(c).room().cutOpen()).containsOnlyKeys(2);
            assertThat(clock.cutAway("test", c.live(), new SeatNumber(2), c.now())).isPresent();
        }
        assertThat(seat(trimmed, 1).judgedSetAt()).as("a tap is no hand test").isEmpty();
    }

    @Test void a_temperature_that_cannot_be_true_of_the_candle_is_refused_with_what_is_believed() {
        TestClass c = poured(1).minute(30);

        assertThat(Plausible.refusal(c.live(), new ClassEvent.TemperatureRead(new SeatNumber(1), 95)))
                .contains(new Refusal.Absurd("celsius", 95, 16, 72));
        assertThat(Plausible.refusal(c.live(), new ClassEvent.TemperatureRead(new SeatNumber(1), 50))).isEmpty();
        assertThat(Plausible.refusal(c.live(), new ClassEvent.RoomRead(39)))
                .contains(new Refusal.Absurd("celsius", 39, -10, 38));
        assertThat(Plausible.refusal(c.live(), new ClassEvent.PourRead(40)))
                .contains(new Refusal.Absurd("celsius", 40, 46, 150));
    }
}
