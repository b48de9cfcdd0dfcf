package benchpace.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.awaitility.Awaitility.await;

import benchpace.board.cooling.CandleClock;
import benchpace.board.cooling.Cooling;
import benchpace.board.cooling.CureClock;
import benchpace.board.cooling.PlanCureClock;
import benchpace.board.pacing.PosteriorPaceWatch;
import benchpace.board.view.ClassView;
import benchpace.board.view.ViewMaker;
import benchpace.files.roster.Demo;
import benchpace.live.ClassEvent;
import benchpace.live.Command;
import benchpace.live.LiveClass;
import benchpace.plan.SeatNumber;
import benchpace.store.SqliteEventLog;
import benchpace.store.sqlite.Database;
import java.nio.file.Path;
import java.sql.Statement;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Views are made once for many, and what is wrong with one class stays with that class. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ClassBoardTest {
    private static final Instant EVENING = Instant.parse("2027-03-04T18:30:00Z");

    @TempDir Path data;
    private final AtomicReference<Instant> wall = new AtomicReference<>(EVENING);
    private final AtomicInteger ids = new AtomicInteger();
    private final Set<String> broken = ConcurrentHashMap.newKeySet();
    private final Set<String> slow = ConcurrentHashMap.newKeySet();
    private volatile CountDownLatch planning = new CountDownLatch(0);
    private Database database;
    private Boards boards;
    private ClassBoard board;

    /** Fails, as a stack too deep would and whatever is asked of it, for the classes that are broken. */
    private final class Breaking implements CureClock {
        private final CureClock sound = new PlanCureClock();

        @Override public Map<SeatNumber, CandleClock> clocks(LiveClass live, Instant now) {
            return sound.clocks(live, now);
        }

        @Override public Cooling cooling(String classId, LiveClass live, Instant now) {
            if (broken.contains(classId)) {
                throw new StackOverflowError("in class " + classId);
            }
            if (slow.isEmpty() || slow.contains(classId)) {
                awaitPlanning();
            }
            return sound.cooling(classId, live, now);
        }

        @Override public Cooling byFigure(LiveClass live, Instant now) {
            if (!broken.isEmpty()) {
                throw new StackOverflowError("nor by the plan's figure");
            }
            return sound.byFigure(live, now);
        }

        /** As long as a past of many events takes to be planned again. */
        private void awaitPlanning() {
            try {
                planning.await();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }
    }

    @BeforeEach void open() {
        start();
        board = create();
    }

    private void start() {
        database = Database.open(data);
        boards = new Boards(new SqliteEventLog(database), wall::get,
                new ViewMaker(new Breaking(), new PosteriorPaceWatch(), ZoneOffset.UTC),
                () -> "n" + ids.incrementAndGet());
    }

    @AfterEach void stop() {
        boards.close();
        database.close();
    }

    private ClassBoard create() {
        return boards.create(Demo.eveningPlan(), "Thursday", EVENING, Demo.eveningRoster().places(), "instructor");
    }

    private long note(ClassBoard to) {
        Answer answer = to.submit(new Command("note-" + ids.incrementAndGet(), "instructor", wall.get(),
                new ClassEvent.ClassNoted("hello")));
        return ((Answer.Recorded) answer).seq();
    }

    @Test void a_view_that_was_due_to_change_is_made_anew_however_young_it_is() {
        ClassBoard soon = boards.create(Demo.eveningPlan(), "Friday", EVENING.plusSeconds(3),
                Demo.eveningRoster().places(), "instructor");
        ClassView before = soon.view();
        assertThat(before.nextChange()).contains(EVENING.plusSeconds(3));
        wall.set(EVENING.plusSeconds(2));
        assertThat(soon.view()).isSameAs(before);

        wall.set(EVENING.plusSeconds(3));
        assertThat(soon.views().stale()).isTrue();
        assertThat(soon.view().now()).isEqualTo(EVENING.plusSeconds(3));
    }

    @Test void a_tap_by_a_clock_that_is_a_little_ahead_is_one_of_now_and_an_earlier_one_keeps_its_time() {
        wall.set(EVENING.plusSeconds(60));
        assertThat(recordedAt(EVENING.plusSeconds(64))).isEqualTo(EVENING.plusSeconds(60));
        assertThat(recordedAt(EVENING.plusSeconds(20))).isEqualTo(EVENING.plusSeconds(20));
    }

    private Instant recordedAt(Instant tapped) {
        board.submit(new Command("tap-" + ids.incrementAndGet(), "instructor", tapped,
                new ClassEvent.ClassNoted("hello")));
        return board.eventsAfter(board.live().seq() - 1).get(0).at();
    }

    @Test void a_view_is_made_once_for_all_that_look_within_five_seconds() {
        ClassView first = board.view();
        wall.set(EVENING.plusSeconds(4));
        assertThat(board.view()).isSameAs(first);

        wall.set(EVENING.plusSeconds(5));
        assertThat(board.view().now()).isEqualTo(EVENING.plusSeconds(5));
    }

    @Test void a_view_is_made_anew_after_every_event() {
        board.view();

        long seq = note(board);

        assertThat(board.view().seq()).isEqualTo(seq);
    }

    @Test void a_screen_whose_first_view_cannot_be_made_leaves_no_mailbox_behind() {
        broken.add(board.id());

        assertThatThrownBy(board::subscribe).isInstanceOf(StackOverflowError.class);

        assertThat(board.watched()).isFalse();
    }

    @Test void a_class_that_cannot_be_shown_keeps_no_other_from_its_screens() throws Exception {
        ClassBoard other = create();
        try (Mailbox first = board.subscribe(); Mailbox second = other.subscribe()) {
            broken.add(board.id());
            note(board);
            long seq = note(other);

            await().atMost(Duration.ofSeconds(20)).until(() ->
                    second.take(Duration.ofMillis(200)).map(made -> made.view().seq()).equals(Optional.of(seq)));
            assertThat(first.isClosed()).isFalse();
        }
    }

    @Test void a_class_whose_view_takes_long_keeps_no_other_from_its_screens() throws Exception {
        ClassBoard other = create();
        try (Mailbox first = board.subscribe(); Mailbox second = other.subscribe()) {
            slow.add(board.id());
            planning = new CountDownLatch(1);
            long late = note(board);
            wall.set(EVENING.plusSeconds(1));
            long seq = note(other);

            await().atMost(Duration.ofSeconds(20)).until(() -> shown(second, seq));
            long again = note(other);
            await().atMost(Duration.ofSeconds(20)).until(() -> shown(second, again));
            assertThat(first.take(Duration.ofSeconds(20))).as("what was tapped is shown at once").hasValueSatisfying(
                    made -> assertThat(made.view().seq()).isEqualTo(late)).get().matches(made -> !made.whole());
            assertThat(first.take(Duration.ofMillis(1))).isEmpty();
            planning.countDown();
            await().atMost(Duration.ofSeconds(20)).until(() ->
                    first.take(Duration.ofMillis(200)).filter(m -> m.whole() && m.view().seq() == late).isPresent());
        }
    }

    private static boolean shown(Mailbox screen, long seq) throws InterruptedException {
        return screen.take(Duration.ofMillis(200)).map(made -> made.view().seq()).equals(Optional.of(seq));
    }

    @Test void a_class_that_cannot_be_read_back_is_left_out_and_told_and_the_others_open() {
        database.write(connection -> {
            try (Statement statement = connection.createStatement()) {
                return statement.executeUpdate(
                        "insert into event values ('odd-1', 1, 'c', 'create', 'x', 0, 0, '{\"plan\":3}', '')");
            }
        });
        stop();

        start();

        assertThat(boards.unreadable()).containsExactly("odd-1");
        assertThat(boards.all()).extracting(ClassBoard::id).containsExactly(board.id());
        assertThat(boards.find("odd-1")).isEmpty();
    }

    @Test void a_list_of_classes_does_not_wait_for_one_whose_past_is_still_being_planned_after_a_start() {
        note(board);
        String id = board.id();
        stop();
        planning = new CountDownLatch(1);

        start();

        ClassBoard again = boards.find(id).orElseThrow();
        assertThat(again.viewIfReady()).isEmpty();
        planning.countDown();
        await().atMost(Duration.ofSeconds(20)).until(() -> again.viewIfReady().isPresent());
    }

    @Test void the_creation_is_no_command_that_could_be_repeated() {
        assertThat(board.live().seqOf(board.live().history().get(0).commandId())).isEmpty();
    }
}
