package benchpace.web.screen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchpace.plan.colour.Lead;
import benchpace.plan.colour.Light;
import benchpace.plan.colour.Srgb;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/**
 * Contrast of the colours as WCAG 2.2 defines it: (L1 + 0.05) / (L2 + 0.05) with the relative luminance of sRGB
 * (success criteria 1.4.3: 4.5 for text, 1.4.6: 7 for text, 1.4.11: 3 for the edges of controls; not rounded). Check
 * vectors on white: #767676 4.5422, #777777 4.4781, #595959 7.0047, computed from that definition.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ContrastTest {
    private static final Pattern BLOCK = Pattern.compile(
            "(@media \\(prefers-color-scheme: dark\\) \\{\\s*)?:root \\{([^}]*)}");
    private static final Pattern COLOUR = Pattern.compile("--([a-z-]+): (#[0-9a-f]{6})");

    @Test void the_formula_gives_the_known_ratios() {
        assertThat(contrast("#000000", "#ffffff")).isCloseTo(21, within(1e-9));
        assertThat(contrast("#767676", "#ffffff")).isCloseTo(4.5422, within(5e-5));
        assertThat(contrast("#777777", "#ffffff")).isCloseTo(4.4781, within(5e-5));
        assertThat(contrast("#595959", "#ffffff")).isCloseTo(7.0047, within(5e-5));
    }

    @Test void ink_reaches_the_enhanced_ratio_and_other_text_the_minimum_by_day_and_by_night() throws IOException {
        for (boolean dark : List.of(false, true)) {
            Map<String, String> c = colours(dark, "tokens");
            for (String ground : List.of("paper", "card", "wood", "slip-paper")) {
                assertThat(ratio(c, "ink", ground)).as("ink on " + ground).isGreaterThanOrEqualTo(7);
            }
            assertThat(ratio(c, "ink", "done-paper")).as("ink on a tile that is done").isGreaterThanOrEqualTo(7);
            for (String text : List.of("soft", "calm")) {
                assertThat(ratio(c, text, "done-paper")).as(text + " on a tile that is done")
                        .isGreaterThanOrEqualTo(4.5);
                assertThat(ratio(c, text, "paper")).as(text).isGreaterThanOrEqualTo(4.5);
                assertThat(ratio(c, text, "card")).as(text).isGreaterThanOrEqualTo(4.5);
            }
            assertThat(ratio(c, "slip", "slip-paper")).isGreaterThanOrEqualTo(4.5);
            assertThat(ratio(c, "on-behind", "behind")).isGreaterThanOrEqualTo(7);
            assertThat(ratio(c, "on-lead", "lead")).isGreaterThanOrEqualTo(7);
        }
    }

    @Test void edges_of_controls_and_flags_stand_out_from_the_page() throws IOException {
        for (boolean dark : List.of(false, true)) {
            Map<String, String> c = colours(dark, "tokens");
            for (String edge : List.of("ink", "edge", "slip-edge", "behind", "lead", "focus")) {
                assertThat(ratio(c, edge, "paper")).as(edge).isGreaterThanOrEqualTo(3);
            }
        }
    }

    @Test void the_lines_of_drawings_stand_out_from_what_they_are_drawn_on() throws IOException {
        for (boolean dark : List.of(false, true)) {
            Map<String, String> c = colours(dark, "tokens");
            c.put("d-lead", c.get("lead"));
            for (String line : List.of("d-line", "d-dark", "d-lead", "d-mark")) {
                for (String ground : List.of("paper", "card", "wood", "d-paper")) {
                    assertThat(ratio(c, line, ground)).as(line + " on " + ground + (dark ? " by night" : " by day"))
                            .isGreaterThanOrEqualTo(3);
                }
            }
            assertThat(ratio(c, "d-wick", "d-pale")).as("a wick within wax").isGreaterThanOrEqualTo(7);
        }
    }

    @Test void every_colour_of_text_on_the_wall_reaches_the_enhanced_ratio() throws IOException {
        for (boolean dark : List.of(false, true)) {
            Map<String, String> c = colours(dark, "tokens");
            c.putAll(colours(dark, "wall"));
            for (String text : List.of("ink", "soft", "lead", "calm")) {
                for (String ground : List.of("paper", "card")) {
                    assertThat(ratio(c, text, ground)).as(text + " on " + ground + " by " + (dark ? "night" : "day"))
                            .isGreaterThanOrEqualTo(7);
                }
            }
        }
    }

    /** What makes a studio's colour readable knows the grounds as the sheet has them. */
    @Test void the_grounds_that_a_studios_colour_is_held_to_are_those_of_the_sheet() throws IOException {
        for (Light light : Light.values()) {
            Map<String, String> c = colours(light == Light.NIGHT, "tokens");
            assertThat(light.grounds()).extracting(Srgb::hex)
                    .containsExactly(c.get("paper"), c.get("card"), c.get("done-paper"));
            assertThat(light.ink().hex()).isEqualTo(c.get("ink"));
            assertThat(light.behind().hex()).isEqualTo(c.get("behind"));
            assertThat(light.slipping()).extracting(Srgb::hex).containsExactly(c.get("slip"), c.get("slip-edge"));
            assertThat(light.usual()).as("where no colour was chosen")
                    .isEqualTo(new Lead(Srgb.of(c.get("lead")), Srgb.of(c.get("on-lead"))));
            assertThat(Lead.of(light.usual().lead(), light).lead()).as("ours needs no change")
                    .isEqualTo(light.usual().lead());
        }
    }

    /** Two hundred colours from one seed, and the hardest. */
    @Test void words_in_any_studios_colour_reach_the_enhanced_ratio_on_the_wall() throws IOException {
        Random random = new Random(20270304);
        Stream<Srgb> drawn = random.ints(200, 0, 1 << 24).mapToObj(rgb -> Srgb.of(String.format("#%06x", rgb)));
        List<Srgb> hard = Stream.of("#000000", "#ffffff", "#ffff00", "#ff0000", "#808080", "#f7f0e4", "#1b1512",
                "#8c2614", "#b0501c").map(Srgb::of).toList();
        for (Srgb chosen : Stream.concat(drawn, hard.stream()).toList()) {
            for (Light light : Light.values()) {
                Map<String, String> c = colours(light == Light.NIGHT, "tokens");
                c.putAll(colours(light == Light.NIGHT, "wall"));
                Lead lead = Lead.of(chosen, light);
                for (String ground : List.of("paper", "card", "done-paper")) {
                    assertThat(contrast(lead.lead().hex(), c.get(ground))).as(chosen + " on " + ground)
                            .isGreaterThanOrEqualTo(7);
                }
                assertThat(contrast(lead.onLead().hex(), lead.lead().hex())).as("on " + chosen)
                        .isGreaterThanOrEqualTo(7);
                assertThat(contrast(lead.lead().hex(), c.get("wood"))).as(chosen + " on wood, as a mark")
                        .isGreaterThanOrEqualTo(3);
            }
        }
    }

    private static double ratio(Map<String, String> colours, String text, String ground) {
        return contrast(colours.get(text), colours.get(ground));
    }

    private static Map<String, String> colours(boolean dark, String sheet) throws IOException {
        Map<String, String> colours = new HashMap<>();
        Matcher block = BLOCK.matcher(Files.readString(Path.of("static/css/" + sheet + ".css")));
        while (block.find()) {
            if (block.group(1) == null || dark) {
                Matcher colour = COLOUR.matcher(block.group(2));
                while (colour.find()) {
                    colours.put(colour.group(1), colour.group(2));
                }
            }
        }
        return colours;
    }

    private static double contrast(String one, String other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(String colour) {
        return 0.2126 * channel(colour, 1) + 0.7152 * channel(colour, 3) + 0.0722 * channel(colour, 5);
    }

    private static double channel(String colour, int from) {
        double c = Integer.parseInt(colour.substring(from, from + 2), 16) / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }
}
