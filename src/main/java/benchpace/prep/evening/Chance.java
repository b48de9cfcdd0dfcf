package benchpace.prep.evening;

/**
 * How likely something is, as counted in simulated evenings.
 *
 * @param share         of the evenings, 0 to 1
 * @param standardError of that share: the root of share (1 - share) over the number of evenings
 */
public record Chance(double share, double standardError) {
    public Chance {
        if (!(share >= 0 && share <= 1 && standardError >= 0)) {
            throw new IllegalArgumentException("a chance of " + share + ", its error " + standardError);
        }
    }

    /** @param count how many evenings of {@code of} */
    static Chance of(int count, int of) {
        double share = (double) count / of;
        return new Chance(share, Math.sqrt(share * (1 - share) / of));
    }
}
