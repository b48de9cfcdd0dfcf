package benchpace.board;

import benchpace.board.cooling.PlanCureClock;
import benchpace.board.pacing.PosteriorPaceWatch;
import benchpace.board.time.BoardTime;
import benchpace.board.view.ViewMaker;
import benchpace.files.roster.Demo;
import benchpace.live.ClassEvent;
import benchpace.live.Command;
import benchpace.plan.SeatNumber;
import benchpace.shelf.ClaimWord;
import benchpace.shelf.EntryId;
import benchpace.shelf.ShelfPlace;
import benchpace.store.FileSweep;
import benchpace.store.Settings;
import benchpace.store.SqliteEventLog;
import benchpace.store.sqlite.Database;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * As much of a board as forgets: classes that are over, each with a guest of its own whose candle was handed out, and
 * what erases. As a program of its own it forgets one class after the other, says so, and is there to be killed.
 */
final class ForgettingBoard implements AutoCloseable {
    static final int CLASSES = 3;
    static final Instant EVENING = Instant.parse("2027-03-04T18:30:00Z");
    private static final PrintStream OUT = new PrintStream(System.out, true, StandardCharsets.US_ASCII);

    final Database database;
    final ShelfBoard shelf;
    final Boards boards;
    final Forgetting forgetting;
    private final Sweeping sweeping;
    private Instant now = EVENING;
    private final InstantSource clock = () -> now;

    private ForgettingBoard(Path folder, Iterator<Integer> endings) {
        database = Database.open(folder);
        shelf = ShelfBoard.open(database, clock);
        boards = new Boards(new SqliteEventLog(database), clock,
                new ViewMaker(new PlanCureClock(), new PosteriorPaceWatch(), ZoneOffset.UTC),
                () -> Integer.toString(endings.next()));
        Settings settings = new Settings(database);
        sweeping = new Sweeping(new FileSweep(database), boards::atHand, clock);
        forgetting = new Forgetting(boards, shelf, settings, sweeping,
                new Backups(folder, settings, BoardTime.of(clock), ZoneOffset.UTC, "Benchpace"), clock);
    }

    static ForgettingBoard open(Path folder) {
        return new ForgettingBoard(folder, List.<Integer>of().iterator());
    }

    /** @param bytes of other things, so that rewriting the file takes its time */
    static void fill(Path folder, int bytes) {
        try (ForgettingBoard board = new ForgettingBoard(folder, IntStream.range(0, CLASSES).iterator())) {
            for (int n = 0; n < CLASSES; n++) {
                board.over(n);
            }
            new Settings(board.database).put("filling", "x".repeat(bytes));
        }
    }

    private void over(int number) {
        SeatNumber one = new SeatNumber(1);
        ClassBoard made = boards.create(Demo.eveningPlan(), "Thursday", EVENING,
                List.of(new ClassEvent.Place(one, word(number))), "test");
        int tap = 0;
        for (ClassEvent event : List.of(new ClassEvent.SeatNoted(one, "scarf of " + word(number)),
                new ClassEvent.ClassNoted(word(number) + " asked for more"), new ClassEvent.ClassClosed())) {
            made.submit(new Command("tap-" + tap++, "instructor", EVENING, event));
        }
        shelf.submit("put-" + number, e -> true, s -> Optional.empty(), (rules, s, now) -> rules.put(s, made.id(), one,
                new ShelfPlace("Upper", 1 + number), now, new ClaimWord("umbrella", 40 + number), word(number), now));
        shelf.submit("collect-" + number, e -> true, s -> Optional.empty(), (rules, s, now) ->
                rules.collect(s, new EntryId(1 + number), true, now));
    }

    /** Time passes. */
    void later(Duration passed) {
        now = now.plus(passed);
    }

    /** The name of the one guest of a class; no other is like it in the first or the last eight letters. */
    static String word(int number) {
        return "qz" + number + "wyxkj";
    }

    ClassBoard of(int number) {
        return boards.find(Demo.eveningPlan().id().value() + "-" + number).orElseThrow();
    }

    /** How many events of a class still tell its guest's name. */
    long told(int number) {
        return new SqliteEventLog(database).read(of(number).id()).stream()
                .filter(event -> event.toString().contains(word(number))).count();
    }

    /** What a start does before the first page is served, and then every hour. */
    Erasing erasing() {
        return new Erasing(BoardTime.of(clock), List.of(
                new Erasing.Part("words of candles that left the shelf", shelf::eraseDue),
                new Erasing.Part("guests of classes that are over", forgetting::forgetDue),
                new Erasing.Part("unused parts of the file with words", sweeping::sweepBySelf)));
    }

    @Override public void close() {
        boards.close();
        database.close();
    }

    public static void main(String[] folder) {
        try (ForgettingBoard board = open(Path.of(folder[0]))) {
            for (int n = 0; n < CLASSES; n++) {
                OUT.println("begin " + n);
                boolean swept = board.forgetting.forget(board.of(n)) instanceof Forgetting.Outcome.Done done
                        && done.swept();
                OUT.println("done " + n + " " + swept + " told");
            }
        }
        OUT.println("end");
    }
}
