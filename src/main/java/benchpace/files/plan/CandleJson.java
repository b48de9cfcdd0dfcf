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

    static ObjectNode write(Candle candle) {
        ObjectNode node = Json.object().put("id", candle.id()).put("name", candle.name());
        node.set("vessel", vessel(candle.vessel()));
        node.set("wax", wax(candle.wax()));
        candle.brim().ifPresentOrElse(brim -> {
            Numbers.put(node, "brimMillilitres", brim.brimMillilitres());
            Numbers.put(node, "fillFraction", brim.fraction());
        }, () -> Numbers.put(node, "fillGrams", candle.fillGrams()));
        new Fragrance(candle.fragranceFraction(), candle.convention()).write(node);
        Numbers.put(node, "roomCelsius", candle.roomCelsius());
        Numbers.put(node, "pourCelsius", candle.pourCelsius());
        node.put("tableTop", Words.of(candle.tableTop()));
        KitJson.typed(node, candle.asTyped());
        return node;
    }

    private static ObjectNode vessel(Vessel vessel) {
        ObjectNode node = Json.object().put("id", vessel.id()).put("name", vessel.name())
                .put("material", Words.of(vessel.material()));
        Numbers.put(node, "innerDiameterMm", vessel.innerDiameterMillimetres());
        Numbers.put(node, "wallMm", vessel.wallMillimetres());
        Numbers.put(node, "brimHeightMm", vessel.brimHeightMillimetres());
        return node;
    }

    static ObjectNode wax(Wax wax) {
        ObjectNode node = Json.object().put("id", wax.id()).put("name", wax.name());
        Numbers.put(node, "densityKgM3", wax.densityKgM3());
        Numbers.put(node, "specificHeatSolidJKgK", wax.specificHeatSolidJKgK());
        Numbers.put(node, "specificHeatLiquidJKgK", wax.specificHeatLiquidJKgK());
        Numbers.put(node, "latentHeatJKg", wax.latentHeatJKg());
        Numbers.put(node, "solidusCelsius", wax.solidusCelsius());
        Numbers.put(node, "liquidusCelsius", wax.liquidusCelsius());
        Numbers.put(node, "conductivitySolidWMK", wax.conductivitySolidWMK());
        Numbers.put(node, "conductivityLiquidWMK", wax.conductivityLiquidWMK());
        return node.put("calibrated", wax.calibrated());
    }
}
