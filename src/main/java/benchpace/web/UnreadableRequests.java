package benchpace.web;

import benchpace.files.Json;
import benchpace.web.entrance.EntranceLimits;
import benchpace.web.request.Guard;
import benchpace.web.request.Problem;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.http.HttpStatus;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.util.Callback;

/** Answers what no route ever sees, malformed, too large or too slow, as a problem like every other refusal. */
final class UnreadableRequests extends ErrorHandler {
    private static final long RETRY_SECONDS = 1;

    /** Whatever the method is, known or not: what is refused is told why. */
    @Override public boolean errorPageForMethod(String method) {
        return true;
    }

    @Override protected void generateResponse(Request request, Response response, int code, String message,
                                              Throwable cause, Callback callback) {
        Problem problem = problem(code, EntranceLimits.takesPlans(request));
        response.setStatus(code);
        // nobody knows where the next request begins: said, so that no client sends one here (RFC 9112, 9.6)
        response.getHeaders().put(HttpHeader.CONNECTION, "close");
        if (code == HttpStatus.SERVICE_UNAVAILABLE_503) {
            response.getHeaders().put(HttpHeader.RETRY_AFTER, RETRY_SECONDS);
        }
        response.getHeaders().put(HttpHeader.CONTENT_TYPE, Problem.MEDIA_TYPE);
        response.getHeaders().put(HttpHeader.CACHE_CONTROL, "no-store");
        response.getHeaders().put("X-Content-Type-Options", "nosniff");
        response.getHeaders().put("Content-Security-Policy", Guard.POLICY);
        response.write(true, ByteBuffer.wrap(Json.text(problem.json()).getBytes(StandardCharsets.UTF_8)), callback);
    }

    private static Problem problem(int code, boolean plan) {
        return switch (code) {
            case HttpStatus.REQUEST_TIMEOUT_408 -> new Problem(code, "too-slow", "The request took too long",
                    "The request did not arrive in time. Try again where the network is better.");
            case HttpStatus.PAYLOAD_TOO_LARGE_413 -> new Problem(code, "too-large", "The request is too large",
                    plan
                            ? "A plan has at most " + EntranceLimits.LARGEST_PLAN / 1024 + " KiB."
                            : "At most " + EntranceLimits.USUAL.largestBody() / 1024 + " KiB are read.");
            case HttpStatus.SERVICE_UNAVAILABLE_503 -> new Problem(code, "too-busy", "The board is busy",
                    "Too much is asked of the board just now. Try again in a moment.");
            default -> new Problem(code, "refused", "The request is refused", code < 500
                    ? "The request cannot be understood." : "The board cannot answer just now.");
        };
    }
}
