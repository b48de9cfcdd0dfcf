package benchpace.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** What a class that a studio holds is headed with. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class StudioTest {
    private static final Studio LOFT = new Studio("The Tallow Loft", "Quay Lane, Marrowby", Optional.of("#1f4d43"));

    @Test void a_class_has_the_studios_name_and_colour_and_its_own_place() {
        assertThat(LOFT.heldAt("The barn")).isEqualTo(new Studio("The Tallow Loft", "The barn", LOFT.colour()));
        assertThat(LOFT.heldAt("").place()).isEmpty();
        assertThat(LOFT.heldAt("y".repeat(Studio.LONGEST_PLACE)).place()).hasSize(Studio.LONGEST_PLACE);
    }

    @Test void a_name_that_the_place_begins_with_is_not_said_twice() {
        assertThat(LOFT.heldAt("The Tallow Loft,  Quay Lane, Marrowby")).isEqualTo(LOFT);
        assertThat(LOFT.heldAt("The Tallow Lofts").place()).isEqualTo("The Tallow Lofts");
        assertThat(Studio.NONE.heldAt(", Marrowby").place()).isEqualTo(", Marrowby");
    }
}
