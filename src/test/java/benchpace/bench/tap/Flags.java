package benchpace.bench.tap;

import java.util.List;

/** What the programs under measurement are given of Java's own options: the board's launcher gives it the same. */
public final class Flags {
    /** As the README and the launcher have them. */
    public static final List<String> USUAL = List.of("-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-Xss512k",
            "-Xmx128m");

    private Flags() {
    }
}
