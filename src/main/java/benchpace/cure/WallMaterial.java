package benchpace.cure;

import benchpace.plan.Vessel;

/**
 * Thermal numbers of a vessel's wall.
 *
 * @param conductivityWMK W/(m K)
 * @param densityKgM3 kg/m3
 * @param specificHeatJKgK J/(kg K)
 * @param emissivity of the outside, 0 to 1
 */
record WallMaterial(double conductivityWMK, double densityKgM3, double specificHeatJKgK, double emissivity) {

    /**
     * Of a vessel's material. Glass: plate (soda lime), Incropera and DeWitt, 6th ed., table A.3, emissivity table
     * A.11. Tin: tinned steel sheet, carbon steel AISI 1010 of table A.1; emissivity of bright but lacquered tinplate
     * from memory. Ceramic: dense stoneware, from memory.
     */
    static WallMaterial of(Vessel.Material material) {
        return switch (material) {
            case GLASS -> new WallMaterial(1.4, 2500, 750, 0.90);
            case TIN -> new WallMaterial(63.9, 7832, 434, 0.20);
            case CERAMIC -> new WallMaterial(1.5, 2300, 880, 0.92);
        };
    }

    /** Heat capacity of a wall per area, J/(m2 K). */
    double capacity(double thicknessMetres) {
        return densityKgM3 * specificHeatJKgK * thicknessMetres;
    }
}
