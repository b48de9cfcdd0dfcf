package benchpace.live;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.live.Refusal.State;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class GuestsTest {
    private final TestClass c = TestClass.evening(3);

    @Test void guests_say_nothing_by_phone_until_the_instructor_allows_it() {
        assertThat(c.live().guestsMayTell()).isFalse();

        c.wish(new ClassEvent.GuestsMayTell(true));
        assertThat(c.live().guestsMayTell()).isTrue();
        assertThat(c.refusalOf(new ClassEvent.GuestsMayTell(true))).isEqualTo(new Refusal.AlreadySo(State.ALLOWED));
    }

    @Test void it_can_be_switched_off_again() {
        c.wish(new ClassEvent.GuestsMayTell(true)).wish(new ClassEvent.GuestsMayTell(false));

        assertThat(c.live().guestsMayTell()).isFalse();
    }
}
