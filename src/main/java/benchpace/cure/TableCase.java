package benchpace.cure;

import benchpace.plan.TableTop;
import benchpace.plan.Vessel;
import benchpace.plan.Wax;
import java.util.Optional;

/**
 * A candle on a real table, from which its {@link CoolingCase} is computed.
 *
 * <p>Loss coefficients are constants of the case, taken at the temperature that its surfaces have for most of the
 * setting (see {@link #surfaceCelsius}): wall conduction in series with air and radiation at the side; air and
 * radiation on top; base, air gap and table below. Not modelled, and part of why a real candle differs: the rim above
 * the wax, neighbours, lids, shrinkage, the first minutes of a stone table.
 *
 * <p>Fragrance counts in the mass poured. The oil does not crystallise, so its share carries no latent heat; it leaves
 * the melting range alone unless the wax is given a shift ({@link Wax#withMeltingRangeMoved}).
 *
 * @param vessel what it was poured into
 * @param wax what was poured
 * @param fillGrams wax and fragrance together, grams
 * @param fragranceFraction fragrance as a share of all that was poured, 0 to 0.25
 * @param roomCelsius room temperature
 * @param pourCelsius measured in the pitcher at the pour
 * @param tableTop what the vessel stands on
 * @param draughtMetresPerSecond air speed over the table, 0 for still air, at most 5
 * @param lossMultiplier the room's correction of all losses, 0.2 to 5; 1 as computed
 */
public record TableCase(Vessel vessel, Wax wax, double fillGrams, double fragranceFraction, double roomCelsius,
        double pourCelsius, TableTop tableTop, double draughtMetresPerSecond, double lossMultiplier) {

    /** Wax surfaces radiate nearly as black bodies; from memory. */
    private static final double WAX_EMISSIVITY = 0.95;
    /** Mean air gap under a vessel's foot, metres; a hollow glass bottom, common practice, no source. */
    private static final double FOOT_GAP_METRES = 0.001;

    /** A candle in still air in a room that has taught nothing yet. */
    public static TableCase of(Vessel vessel, Wax wax, double fillGrams, double fragranceFraction, double roomCelsius,
            double pourCelsius, TableTop tableTop, double lossMultiplier) {
        return new TableCase(vessel, wax, fillGrams, fragranceFraction, roomCelsius, pourCelsius, tableTop, 0,
                lossMultiplier);
    }

    /** Why there is no cooling case for this candle; empty when there is one. Field names are this record's. */
    public Optional<CaseFault> fault() {
        if (!(fillGrams > 0 && fillGrams <= 100_000)) {
            return refused("fillGrams", "(" + fillGrams + ") must be more than zero and at most 100000");
        }
        if (fillHeightMetres() * 1000 > vessel.brimHeightMillimetres() * 1.001) {
            return refused("fillGrams", "(" + fillGrams + ") would run over the brim of this vessel");
        }
        if (!(fragranceFraction >= 0 && fragranceFraction <= 0.25)) {
            return refused("fragranceFraction", "(" + fragranceFraction + ") lies outside 0 to 0.25");
        }
        if (!(roomCelsius >= -10 && roomCelsius <= wax.solidusCelsius())) {
            return refused("roomCelsius", "(" + roomCelsius + ") lies outside -10 to the wax's solidus ("
                    + wax.solidusCelsius() + "), so the wax would never set");
        }
        if (!(pourCelsius >= wax.liquidusCelsius() && pourCelsius <= 150)) {
            return refused("pourCelsius", "(" + pourCelsius + ") lies outside the wax's liquidus ("
                    + wax.liquidusCelsius() + ") to 150");
        }
        if (!(draughtMetresPerSecond >= 0 && draughtMetresPerSecond <= 5)) {
            return refused("draughtMetresPerSecond", "(" + draughtMetresPerSecond + ") lies outside 0 to 5");
        }
        if (!(lossMultiplier >= 0.2 && lossMultiplier <= 5)) {
            return refused("lossMultiplier", "(" + lossMultiplier + ") lies outside 0.2 to 5");
        }
        return Optional.empty();
    }

    private static Optional<CaseFault> refused(String field, String reason) {
        return Optional.of(new CaseFault(field, reason));
    }

    /**
     * The case to solve.
     *
     * @throws IllegalArgumentException when {@link #fault} names a fault
     */
    public CoolingCase coolingCase() {
        fault().ifPresent(fault -> {
            throw new IllegalArgumentException(fault.field() + " " + fault.reason());
        });
        double wall = vessel.wallMillimetres() / 1000;
        double radius = vessel.innerDiameterMillimetres() / 2000;
        double capacity = WallMaterial.of(vessel.material()).capacity(wall);
        return new CoolingCase(vessel.innerDiameterMillimetres(), fillGrams, wax.densityKgM3(),
                wax.specificHeatSolidJKgK(), wax.specificHeatLiquidJKgK(),
                wax.latentHeatJKg() * (1 - fragranceFraction),
                wax.solidusCelsius(), wax.liquidusCelsius(), wax.conductivitySolidWMK(), wax.conductivityLiquidWMK(),
                roomCelsius, pourCelsius, lossMultiplier * sideLoss(), lossMultiplier * baseLoss(),
                lossMultiplier * topLoss(), capacity * (1 + wall / (2 * radius)), capacity);
    }

    private double fillHeightMetres() {
        double radius = vessel.innerDiameterMillimetres() / 2000;
        return fillGrams / 1000 / (wax.densityKgM3() * Math.PI * radius * radius);
    }

    /**
     * The wax surface at which air and radiation are taken: 70 per cent of the way from the room to the middle of the
     * melting range. In the solved candles the middle of the top lies at 100 per cent of it at the skin, 80 at half
     * solid and 40 at firm; free convection changes only with the fourth root of this choice.
     */
    double surfaceCelsius() {
        double melt = (wax.solidusCelsius() + wax.liquidusCelsius()) / 2;
        return roomCelsius + 0.7 * (melt - roomCelsius);
    }

    /** Through the wall to air and room, W per m2 of wax surface and kelvin; the wall's outside found by iteration. */
    double sideLoss() {
        WallMaterial material = WallMaterial.of(vessel.material());
        double wall = vessel.wallMillimetres() / 1000;
        double inner = vessel.innerDiameterMillimetres() / 2000;
        double outer = inner + wall;
        double resistance = inner * Math.log(outer / inner) / material.conductivityWMK();
        double outside = surfaceCelsius();
        double loss = 0;
        for (int i = 0; i < 20; i++) {
            double film = Convection.side(outside, roomCelsius, fillHeightMetres(), 2 * outer, material.emissivity(),
                    draughtMetresPerSecond) * outer / inner;
            loss = 1 / (resistance + 1 / film);
            outside = surfaceCelsius() - loss * (surfaceCelsius() - roomCelsius) * resistance;
        }
        return loss;
    }

    double topLoss() {
        return Convection.top(surfaceCelsius(), roomCelsius, vessel.innerDiameterMillimetres() / 1000, WAX_EMISSIVITY,
                draughtMetresPerSecond);
    }

    /** Through base, air gap and table in series, W/(m2 K). */
    double baseLoss() {
        double base = vessel.wallMillimetres() / 1000 / WallMaterial.of(vessel.material()).conductivityWMK();
        double gap = FOOT_GAP_METRES / Air.film(surfaceCelsius(), roomCelsius).conductivity();
        return 1 / (base + gap + 1 / intoTable(vessel.innerDiameterMillimetres() / 1000));
    }

    /**
     * Coefficient from a round base into a thick table, W/(m2 K): shape factor S = 2 D of a disk on a semi-infinite
     * medium (Incropera, 6th ed., table 4.1) over the disk's area, h = 8 k / (pi D). Steady state: in the first minutes
     * a stone table takes more.
     */
    private double intoTable(double diameterMetres) {
        return 8 * tableTop.conductivityWMK() / (Math.PI * diameterMetres);
    }
}
