package benchpace.bench.tap;

import benchpace.Footprint;
import benchpace.Program;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;

/** The board or the floor, as a process of its own, with its screens and the device that taps. */
public abstract class Side implements AutoCloseable {
    private static final Duration PATIENCE = Duration.ofSeconds(60);

    private final Program program;
    private Optional<Screens> screens = Optional.empty();
    /** The number of the newest tap. */
    long seq;

    /** @param command as the system takes it; it says on a line of its own that it is ready */
    Side(List<String> command) throws IOException {
        program = Program.of(command);
    }

    /** @param before what starts Java, such as what holds it to a part of the machine; may be empty */
    static List<String> java(List<String> before, List<String> flags, List<String> arguments) {
        List<String> command = new ArrayList<>(before);
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(flags);
        command.addAll(arguments);
        return command;
    }

    int port() {
        return program.port();
    }

    /** Opens so many screens, in place of those it had, and waits until each shows where things stand. */
    public void watchedBy(List<ScreenKind> kinds) throws IOException, InterruptedException {
        unwatched();
        Screens opened = screens(kinds);
        screens = Optional.of(opened);
        opened.awaitWhole(seq, PATIENCE);
        opened.takeBytes();
    }

    /** Closes its screens. */
    void unwatched() {
        screens.ifPresent(Screens::close);
        screens = Optional.empty();
    }

    abstract Screens screens(List<ScreenKind> kinds) throws IOException;

    /** Sends the next tap, whatever it is. */
    abstract TapLine.Answered ask() throws IOException;

    /** One tap, waited for until every screen has all of it. */
    public void tap(TapTimes times) throws IOException, InterruptedException {
        TapLine.Answered answered = ask();
        seq = answered.json().get("seq").longValue();
        Screens watching = screens.orElseThrow();
        watching.awaitWhole(seq, PATIENCE);
        times.add(answered, watching.first(seq), watching.whole(seq));
    }

    /** So many taps as fast as they are acknowledged; then waits until every screen has caught up. */
    public void hurry(int taps) throws IOException, InterruptedException {
        for (int n = 0; n < taps; n++) {
            seq = ask().json().get("seq").longValue();
        }
        screens.orElseThrow().awaitWhole(seq, PATIENCE);
    }

    /** What came to a screen of each kind since the last call. */
    Map<ScreenKind, Bytes> takeBytes() {
        return screens.orElseThrow().takeBytes();
    }

    /** The number of the newest tap. */
    public long seq() {
        return seq;
    }

    /** Lets everything come to rest. */
    public static void rest(long millis) {
        long until = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(millis);
        for (long left = until - System.nanoTime(); left > 0; left = until - System.nanoTime()) {
            LockSupport.parkNanos(left);
        }
    }

    /** How long it took from its start until it said that it is ready. */
    public Duration untilReady() {
        return program.untilReady();
    }

    public Footprint footprint() throws IOException {
        return Footprint.of(program.pid());
    }

    /** At once, without a word. */
    final void end() {
        program.close();
    }

    @Override public void close() throws IOException, InterruptedException {
        try {
            unwatched();
            program.terminate();
            program.exitCode();
        } finally {
            program.close();
        }
    }
}
