package benchpace.live;

import static benchpace.plan.Opening.FREE;
import static benchpace.plan.Opening.LED;
import static benchpace.plan.StepKind.CURE;
import static benchpace.plan.StepKind.HANDS_ON;
import static benchpace.plan.StepKind.POUR;
import static org.assertj.core.api.Assertions.assertThat;

import benchpace.live.Refusal.State;
import benchpace.plan.SeatNumber;
import benchpace.plan.StepId;
import benchpace.plan.TestPlans;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PouringAndSettingTest {
    private static final SeatNumber SEAT_1 = new SeatNumber(1);
    private final TestClass c = TestClass.atThePour(3);

    private static ClassEvent read(double celsius) {
        return new ClassEvent.TemperatureRead(SEAT_1, celsius);
    }

    @Test void the_cure_counts_from_the_pour() {
        c.minute(26).finish(1, "pour").minute(40);

        assertThat(c.standing(1).phase()).isEqualTo(Standing.Phase.CURING);
        assertThat(c.stepOf(1)).isEqualTo("cure");
        assertThat(c.minutesIn(1)).isEqualTo(14);
    }

    @Test void a_pour_noted_late_counts_from_when_it_was_made() {
        c.minute(31).madeAt(25).finish(1, "pour").minute(40);

        assertThat(c.pouredAtMinute(1)).contains(25.0);
        assertThat(c.minutesIn(1)).isEqualTo(15);
        assertThat(c.live().history().get((int) c.seq() - 1).recordedAt()).isEqualTo(TestClass.instant(31));
    }

    @Test void a_candle_poured_again_starts_its_cure_anew() {
        c.minute(26).finish(1, "pour").minute(35).read(1, 64).seeSkin(1).minute(40).pourAgain(1).minute(45);

        assertThat(c.pouredAtMinute(1)).contains(40.0);
        assertThat(c.minutesIn(1)).isEqualTo(5);
        assertThat(c.seat(1).readings()).isEmpty();
        assertThat(c.seat(1).skinSeenAt()).isEmpty();
    }

    @Test void a_candle_judged_set_and_poured_again_is_not_set() {
        c.minute(26).finish(1, "pour").minute(80).judgeSet(1);
        assertThat(c.standing(1).phase()).isEqualTo(Standing.Phase.WAITING);

        c.minute(82).pourAgain(1);
        assertThat(c.standing(1).phase()).isEqualTo(Standing.Phase.CURING);
    }

    @Test void what_was_seen_after_the_second_pour_stays_though_the_pour_was_noted_later() {
        c.minute(26).finish(1, "pour").minute(35).read(1, 64).minute(45).read(1, 66).minute(46).madeAt(40).pourAgain(1);

        assertThat(c.seat(1).readings()).extracting(Seat.Reading::celsius).containsExactly(66.0);
    }

    @Test void judged_set_ends_the_cure_and_the_seat_waits_for_the_next_step() {
        c.minute(26).finish(1, "pour").minute(80).judgeSet(1);

        assertThat(c.standing(1).phase()).isEqualTo(Standing.Phase.WAITING);
        assertThat(c.stepOf(1)).isEqualTo("trim");
        assertThat(c.sinceMinute(1)).isEqualTo(80);
    }

    @Test void opening_a_step_after_the_cure_calls_the_candles_judged_set_and_lets_the_others_set() {
        c.minute(26).finish(1, "pour").finish(2, "pour").minute(80).judgeSet(1).minute(88).open("trim");

        assertThat(c.stepOf(1)).isEqualTo("trim");
        assertThat(c.sinceMinute(1)).isEqualTo(88);
        assertThat(c.standing(2).phase()).isEqualTo(Standing.Phase.CURING);
        assertThat(c.stepOf(3)).isEqualTo("pour");
    }

    @Test void a_tap_on_a_later_step_takes_a_candle_out_of_the_cure_without_a_hand_test() {
        c.minute(26).finish(1, "pour").minute(88).open("trim").minute(90).finish(1, "trim");

        assertThat(c.stepOf(1)).isEqualTo("wrap");
    }

    @Test void work_between_pour_and_cure_does_not_stop_the_cure_clock() {
        TestClass own = TestClass.of(TestPlans.of(
                TestPlans.step("pour", POUR, LED, 10),
                TestPlans.step("tidy", HANDS_ON, FREE, 5),
                TestPlans.step("cure", CURE, FREE, 60)), 1);
        own.open("pour").minute(6).finish(1, "pour").minute(12).finish(1, "tidy").minute(20);

        assertThat(own.standing(1).phase()).isEqualTo(Standing.Phase.CURING);
        assertThat(own.sinceMinute(1)).isEqualTo(6);
    }

    @Test void a_seat_that_jumped_over_its_pour_counts_from_the_first_tap_after_it_until_the_pour_is_told() {
        TestClass own = TestClass.of(TestPlans.of(
                TestPlans.step("pour", POUR, LED, 10),
                TestPlans.step("tidy", HANDS_ON, FREE, 5),
                TestPlans.step("cure", CURE, FREE, 60)), 1);
        own.open("pour").minute(12).finish(1, "tidy");
        assertThat(own.pouredAtMinute(1)).contains(12.0);
        assertThat(own.gapsOf(1)).containsExactly("pour");

        own.minute(15).madeAt(7).finish(1, "pour");
        assertThat(own.pouredAtMinute(1)).contains(7.0);
        assertThat(own.gapsOf(1)).isEmpty();
    }

    @Test void nothing_is_read_seen_or_judged_before_the_pour() {
        assertThat(c.refusalOf(read(60))).isEqualTo(new Refusal.NotPoured(SEAT_1));
        assertThat(c.refusalOf(new ClassEvent.SkinSeen(SEAT_1))).isEqualTo(new Refusal.NotPoured(SEAT_1));
        assertThat(c.refusalOf(new ClassEvent.JudgedSet(SEAT_1))).isEqualTo(new Refusal.NotPoured(SEAT_1));
        assertThat(c.refusalOf(new ClassEvent.PouredAgain(SEAT_1))).isEqualTo(new Refusal.NotPoured(SEAT_1));

        c.minute(26).finish(1, "pour").minute(30).madeAt(25);
        assertThat(c.refusalOf(read(60))).isEqualTo(new Refusal.NotPoured(SEAT_1));
    }

    @Test void a_thermometer_shows_what_a_candle_can_have() {
        c.minute(26).finish(1, "pour");

        assertThat(c.refusalOf(read(131))).isEqualTo(new Refusal.Absurd("celsius", 131, 0, 130));
        assertThat(c.refusalOf(read(-1))).isInstanceOf(Refusal.Absurd.class);
        assertThat(c.refusalOf(read(Double.NaN))).isInstanceOf(Refusal.Absurd.class);
        assertThat(c.refusalOf(read(Double.POSITIVE_INFINITY))).isInstanceOf(Refusal.Absurd.class);
        assertThat(c.read(1, 0).read(1, 130).seat(1).readings()).hasSize(2);
    }

    @Test void a_skin_and_a_judgement_are_told_once() {
        c.minute(26).finish(1, "pour").minute(50).seeSkin(1).minute(80).judgeSet(1);

        assertThat(c.refusalOf(new ClassEvent.SkinSeen(SEAT_1))).isEqualTo(new Refusal.AlreadySo(State.SEEN));
        assertThat(c.refusalOf(new ClassEvent.JudgedSet(SEAT_1))).isEqualTo(new Refusal.AlreadySo(State.JUDGED_SET));
    }

    @Test void undoing_the_pour_takes_with_it_what_was_told_of_the_candle() {
        c.minute(26).finish(1, "pour");
        long pour = c.seq();
        c.minute(30).pourAgain(1).minute(40).read(1, 58).judgeSet(1).undo(pour);
        assertThat(c.pouredAtMinute(1)).isEmpty();
        assertThat(c.stepOf(1)).isEqualTo("pour");

        c.minute(45).finish(1, "pour");
        assertThat(c.pouredAtMinute(1)).contains(45.0);
        assertThat(c.standing(1).phase()).isEqualTo(Standing.Phase.CURING);
        assertThat(c.seat(1).readings()).isEmpty();
    }

    @Test void a_pour_tapped_on_the_wrong_seat_moves_without_what_was_told_there() {
        c.minute(26).finish(1, "pour");
        long pour = c.seq();
        c.minute(40).read(1, 58).reseat(pour, 2);

        assertThat(c.pouredAtMinute(2)).contains(26.0);
        assertThat(c.seat(1).readings()).isEmpty();
        assertThat(c.seat(1).finished(new StepId("pour"))).isFalse();
    }

    @Test void a_pour_corrected_to_a_later_time_is_not_overruled_by_an_older_second_pour() {
        c.minute(26).finish(1, "pour");
        long pour = c.seq();
        c.minute(30).pourAgain(1).minute(40).retime(pour, 35);

        assertThat(c.pouredAtMinute(1)).contains(35.0);
    }

    @Test void things_told_at_one_and_the_same_instant_count_in_the_order_they_were_told() {
        c.minute(26).finish(1, "pour").read(1, 70).pourAgain(1).read(1, 71);

        assertThat(c.seat(1).readings()).extracting(Seat.Reading::celsius).containsExactly(71.0);
    }

    @Test void a_whole_class_ends_with_every_seat_done() {
        c.minute(26).finish(1, "pour").minute(80).judgeSet(1).minute(88).open("trim").minute(92).finish(1, "trim");
        assertThat(c.stepOf(1)).isEqualTo("wrap");

        c.minute(97).finish(1, "wrap");
        assertThat(c.standing(1).phase()).isEqualTo(Standing.Phase.DONE);
        assertThat(c.standing(1).step()).isEmpty();
        assertThat(c.sinceMinute(1)).isEqualTo(97);
    }

    @Test void a_room_is_minus_ten_to_forty_five_degrees_warm_and_wax_is_poured_at_thirty_to_a_hundred_and_fifty() {
        TestClass c = TestClass.atThePour(1);
        for (double celsius : new double[] {-10, 45}) {
            c.wish(new ClassEvent.RoomRead(celsius));
        }
        for (double celsius : new double[] {30, 150}) {
            c.wish(new ClassEvent.PourRead(celsius));
        }
        assertThat(c.refusalOf(new ClassEvent.RoomRead(-10.1)))
                .isEqualTo(new Refusal.Absurd("celsius", -10.1, -10, 45));
        assertThat(c.refusalOf(new ClassEvent.RoomRead(45.1))).isInstanceOf(Refusal.Absurd.class);
        assertThat(c.refusalOf(new ClassEvent.PourRead(29.9))).isEqualTo(new Refusal.Absurd("celsius", 29.9, 30, 150));
        assertThat(c.refusalOf(new ClassEvent.PourRead(Double.NaN))).isInstanceOf(Refusal.Absurd.class);
    }

    @Test void the_hand_test_decides_when_a_candle_was_set_and_without_one_the_first_step_after_the_cure() {
        TestClass c = TestClass.atThePour(2).finish(1, "pour").finish(2, "pour");
        assertThat(c.live().progress().settledAt(c.seat(1))).isEmpty();

        c.minute(100).judgeSet(1).minute(110).open("trim").finish(1, "trim").minute(115).finish(2, "trim");

        assertThat(c.live().progress().settledAt(c.seat(1))).contains(TestClass.instant(100));
        assertThat(c.live().progress().settledAt(c.seat(2))).contains(TestClass.instant(115));
        c.minute(120).pourAgain(2);
        assertThat(c.live().progress().settledAt(c.seat(2))).as("the trimming was of the wax before").isEmpty();
    }
}
