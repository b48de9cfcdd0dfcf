package benchpace.words;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.Stories;
import benchpace.board.view.Watched;
import benchpace.live.TestClass;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** What a helper reads when nobody needs them. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class CalmWordsTest {
    private static String calm(TestClass c, double minute) {
        return CalmWords.of(new Watched(c).view(minute));
    }

    @Test void while_all_have_been_at_it_as_long_nobody_is_named() {
        TestClass c = Stories.vessel(TestClass.of(Stories.plan(), 6)).minute(3).open("wicks");

        assertThat(calm(c, 5)).isEqualTo("Nobody needs you.");
    }

    @Test void who_has_been_longest_at_a_step_is_named() {
        TestClass c = Stories.vessel(TestClass.of(Stories.plan(), 6)).minute(3).open("wicks");
        Stories.othersTap(c, 5, 4, "wicks");

        assertThat(calm(c, 6)).isEqualTo("Nobody needs you. Seat 4 has been longest at Step wicks.");
    }

    @Test void nothing_is_said_while_somebody_is_needed() {
        assertThat(calm(Stories.stuckAtWicks(6), 20)).isEmpty();
    }

    @Test void a_seat_that_was_just_sorted_is_told_of_first() {
        TestClass c = Stories.stuckAtWicks(6).minute(15).claim(4, "MO").minute(17).sorted(4, "MO");

        assertThat(calm(c, 19)).isEqualTo("Seat 4 is still slow; MO sorted it at "
                + TestClass.instant(17).atZone(Watched.ZONE).toLocalTime().toString().substring(0, 5) + ".");
    }
}
