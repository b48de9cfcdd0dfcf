package benchpace.store.backup;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** Restores one of two backups after the other, without end, to be killed; says what it begins and what it did. */
final class RestoringBoard {
    private static final PrintStream OUT = new PrintStream(System.out, true, StandardCharsets.US_ASCII);

    private RestoringBoard() { }

    /** @param args the folder, and the backups */
    public static void main(String[] args) {
        for (int number = 0; true; number++) {
            int which = 1 + number % 2;
            OUT.println("begin " + which + " told");
            new Restore(Path.of(args[0])).from(Path.of(args[which]), true, Progress.UNHEARD);
            OUT.println("done " + which + " told");
        }
    }
}
