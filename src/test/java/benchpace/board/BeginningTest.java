package benchpace.board;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.cooling.RoomLessons;
import benchpace.board.pacing.PosteriorPaceWatch;
import benchpace.board.pacing.StepLessons;
import benchpace.board.view.ViewMaker;
import benchpace.cure.room.RoomFit;
import benchpace.files.roster.Demo;
import benchpace.live.ClassEvent;
import benchpace.live.Command;
import benchpace.plan.SeatNumber;
import benchpace.plan.StepId;
import benchpace.store.Rooms;
import benchpace.store.SqliteEventLog;
import benchpace.store.StepBeliefs;
import benchpace.store.sqlite.Database;
import java.nio.file.Path;
import java.sql.Statement;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a class starts from is fixed when it begins, whoever looks at it and when. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class BeginningTest {
    private static final Instant EVENING = Instant.parse("2027-03-04T18:30:00Z");
    private static final RoomFit WARM = new RoomFit(0.1, 0.1, 0.5, 0.1, 3);

    @TempDir Path data;
    private final AtomicInteger ids = new AtomicInteger();
    private Database database;
    private Rooms rooms;
    private StepBeliefs beliefs;
    private Boards boards;
    private ClassBoard board;

    @BeforeEach void open() {
        start();
        board = boards.create(Demo.eveningPlan(), "Thursday", EVENING, Demo.eveningRoster().places(), "instructor");
    }

    private void start() {
        database = Database.open(data);
        rooms = new Rooms(database);
        beliefs = new StepBeliefs(database);
        RoomLessons lessons = new RoomLessons(rooms, () -> EVENING);
        StepLessons steps = new StepLessons(beliefs, () -> EVENING);
        boards = new Boards(new SqliteEventLog(database), () -> EVENING,
                new ViewMaker(lessons.cureClock(), new PosteriorPaceWatch(steps), ZoneOffset.UTC),
                () -> "n" + ids.incrementAndGet(), new LeavingEarly(ShelfBoard.open(database, () -> EVENING)),
                lessons, steps);
    }

    private void restart() {
        stop();
        start();
        board = boards.find(board.id()).orElseThrow();
    }

    @AfterEach void stop() {
        boards.close();
        database.close();
    }

    private void did(ClassEvent event) {
        assertThat(board.submit(new Command("c-" + ids.incrementAndGet(), "instructor", board.now(), event)))
                .isInstanceOf(Answer.Recorded.class);
    }

    private void begins() {
        did(new ClassEvent.StepOpened(new StepId("welcome")));
    }

    private void pours() {
        for (String step : new String[] {"wicks", "fragrance", "before-wax", "mix", "pour"}) {
            did(new ClassEvent.StepOpened(new StepId(step)));
        }
        did(new ClassEvent.StepFinished(new SeatNumber(1), new StepId("pour")));
    }

    /** Another class in the room was closed. */
    private void roomTeaches() {
        String room = board.live().plan().place();
        rooms.prior("another", room);
        rooms.learn("another", room, Optional.of(WARM), 9, EVENING);
    }

    private boolean isFixed() {
        return rooms.started(board.id()).isPresent() && beliefs.started(board.id()).isPresent();
    }

    private void store(String sql) {
        database.write(connection -> {
            try (Statement statement = connection.createStatement()) {
                return statement.executeUpdate(sql);
            }
        });
    }

    @Test void what_a_class_starts_from_is_kept_with_its_first_step_and_not_before() {
        did(new ClassEvent.ClassNoted("flowers on the table"));
        assertThat(isFixed()).as("what the room learns until it begins counts for it").isFalse();
        roomTeaches();

        begins();

        assertThat(isFixed()).isTrue();
        assertThat(rooms.started(board.id())).contains(WARM.forNextClass());
    }

    @Test void looking_writes_nothing() {
        begins();
        pours();
        store("delete from class_prior");
        store("delete from class_belief");

        restartWithoutBeginning();
        board.view();
        board.cutAway(1);

        assertThat(isFixed()).isFalse();
    }

    /** The same file, looked at by a board that knows of no lessons. */
    private void restartWithoutBeginning() {
        boards.close();
        RoomLessons lessons = new RoomLessons(rooms, () -> EVENING);
        boards = new Boards(new SqliteEventLog(database), () -> EVENING, new ViewMaker(lessons.cureClock(),
                new PosteriorPaceWatch(new StepLessons(beliefs, () -> EVENING)), ZoneOffset.UTC), () -> "x");
        board = boards.find(board.id()).orElseThrow();
    }

    @Test void a_class_of_an_older_board_that_kept_nothing_has_it_kept_when_it_is_opened() {
        begins();
        store("delete from class_prior");
        store("delete from class_belief");

        restart();

        assertThat(isFixed()).isTrue();
        roomTeaches();
        restart();
        assertThat(rooms.started(board.id())).as("for good").contains(RoomFit.untaught());
    }

    @Test void a_full_disk_loses_no_tap_and_what_it_kept_back_is_kept_with_the_next() {
        store("create temp trigger full before insert on class_prior begin select raise(abort, 'full'); end");
        try (WatchedLog log = new WatchedLog(RoomLessons.class.getName())) {
            begins();
            pours();
            assertThat(rooms.started(board.id())).isEmpty();
            assertThat(log.records()).as("told once").hasSize(1);
        }
        assertThat(board.view().seats().get(0).candle()).as("counted all the same").isPresent();
        store("drop trigger full");

        did(new ClassEvent.ClassNoted("there is room again"));

        assertThat(isFixed()).isTrue();
    }
}
