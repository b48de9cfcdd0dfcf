package benchpace.web.entrance;

import java.nio.ByteBuffer;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Request;

/** A request whose body has been read already, and is read from memory. */
final class WholeRequest extends Request.Wrapper {
    private final int length;
    private Content.Chunk rest;

    WholeRequest(Request request, byte[] body) {
        super(request);
        this.length = body.length;
        this.rest = body.length == 0 ? Content.Chunk.EOF : Content.Chunk.from(ByteBuffer.wrap(body), true);
    }

    @Override public long getLength() {
        return length;
    }

    @Override public synchronized Content.Chunk read() {
        Content.Chunk chunk = rest;
        rest = Content.Chunk.next(chunk);
        return chunk;
    }

    @Override public boolean consumeAvailable() {
        read();
        return true;
    }

    /** There is always something to read, be it the end. */
    @Override public void demand(Runnable ready) {
        getContext().execute(ready);
    }
}
