package benchpace.live;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.live.Refusal.State;
import benchpace.plan.SeatNumber;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class HelpTest {
    private static final SeatNumber SEAT_1 = new SeatNumber(1);
    private final TestClass c = TestClass.evening(3).open("welcome").minute(5).open("wicks").minute(12);

    @Test void of_two_helpers_the_first_has_it_and_the_second_is_told_who() {
        c.claim(1, "MB");

        assertThat(c.seat(1).claim()).contains(new Seat.Claim("MB", c.now()));
        assertThat(c.refusalOf(new ClassEvent.HelpClaimed(SEAT_1, "TO")))
                .isEqualTo(new Refusal.ClaimedBy(SEAT_1, "MB"));
        assertThat(c.refusalOf(new ClassEvent.HelpClaimed(SEAT_1, "MB")))
                .isEqualTo(new Refusal.AlreadySo(State.CLAIMED));
    }

    @Test void who_went_and_never_said_sorted_has_it_for_five_minutes() {
        c.claim(1, "MB").minute(16.9);
        assertThat(c.refusalOf(new ClassEvent.HelpClaimed(SEAT_1, "TO")))
                .isEqualTo(new Refusal.ClaimedBy(SEAT_1, "MB"));

        c.minute(17).claim(1, "TO");
        assertThat(c.seat(1).claim()).contains(new Seat.Claim("TO", TestClass.instant(17)));
    }

    @Test void once_sorted_the_seat_is_anybodys_again() {
        c.claim(1, "MB").minute(14).sorted(1, "MB");
        assertThat(c.seat(1).claim()).isEmpty();
        assertThat(c.refusalOf(new ClassEvent.HelpSorted(SEAT_1, "MB"))).isEqualTo(new Refusal.NotSo(State.CLAIMED));

        c.claim(1, "TO");
        assertThat(c.seat(1).claim()).map(Seat.Claim::helper).contains("TO");
    }

    @Test void a_tap_that_moves_the_seat_on_ends_the_claim() {
        c.claim(1, "MB").minute(13).finish(1, "wicks");

        assertThat(c.seat(1).claim()).isEmpty();
    }

    @Test void filling_a_gap_leaves_the_helper_on_the_way() {
        c.finish(1, "blend").claim(1, "MB").finish(1, "wicks");

        assertThat(c.seat(1).claim()).map(Seat.Claim::helper).contains("MB");
    }

    @Test void nobody_is_claimed_who_is_not_at_the_table() {
        c.claim(1, "MB").leave(1);

        assertThat(c.seat(1).claim()).isEmpty();
        assertThat(c.refusalOf(new ClassEvent.HelpClaimed(SEAT_1, "MB")))
                .isEqualTo(new Refusal.NotAtTable(SEAT_1, true));
    }

    @Test void a_seat_put_back_to_expected_is_nobodys_to_help() {
        c.claim(1, "MB").openActivity("labels").join(1, "labels").expect(1);

        assertThat(c.seat(1).claim()).isEmpty();
        assertThat(c.seat(1).activity()).isEmpty();
    }
}
