package benchpace.files;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;

/**
 * The one way JSON is read and written here (RFC 8259): a name twice in an object, text after the value, deep nesting
 * and endless numbers are refused; times are RFC 3339 text.
 */
public final class Json {
    /** Deepest nesting that is read; a plan needs five. */
    static final int DEEPEST = 40;

    private static final StreamReadConstraints LIMITS = StreamReadConstraints.builder()
            .maxNestingDepth(DEEPEST)
            .maxNumberLength(64)
            .maxNameLength(200)
            .maxStringLength(100_000)
            .maxDocumentLength(64L * 1024 * 1024)
            .build();

    private static final JsonMapper MAPPER = JsonMapper.builder(
                    JsonFactory.builder().streamReadConstraints(LIMITS).build())
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private Json() { }

    /** The mapper itself, for frameworks that want one. It must not be reconfigured. */
    public static JsonMapper mapper() {
        return MAPPER;
    }

    /** @throws JsonProcessingException if the text is not one JSON value within the limits */
    public static JsonNode read(String text) throws JsonProcessingException {
        return MAPPER.readTree(text);
    }

    /** @throws JsonProcessingException if the bytes are not one JSON value within the limits, in UTF-8 */
    public static JsonNode read(byte[] bytes) throws IOException {
        return MAPPER.readTree(bytes);
    }

    /** @throws JsonProcessingException if the stream does not hold one JSON value within the limits */
    public static JsonNode read(InputStream in) throws IOException {
        return MAPPER.readTree(in);
    }

    public static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }

    /** On one line. */
    public static String text(JsonNode node) {
        try {
            return MAPPER.writeValueAsString(node);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a tree of JSON cannot be written", e);
        }
    }

    /** Indented, for people. */
    public static String pretty(JsonNode node) {
        try {
            return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(node);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a tree of JSON cannot be written", e);
        }
    }

    /** What is wrong with text that is no JSON, and where, for people. */
    public static Finding problem(JsonProcessingException e) {
        String place = e.getLocation() == null || e.getLocation().getLineNr() < 1 ? ""
                : "line " + e.getLocation().getLineNr() + ", column " + e.getLocation().getColumnNr();
        return new Finding(place, "is not sound JSON: " + JsonWords.of(e));
    }
}
