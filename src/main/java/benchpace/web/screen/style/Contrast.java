package benchpace.web.screen.style;

/**
 * Contrast of two colours as WCAG 2.2 defines it: (L1 + 0.05) / (L2 + 0.05) with the relative luminance of sRGB
 * (https://www.w3.org/TR/WCAG22/#dfn-contrast-ratio), not rounded.
 */
public final class Contrast {
    /** Of words that are read from afar, or at length (1.4.6). */
    public static final double ENHANCED = 7;
    /** Of all other words (1.4.3). */
    public static final double TEXT = 4.5;
    /** Of the edges of controls, and of marks (1.4.11). */
    public static final double EDGE = 3;

    private Contrast() { }

    /** @param one, other as {@code #rrggbb} @return from 1 to 21 */
    public static double of(String one, String other) {
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
