package benchpace.web.entrance;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.http.HttpStatus;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;

/** Tells who asks in the clear that this board is reached over TLS (RFC 9110, 15.5.22), and answers nothing else. */
final class OnlyEncrypted extends Handler.Wrapper {

    @Override public InvocationType getInvocationType() {
        return InvocationType.NON_BLOCKING;
    }

    @Override public boolean handle(Request request, Response response, Callback callback) throws Exception {
        if (request.isSecure()) {
            return super.handle(request, response, callback);
        }
        response.setStatus(HttpStatus.UPGRADE_REQUIRED_426);
        response.getHeaders().put(HttpHeader.UPGRADE, "TLS/1.2").put(HttpHeader.CONNECTION, "close")
                .put(HttpHeader.CONTENT_TYPE, "text/plain; charset=utf-8").put("X-Content-Type-Options", "nosniff");
        response.write(true, ByteBuffer.wrap(("This board is reached at an address that begins with https:// "
                + "instead of http://.\n").getBytes(StandardCharsets.UTF_8)), callback);
        return true;
    }
}
