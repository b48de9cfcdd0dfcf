package benchpace.files.plan;

import benchpace.files.BadFile;
import benchpace.plan.Wax;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The wax data: thermal numbers of candle waxes, each number with its source. */
public final class WaxFile {
    private static final String[] NUMBERS = {"densityKgM3", "specificHeatSolidJKgK", "specificHeatLiquidJKgK",
        "latentHeatJKg", "solidusCelsius", "liquidusCelsius", "conductivitySolidWMK", "conductivityLiquidWMK"};

    /**
     * A wax and where its numbers come from.
     *
     * @param wax the numbers
     * @param sources by the wax's component name, in its order
     */
    public record SourcedWax(Wax wax, Map<String, String> sources) {
        public SourcedWax {
            sources = Collections.unmodifiableMap(new LinkedHashMap<>(sources));
        }
    }

    private WaxFile() { }

    /** The waxes that come with the program. */
    public static List<SourcedWax> builtIn() {
        try (InputStream in = WaxFile.class.getResourceAsStream("/benchpace/cure/waxes.json")) {
            return read("waxes.json", in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (BadFile e) {
            throw new IllegalStateException(e);
        }
    }

    /** A wax with all its numbers, as plans write it out. */
    public static ObjectNode write(Wax wax) {
        return CandleJson.wax(wax);
    }

    /**
     * Reads a wax file.
     *
     * @throws BadFile naming the wax and the field at fault
     * @throws IOException when the stream cannot be read
     */
    public static List<SourcedWax> read(String name, InputStream in) throws IOException {
        JsonNode waxes;
        try {
            waxes = new ObjectMapper().readTree(in).path("waxes");
        } catch (JsonProcessingException e) {
            throw new BadFile(name + " is not valid JSON.");
        }
        if (!waxes.isArray()) {
            throw new BadFile(name + " has no list named waxes.");
        }
        List<SourcedWax> all = new ArrayList<>();
        for (JsonNode node : waxes) {
            all.add(one(name + ", wax " + (all.size() + 1), node));
        }
        return List.copyOf(all);
    }

    private static SourcedWax one(String where, JsonNode node) {
        String id = text(where, node, "id");
        double[] n = new double[NUMBERS.length];
        Map<String, String> sources = new LinkedHashMap<>();
        for (int i = 0; i < NUMBERS.length; i++) {
            JsonNode field = node.path(NUMBERS[i]);
            if (!field.path("value").isNumber()) {
                throw new BadFile(where + " (" + id + "): " + NUMBERS[i] + " needs a number as its value.");
            }
            n[i] = field.get("value").doubleValue();
            sources.put(NUMBERS[i], text(where + ", " + NUMBERS[i], field, "source"));
        }
        try {
            Wax wax = new Wax(id, text(where, node, "name"), n[0], n[1], n[2], n[3], n[4], n[5], n[6], n[7],
                    node.path("calibrated").asBoolean(false));
            return new SourcedWax(wax, sources);
        } catch (IllegalArgumentException e) {
            throw new BadFile(where + " (" + id + "): " + e.getMessage() + ".");
        }
    }

    private static String text(String where, JsonNode node, String field) {
        JsonNode text = node.path(field);
        if (!text.isTextual() || text.asText().isBlank()) {
            throw new BadFile(where + ": " + field + " is missing.");
        }
        return text.asText();
    }
}
