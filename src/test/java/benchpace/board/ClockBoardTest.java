package benchpace.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import benchpace.board.cooling.CandleClock;
import benchpace.board.pacing.PosteriorPaceWatch;
import benchpace.board.time.ClockChoice;
import benchpace.board.time.SettableClocks;
import benchpace.board.view.ClassView;
import benchpace.board.view.ViewMaker;
import benchpace.files.roster.Demo;
import benchpace.live.ClassEvent;
import benchpace.live.Command;
import benchpace.live.LiveClass;
import benchpace.live.Recorded;
import benchpace.plan.SeatNumber;
import benchpace.store.EventLog;
import benchpace.store.SqliteEventLog;
import benchpace.store.sqlite.Database;
import benchpace.store.sqlite.StoreException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What becomes of screens and of a full disk when the board's time is set right. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ClockBoardTest {
    private static final Instant EVENING = Instant.parse("2027-03-04T18:30:00Z");
    private static final Duration TWO_HOURS = Duration.ofHours(2);
    private static final Duration PATIENCE = Duration.ofSeconds(20);

    @TempDir Path data;
    private final SettableClocks computer = new SettableClocks(EVENING, true);
    private final AtomicInteger ids = new AtomicInteger();
    private volatile boolean full;
    private volatile CountDownLatch drawing = new CountDownLatch(0);
    private volatile boolean waiting;
    private Database database;
    private Boards boards;
    private ClassBoard board;

    /** Takes no more while the disk is full. */
    private final class Log implements EventLog {
        private final EventLog kept = new SqliteEventLog(database);

        @Override public List<String> classIds() {
            return kept.classIds();
        }

        @Override public boolean anyRecorded(Instant from, Instant until) {
            return kept.anyRecorded(from, until);
        }

        @Override public List<Recorded> read(String classId) {
            return kept.read(classId);
        }

        @Override public void append(String classId, Recorded event) {
            if (full) {
                throw new StoreException("The disk is full.");
            }
            kept.append(classId, event);
        }
    }

    @BeforeEach void open() {
        start();
        board = boards.create(Demo.eveningPlan(), "Thursday", EVENING, Demo.eveningRoster().places(), "instructor");
    }

    private void start() {
        database = Database.open(data);
        boards = new Boards(new Log(), computer.start(),
                new ViewMaker(this::clocks, new PosteriorPaceWatch(), ZoneOffset.UTC),
                () -> "n" + ids.incrementAndGet());
    }

    private Map<SeatNumber, CandleClock> clocks(LiveClass live, Instant now) {
        try {
            waiting = drawing.getCount() > 0;
            drawing.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        return Map.of();
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

    private Command hello() {
        return new Command("note-" + ids.incrementAndGet(), "instructor", board.now(),
                new ClassEvent.ClassNoted("hello"));
    }

    /** The computer's clock is set, stays so for a minute, and somebody says that it is right. */
    private void setRight(Duration by) {
        computer.jump(by);
        boards.clocks().disagreement();
        computer.passMinutes(1);
        assertThat(boards.clocks().choose(ClockChoice.COMPUTER)).isTrue();
    }

    @Test void a_start_goes_by_the_computers_clock_and_one_class_from_the_future_shifts_no_other() {
        computer.jump(TWO_HOURS.negated());
        restart();
        ClassBoard ahead = board;

        ClassBoard other = boards.create(Demo.eveningPlan(), "Afternoon", computer.instant(),
                Demo.eveningRoster().places(), "instructor");
        computer.passMinutes(5);

        assertThat(ahead.now()).isEqualTo(EVENING.plusSeconds(300));
        assertThat(ahead.ahead()).isEqualTo(TWO_HOURS);
        assertThat(other.live().createdAt()).isEqualTo(EVENING.minus(TWO_HOURS));
        assertThat(other.now()).isEqualTo(computer.instant());
        assertThat(other.ahead()).isZero();
        assertThat(ahead.submit(new Command("late", "instructor", ahead.now(), new ClassEvent.ClassNoted("late"))))
                .isInstanceOf(Answer.Recorded.class);
        assertThat(other.now()).as("also after it wrote").isEqualTo(computer.instant());
        assertThat(boards.clocks().board()).isEqualTo(computer.instant());
    }

    @Test void screens_of_a_class_that_wrote_nothing_by_a_clock_set_ahead_go_on_by_the_right_one() throws Exception {
        computer.jump(TWO_HOURS);
        restart();
        try (Mailbox screen = board.subscribe()) {
            assertThat(screen.take(PATIENCE).orElseThrow().view().now()).isEqualTo(EVENING.plus(TWO_HOURS));

            setRight(TWO_HOURS.negated());

            assertThat(board.live().seq()).as("nothing is to be moved").isEqualTo(1);
            await().atMost(PATIENCE).until(() -> screen.take(Duration.ofMillis(200)).map(made -> made.view().now())
                    .filter(EVENING.plusSeconds(60)::equals).isPresent());
        }
    }

    @Test void a_view_in_the_making_when_the_clock_is_set_back_is_not_shown_again() throws Exception {
        computer.jump(TWO_HOURS);
        restart();
        await().atMost(PATIENCE).until(() -> board.viewIfReady().isPresent());
        computer.passMinutes(1);
        drawing = new CountDownLatch(1);
        CompletableFuture<ClassView> late = CompletableFuture.supplyAsync(board::view);
        await().atMost(PATIENCE).until(() -> waiting);

        setRight(TWO_HOURS.negated());
        drawing.countDown();

        assertThat(late.get().now()).isAfter(board.now());
        assertThat(board.view().now()).isEqualTo(board.now());
    }

    @Test void times_that_a_full_disk_kept_from_moving_move_before_anything_else_and_what_was_tapped_by_them_counts() {
        for (Duration by : List.of(TWO_HOURS, TWO_HOURS.negated())) {
            Instant created = board.live().createdAt();
            Command tapped = hello();
            int clocks = board.live().clocks();
            try (WatchedLog log = new WatchedLog(ClassBoard.class.getName())) {
                full = true;
                setRight(by);
                assertThat(log.records()).hasSize(1);
            }
            assertThat(board.live().createdAt()).isEqualTo(created);
            full = false;

            assertThat(board.submit(tapped, clocks)).isInstanceOf(Answer.Recorded.class);

            assertThat(board.live().log()).last().extracting(Recorded::commandId).isEqualTo(tapped.id());
            assertThat(board.live().createdAt()).isEqualTo(created.plus(by));
            assertThat(board.ahead()).isZero();
        }
    }

    @Test void times_that_a_full_disk_kept_from_moving_move_by_themselves_once_it_takes_them() {
        try (WatchedLog log = new WatchedLog(Publisher.class.getName());
                WatchedLog told = new WatchedLog(ClassBoard.class.getName())) {
            full = true;
            setRight(TWO_HOURS);
            await().atMost(PATIENCE).until(() -> !log.records().isEmpty());
            assertThat(told.records()).hasSize(1);
            full = false;
        }

        try (Mailbox screen = board.subscribe()) {
            await().atMost(PATIENCE).until(() -> board.live().createdAt().equals(EVENING.plus(TWO_HOURS)));
        }
    }
}
