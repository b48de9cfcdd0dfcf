package benchpace.web.plans;

import benchpace.files.plan.WaxFile;
import benchpace.plan.BrimFill;
import benchpace.plan.Wax;
import benchpace.plan.kit.LoadConvention;
import benchpace.units.UnitChoice;
import benchpace.words.FragranceWords;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.LinkedHashMap;
import java.util.Map;

/** What figures that were typed come to: said beside them, whether the rest of the plan is sound or not. */
final class EditBeside {
    private final UnitChoice units;
    private final Map<String, String> beside = new LinkedHashMap<>();

    private EditBeside(UnitChoice units) {
        this.units = units;
    }

    /** By the place of the field. */
    static Map<String, String> of(JsonNode plan, UnitChoice units) {
        EditBeside all = new EditBeside(units);
        int n = 0;
        for (JsonNode candle : plan.path("candles")) {
            all.fragrance(candle, "/candles/" + n);
            all.fill(candle, "/candles/" + n);
            n++;
        }
        return all.beside;
    }

    private void fragrance(JsonNode candle, String place) {
        for (LoadConvention convention : LoadConvention.values()) {
            JsonNode percent = candle.path(convention == LoadConvention.OF_WAX ? "fragrancePercentOfWax"
                    : "fragrancePercentOfTotal");
            if (percent.isNumber() && percent.doubleValue() >= 0 && percent.doubleValue() < 100) {
                beside.put(place + "/_percent", FragranceWords.both(convention.fractionOfTotal(percent.doubleValue())));
            }
        }
    }

    /** The mass that a volume comes to, of a wax that comes with the program. */
    private void fill(JsonNode candle, String place) {
        JsonNode brim = candle.path("brimMillilitres");
        JsonNode share = candle.path("fillFraction");
        if (brim.isNumber() && share.isNumber()) {
            WaxFile.builtIn().stream().map(WaxFile.SourcedWax::wax)
                    .filter(wax -> wax.id().equals(candle.path("wax").textValue())).findFirst()
                    .ifPresent(wax -> fill(brim.doubleValue(), share.doubleValue(), wax, place));
        }
    }

    private void fill(double brim, double share, Wax wax, String place) {
        try {
            beside.put(place + "/_fillPercent", units.mass(new BrimFill(brim, share).grams(wax)));
        } catch (IllegalArgumentException toldAtItsField) {
            beside.remove(place + "/_fillPercent");
        }
    }
}
