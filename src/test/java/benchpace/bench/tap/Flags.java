package benchpace.bench.tap;

import java.util.List;

/** What the programs under measurement are given of Java's own options: the board's launcher gives it the same. */
public final class Flags {
    /** As the README and the launcher have them; {@code -Dflags="-Xmx64m ..."} tries others. */
    public static final List<String> USUAL = List.of(asked().split(" +"));

    private Flags() {
    }

    private static String asked() {
        String asked = System.getProperty("flags", "");
        return asked.isBlank() ? "-XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Xss512k -Xmx128m" : asked.strip();
    }
}
