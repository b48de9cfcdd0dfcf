package benchpace.web.request;

import benchpace.files.Finding;
import benchpace.files.Json;
import benchpace.words.Explanation;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * A refusal as RFC 9457 describes it.
 *
 * @param status   the HTTP status
 * @param code     names the kind of problem; becomes the type {@code urn:benchpace:CODE}
 * @param title    the kind in a few words, the same for all of its kind
 * @param detail   this one, in a sentence for whoever tapped
 * @param problems everything that is wrong with what was sent, each at its place; empty where the detail says all
 */
public record Problem(int status, String code, String title, String detail, List<Finding> problems) {
    public Problem {
        problems = List.copyOf(problems);
    }

    public Problem(int status, String code, String title, String detail) {
        this(status, code, title, detail, List.of());
    }

    public static final String MEDIA_TYPE = "application/problem+json";

    public static Problem badRequest(String detail) {
        return new Problem(400, "bad-request", "The request cannot be read", detail);
    }

    public static Problem unprocessable(String detail) {
        return new Problem(422, "bad-value", "A value is missing or out of range", detail);
    }

    /** A plan that cannot be taught. @param problems at least one */
    public static Problem unsound(List<Finding> problems) {
        return new Problem(422, "bad-value", "A value is missing or out of range",
                "The plan is not sound: " + problems.get(0) + (problems.size() == 1 ? "" : " (and "
                        + (problems.size() - 1) + " more)") + ".", problems);
    }

    /** Fields of a form, each with what is wrong with it. @param problems at least one */
    public static Problem badFields(List<Finding> problems) {
        Finding first = problems.get(0);
        return new Problem(422, "bad-value", "A value is missing or out of range", "\""
                + first.shownPlace().replaceFirst("^/", "") + "\" " + first.shownSentence() + ".", problems);
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
            case STALE -> 412;
        };
        return new Problem(status, why.code(), why.title(), why.detail());
    }

    public void send(Context ctx) {
        ctx.status(status).contentType(MEDIA_TYPE)
                .result(Json.text(json().put("instance", ctx.path())).getBytes(StandardCharsets.UTF_8));
    }

    public ObjectNode json() {
        ObjectNode json = Json.object()
                .put("type", "urn:benchpace:" + code)
                .put("title", title)
                .put("status", status)
                .put("detail", detail);
        if (!problems.isEmpty()) {
            json.set("problems", list(problems));
        }
        return json;
    }

    /** Each with its {@code place} and its {@code sentence}. */
    public static ArrayNode list(List<Finding> problems) {
        ArrayNode list = Json.mapper().createArrayNode();
        problems.forEach(problem -> list.addObject().put("place", problem.shownPlace())
                .put("sentence", problem.shownSentence()));
        return list;
    }
}
