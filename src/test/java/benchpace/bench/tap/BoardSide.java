package benchpace.bench.tap;

import benchpace.files.Json;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;

/** The board from its jar, as people start it, with one class at a time that somebody taps through. */
public final class BoardSide extends Side {
    private static final Path JAR = Path.of(System.getProperty("jar", "target/benchpace.jar"));
    private static final String PIN = "2468";

    private final String token;
    private final TapLine line;
    private String classId = "";
    private Taps taps = new Taps(1, 1);

    /**
     * Starts it on a free port and pairs a device.
     *
     * @param before what starts Java, such as what holds it to a part of the machine; may be empty
     */
    public BoardSide(List<String> before, List<String> flags, Path data) throws IOException {
        super(java(before, flags, List.of("-jar", jar().toString(), "serve", "--host", "127.0.0.1", "--port", "0",
                "--data", data.toString(), "--no-demo", "--pin", PIN)));
        try (TapLine stranger = new TapLine(port(), "")) {
            token = stranger.post("/api/pair", Json.text(Json.object().put("pin", PIN))).json().get("token")
                    .textValue();
        }
        line = new TapLine(port(), token);
    }

    private static Path jar() {
        if (!Files.isRegularFile(JAR)) {
            throw new IllegalStateException(JAR + " is missing: mvn -P bench verify makes it");
        }
        return JAR;
    }

    /** Sets up a class that has come some way, and closes the one before. */
    public void begin(int seats, long seed) throws IOException {
        if (!classId.isEmpty()) {
            line.post(commands(), "{\"commandId\":\"close\",\"type\":\"close\"}").json();
        }
        Instant now = Instant.now();
        classId = line.post("/api/classes", Json.text(Json.object().put("planId", Taps.PLAN).put("seats", seats)
                .put("startsAt", Taps.start(now).toString()))).json().get("id").textValue();
        taps = new Taps(seats, seed);
        for (String body : taps.past(now)) {
            seq = line.post(commands(), body).json().get("seq").longValue();
        }
    }

    private String commands() {
        return "/api/classes/" + classId + "/commands";
    }

    @Override Screens screens(List<ScreenKind> kinds) throws IOException {
        return Screens.open(port(), token, kinds, kind -> kind.stream(classId));
    }

    @Override TapLine.Answered ask() throws IOException {
        return line.post(commands(), taps.next(seq));
    }

    @Override public void close() throws IOException, InterruptedException {
        line.close();
        super.close();
    }
}
