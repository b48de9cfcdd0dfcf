package benchpace.files.log;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/**
 * Names of more than one line, which older boards let through: in a stored class they are read as one line, so that the
 * stricter rule of today takes no class away.
 */
final class OlderNames {
    private static final List<String> LINES = List.of("name", "place", "where", "ledBy");

    private OlderNames() { }

    /** The fields of a class's creation, each name on one line. */
    static JsonNode onOneLine(JsonNode created) {
        if (!created.isObject()) {
            return created;
        }
        ObjectNode mended = created.deepCopy();
        mend(mended);
        JsonNode plan = mended.path("plan");
        mend(plan);
        plan.path("steps").forEach(OlderNames::mend);
        plan.path("activities").forEach(OlderNames::mend);
        return mended;
    }

    private static void mend(JsonNode node) {
        if (node instanceof ObjectNode object) {
            LINES.stream().filter(field -> object.path(field).asText("").indexOf('\n') >= 0)
                    .forEach(field -> object.put(field, object.get(field).textValue().replace('\n', ' ')));
        }
    }
}
