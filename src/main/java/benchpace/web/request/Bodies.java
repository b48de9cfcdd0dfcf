package benchpace.web.request;

import benchpace.files.Json;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.net.URLDecoder;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;

/** The one place that reads request bodies, and writes JSON back. */
public final class Bodies {
    private Bodies() { }

    /** @throws Refused if the body is no JSON object */
    public static JsonNode object(Context ctx) {
        try {
            JsonNode body = Json.read(text(ctx));
            if (body == null || !body.isObject()) {
                throw new Refused(Problem.badRequest("The body must be one JSON object."));
            }
            return body;
        } catch (JsonProcessingException e) {
            throw new Refused(Problem.badRequest("The body " + Json.problem(e).sentence() + "."));
        } catch (CharacterCodingException e) {
            throw notUtf8();
        } catch (IOException e) {
            throw notWhole();
        }
    }

    /**
     * A field of a form ({@code application/x-www-form-urlencoded}); empty if the form has none of that name.
     *
     * @throws Refused if the body is no form
     */
    public static String formField(Context ctx, String name) {
        try {
            for (String pair : text(ctx).split("&")) {
                int equals = pair.indexOf('=');
                String key = equals < 0 ? pair : pair.substring(0, equals);
                if (URLDecoder.decode(key, StandardCharsets.UTF_8).equals(name)) {
                    return equals < 0 ? "" : URLDecoder.decode(pair.substring(equals + 1), StandardCharsets.UTF_8);
                }
            }
            return "";
        } catch (IllegalArgumentException e) {
            throw new Refused(Problem.badRequest("The form is not sound."));
        } catch (CharacterCodingException e) {
            throw notUtf8();
        } catch (IOException e) {
            throw notWhole();
        }
    }

    private static Refused notUtf8() {
        return new Refused(Problem.badRequest("The body is not text in UTF-8."));
    }

    private static Refused notWhole() {
        return new Refused(Problem.badRequest("The body did not arrive whole."));
    }

    /** The body as it came, for what has a reader of its own. */
    public static InputStream whole(Context ctx) {
        try {
            return ctx.req().getInputStream();
        } catch (IOException e) {
            throw notWhole();
        }
    }

    /** The entrance has gathered it whole already, and refused what is too large. */
    private static String text(Context ctx) throws IOException {
        byte[] bytes = ctx.req().getInputStream().readAllBytes();
        return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    }

    /** A text field; empty if absent. @throws Refused if it is no line of text or longer than {@code most} */
    public static String text(JsonNode body, String field, int most) {
        JsonNode value = body.get(field);
        if (value == null || value.isNull()) {
            return "";
        }
        if (!isLine(value, most)) {
            throw new Refused(Problem.unprocessable("\"" + field + "\" must be text of at most " + most
                    + " characters on one line."));
        }
        return value.textValue();
    }

    /** Text without control characters and half characters (unpaired surrogates), which UTF-8 cannot hold. */
    public static boolean isLine(JsonNode value, int most) {
        return value.isTextual() && value.textValue().length() <= most
                && value.textValue().codePoints().noneMatch(c -> Character.isISOControl(c)
                || c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE);
    }

    public static void send(Context ctx, int status, JsonNode body) {
        ctx.status(status).contentType("application/json").result(Json.text(body));
    }
}
