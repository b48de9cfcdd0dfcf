package benchpace.web.plans;

import benchpace.plan.kit.LoadConvention;
import benchpace.words.FragranceWords;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.LinkedHashMap;
import java.util.Map;

/** What figures that were typed come to: said beside them, whether the rest of the plan is sound or not. */
final class EditBeside {
    private EditBeside() { }

    /** By the place of the field. */
    static Map<String, String> of(JsonNode plan) {
        Map<String, String> beside = new LinkedHashMap<>();
        int n = 0;
        for (JsonNode candle : plan.path("candles")) {
            fragrance(candle, "/candles/" + n, beside);
            n++;
        }
        return beside;
    }

    private static void fragrance(JsonNode candle, String place, Map<String, String> beside) {
        for (LoadConvention convention : LoadConvention.values()) {
            JsonNode percent = candle.path(convention == LoadConvention.OF_WAX ? "fragrancePercentOfWax"
                    : "fragrancePercentOfTotal");
            if (percent.isNumber() && percent.doubleValue() >= 0 && percent.doubleValue() < 100) {
                beside.put(place + "/_percent", FragranceWords.both(convention.fractionOfTotal(percent.doubleValue())));
            }
        }
    }
}
