package benchpace.web.entrance;

import java.util.function.Consumer;
import java.util.function.Predicate;
import org.eclipse.jetty.http.HttpStatus;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;

/**
 * Lets a request in once it is there whole, in one of two lanes: paired devices have threads of their own, so that
 * their taps are taken whatever strangers do. Waiting, on either side of the answer, holds no thread.
 */
public final class Entrance extends Handler.Wrapper {
    private final EntranceLimits limits;
    private final Lines lines;
    private final Predicate<Request> paired;
    private final Lane staff;
    private final Lane strangers;

    /** @param paired whether a request carries the token of a paired device; asked of every request, so it is quick */
    public Entrance(EntranceLimits limits, Lines lines, Predicate<Request> paired) {
        this.limits = limits;
        this.lines = lines;
        this.paired = paired;
        staff = new Lane("paired", limits.lanes().paired(), limits.lanes().waiting());
        strangers = new Lane("strangers", limits.lanes().strangers(), limits.lanes().waiting());
    }

    /** The same for a board that is reached over TLS only. */
    public Handler.Wrapper onlyEncrypted() {
        OnlyEncrypted front = new OnlyEncrypted();
        front.setHandler(this);
        return front;
    }

    @Override public InvocationType getInvocationType() {
        return InvocationType.NON_BLOCKING;
    }

    @Override public boolean handle(Request request, Response response, Callback callback) {
        boolean known = paired.test(request);
        lines.asks(request, known);
        Callback answered = Callback.from(() -> lines.isAnswered(request), callback);
        WholeBody.gather(request, limits, new WholeBody.Then() {
            @Override public void whole(byte[] body) {
                HeldAnswer answer = new HeldAnswer(request, response, answered, lines, limits);
                if (!(known ? staff : strangers).take(() -> pass(new WholeRequest(request, body), answer))) {
                    refuse(HttpStatus.SERVICE_UNAVAILABLE_503, Runnable::run);
                }
            }

            @Override public void refused(int status, WholeBody rest) {
                refuse(status, rest::passOver);
            }

            @Override public void broken(Throwable why) {
                answered.failed(why);
            }

            private void refuse(int status, Consumer<Runnable> hearOut) {
                Response.writeError(new Unconsumed(request), response, Callback.from(
                        () -> hearOut.accept(answered::succeeded), answered::failed), status);
            }
        });
        return true;
    }

    /** Left to be passed over: an error that is written would else consume what is there, and fail what comes later. */
    private static final class Unconsumed extends Request.Wrapper {
        Unconsumed(Request request) {
            super(request);
        }

        @Override public boolean consumeAvailable() {
            return false;
        }
    }

    private void pass(Request request, HeldAnswer answer) {
        try {
            if (!super.handle(request, answer, answer)) {
                Response.writeError(request, answer, answer, HttpStatus.NOT_FOUND_404);
            }
        } catch (Throwable e) {
            Response.writeError(request, answer, answer, e);
        }
    }

    @Override protected void doStop() throws Exception {
        super.doStop();
        staff.close();
        strangers.close();
    }
}
