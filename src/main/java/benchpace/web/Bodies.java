package benchpace.web;

import benchpace.files.Json;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import io.javalin.http.Context;

/** The one place that turns request bodies into JSON and back. */
final class Bodies {
    /** Largest body that is read. */
    static final long LARGEST = 64 * 1024;

    private Bodies() { }

    /** @throws Refused if the body is too large, or no JSON object */
    static JsonNode object(Context ctx) {
        long told = ctx.req().getContentLengthLong();
        if (told > LARGEST) {
            throw tooLarge();
        }
        byte[] bytes = ctx.bodyAsBytes();
        if (bytes.length > LARGEST) {
            throw tooLarge();
        }
        try {
            JsonNode body = Json.read(new String(bytes, java.nio.charset.StandardCharsets.UTF_8));
            if (body == null || !body.isObject()) {
                throw new Refused(Problem.badRequest("The body must be one JSON object."));
            }
            return body;
        } catch (JsonProcessingException e) {
            throw new Refused(Problem.badRequest("The body " + Json.problem(e).sentence()));
        }
    }

    static Refused tooLarge() {
        return new Refused(new Problem(413, "too-large", "The request is too large",
                "At most " + LARGEST / 1024 + " KiB are read."));
    }

    /** A text field; empty if absent. @throws Refused if it is no text or longer than {@code most} */
    static String text(JsonNode body, String field, int most) {
        JsonNode value = body.get(field);
        if (value == null || value.isNull()) {
            return "";
        }
        if (!value.isTextual() || value.textValue().length() > most
                || value.textValue().chars().anyMatch(Character::isISOControl)) {
            throw new Refused(Problem.unprocessable("\"" + field + "\" must be text of at most " + most
                    + " characters on one line."));
        }
        return value.textValue();
    }

    static void send(Context ctx, int status, JsonNode body) {
        ctx.status(status).contentType("application/json").result(Json.text(body));
    }
}
