package benchpace.cure;

/** What the vessel stands on. Conductivities: Incropera and DeWitt, 6th ed., table A.3 at 300 K. */
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

    /**
     * Coefficient from a round base into a thick table, W/(m2 K): shape factor S = 2 D of a disk on a semi-infinite
     * medium (Incropera, 6th ed., table 4.1) over the disk's area, h = 8 k / (pi D). Steady state: in the first minutes
     * a stone table takes more.
     */
    public double intoTable(double diameterMetres) {
        return 8 * conductivityWMK / (Math.PI * diameterMetres);
    }
}
