package benchpace;

import static org.awaitility.Awaitility.await;

import benchpace.files.Json;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The program as a process of its own, so that it can be killed. */
public final class Program implements AutoCloseable {
    private static final Duration PATIENCE = Duration.ofSeconds(60);
    private static final Pattern READY = Pattern.compile(" is ready: https?://localhost:(\\d+)/");

    private final Process process;
    private final List<String> out = new CopyOnWriteArrayList<>();
    private final List<String> err = new CopyOnWriteArrayList<>();
    private final List<Thread> readers = new ArrayList<>();
    private final long began;
    private volatile long readyNanos;

    private Program(ProcessBuilder command) throws IOException {
        began = System.nanoTime();
        process = command.start();
        follow(process.getInputStream(), out);
        follow(process.getErrorStream(), err);
    }

    static Program run(String... arguments) throws IOException {
        return with(List.of(), arguments);
    }

    /** @param options of Java itself */
    static Program with(List<String> options, String... arguments) throws IOException {
        return new Program(new ProcessBuilder(command(options, arguments)));
    }

    /** @param input what it reads as its standard input */
    static Program reading(Path input, List<String> options, String... arguments) throws IOException {
        return new Program(new ProcessBuilder(command(options, arguments)).redirectInput(input.toFile()));
    }

    /** @param limit set by the shell first, POSIX {@code ulimit} */
    static Program within(String limit, List<String> options, String... arguments) throws IOException {
        List<String> command = new ArrayList<>(List.of("sh", "-c", limit + "; exec \"$@\"", "sh"));
        command.addAll(command(options, arguments));
        return new Program(new ProcessBuilder(command));
    }

    /** Another that says on a line of its own that it is ready. @param command as the system takes it */
    public static Program of(List<String> command) throws IOException {
        return new Program(new ProcessBuilder(command));
    }

    /** As an instructor starts it, from the file that was packed. */
    static Program packed(Path jar, List<String> options, String... arguments) throws IOException {
        List<String> command = new ArrayList<>(List.of(java()));
        command.addAll(options);
        command.addAll(List.of("-jar", jar.toString()));
        command.addAll(List.of(arguments));
        return new Program(new ProcessBuilder(command));
    }

    private static String java() {
        return Path.of(System.getProperty("java.home"), "bin", "java").toString();
    }

    private static List<String> command(List<String> options, String... arguments) {
        List<String> command = new ArrayList<>(List.of(java(), "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC",
                "-XX:-UsePerfData"));
        command.addAll(options);
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), "benchpace.Main"));
        command.addAll(List.of(arguments));
        return command;
    }

    /** Serves a data folder on a free port, or on {@code port}; what the console is told stands there by then. */
    static Program serve(Path data, int port, String pin) throws IOException {
        Program program = run("serve", "--host", "127.0.0.1", "--port", "" + port, "--data", data.toString(),
                "--no-demo", "--pin", pin);
        program.port();
        await().atMost(PATIENCE).until(() -> program.out().contains("Ctrl-C stops the board"));
        return program;
    }

    private void follow(InputStream stream, List<String> lines) {
        Thread reader = new Thread(() -> {
            try (BufferedReader in = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
                for (String line = in.readLine(); line != null; line = in.readLine()) {
                    if (READY.matcher(line).find()) {
                        readyNanos = System.nanoTime();
                    }
                    lines.add(line);
                }
            } catch (IOException gone) {
                // the process was killed
            }
        }, "program-output");
        reader.setDaemon(true);
        reader.start();
        readers.add(reader);
    }

    /** The port it says it is ready on; waits for that. */
    public int port() {
        await().atMost(PATIENCE).until(() -> ready().isPresent() || !process.isAlive());
        return ready().orElseThrow(() -> new AssertionError("it ended: " + err()));
    }

    /** How long it took from its start until it said that it is ready; waits for that. */
    public Duration untilReady() {
        port();
        return Duration.ofNanos(readyNanos - began);
    }

    private Optional<Integer> ready() {
        return out.stream().map(READY::matcher).filter(Matcher::find).map(m -> Integer.valueOf(m.group(1))).findFirst();
    }

    URI uri(String path) {
        return URI.create("http://127.0.0.1:" + port() + path);
    }

    /** Of the process, to look at what it takes of the machine. */
    public long pid() {
        return process.pid();
    }

    JsonNode health() throws IOException {
        try (InputStream in = uri("/health").toURL().openStream()) {
            return Json.read(in);
        }
    }

    String out() {
        return String.join("\n", out);
    }

    String err() {
        return String.join("\n", err);
    }

    /** Pulls the plug: SIGKILL. */
    void kill() throws InterruptedException {
        process.destroyForcibly();
        exitCode();
    }

    /** Asks it to end: SIGTERM. */
    public void terminate() {
        process.destroy();
    }

    /** Ctrl-C. */
    void interrupt() throws IOException, InterruptedException {
        new ProcessBuilder("kill", "-INT", "" + process.pid()).start().waitFor(10, TimeUnit.SECONDS);
    }

    public int exitCode() throws InterruptedException {
        if (!process.waitFor(PATIENCE.toSeconds(), TimeUnit.SECONDS)) {
            throw new AssertionError("it goes on: " + out());
        }
        for (Thread reader : readers) {
            reader.join(PATIENCE.toMillis());
        }
        return process.exitValue();
    }

    @Override public void close() {
        process.destroyForcibly();
    }
}
