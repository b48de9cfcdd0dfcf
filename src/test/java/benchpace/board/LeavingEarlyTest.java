package benchpace.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchpace.board.LeavingEarly.Followed;
import benchpace.board.LeavingEarly.Outcome;
import benchpace.board.LeavingEarly.Wish;
import benchpace.board.cooling.PlanCureClock;
import benchpace.board.pacing.PosteriorPaceWatch;
import benchpace.board.view.ViewMaker;
import benchpace.files.roster.Demo;
import benchpace.live.ClassEvent;
import benchpace.live.Command;
import benchpace.live.Refusal;
import benchpace.live.Seat;
import benchpace.plan.SeatNumber;
import benchpace.plan.StepId;
import benchpace.shelf.ClaimWord;
import benchpace.shelf.ShelfEntry;
import benchpace.shelf.ShelfPlace;
import benchpace.shelf.ShelfRefusal;
import benchpace.store.SqliteEventLog;
import benchpace.store.sqlite.Database;
import benchpace.store.sqlite.StoreException;
import java.nio.file.Path;
import java.sql.Statement;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A seat that leaves early, the shelf, and the class, in two logs of one file. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class LeavingEarlyTest {
    private static final SeatNumber THREE = new SeatNumber(3);
    private static final SeatNumber FOUR = new SeatNumber(4);
    private static final ClaimWord MAPLE = new ClaimWord("maple", 42);
    private static final ClaimWord DRAWN = new ClaimWord("birch", 17);

    @TempDir Path data;
    private final AtomicInteger ids = new AtomicInteger();
    private Instant now = Instant.parse("2027-03-04T18:30:00Z");
    private Database database;
    private ShelfBoard shelf;
    private LeavingEarly leaving;
    private Boards boards;
    private ClassBoard board;

    @BeforeEach void open() {
        start();
        board = boards.create(Demo.eveningPlan(), "Thursday", now, Demo.eveningRoster().places(), "instructor");
        for (String step : List.of("welcome", "wicks", "fragrance", "before-wax", "mix", "pour")) {
            did(new ClassEvent.StepOpened(new StepId(step)));
        }
        did(new ClassEvent.StepFinished(THREE, new StepId("pour")));
        did(new ClassEvent.StepFinished(FOUR, new StepId("pour")));
        passMinutes(10);
    }

    private void start() {
        database = Database.open(data);
        shelf = ShelfBoard.open(database, () -> now);
        leaving = new LeavingEarly(shelf);
        boards = new Boards(new SqliteEventLog(database), () -> now,
                new ViewMaker(new PlanCureClock(), new PosteriorPaceWatch(), ZoneOffset.UTC), () -> "x1", leaving);
    }

    @AfterEach void stop() {
        boards.close();
        database.close();
    }

    private void passMinutes(long minutes) {
        now = now.plus(Duration.ofMinutes(minutes));
    }

    private Command command(ClassEvent wish) {
        return new Command("c-" + ids.incrementAndGet(), "instructor", board.now(), wish);
    }

    private Answer.Recorded did(ClassEvent wish) {
        return did(command(wish));
    }

    private Answer.Recorded did(Command command) {
        return (Answer.Recorded) board.submit(command);
    }

    private static Wish wish(String id, SeatNumber seat, int place) {
        return new Wish(id, "", seat, new ShelfPlace("Upper", place), Optional.of(MAPLE), "Io", Optional.empty());
    }

    private Outcome leave(Wish wish) {
        return leaving.leave(board, wish, () -> DRAWN);
    }

    private Outcome.OnTheShelf left(Wish wish) {
        return (Outcome.OnTheShelf) leave(wish);
    }

    private List<ShelfEntry> standing() {
        return shelf.shelf().standing().toList();
    }

    private boolean atTheTable(SeatNumber seat) {
        return board.live().seat(seat).orElseThrow().presence() == Seat.Presence.PRESENT;
    }

    private void store(String sql) {
        database.write(connection -> {
            try (Statement statement = connection.createStatement()) {
                return statement.executeUpdate(sql);
            }
        });
    }

    private void takesNo(String table) {
        store("create temp trigger full before insert on " + table + " begin select raise(abort, 'disk full'); end");
    }

    // ---- leaving

    @Test void the_candle_stands_on_the_shelf_and_the_seat_has_left() {
        Outcome.OnTheShelf done = left(wish("w", THREE, 5));

        assertThat(done.left()).isTrue();
        assertThat(standing()).containsExactly(done.candle());
        assertThat(done.candle().claimWord()).contains(MAPLE);
        assertThat(done.candle().readyFrom()).isEqualTo(shelf.arrangement().settings()
                .readyFrom(board.view().seats().get(2).candle().orElseThrow().said().until()));
        assertThat(atTheTable(THREE)).isFalse();
    }

    @Test void a_guest_who_brings_no_word_gets_one_drawn() {
        Wish none = new Wish("w", "", THREE, new ShelfPlace("Upper", 5), Optional.empty(), "", Optional.empty());

        assertThat(left(none).candle().claimWord()).contains(DRAWN);
    }

    @Test void a_seat_without_a_candle_stays() {
        assertThat(leave(wish("w", new SeatNumber(1), 5))).isEqualTo(new Outcome.NotPoured(new SeatNumber(1)));
        assertThat(atTheTable(new SeatNumber(1))).isTrue();
        assertThat(standing()).isEmpty();
    }

    @Test void a_wish_sent_again_counts_once_and_under_its_id_nothing_else_is_done() {
        Outcome.OnTheShelf first = left(wish("w", THREE, 5));
        long seq = board.live().seq();

        assertThat(leave(wish("w", THREE, 5))).isEqualTo(first);
        assertThat(leave(wish("w", FOUR, 6))).isEqualTo(
                new Outcome.ShelfRefused(new ShelfRefusal.IdTaken(first.candle().id())));

        assertThat(standing()).hasSize(1);
        assertThat(board.live().seq()).isEqualTo(seq);
        assertThat(atTheTable(FOUR)).isTrue();
    }

    @Test void a_place_that_is_taken_leaves_the_seat_at_the_table() {
        ShelfEntry there = left(wish("w", THREE, 5)).candle();

        assertThat(leave(new Wish("v", "", FOUR, there.place(), Optional.empty(), "", Optional.empty()))).isEqualTo(
                new Outcome.ShelfRefused(new ShelfRefusal.PlaceTaken(there.place(), there.id())));
        assertThat(atTheTable(FOUR)).isTrue();
    }

    @Test void of_two_devices_that_send_one_seat_away_the_second_leaves_the_candle_where_it_is() {
        ShelfEntry candle = left(wish("w", THREE, 5)).candle();

        assertThat(leave(wish("v", THREE, 5))).isEqualTo(new Outcome.OnTheShelf(candle, true));
        assertThat(standing()).containsExactly(candle);
    }

    @Test void a_class_that_is_over_keeps_no_candle_from_the_shelf() {
        did(new ClassEvent.ClassClosed());

        assertThat(left(wish("w", THREE, 5)).left()).isFalse();
        assertThat(standing()).hasSize(1);
    }

    // ---- one half fails

    @Test void a_class_that_refuses_has_the_candle_taken_back() {
        did(new Command(Command.own("leave.w"), "instructor", board.now(), new ClassEvent.ClassNoted("taken")));

        assertThat(leave(wish("w", THREE, 5))).isInstanceOfSatisfying(Outcome.ClassRefused.class,
                refused -> assertThat(refused.why()).isInstanceOf(Refusal.IdTaken.class));
        assertThat(standing()).isEmpty();
        assertThat(atTheTable(THREE)).isTrue();
    }

    @Test void a_store_that_fails_between_the_two_is_made_good_by_the_same_wish_sent_again() {
        takesNo("event");
        assertThatThrownBy(() -> leave(wish("w", THREE, 5))).isInstanceOf(StoreException.class);
        assertThat(standing()).hasSize(1);
        assertThat(atTheTable(THREE)).isTrue();
        store("drop trigger full");

        assertThat(left(wish("w", THREE, 5)).left()).isTrue();

        assertThat(standing()).hasSize(1);
        assertThat(atTheTable(THREE)).isFalse();
    }

    @Test void a_shelf_that_fails_leaves_the_class_as_it_was() {
        takesNo("shelf_event");

        assertThatThrownBy(() -> leave(wish("w", THREE, 5))).isInstanceOf(StoreException.class);

        assertThat(atTheTable(THREE)).isTrue();
    }

    // ---- afterwards

    @Test void an_undone_leaving_takes_the_candle_off_and_its_place_is_free_again() {
        left(wish("w", THREE, 5));

        assertThat(did(new ClassEvent.Undone(board.live().seq())).candle()).isEqualTo(Followed.OFF);

        assertThat(standing()).isEmpty();
        assertThat(leave(wish("w", THREE, 5))).as("sent again late").isEqualTo(new Outcome.TakenBack());
        assertThat(atTheTable(THREE)).isTrue();
        assertThat(leave(new Wish("v", "", FOUR, new ShelfPlace("Upper", 5), Optional.empty(), "", Optional.empty())))
                .isInstanceOf(Outcome.OnTheShelf.class);
    }

    @Test void who_comes_back_has_no_candle_there_and_who_was_not_back_after_all_has_it_again() {
        ShelfEntry candle = left(wish("w", THREE, 5)).candle();
        passMinutes(1);

        Answer.Recorded back = did(new ClassEvent.SeatArrived(THREE, ""));
        assertThat(back.candle()).isEqualTo(Followed.OFF);
        assertThat(standing()).isEmpty();

        stop();
        start();
        board = boards.find(board.id()).orElseThrow();
        assertThat(did(new ClassEvent.Undone(back.seq())).candle()).isEqualTo(Followed.ON);
        assertThat(standing()).containsExactly(candle);
    }

    @Test void a_shelf_that_could_not_follow_does_so_when_the_same_tap_comes_again() {
        left(wish("w", THREE, 5));
        passMinutes(1);
        Command back = command(new ClassEvent.SeatArrived(THREE, ""));
        takesNo("shelf_event");
        assertThatThrownBy(() -> board.submit(back)).isInstanceOf(StoreException.class);
        assertThat(atTheTable(THREE)).as("the tap stands").isTrue();
        store("drop trigger full");

        Answer.Recorded again = did(back);

        assertThat(again.duplicate()).isTrue();
        assertThat(again.candle()).isEqualTo(Followed.OFF);
        assertThat(standing()).isEmpty();
    }

    @Test void what_has_nothing_to_do_with_leaving_leaves_the_shelf_alone() {
        left(wish("w", THREE, 5));

        assertThat(did(new ClassEvent.ClassNoted("warm in here")).candle()).isEqualTo(Followed.NOTHING);
        assertThat(did(new ClassEvent.SeatArrived(FOUR, "")).candle()).isEqualTo(Followed.NOTHING);
        assertThat(standing()).hasSize(1);
    }
}
