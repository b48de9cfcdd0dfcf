package benchpace.web;

import benchpace.files.Json;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;

/** The one place that turns request bodies into JSON and back. */
final class Bodies {
    /** Largest body that is read. */
    static final int LARGEST = 64 * 1024;
    /** How much of a body that is too large is passed over before it is refused. */
    private static final int PASSED_OVER = 1024 * 1024;

    private Bodies() { }

    /** @throws Refused if the body is too large, or no JSON object */
    static JsonNode object(Context ctx) {
        try {
            JsonNode body = Json.read(text(ctx));
            if (body == null || !body.isObject()) {
                throw new Refused(Problem.badRequest("The body must be one JSON object."));
            }
            return body;
        } catch (JsonProcessingException e) {
            throw new Refused(Problem.badRequest("The body " + Json.problem(e).sentence() + "."));
        } catch (CharacterCodingException e) {
            throw new Refused(Problem.badRequest("The body is not text in UTF-8."));
        } catch (IOException e) {
            throw new Refused(Problem.badRequest("The body did not arrive whole."));
        }
    }

    /** Reads no more than is taken, whatever length the sender tells or keeps to itself. */
    private static String text(Context ctx) throws IOException {
        InputStream body = ctx.req().getInputStream();
        long told = ctx.req().getContentLengthLong();
        byte[] bytes = told > LARGEST ? new byte[0] : body.readNBytes(LARGEST + 1);
        if (told > LARGEST || bytes.length > LARGEST) {
            if (told <= PASSED_OVER) {
                passOver(body);
            }
            throw tooLarge();
        }
        return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    }

    /** Lets what is on the way arrive, so that closing the connection does not swallow the refusal (RFC 9112, 9.6). */
    private static void passOver(InputStream body) throws IOException {
        byte[] piece = new byte[8192];
        int passed = 0;
        for (int n = body.read(piece); n >= 0 && passed < PASSED_OVER; n = body.read(piece)) {
            passed += n;
        }
    }

    static Refused tooLarge() {
        return new Refused(new Problem(413, "too-large", "The request is too large",
                "At most " + LARGEST / 1024 + " KiB are read."));
    }

    /** A text field; empty if absent. @throws Refused if it is no line of text or longer than {@code most} */
    static String text(JsonNode body, String field, int most) {
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
    static boolean isLine(JsonNode value, int most) {
        return value.isTextual() && value.textValue().length() <= most
                && value.textValue().codePoints().noneMatch(c -> Character.isISOControl(c)
                || c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE);
    }

    static void send(Context ctx, int status, JsonNode body) {
        ctx.status(status).contentType("application/json").result(Json.text(body));
    }
}
