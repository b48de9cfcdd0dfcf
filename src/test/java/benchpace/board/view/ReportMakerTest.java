package benchpace.board.view;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.Stories;
import benchpace.board.cooling.CandleClock;
import benchpace.board.cooling.PlanCureClock;
import benchpace.board.cooling.RoomCureClock;
import benchpace.board.pacing.PosteriorPaceWatch;
import benchpace.board.waiting.WaitChain;
import benchpace.board.waiting.WaitView;
import benchpace.cure.room.RoomFit;
import benchpace.live.ClassEvent;
import benchpace.live.LiveClass;
import benchpace.live.TestClass;
import benchpace.pace.Level;
import benchpace.plan.Plan;
import benchpace.plan.SeatNumber;
import benchpace.plan.TestPlans;
import benchpace.report.CureJudged;
import benchpace.report.Part;
import benchpace.report.SeatIdle;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Real evenings looked back on: who went home, who never poured, who closed the class when. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ReportMakerTest {
    private static ClassReport report(TestClass told, double minute) {
        LiveClass live = told.live();
        Instant now = TestClass.instant(minute);
        ViewMaker maker = new ViewMaker(new PlanCureClock(), new PosteriorPaceWatch(), Watched.ZONE);
        return maker.report("test", live, maker.view("test", live, now));
    }

    private static TestClass opened(TestClass c) {
        return c.minute(9).open("wicks").open("mix").open("pour");
    }

    /** Three seats; those named pour at minute 20. */
    private static TestClass poured(int... seats) {
        TestClass c = opened(TestClass.of(Stories.plan(), 3));
        for (int seat : seats) {
            c.minute(20).finish(seat, "pour");
        }
        return c;
    }

    @Test void the_last_candle_is_called_the_last_only_when_all_have_poured() {
        ClassReport some = report(poured(1), 30);
        assertThat(some.waitedFor()).containsExactly(2, 3);
        assertThat(some.held()).isPresent();
        assertThat(report(poured(1, 2, 3), 30).waitedFor()).isEmpty();
    }

    @Test void a_class_that_has_gone_home_before_its_candles_were_set_is_looked_back_on_all_the_same() {
        TestClass c = poured(1, 2, 3).minute(30).leave(1).leave(2);
        assertThat(report(c, 31).candles()).as("the class waits for seat 3 alone").containsOnlyKeys(3);
        assertThat(report(c.minute(32).leave(3), 33).candles()).containsOnlyKeys(1, 2, 3);
    }

    @Test void a_seat_named_while_it_works_did_not_come_late() {
        TestClass c = TestClass.of(Stories.plan(), 2).minute(6).arrive(2, "Ida").minute(8).finish(1, "vessel")
                .finish(2, "vessel");
        opened(c).minute(20).finish(1, "pour").finish(2, "pour");
        assertThat(report(c, 30).held().orElseThrow().links()).extracting(l -> l.part().kind())
                .doesNotContain(Part.Kind.BEGINNING);
    }

    @Test void a_class_closed_the_next_day_ends_an_hour_after_its_last_tap() {
        TestClass c = Stories.stuckAtWicks(6).minute(24 * 60).close();
        ClassReport report = report(c, 24 * 60 + 5);
        assertThat(report.flags()).hasSize(1);
        assertThat(report.flags().get(0).level()).isEqualTo(Level.BEHIND);
        assertThat(report.flags().get(0).toMinutes()).isLessThan(75);
        assertThat(report.view().lines().until()).isBefore(TestClass.instant(80));
    }

    @Test void the_plan_has_the_candles_ready_when_its_cure_ends() {
        ClassReport report = report(poured(1), 30);
        assertThat(report.plannedReady()).as("vessel 2, wicks 4, mix 5, pour 3 and an hour")
                .isEqualTo(report.view().startsAt().plus(Duration.ofMinutes(74)));
    }

    // ---- the wait

    /** Six seats of the evening, poured from minute 25 on; the clock stands at 26. */
    private static TestClass waiting() {
        TestClass c = TestClass.atThePour(6).minute(25);
        for (int seat = 1; seat <= 5; seat++) {
            c.finish(seat, "pour");
        }
        return c.minute(26).finish(6, "pour");
    }

    private static Map<Integer, Integer> idle(ClassReport report) {
        return report.idle().stream().collect(Collectors.toMap(SeatIdle::seat, SeatIdle::idleMinutes));
    }

    @Test void while_a_class_waits_its_idle_minutes_are_those_that_the_wait_counts() {
        TestClass c = waiting().minute(30).join(1, "labels").minute(41).quit(1, "labels").minute(44)
                .join(2, "refreshments");
        for (double minute : List.of(44.5, 52.0, 61.3, 70.0)) {
            ClassReport report = report(c, minute);
            Map<Integer, Integer> counted = new WaitChain("test", new PlanCureClock())
                    .at(c.live(), TestClass.instant(minute)).strips().stream()
                    .collect(Collectors.toMap(WaitView.StripView::seat, WaitView.StripView::idleSoFar));
            assertThat(idle(report)).as("at minute " + minute).isEqualTo(counted).hasSize(6);
        }
    }

    @Test void what_was_tapped_is_told_apart_from_what_nobody_tapped_otherwise() {
        TestClass c = waiting().minute(30).join(1, "labels").minute(41).quit(1, "labels");
        ClassReport report = report(c, 80);
        SeatIdle tapped = report.idle().get(0);
        assertThat(tapped.tappedMinutes()).isEqualTo(11);
        assertThat(report.idle().get(1).tappedMinutes()).isZero();
        assertThat(report.idle().get(1).assumedMinutes()).as("sent to the labels by the plan").isPositive();
        assertThat(report.idle()).allSatisfy(s -> assertThat(s.tappedMinutes() + s.assumedMinutes() + s.idleMinutes())
                .isBetween(s.waitMinutes() - 1, s.waitMinutes()));
    }

    @Test void a_wait_ends_with_the_hand_test_and_stays_as_it_was_once_the_class_is_closed() {
        TestClass c = waiting().minute(80).judgeSet(1).minute(90);
        SeatIdle judged = report(c, 90).idle().get(0);
        assertThat(judged.waitMinutes()).isEqualTo(55);
        ClassReport closed = report(c.close(), 60 * 24 * 30);
        assertThat(closed.idle().get(0)).isEqualTo(judged);
        assertThat(closed.idle()).hasSize(6).allMatch(s -> s.waitMinutes() <= 65);
    }

    @Test void who_left_waited_until_then() {
        assertThat(report(waiting().minute(40).leave(3), 70).idle().get(2).waitMinutes()).isEqualTo(15);
    }

    @Test void without_anything_to_do_in_the_wait_nothing_is_counted() {
        Plan plan = TestPlans.evening();
        Plan bare = new Plan(plan.id(), plan.name(), plan.about(), plan.place(), plan.usualSeats(), plan.table(),
                plan.steps(), List.of(), plan.candles());
        TestClass c = TestClass.of(bare, 2).minute(20).open("welcome").open("wicks").open("pour").finish(1, "pour");
        assertThat(report(c, 60).idle()).isEmpty();
    }

    // ---- the cure

    private static final RoomCureClock CURE = new RoomCureClock((id, room) -> RoomFit.untaught());

    private static ClassReport computed(TestClass told) {
        ViewMaker maker = new ViewMaker(CURE, new PosteriorPaceWatch(), Watched.ZONE);
        return maker.report("test", told.live(), maker.view("test", told.live(), told.now()));
    }

    private static CandleClock said(TestClass told, int seat) {
        return CURE.clocksOf("test", told.live(), told.now()).get(new SeatNumber(seat));
    }

    private static double minute(Instant at) {
        return Duration.between(TestClass.START, at).toMillis() / 60_000.0;
    }

    @Test void what_was_said_at_the_pour_is_held_against_the_hand_test_whatever_was_said_later() {
        TestClass c = TestClass.atThePour(4).minute(25).finish(1, "pour");
        CandleClock atThePour = said(c, 1);
        c.minute(26).finish(2, "pour").minute(60).wish(new ClassEvent.TemperatureRead(new SeatNumber(1), 55));
        assertThat(said(c, 1).ready().likely()).as("a reading moves it").isNotEqualTo(atThePour.ready().likely());
        c.minute(90).judgeSet(1);

        List<CureJudged> cures = computed(c).cures();
        assertThat(cures).containsExactly(new CureJudged(1, 25, minute(atThePour.ready().likely()),
                minute(atThePour.said().from()), minute(atThePour.said().until()), 90));
    }

    @Test void a_hand_test_counts_alike_whether_it_was_told_on_the_sheet_or_by_a_tap_for_a_step_after_the_cure() {
        TestClass c = TestClass.atThePour(4).minute(25).finish(1, "pour").finish(2, "pour").finish(3, "pour")
                .finish(4, "pour").minute(90).judgeSet(1).open("trim").finish(2, "trim").finish(3, "wrap")
                .minute(94).finish(1, "trim").finish(2, "wrap");

        List<CureJudged> cures = computed(c).cures();
        assertThat(cures).extracting(CureJudged::seat).containsExactly(1, 2, 3);
        assertThat(cures).extracting(CureJudged::judgedMinutes).containsOnly(90.0);
        assertThat(cures).extracting(CureJudged::laterMinutes).containsOnly(cures.get(0).laterMinutes());
        assertThat(computed(c.minute(95).finish(4, "wrap")).cures()).hasSize(4);
    }

    @Test void a_second_pour_counts_anew() {
        TestClass c = TestClass.atThePour(4).minute(25).finish(1, "pour").minute(40).pourAgain(1);
        CandleClock again = said(c, 1);
        List<CureJudged> cures = computed(c.minute(120).judgeSet(1)).cures();
        assertThat(cures).hasSize(1);
        assertThat(cures.get(0).pouredMinutes()).isEqualTo(40);
        assertThat(cures.get(0).likelyMinutes()).isEqualTo(minute(again.ready().likely()));
        assertThat(cures.get(0).laterMinutes()).isEqualTo(120 - minute(again.ready().likely()));
    }

    @Test void without_a_hand_test_there_is_nothing_to_hold_it_against() {
        assertThat(computed(TestClass.atThePour(4).minute(25).finish(1, "pour").minute(90)).cures()).isEmpty();
    }
}
