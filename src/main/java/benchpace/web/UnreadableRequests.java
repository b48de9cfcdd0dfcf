package benchpace.web;

import benchpace.files.Json;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.util.Callback;

/** Answers what is so malformed that no route ever sees it, as a problem like every other refusal. */
final class UnreadableRequests extends ErrorHandler {

    @Override protected void generateResponse(Request request, Response response, int code, String message,
                                              Throwable cause, Callback callback) {
        Problem problem = new Problem(code, "refused", "The request is refused",
                code < 500 ? "The request cannot be understood." : "The board cannot answer just now.");
        response.setStatus(code);
        // nobody knows where the next request begins: said, so that no client sends one here (RFC 9112, 9.6)
        response.getHeaders().put(HttpHeader.CONNECTION, "close");
        response.getHeaders().put(HttpHeader.CONTENT_TYPE, Problem.MEDIA_TYPE);
        response.getHeaders().put(HttpHeader.CACHE_CONTROL, "no-store");
        response.getHeaders().put("X-Content-Type-Options", "nosniff");
        response.getHeaders().put("Content-Security-Policy", Guard.POLICY);
        response.write(true, ByteBuffer.wrap(Json.text(problem.json()).getBytes(StandardCharsets.UTF_8)), callback);
    }
}
