package benchpace.store.sqlite;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** A process that makes a draft and never comes to an end with it, to be killed. */
public final class DraftingProgram implements AutoCloseable {
    private final Process process;
    private final Path draft;

    private DraftingProgram(Process process, Path draft) {
        this.process = process;
        this.draft = draft;
    }

    /** @param args the folder that the draft stands in */
    public static void main(String[] args) throws IOException {
        Draft draft = Draft.beside(Path.of(args[0], "place"));
        Files.writeString(draft.file(), "half");
        new PrintStream(System.out, true, StandardCharsets.UTF_8).println(draft.file());
        while (System.in.read() >= 0) { // until whoever began it is no more
            draft.file();
        }
    }

    /** @param folder where it makes one, and has by then */
    public static DraftingProgram started(Path folder) throws IOException {
        Process process = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xshare:auto", "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-cp",
                System.getProperty("java.class.path"), DraftingProgram.class.getName(), folder.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT).start();
        String line = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))
                .readLine();
        if (line == null) {
            throw new AssertionError("it ended");
        }
        return new DraftingProgram(process, Path.of(line));
    }

    /** What it makes. */
    public Path draft() {
        return draft;
    }

    /** By a signal that it cannot catch (POSIX SIGKILL). */
    public void kill() throws InterruptedException {
        process.destroyForcibly().waitFor();
    }

    @Override public void close() {
        process.destroyForcibly();
    }
}
