package benchpace.bench.tap;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;

/**
 * Holds a program to a part of one core, by a control group of Linux (cgroups(7); version 1 by {@code
 * cpu.cfs_quota_us}, version 2 by {@code cpu.max}) that is there for as long as it is measured. Other systems hold
 * nothing.
 */
public final class PartOfACore implements AutoCloseable {
    private static final Path ROOT = Path.of("/sys/fs/cgroup");
    private static final int PERIOD_MICROS = 100_000;
    private static final long LONGEST_GOODBYE = TimeUnit.SECONDS.toNanos(10);

    private final Path group;
    private final Thread onExit = new Thread(this::endAll, "end-control-group");

    private PartOfACore(Path group) {
        this.group = group;
        Runtime.getRuntime().addShutdownHook(onExit);
    }

    /**
     * A group of its own for one program.
     *
     * @param percent of one core
     * @return nothing where no such group can be made
     */
    public static Optional<PartOfACore> of(String name, int percent) {
        int quotaMicros = PERIOD_MICROS * percent / 100;
        String unique = "benchpace-" + name + "-" + ProcessHandle.current().pid();
        try {
            Path first = ROOT.resolve("cpu");
            boolean older = Files.exists(first.resolve("cpu.cfs_quota_us"));
            if (!older && !Files.exists(ROOT.resolve("cgroup.controllers"))) {
                return Optional.empty();
            }
            PartOfACore part = new PartOfACore(Files.createDirectory((older ? first : ROOT).resolve(unique)));
            try {
                part.limit(older, quotaMicros);
                return Optional.of(part);
            } catch (IOException e) {
                part.close();
                return Optional.empty();
            }
        } catch (IOException mayNot) {
            return Optional.empty();
        }
    }

    private void limit(boolean older, int quotaMicros) throws IOException {
        if (older) {
            Files.writeString(group.resolve("cpu.cfs_period_us"), "" + PERIOD_MICROS);
            Files.writeString(group.resolve("cpu.cfs_quota_us"), "" + quotaMicros);
        } else {
            if (!Files.exists(group.resolve("cpu.max"))) {
                Files.writeString(ROOT.resolve("cgroup.subtree_control"), "+cpu");
            }
            Files.writeString(group.resolve("cpu.max"), quotaMicros + " " + PERIOD_MICROS);
        }
    }

    /** What a command begins with so that it runs in here from its first instruction. */
    public List<String> before() {
        return List.of("sh", "-c", "echo $$ > \"$0\" && exec \"$@\"", group.resolve("cgroup.procs").toString());
    }

    private void endAll() {
        ProcessHandle.current().descendants().forEach(ProcessHandle::destroyForcibly);
        remove();
    }

    /** A group goes once its last program has ended; that takes a moment. */
    private void remove() {
        long deadline = System.nanoTime() + LONGEST_GOODBYE;
        while (Files.exists(group) && System.nanoTime() < deadline) {
            try {
                Files.delete(group);
            } catch (NoSuchFileException gone) {
                return;
            } catch (IOException stillInUse) {
                LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(50));
            }
        }
    }

    @Override public void close() {
        remove();
        Runtime.getRuntime().removeShutdownHook(onExit);
    }
}
