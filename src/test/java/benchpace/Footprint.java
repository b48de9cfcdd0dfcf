package benchpace;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.stream.Stream;

/**
 * What a process takes of the machine; all zero where there is no {@code /proc} to tell.
 *
 * @param residentKib memory in use, {@code VmRSS}
 * @param handles     open files and connections
 * @param busyMillis  processor time taken since it began
 */
public record Footprint(long residentKib, long threads, long handles, long busyMillis) {

    public static Footprint of(long pid) throws IOException {
        Path process = Path.of("/proc", Long.toString(pid));
        if (!Files.exists(process)) {
            return new Footprint(0, 0, 0, 0);
        }
        try (Stream<Path> handles = Files.list(process.resolve("fd"))) {
            return new Footprint(field(process, "VmRSS:"), field(process, "Threads:"), handles.count(),
                    ProcessHandle.of(pid).flatMap(p -> p.info().totalCpuDuration()).map(Duration::toMillis).orElse(0L));
        }
    }

    private static long field(Path process, String name) throws IOException {
        return Files.readAllLines(process.resolve("status")).stream().filter(line -> line.startsWith(name))
                .map(line -> line.replaceAll("\\D", "")).mapToLong(Long::parseLong).findFirst().orElse(0);
    }

    @Override public String toString() {
        return "memory " + residentKib / 1024 + " MiB, threads " + threads + ", handles " + handles;
    }
}
