package benchpace.bench.tap;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** What the programs under measurement are given of Java's own options: what the launcher gives the board. */
public final class Flags {
    private static final Path OPTIONS = Path.of("src/main/launcher/benchpace.options");
    /** The launcher's; {@code -Dflags="-Xmx64m ..."} tries others. */
    public static final List<String> USUAL = usual();
    /** The same with the heap of a small machine. */
    public static final List<String> SMALL = small();

    private Flags() {
    }

    private static List<String> usual() {
        String asked = System.getProperty("flags", "");
        try {
            return asked.isBlank() ? Files.readAllLines(OPTIONS).stream().map(String::strip)
                    .filter(line -> line.startsWith("-")).toList() : List.of(asked.strip().split(" +"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> small() {
        List<String> small = new ArrayList<>(USUAL);
        small.add("-Xmx128m");
        return List.copyOf(small);
    }
}
