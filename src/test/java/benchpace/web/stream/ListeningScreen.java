package benchpace.web.stream;

import benchpace.web.TestBoard;
import java.io.IOException;
import java.io.InputStream;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;

/** A screen that keeps its stream open and reads everything as it comes. */
public final class ListeningScreen implements AutoCloseable {
    private final List<EventReader.Event> events = new CopyOnWriteArrayList<>();
    private final InputStream body;
    private final HttpResponse<InputStream> response;
    private volatile boolean ended;

    /** @param token empty for a guest */
    public static ListeningScreen at(TestBoard board, String path, String token) throws IOException,
            InterruptedException {
        HttpRequest.Builder request = HttpRequest.newBuilder(board.uri(path))
                .header("Accept", "text/event-stream").timeout(Duration.ofSeconds(20));
        if (!token.isEmpty()) {
            request.header("Authorization", "Bearer " + token);
        }
        return new ListeningScreen(HttpClient.newHttpClient().send(request.build(),
                HttpResponse.BodyHandlers.ofInputStream()));
    }

    private ListeningScreen(HttpResponse<InputStream> response) {
        this.response = response;
        this.body = response.body();
        Thread reader = new Thread(this::read, "listening-screen");
        reader.setDaemon(true);
        reader.start();
    }

    private void read() {
        EventReader reader = new EventReader(body);
        try {
            for (Optional<EventReader.Event> e = reader.next(); e.isPresent(); e = reader.next()) {
                events.add(e.get());
            }
        } catch (IOException closed) {
            // by the test, or by the board
        } finally {
            ended = true;
        }
    }

    public HttpResponse<InputStream> response() {
        return response;
    }

    public List<EventReader.Event> events() {
        return events;
    }

    public List<EventReader.Event> events(String type) {
        return events.stream().filter(e -> e.type().equals(type)).toList();
    }

    /** The id of the newest {@code state}; 0 before the first. */
    public long seq() {
        List<EventReader.Event> states = events("state");
        return states.isEmpty() ? 0 : Long.parseLong(states.get(states.size() - 1).id());
    }

    public boolean ended() {
        return ended;
    }

    @Override public void close() {
        try {
            body.close();
        } catch (IOException e) {
            // it is gone, as wished
        }
    }
}
