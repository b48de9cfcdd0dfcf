package benchpace.cure.room;

import benchpace.cure.CoolingCase;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

/** The open cases and the milestones an independent reference solver of the same model found for them. */
public final class OpenCases {
    /** One case with the reference's minutes and its change to a coarser grid. */
    public record Open(String id, CoolingCase c, JsonNode expected) {
        double minutes(String milestone) {
            return expected.get(milestone).asDouble();
        }

        @Override
        public String toString() {
            return id;
        }
    }

    private OpenCases() { }

    public static List<Open> all() {
        JsonNode cases = read("open-cases.json");
        JsonNode expected = read("open-expected.json");
        List<Open> all = new ArrayList<>();
        for (int i = 0; i < cases.size(); i++) {
            JsonNode one = cases.get(i);
            String[] names = CoolingCase.fieldNames();
            double[] numbers = new double[names.length];
            for (int j = 0; j < names.length; j++) {
                numbers[j] = one.get(names[j]).asDouble();
            }
            all.add(new Open(one.get("id").asText(), CoolingCase.of(numbers), expected.get(i)));
        }
        return all;
    }

    public static CoolingCase first() {
        return all().get(0).c();
    }

    private static JsonNode read(String name) {
        try {
            return new ObjectMapper().readTree(OpenCases.class.getResource("/benchpace/cure/" + name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
