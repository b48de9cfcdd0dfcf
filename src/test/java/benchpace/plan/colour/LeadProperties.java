package benchpace.plan.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Whatever colour is chosen, words in it and on it can be read, by day and by night. */
class LeadProperties {
    /** Those that are hardest to show: the corners, greys, what lies beside the grounds and the signs of trouble. */
    private static final List<String> NASTY = List.of("#000000", "#ffffff", "#ff0000", "#00ff00", "#0000ff", "#ffff00",
            "#00ffff", "#ff00ff", "#808080", "#767676", "#595959", "#f7f0e4", "#fffaf0", "#1b1512", "#261e18",
            "#8c2614", "#ffab8f", "#7a4400", "#b0501c", "#ffd08a", "#ff9a5c", "#010101", "#fefefe", "#000001",
            "#0000fe", "#ffd400", "#1f4d43", "#8fd3bf", "#dcead9", "#22352c");

    @Property(tries = 4000)
    void every_colour_becomes_one_that_can_be_read(@ForAll @IntRange(max = 255) int red,
                                                   @ForAll @IntRange(max = 255) int green,
                                                   @ForAll @IntRange(max = 255) int blue) {
        for (Light light : Light.values()) {
            holds(new Srgb(red, green, blue), light);
        }
    }

    @Example
    void so_do_the_hardest_ones() {
        for (String hex : NASTY) {
            for (Light light : Light.values()) {
                holds(Srgb.of(hex), light);
            }
        }
    }

    @Example
    void and_a_grid_through_all_of_them() {
        for (int i = 0; i < 17 * 17 * 17; i++) {
            Srgb colour = new Srgb(i % 17 * 15, i / 17 % 17 * 15, i / 289 * 15);
            for (Light light : Light.values()) {
                holds(colour, light);
            }
        }
    }

    private static void holds(Srgb chosen, Light light) {
        Lead lead = Lead.of(chosen, light);
        for (Srgb ground : light.grounds()) {
            assertThat(lead.lead().contrast(ground)).as(chosen + " on " + ground).isGreaterThanOrEqualTo(7);
        }
        assertThat(lead.onLead().contrast(lead.lead())).as("words on " + chosen + " by " + light)
                .isGreaterThanOrEqualTo(7);
        assertThat(Lead.of(lead.lead(), light)).as("kept once it can be read").isEqualTo(lead);
        keepsItsHue(chosen, lead.lead());
    }

    /** As far as a hue can be told: of what is nearly grey or nearly black it is rounded away. */
    private static void keepsItsHue(Srgb chosen, Srgb shown) {
        Oklab before = Oklab.of(chosen);
        Oklab after = Oklab.of(shown);
        if (before.chroma() > 0.05 && after.chroma() > 0.05) {
            double apart = Math.abs(before.hue() - after.hue());
            assertThat(Math.min(apart, 360 - apart)).as(chosen + " as " + shown).isCloseTo(0, within(4.0));
        }
        if (before.chroma() < 1e-3) {
            assertThat(after.chroma()).as("grey stays grey").isLessThan(2e-3);
        }
    }

    @Example
    void what_can_be_read_already_is_left_as_it_is() {
        assertThat(Lead.of(Srgb.of("#1f4d43"), Light.DAY)).isEqualTo(new Lead(Srgb.of("#1f4d43"), Srgb.WHITE));
        assertThat(Lead.of(Srgb.of("#8fd3bf"), Light.NIGHT).lead()).isEqualTo(Srgb.of("#8fd3bf"));
        assertThat(Lead.of(Srgb.BLACK, Light.DAY).lead()).isEqualTo(Srgb.BLACK);
        assertThat(Lead.of(Srgb.WHITE, Light.NIGHT).lead()).isEqualTo(Srgb.WHITE);
    }

    @Example
    void yellow_is_a_dark_ochre_by_day_and_itself_by_night() {
        Lead day = Lead.of(Srgb.of("#ffd400"), Light.DAY);

        assertThat(Oklab.of(day.lead()).lightness()).isBetween(0.3, 0.5);
        assertThat(Lead.of(Srgb.of("#ffd400"), Light.NIGHT).lead()).isEqualTo(Srgb.of("#ffd400"));
    }

    @Example
    void what_could_be_taken_for_a_sign_of_trouble_is_known() {
        assertThat(Lead.of(Srgb.of("#8c2614"), Light.DAY).resembles(Light.DAY)).isEqualTo(Lead.Resembles.BEHIND);
        assertThat(Lead.of(Srgb.of("#a02010"), Light.DAY).resembles(Light.DAY)).isEqualTo(Lead.Resembles.BEHIND);
        assertThat(Lead.of(Srgb.of("#7a4400"), Light.DAY).resembles(Light.DAY)).isEqualTo(Lead.Resembles.SLIPPING);
        assertThat(Lead.of(Srgb.of("#ff9a5c"), Light.NIGHT).resembles(Light.NIGHT))
                .isNotEqualTo(Lead.Resembles.NOTHING);
        for (String clear : List.of("#1f4d43", "#20407a", "#5a2a6a", "#808080", "#000000")) {
            for (Light light : Light.values()) {
                assertThat(Lead.of(Srgb.of(clear), light).resembles(light)).as(clear).isEqualTo(Lead.Resembles.NOTHING);
            }
        }
    }
}
