package benchpace.bench;

import java.io.IOException;
import java.util.Map;

/**
 * Chooses what {@code mvn -P bench verify -Dbench=NAME} runs: one of the three programs that look at the board from
 * outside, or whatever benchmarks of JMH have that in their names.
 */
public final class Bench {
    /** A program with what it is asked for in system properties. */
    interface Measuring {
        void run() throws IOException, InterruptedException;
    }

    private static final Map<String, Measuring> FROM_OUTSIDE = Map.of("Glass", Glass::measure, "SmallMachine",
            SmallMachine::measure, "SlowGlass", SlowGlass::measure, "Growth", Growth::measure);

    private Bench() {
    }

    /** @param arguments one name */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        Measuring fromOutside = FROM_OUTSIDE.get(arguments[0]);
        if (fromOutside == null) {
            org.openjdk.jmh.Main.main(arguments);
        } else {
            fromOutside.run();
            System.exit(0);
        }
    }
}
