package benchpace.web.screen.style;

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
    private static final List<String> GROUNDS = List.of("paper", "card", "wood", "slip-paper", "done-paper");

    /**
     * In one light.
     *
     * @param colour, ground as {@code #rrggbb}
     * @param ratio  as it is told: "12.4", rounded down, so that nothing is told better than it is
     */
    public record Side(String colour, String ground, String ratio, boolean enough) {
        private static Side of(Map<String, String> tokens, String name, String ground, double least) {
            double ratio = Contrast.of(tokens.get(name), tokens.get(ground));
            return new Side(tokens.get(name), tokens.get(ground),
                    String.format(Locale.ROOT, "%.1f", Math.floor(ratio * 10) / 10), ratio >= least);
        }
    }

    /** The pairs that stand on screens, each with what is asked of it. */
    public static List<Swatch> all(Tokens tokens) {
        return Stream.of(
                        GROUNDS.stream().map(ground -> of(tokens, "ink", ground, Contrast.ENHANCED)),
                        Stream.of("paper", "card", "done-paper").flatMap(ground -> Stream.of("soft", "calm")
                                .map(text -> of(tokens, text, ground, Contrast.TEXT))),
                        Stream.of(of(tokens, "slip", "slip-paper", Contrast.TEXT),
                                of(tokens, "on-behind", "behind", Contrast.ENHANCED),
                                of(tokens, "on-lead", "lead", Contrast.ENHANCED)),
                        Stream.of("edge", "slip-edge", "behind", "lead", "focus")
                                .map(edge -> of(tokens, edge, "paper", Contrast.EDGE)))
                .flatMap(swatches -> swatches).toList();
    }

    private static Swatch of(Tokens tokens, String name, String ground, double least) {
        return new Swatch(name, ground, least, Side.of(tokens.day(), name, ground, least),
                Side.of(tokens.night(), name, ground, least));
    }
}
