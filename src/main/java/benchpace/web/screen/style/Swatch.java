package benchpace.web.screen.style;

import benchpace.plan.colour.Lead;
import benchpace.plan.colour.Srgb;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/**
 * A colour and what it is seen on, by day and by night.
 *
 * @param name   of the colour
 * @param ground the name of what it stands on
 * @param least  the ratio that it has to reach there
 */
public record Swatch(String name, String ground, double least, Side day, Side night) {
    /** Of words that are read from afar, or at length (WCAG 2.2, 1.4.6). */
    private static final double ENHANCED = Lead.CONTRAST;
    /** Of all other words (1.4.3). */
    private static final double TEXT = 4.5;
    /** Of the edges of controls, and of marks (1.4.11). */
    private static final double EDGE = 3;
    private static final List<String> GROUNDS = List.of("paper", "card", "wood", "slip-paper", "done-paper");

    /**
     * In one light.
     *
     * @param colour, ground as {@code #rrggbb}
     * @param ratio  as it is told: "12.4", rounded down, so that nothing is told better than it is
     */
    public record Side(String colour, String ground, String ratio, boolean enough) {
        private static Side of(Map<String, String> tokens, String name, String ground, double least) {
            double ratio = Srgb.of(tokens.get(name)).contrast(Srgb.of(tokens.get(ground)));
            return new Side(tokens.get(name), tokens.get(ground),
                    String.format(Locale.ROOT, "%.1f", Math.floor(ratio * 10) / 10), ratio >= least);
        }
    }

    /** The pairs that stand on screens, each with what is asked of it. */
    public static List<Swatch> all(Tokens tokens) {
        return Stream.of(
                        GROUNDS.stream().map(ground -> of(tokens, "ink", ground, ENHANCED)),
                        Stream.of("paper", "card", "done-paper").flatMap(ground -> Stream.of("soft", "calm")
                                .map(text -> of(tokens, text, ground, TEXT))),
                        Stream.of(of(tokens, "slip", "slip-paper", TEXT),
                                of(tokens, "on-behind", "behind", ENHANCED),
                                of(tokens, "on-lead", "lead", ENHANCED)),
                        Stream.of("edge", "slip-edge", "behind", "lead", "focus")
                                .map(edge -> of(tokens, edge, "paper", EDGE)))
                .flatMap(swatches -> swatches).toList();
    }

    private static Swatch of(Tokens tokens, String name, String ground, double least) {
        return new Swatch(name, ground, least, Side.of(tokens.day(), name, ground, least),
                Side.of(tokens.night(), name, ground, least));
    }
}
