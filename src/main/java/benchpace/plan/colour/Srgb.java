package benchpace.plan.colour;

import java.util.Locale;
import java.util.regex.Pattern;

/**
 * A colour as screens are told it (IEC 61966-2-1), each part 0 to 255.
 *
 * @param red   0 to 255
 * @param green 0 to 255
 * @param blue  0 to 255
 */
public record Srgb(int red, int green, int blue) {
    public static final Srgb BLACK = new Srgb(0, 0, 0);
    public static final Srgb WHITE = new Srgb(255, 255, 255);
    private static final Pattern HEX = Pattern.compile("#[0-9a-fA-F]{6}");
    private static final int MOST = 255;

    public Srgb {
        for (int part : new int[] {red, green, blue}) {
            if (part < 0 || part > MOST) {
                throw new IllegalArgumentException("a part of a colour is 0 to 255, not " + part);
            }
        }
    }

    /** @param hex {@code #1f4d43}, in letters of either case */
    public static Srgb of(String hex) {
        if (!HEX.matcher(hex).matches()) {
            throw new IllegalArgumentException("a colour is written like #1f4d43, not \"" + hex + "\"");
        }
        int all = Integer.parseInt(hex.substring(1), 16);
        return new Srgb(all >> 16, all >> 8 & MOST, all & MOST);
    }

    /** Of light that is measured, each part 0 to 1; what lies beyond is cut. */
    static Srgb ofLight(double red, double green, double blue) {
        return new Srgb(coded(red), coded(green), coded(blue));
    }

    private static int coded(double light) {
        double coded = light <= 0.0031308 ? 12.92 * light : 1.055 * Math.pow(light, 1 / 2.4) - 0.055;
        return (int) Math.round(Math.min(1, Math.max(0, coded)) * MOST);
    }

    /** The light that a part gives, 0 to 1. */
    static double light(int part) {
        double coded = part / (double) MOST;
        return coded <= 0.04045 ? coded / 12.92 : Math.pow((coded + 0.055) / 1.055, 2.4);
    }

    /** {@code #1f4d43}. */
    public String hex() {
        return String.format(Locale.ROOT, "#%02x%02x%02x", red, green, blue);
    }

    /** Relative luminance, 0 of black to 1 of white (WCAG 2.2). */
    public double luminance() {
        return 0.2126 * light(red) + 0.7152 * light(green) + 0.0722 * light(blue);
    }

    /** The contrast of two colours, 1 to 21 (WCAG 2.2), whichever is the ground. */
    public double contrast(Srgb other) {
        double one = luminance() + 0.05;
        double two = other.luminance() + 0.05;
        return Math.max(one, two) / Math.min(one, two);
    }

    @Override public String toString() {
        return hex();
    }
}
