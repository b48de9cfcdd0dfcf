package benchpace.plan.colour;

/**
 * A colour as it is seen, in steps that look alike: Björn Ottosson, "A perceptual color space for image processing",
 * 2020; the same in CSS Color 4, section 9.
 *
 * @param lightness 0 of black to 1 of white
 * @param a         from green to red
 * @param b         from blue to yellow
 */
public record Oklab(double lightness, double a, double b) {
    private static final int HALVINGS = 24;

    public static Oklab of(Srgb colour) {
        double red = Srgb.light(colour.red());
        double green = Srgb.light(colour.green());
        double blue = Srgb.light(colour.blue());
        double l = Math.cbrt(0.4122214708 * red + 0.5363325363 * green + 0.0514459929 * blue);
        double m = Math.cbrt(0.2119034982 * red + 0.6806995451 * green + 0.1073969566 * blue);
        double s = Math.cbrt(0.0883024619 * red + 0.2817188376 * green + 0.6299787005 * blue);
        return new Oklab(0.2104542553 * l + 0.7936177850 * m - 0.0040720468 * s,
                1.9779984951 * l - 2.4285922050 * m + 0.4505937099 * s,
                0.0259040371 * l + 0.7827717662 * m - 0.8086757660 * s);
    }

    /** @param hue in degrees, from red over yellow */
    public static Oklab ofHue(double lightness, double chroma, double hue) {
        return new Oklab(lightness, chroma * Math.cos(Math.toRadians(hue)), chroma * Math.sin(Math.toRadians(hue)));
    }

    /** How far it is from grey: 0 to about 0.32 on a screen. */
    public double chroma() {
        return Math.hypot(a, b);
    }

    /** In degrees, 0 to 360; of grey any. */
    public double hue() {
        double degrees = Math.toDegrees(Math.atan2(b, a));
        return degrees < 0 ? degrees + 360 : degrees;
    }

    /** How different two colours look: 0.02 is just seen side by side. */
    public double distance(Oklab other) {
        return Math.sqrt(Math.pow(lightness - other.lightness, 2) + Math.pow(a - other.a, 2)
                + Math.pow(b - other.b, 2));
    }

    /** The same hue, lighter or darker. */
    public Oklab at(double otherLightness) {
        return new Oklab(otherLightness, a, b);
    }

    /** With so much of its colour. @param share 0 for grey to 1 for all */
    Oklab paler(double share) {
        return new Oklab(lightness, a * share, b * share);
    }

    /** Of this lightness and hue, with as much of its colour as a screen can show. */
    public Srgb onScreen() {
        if (shown()) {
            return coded();
        }
        double possible = 0;
        double impossible = 1;
        for (int i = 0; i < HALVINGS; i++) {
            double between = (possible + impossible) / 2;
            if (paler(between).shown()) {
                possible = between;
            } else {
                impossible = between;
            }
        }
        return paler(possible).coded();
    }

    private boolean shown() {
        for (double part : light()) {
            if (part < -0.0001 || part > 1.0001) {
                return false;
            }
        }
        return true;
    }

    private Srgb coded() {
        double[] light = light();
        return Srgb.ofLight(light[0], light[1], light[2]);
    }

    private double[] light() {
        double l = Math.pow(lightness + 0.3963377774 * a + 0.2158037573 * b, 3);
        double m = Math.pow(lightness - 0.1055613458 * a - 0.0638541728 * b, 3);
        double s = Math.pow(lightness - 0.0894841775 * a - 1.2914855480 * b, 3);
        return new double[] {4.0767416621 * l - 3.3077115913 * m + 0.2309699292 * s,
            -1.2684380046 * l + 2.6097574011 * m - 0.3413193965 * s,
            -0.0041960863 * l - 0.7034186147 * m + 1.7076147010 * s};
    }
}
