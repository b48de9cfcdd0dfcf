package benchpace.bench.tap;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Arrays;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.util.Callback;
import org.eclipse.jetty.util.Fields;
import org.sqlite.SQLiteConfig;

/**
 * The floor the board stands on: the least program that looks the same from outside. A tap is a durable row in the same
 * SQLite (write-ahead log, {@code synchronous=FULL}), then an answer, then as many bytes to each screen as the board
 * sends to one of that kind, written by a thread a screen on the same Jetty: first what the tap itself changed, and
 * once every screen has that, the rest. It decides, folds, computes and draws nothing, so that no board can be faster.
 * Whoever taps says how many bytes: {@code POST /tap?table=1200+5300}; {@code GET /stream?kind=table} is a screen.
 */
public final class Floor {
    private final Connection store;
    private Told told = new Told(1, true, new Fields());
    private int screens;
    private int written;

    /** What the screens are to show. @param bytes as whoever tapped wants them, by kind of screen */
    private record Told(long seq, boolean whole, Fields bytes) {
        byte[] event(String kind) {
            byte[] state = ("\nevent: state\nid: " + seq + "\ndata: {\"seq\":" + seq + ",\"whole\":" + whole + "}\n\n")
                    .getBytes(StandardCharsets.US_ASCII);
            byte[] event = new byte[Math.max(state.length + 1, wanted(kind))];
            Arrays.fill(event, (byte) ':'); // a comment, as long as what the board draws
            System.arraycopy(state, 0, event, event.length - state.length, state.length);
            return event;
        }

        private int wanted(String kind) {
            String said = bytes.getValue(kind);
            return said == null ? 0 : Integer.parseInt(said.split(" ")[whole ? 1 : 0]);
        }
    }

    private Floor(Path data) throws SQLException {
        SQLiteConfig config = new SQLiteConfig();
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        store = config.createConnection("jdbc:sqlite:" + data.resolve("floor.db"));
        try (Statement statement = store.createStatement()) {
            statement.execute("create table event (class_id text not null, seq integer not null, command_id text "
                    + "not null, payload text not null, primary key (class_id, seq), unique (class_id, command_id))");
        }
    }

    /** @param arguments a folder of its own */
    public static void main(String[] arguments) throws Exception {
        Floor floor = new Floor(Path.of(arguments[0]));
        Server server = new Server(0);
        server.setHandler(new Handler.Abstract() {
            @Override public boolean handle(Request request, Response response, Callback callback) throws Exception {
                if (Request.getPathInContext(request).equals("/tap")) {
                    floor.tap(request, response, callback);
                } else {
                    floor.screen(request, response, callback);
                }
                return true;
            }
        });
        server.start();
        System.out.println("The floor is ready: http://localhost:"
                + ((ServerConnector) server.getConnectors()[0]).getLocalPort() + "/");
    }

    private synchronized void tap(Request request, Response response, Callback callback) throws Exception {
        long next = told.seq + 1;
        append(next, Content.Source.asString(request, StandardCharsets.UTF_8));
        Content.Sink.write(response, true, "{\"seq\":" + next + ",\"duplicate\":false}", callback);
        written = 0;
        tell(new Told(next, false, Request.extractQueryParameters(request)));
    }

    private synchronized void tell(Told next) {
        told = next;
        notifyAll();
    }

    private void append(long next, String body) throws SQLException {
        try (PreparedStatement insert = store.prepareStatement("insert into event values ('floor', ?, ?, ?)")) {
            insert.setLong(1, next);
            insert.setString(2, "t-" + next);
            insert.setString(3, body);
            insert.executeUpdate();
        }
    }

    private void screen(Request request, Response response, Callback callback) {
        String kind = Request.extractQueryParameters(request).getValue("kind");
        response.getHeaders().put(HttpHeader.CONTENT_TYPE, "text/event-stream");
        Thread writer = new Thread(() -> {
            try (OutputStream out = Content.Sink.asOutputStream(response)) {
                write(out, kind);
            } catch (IOException | InterruptedException gone) {
                callback.failed(gone);
            }
        }, "screen");
        writer.setDaemon(true);
        writer.start();
    }

    /** Each breath in its turn, the newest only: as the board's mailboxes do it. */
    private void write(OutputStream out, String kind) throws IOException, InterruptedException {
        counted(1);
        try {
            Told shown = null;
            while (true) {
                shown = newer(shown);
                out.write(shown.event(kind));
                out.flush();
                done(shown);
            }
        } finally {
            counted(-1);
        }
    }

    private synchronized void counted(int more) {
        screens += more;
        goOn();
    }

    private synchronized Told newer(Told shown) throws InterruptedException {
        while (told == shown) {
            wait();
        }
        return told;
    }

    private synchronized void done(Told shown) {
        if (shown == told && !shown.whole) {
            written++;
            goOn();
        }
    }

    /** The last screen to show what the tap itself changed, or to leave, lets all go on. */
    private void goOn() {
        if (!told.whole && written >= screens) {
            tell(new Told(told.seq, true, told.bytes));
        }
    }
}
