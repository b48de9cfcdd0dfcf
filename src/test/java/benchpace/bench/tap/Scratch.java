package benchpace.bench.tap;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;

/** Folders that are gone when the measuring ends, however it does. */
public final class Scratch {
    private Scratch() {
    }

    public static Path folder() throws IOException {
        Path folder = Files.createTempDirectory("bench");
        Runtime.getRuntime().addShutdownHook(new Thread(() -> delete(folder), "sweeping"));
        return folder;
    }

    private static void delete(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(file);
            }
        } catch (IOException | UncheckedIOException e) {
            // a program that is just ending may still write there; the system sweeps what is temporary
        }
    }
}
