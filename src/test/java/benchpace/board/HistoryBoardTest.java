package benchpace.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import benchpace.board.cooling.PlanCureClock;
import benchpace.board.cooling.RoomLessons;
import benchpace.board.pacing.PaceWatch;
import benchpace.board.pacing.PosteriorPaceWatch;
import benchpace.board.pacing.StepLessons;
import benchpace.board.view.ViewMaker;
import benchpace.files.roster.Demo;
import benchpace.history.ClassFigures;
import benchpace.history.PastClass;
import benchpace.history.PastClass.Standing;
import benchpace.live.ClassEvent;
import benchpace.live.Command;
import benchpace.live.Recorded;
import benchpace.store.ClassSummaries;
import benchpace.store.Rooms;
import benchpace.store.SqliteEventLog;
import benchpace.store.StepBeliefs;
import benchpace.store.sqlite.Database;
import benchpace.store.sqlite.Statements;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What past classes came to is worked out once, without being asked, and again only when it is not true any more. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class HistoryBoardTest {
    private static final List<Recorded> EVENING = Demo.recordedEvening();
    private static final String ID = "evening-tallow";
    private static final Duration PATIENCE = Duration.ofSeconds(90);

    @TempDir Path data;
    private final AtomicInteger ids = new AtomicInteger();
    private Instant now = EVENING.get(EVENING.size() - 1).recordedAt().plusSeconds(60);
    private Database database;
    private SqliteEventLog log;
    private Boards boards;
    private HistoryBoard history;

    @BeforeEach void keep() {
        try (Database before = Database.open(data)) {
            SqliteEventLog kept = new SqliteEventLog(before);
            EVENING.forEach(event -> kept.append(ID, event));
        }
    }

    @AfterEach void close() {
        history.close();
        boards.close();
        database.close();
    }

    private void open() {
        open(new PosteriorPaceWatch());
    }

    private void open(PaceWatch pace) {
        database = Database.open(data);
        log = new SqliteEventLog(database);
        ShelfBoard shelf = ShelfBoard.open(database, () -> now);
        boards = new Boards(log, () -> now, new ViewMaker(new PlanCureClock(), pace, ZoneOffset.UTC),
                () -> "n" + ids.incrementAndGet(), new LeavingEarly(shelf));
        history = new HistoryBoard(boards, shelf, database);
    }

    private PastClass past(String id) {
        return history.classes().stream().filter(past -> past.id().equals(id)).findFirst().orElseThrow();
    }

    private ClassFigures reckoned() {
        await().atMost(PATIENCE).until(() -> past(ID).standing() == Standing.RECKONED);
        return past(ID).figures().orElseThrow();
    }

    private ClassSummaries.Kept kept() {
        return new ClassSummaries(database).all().get(ID);
    }

    private void sql(String sql) {
        database.write(connection -> Statements.change(connection, sql));
    }

    @Test void a_closed_class_is_reckoned_without_being_asked_and_what_it_came_to_outlasts_a_restart() {
        open();
        ClassFigures figures = reckoned();
        await().atMost(PATIENCE).untilAsserted(() -> assertThat(kept())
                .isEqualTo(new ClassSummaries.Kept(EVENING.size(), ClassFigures.RECKONING, figures)));
        close();

        open((id, live, clocks, at) -> {
            throw new IllegalStateException("reckoned again");
        });

        assertThat(past(ID).figures()).as("at once").contains(figures);
    }

    @Test void a_lesson_that_cannot_be_drawn_keeps_no_class_from_being_reckoned() {
        database = Database.open(data);
        sql("insert into class_prior (class_id, room, log_loss_mean, log_loss_sd, ready_mean, ready_sd, observations) "
                + "values ('" + ID + "', 'here', 0, -1, 0.5, 0.1, 1)"); // no fit that can be
        ShelfBoard shelf = ShelfBoard.open(database, () -> now);
        boards = new Boards(new SqliteEventLog(database), () -> now, new ViewMaker(new PlanCureClock(),
                new PosteriorPaceWatch(), ZoneOffset.UTC), () -> "n", new LeavingEarly(shelf),
                new RoomLessons(new Rooms(database), () -> now), new StepLessons(new StepBeliefs(database), () -> now));
        history = new HistoryBoard(boards, shelf, database);

        reckoned();
    }

    @Test void a_class_that_changed_since_is_reckoned_anew_and_until_then_tells_no_stale_figures() {
        open();
        reckoned();
        Answer answer = boards.find(ID).orElseThrow().submit(new Command("late-note", "instructor", now,
                new ClassEvent.ClassNoted("wicks were short")));
        assertThat(answer).isInstanceOf(Answer.Recorded.class);

        assertThat(past(ID).standing()).isEqualTo(Standing.TO_COME);
        reckoned();
        await().atMost(PATIENCE).until(() -> kept().seq() == EVENING.size() + 1);
    }

    @Test void what_an_older_reckoning_made_is_made_anew() {
        open();
        ClassFigures figures = reckoned();
        await().atMost(PATIENCE).until(() -> kept() != null);
        sql("update class_summary set reckoning = reckoning - 1, flags = flags + 9");
        close();

        open();

        assertThat(reckoned()).isEqualTo(figures);
        await().atMost(PATIENCE).until(() -> kept().reckoning() == ClassFigures.RECKONING);
        assertThat(kept().figures()).isEqualTo(figures);
    }

    @Test void one_that_cannot_be_reckoned_is_told_so_and_is_tried_again_after_a_start() {
        open((id, live, clocks, at) -> {
            throw new IllegalStateException("made for this test");
        });
        await().atMost(PATIENCE).until(() -> past(ID).standing() == Standing.FAILED);
        assertThat(kept()).isNull();
        close();

        open();
        assertThat(reckoned().flags().raised()).isPositive();
    }

    @Test void what_a_full_disk_kept_from_being_written_down_is_told_all_the_same_and_written_later() {
        open();
        sql("create trigger full before insert on class_summary begin select raise(abort, 'full'); end");
        sql("delete from class_summary");
        assertThat(boards.find(ID).orElseThrow().submit(new Command("note", "instructor", now,
                new ClassEvent.ClassNoted("the disk is full")))).isInstanceOf(Answer.Recorded.class);

        ClassFigures figures = reckoned();
        assertThat(kept()).isNull();
        sql("drop trigger full");

        await().atMost(PATIENCE).until(() -> kept() != null);
        assertThat(kept().figures()).isEqualTo(figures);
    }

    @Test void a_class_that_nobody_closed_is_listed_once_it_was_left_open_and_has_no_figures() {
        open();
        ClassBoard open = boards.create(Demo.eveningPlan(), "Left open", now, Demo.eveningRoster().places(), "test");
        assertThat(open.submit(new Command("opens", "instructor", now, new ClassEvent.StepOpened(
                open.live().plan().steps().get(0).id())))).isInstanceOf(Answer.Recorded.class);
        assertThat(history.classes()).extracting(PastClass::id).as("it goes on").containsExactly(ID);

        now = now.plus(Duration.ofDays(2));

        assertThat(history.classes()).extracting(PastClass::id).as("the latest first")
                .containsExactly(open.id(), ID);
        assertThat(past(open.id()).standing()).isEqualTo(Standing.LEFT_OPEN);
    }

    @Test void a_class_that_was_deleted_is_told_of_no_more_and_nothing_is_kept_of_it() {
        open();
        reckoned();
        ClassBoard board = boards.find(ID).orElseThrow();

        boards.delete(board, board.live().name());

        assertThat(history.classes()).isEmpty();
        await().atMost(PATIENCE).until(() -> kept() == null);
    }
}
