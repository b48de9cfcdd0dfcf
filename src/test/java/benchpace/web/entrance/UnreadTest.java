package benchpace.web.entrance;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class UnreadTest {

    @Test void there_is_room_for_so_many_bytes_together_and_again_once_some_have_left() {
        Unread unread = new Unread(100);

        assertThat(unread.takes(60)).isTrue();
        assertThat(unread.takes(41)).isFalse();
        assertThat(unread.takes(40)).isTrue();
        unread.isRidOf(60);
        assertThat(unread.takes(60)).isTrue();
        assertThat(unread.takes(1)).isFalse();
    }
}
