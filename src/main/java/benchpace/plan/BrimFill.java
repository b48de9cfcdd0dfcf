package benchpace.plan;

/**
 * A fill told by the vessel: so much of what it holds to the brim.
 *
 * @param brimMillilitres 1 to 100,000
 * @param fraction        of the brim's volume, 0.01 to 1
 */
public record BrimFill(double brimMillilitres, double fraction) {
    public BrimFill {
        if (!(brimMillilitres >= 1 && brimMillilitres <= 100_000)) {
            throw new IllegalArgumentException("the volume to the brim must be 1 to 100000 millilitres, not "
                    + brimMillilitres);
        }
        if (!(fraction >= 0.01 && fraction <= 1)) {
            throw new IllegalArgumentException("the share of the brim that is filled must be 0.01 to 1, not "
                    + fraction);
        }
    }

    /** The mass that fills it so far: volume x share x the density of the wax as plans give it. */
    public double grams(Wax wax) {
        return brimMillilitres * fraction * wax.densityKgM3() / 1000;
    }
}
