package benchpace.files.plan;

import benchpace.files.Json;
import benchpace.files.Words;
import benchpace.plan.Candle;
import benchpace.plan.Vessel;
import benchpace.plan.Wax;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** Writes what {@link CandleDraft} reads; the wax with all its numbers, so that a stored class needs no other file. */
final class CandleJson {
    private CandleJson() { }

    /** Fragrance per cent of the wax, as the trade reckons, to its share of all that is poured. */
    static double fractionOfAll(double percentOfWax) {
        return percentOfWax / (100 + percentOfWax);
    }

    static ObjectNode write(Candle candle) {
        ObjectNode node = Json.object().put("id", candle.id()).put("name", candle.name());
        node.set("vessel", vessel(candle.vessel()));
        node.set("wax", wax(candle.wax()));
        number(node, "fillGrams", candle.fillGrams());
        fragrance(node, candle.fragranceFraction());
        number(node, "roomCelsius", candle.roomCelsius());
        number(node, "pourCelsius", candle.pourCelsius());
        return node.put("tableTop", Words.of(candle.tableTop()));
    }

    private static ObjectNode vessel(Vessel vessel) {
        ObjectNode node = Json.object().put("id", vessel.id()).put("name", vessel.name())
                .put("material", Words.of(vessel.material()));
        number(node, "innerDiameterMm", vessel.innerDiameterMillimetres());
        number(node, "wallMm", vessel.wallMillimetres());
        number(node, "brimHeightMm", vessel.brimHeightMillimetres());
        return node;
    }

    private static ObjectNode wax(Wax wax) {
        ObjectNode node = Json.object().put("id", wax.id()).put("name", wax.name());
        number(node, "densityKgM3", wax.densityKgM3());
        number(node, "specificHeatSolidJKgK", wax.specificHeatSolidJKgK());
        number(node, "specificHeatLiquidJKgK", wax.specificHeatLiquidJKgK());
        number(node, "latentHeatJKg", wax.latentHeatJKg());
        number(node, "solidusCelsius", wax.solidusCelsius());
        number(node, "liquidusCelsius", wax.liquidusCelsius());
        number(node, "conductivitySolidWMK", wax.conductivitySolidWMK());
        number(node, "conductivityLiquidWMK", wax.conductivityLiquidWMK());
        return node.put("calibrated", wax.calibrated());
    }

    /** In the trade's per cent if that reads back as the very same share, which few odd numbers do not. */
    private static void fragrance(ObjectNode node, double fraction) {
        double exact = 100 * fraction / (1 - fraction);
        for (double percent : new double[] {Math.rint(exact * 1e6) / 1e6, exact}) {
            if (fractionOfAll(percent) == fraction) {
                number(node, "fragrancePercentOfWax", percent);
                return;
            }
        }
        node.put("fragranceFraction", fraction);
    }

    /** Whole numbers are written whole: people read these files. */
    private static void number(ObjectNode node, String field, double value) {
        if (value == Math.rint(value)) {
            node.put(field, (long) value);
        } else {
            node.put(field, value);
        }
    }
}
