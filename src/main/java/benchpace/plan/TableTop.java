package benchpace.plan;

/** What a vessel stands on. Conductivities: Incropera and DeWitt, 6th ed., table A.3 at 300 K. */
public enum TableTop {
    /** Hardwood (oak, maple). */
    WOOD(0.16),
    /** Granite, Barre; marble is alike. */
    STONE(2.79),
    /** Cork board or a thick cork mat. */
    CORK(0.039);

    private final double conductivityWMK;

    TableTop(double conductivityWMK) {
        this.conductivityWMK = conductivityWMK;
    }

    /** Conductivity, W/(m K). */
    public double conductivityWMK() {
        return conductivityWMK;
    }
}
