package benchpace.files.cure;

import benchpace.cure.CaseFault;
import benchpace.cure.CoolingCase;
import benchpace.cure.solver.CureMilestones;
import benchpace.files.BadFile;
import benchpace.files.SizedText;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.Writer;
import java.nio.charset.CharacterCodingException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The case file of the {@code cure} command: a JSON array of cooling cases, every quantity explicit; and its answer, an
 * array of milestones in the same order. Fields beyond the known ones are ignored.
 */
public final class CureCaseFile {
    /** One case of the file with the name it is answered under; names may repeat. */
    public record NamedCase(String id, CoolingCase coolingCase) { }

    // NaN and Infinity are read so that they can be refused by case and field instead of as a syntax error
    private static final ObjectMapper JSON = JsonMapper.builder()
            .enable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS).build();

    private CureCaseFile() { }

    /**
     * Reads all cases; the first bad one refuses the whole file.
     *
     * @param name what to call the file in a refusal
     * @throws BadFile naming the file, the case and the field
     * @throws IOException when the stream cannot be read
     */
    public static List<NamedCase> read(String name, InputStream in) throws IOException {
        try {
            return read(name, SizedText.read(in, SizedText.CASES));
        } catch (SizedText.TooLarge e) {
            throw new BadFile(name + " " + e.getMessage() + " of cooling cases.");
        } catch (CharacterCodingException e) {
            throw new BadFile(name + " is not text in UTF-8.");
        }
    }

    private static List<NamedCase> read(String name, String text) throws IOException {
        try (var parser = JSON.getFactory().createParser(text)) {
            if (parser.nextToken() != JsonToken.START_ARRAY) {
                throw new BadFile(name + " is not a JSON array of cooling cases.");
            }
            List<NamedCase> cases = new ArrayList<>();
            while (parser.nextToken() != JsonToken.END_ARRAY) {
                JsonNode node = JSON.readTree(parser);
                cases.add(one(name, cases.size() + 1, node));
            }
            if (parser.nextToken() != null) {
                throw new BadFile(name + " has something after its array of cooling cases.");
            }
            return List.copyOf(cases);
        } catch (JsonProcessingException e) {
            throw new BadFile(name + " is not valid JSON" + place(e) + ".");
        }
    }

    private static String place(JsonProcessingException e) {
        return e.getLocation() == null ? "" : " (line " + e.getLocation().getLineNr() + ", column "
                + e.getLocation().getColumnNr() + ")";
    }

    private static NamedCase one(String name, int number, JsonNode node) {
        if (node == null || !node.isObject()) {
            throw new BadFile(name + ", case " + number + ": it is not an object with the case's fields.");
        }
        JsonNode id = node.get("id");
        if (id == null || id.isNull()) {
            throw new BadFile(name + ", case " + number + ": field id is missing.");
        }
        if (!id.isTextual() || id.asText().isBlank()) {
            throw new BadFile(name + ", case " + number + ": field id must be a text that is not empty.");
        }
        String which = name + ", case " + number + " (" + shown(id.asText()) + "): field ";
        String[] fields = CoolingCase.fieldNames();
        double[] numbers = new double[fields.length];
        for (int i = 0; i < fields.length; i++) {
            numbers[i] = number(which + fields[i], node.get(fields[i]));
        }
        Optional<CaseFault> fault = CoolingCase.fault(numbers);
        if (fault.isPresent()) {
            throw new BadFile(which + fault.get().field() + " " + fault.get().reason() + ".");
        }
        return new NamedCase(id.asText(), CoolingCase.of(numbers));
    }

    private static double number(String which, JsonNode value) {
        if (value == null || value.isNull()) {
            throw new BadFile(which + " is missing.");
        }
        if (!value.isNumber()) {
            throw new BadFile(which + " must be a number.");
        }
        return value.doubleValue();
    }

    /** An id as it may stand in one line of text. */
    private static String shown(String id) {
        String line = id.replaceAll("\\p{Cntrl}", " ").strip();
        return line.length() <= 60 ? line : line.substring(0, 60) + "...";
    }

    /**
     * Writes the answers.
     *
     * @param found milestones of each case, in the cases' order
     */
    static void write(List<NamedCase> cases, List<CureMilestones> found, Writer out) throws IOException {
        try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
            json.disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
            json.useDefaultPrettyPrinter();
            json.writeStartArray();
            for (int i = 0; i < cases.size(); i++) {
                CureMilestones m = found.get(i);
                json.writeStartObject();
                json.writeStringField("id", cases.get(i).id());
                minutes(json, "skinMinutes", m.skinMinutes());
                minutes(json, "halfMinutes", m.halfMinutes());
                minutes(json, "firmMinutes", m.firmMinutes());
                minutes(json, "setMinutes", m.setMinutes());
                minutes(json, "handCoolMinutes", m.handCoolMinutes());
                json.writeNumberField("energyErrorFraction", m.energyErrorFraction());
                json.writeEndObject();
            }
            json.writeEndArray();
        }
    }

    private static void minutes(JsonGenerator json, String field, OptionalDouble value) throws IOException {
        if (value.isPresent()) {
            json.writeNumberField(field, Math.round(value.getAsDouble() * 1000) / 1000.0);
        } else {
            json.writeNullField(field);
        }
    }
}
