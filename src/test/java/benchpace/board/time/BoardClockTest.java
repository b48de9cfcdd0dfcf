package benchpace.board.time;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.Answer;
import benchpace.board.Boards;
import benchpace.board.ClassBoard;
import benchpace.board.cooling.PlanCureClock;
import benchpace.board.pacing.PosteriorPaceWatch;
import benchpace.board.view.ClassView;
import benchpace.board.view.ViewMaker;
import benchpace.files.roster.Demo;
import benchpace.live.ClassEvent;
import benchpace.live.Command;
import benchpace.plan.StepId;
import benchpace.store.SqliteEventLog;
import benchpace.store.sqlite.Database;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A class on a computer whose clock is set back in the middle of it, or stands behind after a restart. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class BoardClockTest {
    private static final Instant EVENING = Instant.parse("2027-03-04T18:30:00Z");

    @TempDir Path data;
    private final AtomicReference<Instant> wall = new AtomicReference<>(EVENING);
    private Database database;
    private Boards boards;
    private ClassBoard board;
    private int commands;

    @BeforeEach void open() {
        start();
        board = boards.create(Demo.eveningPlan(), "Thursday", EVENING, Demo.eveningRoster().places(), "instructor");
    }

    @AfterEach void stop() {
        boards.close();
        database.close();
    }

    /** Without a steady counter: the harshest clock there can be. */
    private void start() {
        database = Database.open(data);
        boards = new Boards(new SqliteEventLog(database), wall::get,
                new ViewMaker(new PlanCureClock(), new PosteriorPaceWatch(), ZoneOffset.UTC), () -> "abcd");
    }

    private Answer open(String step, Instant at) {
        return board.submit(new Command("c" + ++commands, "instructor", at,
                new ClassEvent.StepOpened(new StepId(step))));
    }

    @Test void taps_go_on_counting_when_the_clock_was_set_back() {
        wall.set(EVENING.plusSeconds(1_800));
        assertThat(open("welcome", wall.get())).isInstanceOf(Answer.Recorded.class);

        wall.set(EVENING.minusSeconds(3_600));

        assertThat(open("wicks", EVENING.plusSeconds(1_800))).isInstanceOf(Answer.Recorded.class);
        assertThat(board.view().now()).isEqualTo(EVENING.plusSeconds(1_800));
        assertThat(board.eventsAfter(0)).extracting(e -> e.recordedAt()).isSorted();
    }

    @Test void a_restart_with_the_clock_behind_keeps_the_class_and_its_time() {
        wall.set(EVENING.plusSeconds(1_800));
        open("welcome", wall.get());
        String id = board.id();
        ClassView before = board.view();

        stop();
        wall.set(EVENING.minusSeconds(86_400));
        start();
        board = boards.find(id).orElseThrow();

        assertThat(board.view()).isEqualTo(before);
    }
}
