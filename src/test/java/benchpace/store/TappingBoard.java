package benchpace.store;

import benchpace.live.ClassEvent;
import benchpace.live.Command;
import benchpace.live.Decision;
import benchpace.live.LiveClass;
import benchpace.live.Recorded;
import benchpace.live.Rules;
import benchpace.plan.SeatNumber;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Instant;
import java.util.List;
import java.util.OptionalLong;

/**
 * The least of a board, to be killed: taps through the real rules into the real store, without end, saying each step of
 * the way on standard output. What a client remembers of a tap that nobody acknowledged is in a file beside the data.
 */
final class TappingBoard {
    static final String CLASS_ID = "thursday";
    private static final PrintStream OUT = new PrintStream(System.out, true, StandardCharsets.US_ASCII);

    private final SqliteEventLog log;
    private final Path unacknowledged;
    private LiveClass live;

    private TappingBoard(SqliteEventLog log, Path unacknowledged) {
        this.log = log;
        this.unacknowledged = unacknowledged;
        List<Recorded> events = log.read(CLASS_ID);
        if (events.isEmpty()) {
            Recorded created = ClassOfThree.created();
            log.append(CLASS_ID, created);
            events = List.of(created);
        }
        live = LiveClass.of(events);
        say("ack", live.history().get(0).commandId(), 1);
    }

    public static void main(String[] args) throws IOException {
        Path folder = Path.of(args[0]);
        try (Database database = Database.open(folder.resolve("."))) {
            new TappingBoard(new SqliteEventLog(database), folder.resolve("unacknowledged.txt")).tapOn();
        }
    }

    private void tapOn() throws IOException {
        int number = 0;
        if (Files.exists(unacknowledged)) {
            number = Integer.parseInt(Files.readString(unacknowledged));
            OUT.println("again tap-" + number);
            send(number);
        }
        while (true) {
            number++;
            remember(number);
            send(number);
        }
    }

    /** Whole or not at all, as a browser keeps it. */
    private void remember(int number) throws IOException {
        Path draft = unacknowledged.resolveSibling("unacknowledged.new");
        Files.writeString(draft, Integer.toString(number));
        Files.move(draft, unacknowledged, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }

    /** As the live board does it: known commands are recognised, new ones decided, stored, and only then told. */
    private void send(int number) {
        Instant now = ClassOfThree.START.plusSeconds(10 + live.seq());
        Command command = new Command("tap-" + number, "instructor", now, wish(number));
        OptionalLong known = live.seqOf(command.id());
        if (known.isPresent()) {
            say("ack", command.id(), known.getAsLong());
            return;
        }
        if (!(Rules.decide(live, command, now) instanceof Decision.Accepted accepted)) {
            throw new IllegalStateException("tap " + number + " was refused");
        }
        Recorded event = new Recorded(live.seq() + 1, command.id(), command.by(), now, now, accepted.event());
        log.append(CLASS_ID, event);
        live = live.apply(event);
        say("ack", command.id(), event.seq());
    }

    /** Always allowed, so that the board never runs out of taps. */
    private static ClassEvent wish(int number) {
        SeatNumber seat = new SeatNumber(1 + number % 3);
        return number % 2 == 0 ? new ClassEvent.SeatNoted(seat, "note " + number)
                : new ClassEvent.SeatArrived(seat, "Guest " + number);
    }

    private static void say(String word, String id, long seq) {
        OUT.println(word + " " + id + " " + seq + " told");
    }
}
