package benchpace.files.prep;

import benchpace.files.Json;
import benchpace.files.Words;
import benchpace.prep.circuit.CircuitLine;
import benchpace.prep.evening.Timetable;
import benchpace.prep.melter.MelterLine;
import benchpace.prep.melter.Refill;
import benchpace.prep.sheet.PrepSheet;
import benchpace.prep.supply.SupplyLine;
import benchpace.prep.wax.CandleLine;
import benchpace.prep.wax.WaxTotals;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A prep sheet as JSON. Grams, minutes, amperes, in full precision; what could not be worked out is {@code null}. The
 * totals bear the allowance for spills, the candles do not. The names are a promise to who reads them.
 */
public final class PrepJson {
    private PrepJson() { }

    /** @param problems what is wrong, in sentences, in the order of the sheet */
    public static ObjectNode write(PrepSheet sheet, List<String> problems) {
        ObjectNode json = Json.object();
        json.put("seats", sheet.seats());
        ArrayNode candles = json.putArray("candles");
        sheet.candles().forEach(line -> candle(candles.addObject(), line));
        totals(json, sheet.totals());
        ArrayNode melters = json.putArray("melters");
        sheet.melters().forEach(line -> melter(melters.addObject(), line));
        ArrayNode circuits = json.putArray("circuits");
        sheet.circuits().forEach(line -> circuit(circuits.addObject(), line));
        ArrayNode supplies = json.putArray("supplies");
        sheet.supplies().forEach(line -> supply(supplies.addObject(), line));
        cost(json, sheet);
        timetable(json, sheet.timetable());
        ArrayNode told = json.putArray("problems");
        problems.forEach(told::add);
        return json;
    }

    private static void candle(ObjectNode json, CandleLine line) {
        json.put("candle", line.candle().id()).put("seats", line.seats())
                .put("waxGramsPerSeat", line.waxGramsPerSeat())
                .put("fragranceGramsPerSeat", line.fragranceGramsPerSeat())
                .put("fragrancePercentOfWax", line.fragrancePercentOfWax())
                .put("fragrancePercentOfTotal", line.fragrancePercentOfTotal())
                .put("load", Words.of(line.load()));
    }

    private static void totals(ObjectNode json, Optional<WaxTotals> totals) {
        totals.ifPresentOrElse(t -> json.putObject("totals").put("waxGrams", t.waxGrams())
                .put("fragranceGrams", t.fragranceGrams()), () -> json.putNull("totals"));
    }

    private static void melter(ObjectNode json, MelterLine line) {
        json.put("id", line.melter().id());
        put(json, "neededGrams", line.neededGrams());
        if (line.fills().isPresent()) {
            json.put("fills", line.fills().getAsLong());
        } else {
            json.putNull("fills");
        }
        put(json, "firstFillGrams", line.firstFillGrams());
        put(json, "heatKilojoules", line.heatKilojoules());
        put(json, "meltMinutes", line.meltMinutes());
        put(json, "switchOnMinutesBefore", line.switchOnMinutesBefore());
        ArrayNode refills = json.putArray("refills");
        for (Refill refill : line.refills()) {
            ObjectNode one = refills.addObject().put("fill", refill.number()).put("afterSeats", refill.afterSeats())
                    .put("coldGrams", refill.topUp().coldGrams()).put("mixCelsius", refill.topUp().mixCelsius())
                    .put("liquidFraction", refill.topUp().liquidFraction());
            put(one, "minutes", refill.minutes());
        }
    }

    private static void circuit(ObjectNode json, CircuitLine line) {
        json.put("id", line.circuit().id());
        put(json, "designAmps", line.designAmps());
        json.put("verdict", line.verdict().map(Words::of).orElse(null));
    }

    private static void supply(ObjectNode json, SupplyLine line) {
        json.put("id", line.supply().id()).put("needed", line.needed());
        if (line.toBuy() == Math.rint(line.toBuy())) {
            json.put("toBuy", (long) line.toBuy());
        } else {
            json.put("toBuy", line.toBuy());
        }
        json.put("packs", line.packs());
    }

    private static void cost(ObjectNode json, PrepSheet sheet) {
        ObjectNode cost = json.putObject("cost");
        put(cost, "perSeat", sheet.cost().perSeat());
        put(cost, "perClass", sheet.cost().perClass());
        put(cost, "toBuy", sheet.shopping().price());
    }

    private static void timetable(ObjectNode json, Optional<Timetable> timetable) {
        timetable.ifPresentOrElse(t -> json.putObject("timetable").put("promisedMinutes", t.promisedMinutes())
                .put("chanceOnTime", t.onTime().share()).put("standardError", t.onTime().standardError())
                .put("p10Minutes", t.done().p10()).put("p50Minutes", t.done().p50())
                .put("p90Minutes", t.done().p90()).put("evenings", t.evenings()), () -> json.putNull("timetable"));
    }

    private static void put(ObjectNode json, String name, OptionalDouble value) {
        if (value.isPresent()) {
            json.put(name, value.getAsDouble());
        } else {
            json.putNull(name);
        }
    }
}
