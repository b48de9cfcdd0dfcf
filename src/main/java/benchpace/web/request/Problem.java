package benchpace.web.request;

import benchpace.files.Json;
import benchpace.words.Explanation;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;

/**
 * A refusal as RFC 9457 describes it.
 *
 * @param status the HTTP status
 * @param code   names the kind of problem; becomes the type {@code urn:benchpace:CODE}
 * @param title  the kind in a few words, the same for all of its kind
 * @param detail this one, in a sentence for whoever tapped
 */
public record Problem(int status, String code, String title, String detail) {
    public static final String MEDIA_TYPE = "application/problem+json";

    public static Problem badRequest(String detail) {
        return new Problem(400, "bad-request", "The request cannot be read", detail);
    }

    public static Problem unprocessable(String detail) {
        return new Problem(422, "bad-value", "A value is missing or out of range", detail);
    }

    public static Problem notFound(String detail) {
        return new Problem(404, "not-found", "There is no such thing here", detail);
    }

    public static Problem wrongMethod(String detail) {
        return new Problem(405, "wrong-method", "That method is not for this address", detail);
    }

    public static Problem unauthorized() {
        return new Problem(401, "not-paired", "This device is not paired",
                "Pair this device first: open the instructor's link or type the PIN on the start page.");
    }

    public static Problem forbidden(String detail) {
        return new Problem(403, "no-right", "This device may not do that", detail);
    }

    /** What the rules of a class or of the shelf refused. */
    public static Problem of(Explanation why) {
        int status = switch (why.kind()) {
            case CONFLICT -> 409;
            case VALUE -> 422;
            case ABSENT -> 404;
        };
        return new Problem(status, why.code(), why.title(), why.detail());
    }

    public void send(Context ctx) {
        ctx.status(status).contentType(MEDIA_TYPE)
                .result(Json.text(json().put("instance", ctx.path())).getBytes(StandardCharsets.UTF_8));
    }

    public ObjectNode json() {
        return Json.object()
                .put("type", "urn:benchpace:" + code)
                .put("title", title)
                .put("status", status)
                .put("detail", detail);
    }
}
