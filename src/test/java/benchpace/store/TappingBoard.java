package benchpace.store;

import benchpace.store.sqlite.Database;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/**
 * The least of a board, to be killed: does one {@link Deeds deed} after the other in the real store, without end, and
 * says each on standard output once it is done. What a client remembers of one that nobody acknowledged is in a file
 * beside the data.
 */
final class TappingBoard {
    private static final PrintStream OUT = new PrintStream(System.out, true, StandardCharsets.US_ASCII);

    private TappingBoard() { }

    public static void main(String[] args) throws IOException {
        Path folder = Path.of(args[0]);
        Path unacknowledged = folder.resolve("unacknowledged.txt");
        try (Database database = Database.open(folder.resolve("."))) {
            Deeds deeds = new Deeds(database);
            int number = 0;
            if (Files.exists(unacknowledged)) {
                number = Integer.parseInt(Files.readString(unacknowledged));
                OUT.println("again " + number);
            }
            while (true) {
                remember(unacknowledged, number);
                deeds.doThe(number);
                OUT.println("ack " + number + " told");
                number++;
            }
        }
    }

    /** Whole or not at all, as a browser keeps it. */
    private static void remember(Path unacknowledged, int number) throws IOException {
        Path draft = unacknowledged.resolveSibling("unacknowledged.new");
        Files.writeString(draft, Integer.toString(number));
        Files.move(draft, unacknowledged, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }
}
