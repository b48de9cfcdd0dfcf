package benchpace.web.entrance;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import org.eclipse.jetty.http.HttpStatus;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;

/**
 * Lets a request in once it is there whole, in one of two lanes: paired devices have threads of their own, so that
 * their taps are taken whatever strangers do, and each has its share of them. Waiting, on either side of the answer,
 * holds no thread.
 */
public final class Entrance extends Handler.Wrapper {
    private final EntranceLimits limits;
    private final Lines lines;
    private final Unread unread;
    private final Function<Request, Optional<String>> device;
    private final Lane staff;
    private final Lane strangers;

    /** @param device which paired device a request comes from, if any; asked of every request, so it is quick */
    public Entrance(EntranceLimits limits, Lines lines, Function<Request, Optional<String>> device) {
        this.limits = limits;
        this.lines = lines;
        this.device = device;
        unread = new Unread(limits.answers().mostHeld());
        EntranceLimits.Lanes lanes = limits.lanes();
        staff = new Lane("paired", lanes.paired(), lanes.ofOneDevice(), lanes.waiting());
        strangers = new Lane("strangers", lanes.strangers(), lanes.ofOneAddress(), lanes.waiting());
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
        Optional<String> known = device.apply(request);
        lines.asks(request, known);
        Callback answered = Callback.from(() -> lines.isAnswered(request), callback);
        int most = limits.largestBody(request, known.isPresent());
        WholeBody.gather(request, limits, most, new WholeBody.Then() {
            @Override public void whole(byte[] body) {
                HeldAnswer answer = new HeldAnswer(request, response, answered, lines, limits, unread);
                Lane lane = known.isPresent() ? staff : strangers;
                String caller = known.orElseGet(() -> Request.getRemoteAddr(request));
                if (!lane.take(caller, () -> pass(new WholeRequest(request, body), answer))) {
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
