package benchpace.bench.tap;

import benchpace.files.Json;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The board from its jar, as people start it, with one class at a time that somebody taps through. */
public final class BoardSide extends Side {
    private static final Path JAR = Path.of(System.getProperty("jar", "target/benchpace.jar"));
    private static final String PIN = "2468";
    private static final Duration LONGEST_GOODBYE = Duration.ofSeconds(40);

    private final String token;
    private final TapLine line;
    private final List<Screens> others = new ArrayList<>();
    private String classId = "";
    private Taps taps = new Taps(1, 1);

    /**
     * Starts it on a free port and pairs a device.
     *
     * @param before what starts Java, such as what holds it to a part of the machine; may be empty
     */
    public BoardSide(List<String> before, List<String> flags, Path data) throws IOException {
        this(java(before, flags, served(List.of("-jar", jar().toString()), data)));
    }

    private BoardSide(List<String> command) throws IOException {
        super(command);
        try {
            try (TapLine stranger = new TapLine(port(), "")) {
                token = stranger.post("/api/pair", Json.text(Json.object().put("pin", PIN))).json().get("token")
                        .textValue();
            }
            line = new TapLine(port(), token);
        } catch (IOException | RuntimeException e) {
            end();
            throw e;
        }
    }

    /**
     * Starts it by its launcher, as people do.
     *
     * @param installed a folder that has the program, or is given it, and keeps what a run leaves for the next
     */
    public static BoardSide launched(List<String> before, Path installed) throws IOException {
        return launched(before, installed, installed.resolve("data"));
    }

    /** The same with data that lie elsewhere. */
    public static BoardSide launched(List<String> before, Path installed, Path data) throws IOException {
        for (String file : List.of("benchpace.jar", "benchpace.sh", "benchpace.options")) {
            if (!Files.exists(installed.resolve(file))) {
                Files.copy(jar().resolveSibling(file), installed.resolve(file));
            }
        }
        List<String> command = new ArrayList<>(before);
        command.addAll(served(List.of("sh", installed.resolve("benchpace.sh").toString()), data));
        return new BoardSide(command);
    }

    private static List<String> served(List<String> program, Path data) {
        List<String> command = new ArrayList<>(program);
        command.addAll(List.of("serve", "--host", "127.0.0.1", "--port", "0", "--data", data.toString(), "--no-demo",
                "--pin", PIN));
        return command;
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
            unwatched();
            line.post(commands(), "{\"commandId\":\"close\",\"type\":\"close\"}").json();
            awaitGone();
        }
        Instant now = Instant.now();
        classId = line.post("/api/classes", Json.text(Json.object().put("planId", Taps.PLAN).put("seats", seats)
                .put("startsAt", Taps.start(now).toString()))).json().get("id").textValue();
        taps = new Taps(seats, seed);
        for (String body : taps.past(now)) {
            seq = line.post(commands(), body).json().get("seq").longValue();
        }
    }

    /** The board notices that a screen has left when it next writes to it: at the latest with its beat. */
    private void awaitGone() throws IOException {
        long deadline = System.nanoTime() + LONGEST_GOODBYE.toNanos();
        while (line.get("/health").json().get("screens").intValue() > others.size()) {
            if (System.nanoTime() > deadline) {
                throw new IllegalStateException("screens that were closed are still counted");
            }
            rest(50);
        }
    }

    /** The next class begins beside this one, which a wall goes on showing. */
    public void leaveOpen() throws IOException {
        others.add(screens(List.of(ScreenKind.WALL)));
        classId = "";
    }

    /** How many classes are open: the one that is tapped, and those left open beside it. */
    public int open() {
        return others.size() + 1;
    }

    /** How long the class's page takes to open on the instructor's device, in ms, the middle of so many times. */
    public double opening(int times) throws IOException {
        return opening(classId, times);
    }

    /** The same of any class. */
    public double opening(String id, int times) throws IOException {
        double[] millis = new double[times];
        for (int n = 0; n < times; n++) {
            TapLine.Answered page = line.get("/classes/" + id + "/instructor");
            if (page.status() != 200 || page.body().isEmpty()) {
                throw new IllegalStateException("the page of class " + id + " does not open: " + page.status());
            }
            millis[n] = (page.answeredNanos() - page.sentNanos()) / 1e6;
        }
        Arrays.sort(millis);
        return millis[times / 2];
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
        others.forEach(Screens::close);
        line.close();
        super.close();
    }
}
