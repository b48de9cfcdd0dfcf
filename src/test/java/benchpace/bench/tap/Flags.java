package benchpace.bench.tap;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;

/** What the programs under measurement are given of Java's own options: the board's launcher gives it the same. */
public final class Flags {
    /** Those of the launcher and the heap of a small machine; {@code -Dflags="-Xmx64m ..."} tries others. */
    public static final List<String> USUAL = List.of(asked().split(" +"));

    private Flags() {
    }

    private static String asked() {
        String asked = System.getProperty("flags", "");
        return asked.isBlank() ? launcher() + " -Xmx128m" : asked.strip();
    }

    private static String launcher() {
        try {
            return Files.readAllLines(Path.of("src/main/launcher/benchpace.options")).stream()
                    .filter(line -> !line.startsWith("#")).collect(Collectors.joining(" "));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
