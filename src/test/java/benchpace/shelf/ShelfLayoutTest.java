package benchpace.shelf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** What a shop may call its shelves, and how many places they may have. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ShelfLayoutTest {
    @Test void a_shelf_has_a_name_of_at_most_thirty_characters() {
        assertThat(new ShelfLayout.Board("W".repeat(30), 3).name()).hasSize(30);
        refused(() -> new ShelfLayout.Board("W".repeat(31), 3), "at most 30");
        refused(() -> new ShelfLayout.Board("  ", 3), "needs a name");
        refused(() -> new ShelfLayout.Board("Win\tdow", 3), "needs a name");
    }

    @Test void a_shelf_has_one_to_two_hundred_places() {
        assertThat(new ShelfLayout(List.of(new ShelfLayout.Board("Nail", 1))).places()).hasSize(1);
        assertThat(new ShelfLayout(List.of(new ShelfLayout.Board("Wall", 200))).places()).hasSize(200);
        refused(() -> new ShelfLayout.Board("Window", 0), "not 0");
        refused(() -> new ShelfLayout.Board("Window", 201), "not 201");
    }

    @Test void a_layout_has_shelves_and_no_two_of_one_name() {
        refused(() -> new ShelfLayout(List.of()), "no shelf");
        refused(() -> new ShelfLayout(List.of(new ShelfLayout.Board("Window", 2), new ShelfLayout.Board("Window", 3))),
                "two shelves are called \"Window\"");
    }

    @Test void a_shop_that_has_said_nothing_puts_candles_on_two_shelves_of_twelve() {
        ShelfLayout standard = ShelfArrangement.STANDARD.layout();
        assertThat(standard.places()).hasSize(24).startsWith(new ShelfPlace("Upper", 1))
                .endsWith(new ShelfPlace("Lower", 12));
        assertThat(standard.has(new ShelfPlace("Upper", 13))).isFalse();
    }

    @Test void no_time_of_the_shelf_is_negative_and_a_candle_is_kept_for_some_time() {
        Duration none = Duration.ZERO;
        Duration day = Duration.ofDays(1);
        assertThat(new ShelfSettings(none, day, none).collectWithin()).isEqualTo(day);
        refused(() -> new ShelfSettings(day.negated(), day, none), "negative");
        refused(() -> new ShelfSettings(none, none, none), "negative");
        refused(() -> new ShelfSettings(none, day.negated(), none), "negative");
        refused(() -> new ShelfSettings(none, day, day.negated()), "negative");
    }

    private static void refused(org.assertj.core.api.ThrowableAssert.ThrowingCallable making, String words) {
        assertThatThrownBy(making).isInstanceOf(IllegalArgumentException.class).hasMessageContaining(words);
    }
}
