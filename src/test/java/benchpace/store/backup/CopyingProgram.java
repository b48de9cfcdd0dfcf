package benchpace.store.backup;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;

/** Makes one backup after the other in the same place, without end, to be killed; says when it did one. */
final class CopyingProgram {
    private static final PrintStream OUT = new PrintStream(System.out, true, StandardCharsets.US_ASCII);

    private CopyingProgram() { }

    /** @param args the data folder, and where the backup goes */
    public static void main(String[] args) {
        while (true) {
            new Backup(Path.of(args[0]), "0.1.0").make(Path.of(args[1]), true, Instant.parse("2027-03-05T09:00:00Z"),
                    Progress.UNHEARD);
            OUT.println("done");
        }
    }
}
