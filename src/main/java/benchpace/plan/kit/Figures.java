package benchpace.plan.kit;

/** Checks of the figures that people write into plans; each message names the figure, its range and its unit. */
final class Figures {
    private Figures() { }

    /** @throws IllegalArgumentException if {@code value} is not a number from {@code least} to {@code most} */
    static double within(String what, double value, double least, double most, String unit) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(what + " must be " + plain(least) + " to " + plain(most)
                    + (unit.isEmpty() ? "" : " " + unit) + ", not " + plain(value));
        }
        return value;
    }

    private static String plain(double value) {
        boolean whole = value == Math.rint(value) && Math.abs(value) < 1e9;
        return whole ? Long.toString((long) value) : Double.toString(value);
    }
}
