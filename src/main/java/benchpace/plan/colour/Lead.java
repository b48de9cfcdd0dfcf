package benchpace.plan.colour;

import java.util.Optional;

/**
 * What leads on on a screen, made of the one colour that a studio chose: as it is where words in it can be read, else
 * darker by day or lighter by night, its hue kept.
 *
 * @param lead   words and marks in the studio's colour: at least {@value #CONTRAST} to 1 against every ground
 * @param onLead words upon it: at least {@value #CONTRAST} to 1 against it
 */
public record Lead(Srgb lead, Srgb onLead) {
    /** WCAG 2.2, success criterion 1.4.6: contrast of text, enhanced. */
    public static final double CONTRAST = 7;
    /** Closer than this to what tells of trouble, a colour is easily taken for it; chosen by eye. */
    private static final double LOOKS_ALIKE = 0.06;
    private static final double STEP = 1 / 256.0;
    private static final double NIGHT_WORDS = 0.23;
    private static final double NIGHT_TINT = 0.03;

    /** Whether it may be taken for one of the colours that tell of trouble. */
    public enum Resembles { NOTHING, BEHIND, SLIPPING }

    /** @param chosen nothing where the usual one will do */
    public static Lead of(Optional<Srgb> chosen, Light light) {
        return chosen.map(colour -> of(colour, light)).orElseGet(light::usual);
    }

    /** @param chosen any colour at all */
    public static Lead of(Srgb chosen, Light light) {
        Srgb lead = readable(chosen, light);
        return new Lead(lead, light == Light.DAY ? Srgb.WHITE : onLight(lead));
    }

    private static Srgb readable(Srgb chosen, Light light) {
        if (readsOn(chosen, light)) {
            return chosen;
        }
        Oklab seen = Oklab.of(chosen);
        double step = light == Light.DAY ? -STEP : STEP;
        for (double lightness = seen.lightness() + step; lightness > 0 && lightness < 1; lightness += step) {
            Srgb nearer = seen.at(lightness).onScreen();
            if (readsOn(nearer, light)) {
                return nearer;
            }
        }
        return light == Light.DAY ? Srgb.BLACK : Srgb.WHITE;
    }

    /** Darker than every ground by day, and lighter by night, so that words upon it stand out as well. */
    private static boolean readsOn(Srgb colour, Light light) {
        return light.grounds().stream().allMatch(ground -> colour.contrast(ground) >= CONTRAST
                && (light == Light.DAY) == (colour.luminance() < ground.luminance()));
    }

    /** Nearly black, with a breath of the colour. */
    private static Srgb onLight(Srgb lead) {
        Oklab seen = Oklab.of(lead);
        double share = seen.chroma() == 0 ? 0 : Math.min(1, NIGHT_TINT / seen.chroma());
        Srgb tinted = seen.at(NIGHT_WORDS).paler(share).onScreen();
        return tinted.contrast(lead) >= CONTRAST ? tinted : Srgb.BLACK;
    }

    /** What it may be taken for in that light: the nearer one. */
    public Resembles resembles(Light light) {
        double behind = distance(light.behind());
        double slipping = light.slipping().stream().mapToDouble(this::distance).min().orElseThrow();
        return Math.min(behind, slipping) >= LOOKS_ALIKE ? Resembles.NOTHING
                : behind < slipping ? Resembles.BEHIND : Resembles.SLIPPING;
    }

    private double distance(Srgb trouble) {
        return Oklab.of(lead).distance(Oklab.of(trouble));
    }
}
