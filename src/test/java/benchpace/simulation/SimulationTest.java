package benchpace.simulation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/**
 * Classes made up from one seed, each played on a real board with everything that goes wrong on such evenings, and held
 * to what must be so whatever happens. {@code -Dclasses=10000 -Dseed=1} plays more; {@code -Dclass=17} plays one again.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SimulationTest {
    private static final long SEED = Long.getLong("seed", 20270304L);
    private static final int CLASSES = Integer.getInteger("classes", 32);
    private static final long ONLY = Long.getLong("class", -1);
    /** Failing classes to shrink and print; more say little more. */
    private static final int SHOWN = Integer.getInteger("shown", 3);

    /** A class that broke an invariant. */
    private record Failure(long number, int step, Script script, Broken broken) { }

    /** What a class came to. @param acts how many things happened in it; @param replays how often it was replayed */
    private record Outcome(int acts, int replays, Optional<Failure> failure) { }

    @Test void whatever_happens_in_a_class_its_invariants_hold() {
        LongStream numbers = ONLY >= 0 ? LongStream.of(ONLY) : LongStream.range(0, CLASSES);
        List<Outcome> outcomes = numbers.parallel().mapToObj(SimulationTest::play).toList();
        List<Failure> failures = outcomes.stream().flatMap(o -> o.failure().stream()).toList();

        int acts = outcomes.stream().mapToInt(Outcome::acts).sum();
        int replays = outcomes.stream().mapToInt(Outcome::replays).sum();
        System.out.println("Simulated " + outcomes.size() + " classes of seed " + SEED + ", " + acts + " acts, "
                + replays + " replays, " + failures.size() + " failed");
        failures.forEach(f -> System.out.println("  class " + f.number() + ": " + f.broken().getMessage()));
        assertThat(failures.size()).as(() -> told(failures)).isZero();
        assertThat(acts).isGreaterThan(outcomes.size() * 10);
        assertThat(replays).isGreaterThanOrEqualTo(outcomes.size() / 20);
    }

    private static Outcome play(long number) {
        Random random = new Random(SEED * 1_000_003 + number);
        Setting setting = Lots.setting(random);
        Happenings happenings = new Happenings(random, setting);
        List<Act> played = new ArrayList<>();
        try (Performance performance = new Performance(setting)) {
            while (happenings.goOn()) {
                for (Act act : happenings.next(performance)) {
                    played.add(act);
                    performance.play(act);
                }
            }
            played.add(new Act.Restart());
            performance.play(new Act.Restart());
            played.add(new Act.Look());
            performance.play(new Act.Look());
            return new Outcome(played.size(), performance.replays(), Optional.empty());
        } catch (Broken broken) {
            return new Outcome(played.size(), 0,
                    Optional.of(new Failure(number, played.size(), new Script(setting, played), broken)));
        }
    }

    private static String told(List<Failure> failures) {
        StringBuilder told = new StringBuilder();
        for (Failure failure : failures.subList(0, Math.min(SHOWN, failures.size()))) {
            Script script = Shrinking.shrunk(failure.script(), failure.broken().check());
            told.append("\nclass ").append(failure.number()).append(" of seed ").append(SEED).append(", step ")
                    .append(failure.step()).append(": ").append(failure.broken().getMessage())
                    .append("\nagain: mvn -q test -Dtest=SimulationTest -Dseed=").append(SEED).append(" -Dclass=")
                    .append(failure.number()).append("\nas a script, also in ").append(kept(failure, script))
                    .append("; a regression once it is in src/test/resources/simulation:\n")
                    .append(script.text()).append(trace(failure.broken()));
        }
        return told.toString();
    }

    private static Path kept(Failure failure, Script script) {
        try {
            Path file = Path.of("target", "simulation", SEED + "-" + failure.number() + ".jsonl");
            Files.createDirectories(file.getParent());
            return Files.writeString(file, script.text());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String trace(Broken broken) {
        if (broken.getCause() == null) {
            return "";
        }
        StringBuilder trace = new StringBuilder(broken.getCause().toString());
        for (StackTraceElement at : broken.getCause().getStackTrace()) {
            if (at.getClassName().startsWith("benchpace.simulation")) {
                break;
            }
            trace.append("\n    at ").append(at);
        }
        return trace.append('\n').toString();
    }
}
