package benchpace.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.awaitility.Awaitility.await;

import benchpace.board.cooling.PlanCureClock;
import benchpace.board.cooling.RoomLessons;
import benchpace.board.pacing.PosteriorPaceWatch;
import benchpace.board.pacing.StepLessons;
import benchpace.board.time.BoardTime;
import benchpace.board.view.ViewMaker;
import benchpace.files.roster.Demo;
import benchpace.live.ClassEvent;
import benchpace.live.LiveClass;
import benchpace.live.Recorded;
import benchpace.plan.SeatNumber;
import benchpace.store.EventLog;
import benchpace.store.FileSweep;
import benchpace.store.Rooms;
import benchpace.store.Settings;
import benchpace.store.SqliteEventLog;
import benchpace.store.StepBeliefs;
import benchpace.store.sqlite.Database;
import benchpace.store.sqlite.Statements;
import benchpace.store.sqlite.StoreException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.nio.file.Path;
import java.sql.Statement;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CopyOnWriteArraySet;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a start reads of classes that are over, counted where they are read. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PastClassesTest {
    private static final List<Recorded> EVENING = Demo.recordedEvening();
    private static final Instant CLOSED = LiveClass.of(EVENING).closedAt().orElseThrow();

    @TempDir private Path folder;
    private Database database;
    private SqliteEventLog log;
    /** The classes that were read since the start, in order. */
    private final List<String> read = new CopyOnWriteArrayList<>();
    /** The classes whose rows the file gives nobody just now. */
    private final Set<String> failing = new CopyOnWriteArraySet<>();
    /** How often rounds of the publisher have looked at the clock. */
    private final AtomicInteger roundsReadings = new AtomicInteger();
    private Instant now = CLOSED.plus(Duration.ofDays(3));
    private Boards boards;

    @BeforeEach void open() {
        database = Database.open(folder);
        log = new SqliteEventLog(database);
    }

    @AfterEach void close() {
        if (boards != null) {
            boards.close();
        }
        database.close();
    }

    private void start() {
        boards = new Boards(counting(), this::time, maker(), () -> "x");
    }

    private static ViewMaker maker() {
        return new ViewMaker(new PlanCureClock(), new PosteriorPaceWatch(), ZoneOffset.UTC);
    }

    private Instant time() {
        if (Thread.currentThread().getName().startsWith("board-publisher")) {
            roundsReadings.incrementAndGet();
        }
        return now;
    }

    private void sql(String sql) {
        database.write(connection -> Statements.change(connection, sql));
    }

    private EventLog counting() {
        return (EventLog) Proxy.newProxyInstance(getClass().getClassLoader(), new Class<?>[] {EventLog.class},
                (proxy, method, given) -> {
                    if (method.getName().equals("read")) {
                        if (failing.contains((String) given[0])) {
                            throw new StoreException("Too many files are open.");
                        }
                        read.add((String) given[0]);
                    }
                    try {
                        return method.invoke(log, given);
                    } catch (InvocationTargetException e) {
                        throw e.getCause();
                    }
                });
    }

    private void keep(String id, List<Recorded> events) {
        events.forEach(event -> log.append(id, event));
    }

    private void keepOver(int many) {
        IntStream.range(0, many).forEach(n -> keep("over-" + n, EVENING));
    }

    private static List<Recorded> and(List<Recorded> events, ClassEvent... more) {
        List<Recorded> all = new ArrayList<>(events);
        for (ClassEvent event : more) {
            long seq = all.size() + 1;
            all.add(new Recorded(seq, "more-" + seq, "instructor", CLOSED.plusSeconds(seq), CLOSED.plusSeconds(seq),
                    event));
        }
        return all;
    }

    private static List<Recorded> unfinished() {
        return EVENING.subList(0, EVENING.size() - 1);
    }

    private static ClassEvent undoneClose() {
        return new ClassEvent.Undone(EVENING.size());
    }

    // ---- reading

    @Test void a_start_reads_no_class_that_is_over_until_somebody_looks_at_it_and_then_that_one_once() {
        keepOver(5);
        keep("tonight", unfinished());

        start();

        assertThat(read).containsExactly("tonight");
        assertThat(boards.atHand()).extracting(ClassBoard::id).containsExactly("tonight");

        ClassBoard looked = boards.find("over-3").orElseThrow();
        assertThat(looked.live()).usingRecursiveComparison().isEqualTo(LiveClass.of(EVENING));
        assertThat(boards.find("over-3")).containsSame(looked);
        assertThat(read).containsExactly("tonight", "over-3");
    }

    @Test void whoever_asks_for_all_is_told_of_all_and_each_is_read_once_however_many_ask() {
        keepOver(6);
        start();

        List<Integer> told = IntStream.range(0, 8).parallel().mapToObj(n -> boards.all().size()).toList();

        assertThat(told).containsOnly(6);
        assertThat(boards.oneByOne()).hasSize(6);
        assertThat(read).hasSize(6).doesNotHaveDuplicates();
    }

    @Test void whoever_goes_through_them_one_by_one_has_no_more_read_than_are_asked_for() {
        keepOver(4);
        start();

        assertThat(boards.oneByOne().anyMatch(board -> board.live().closedAt().isPresent())).isTrue();

        assertThat(read).hasSize(1);
    }

    @Test void one_that_cannot_be_read_is_told_as_soon_as_somebody_asks_and_the_others_open() {
        keepOver(2);
        database.write(connection -> {
            try (Statement statement = connection.createStatement()) {
                return statement.executeUpdate("insert into event select 'odd', seq, command_id, type, by_whom, at_ms, "
                        + "recorded_ms, iif(seq = 1, '{\"plan\":3}', payload), device from event "
                        + "where class_id = 'over-0' order by seq");
            }
        });
        start();
        assertThat(read).isEmpty();

        try (WatchedLog told = new WatchedLog(Boards.class.getName())) {
            assertThat(boards.unreadable()).containsExactly("odd");
            assertThat(told.records()).hasSize(1);
        }
        assertThat(boards.find("odd")).isEmpty();
        assertThat(boards.all()).extracting(ClassBoard::id).containsExactlyInAnyOrder("over-0", "over-1");
    }

    @Test void one_that_cannot_be_read_is_deleted_for_good_although_nobody_looked_at_it_before() {
        keep("odd", List.of(EVENING.get(0), new Recorded(2, "close", "instructor", CLOSED, CLOSED,
                new ClassEvent.ClassClosed())));
        database.write(connection -> {
            try (Statement statement = connection.createStatement()) {
                statement.executeUpdate("drop trigger event_is_only_changed_to_forget");
                return statement.executeUpdate("update event set payload = '{\"plan\":3}' where seq = 1");
            }
        });
        start();

        try (WatchedLog told = new WatchedLog(Boards.class.getName())) {
            assertThat(boards.deleteUnreadable("odd")).isTrue();
        }
        assertThat(log.classIds()).isEmpty();
    }

    @Test void a_file_that_fails_for_once_makes_no_class_unreadable_and_keeps_nobody_from_the_others() {
        keepOver(3);
        failing.add("over-1");
        start();

        try (WatchedLog told = new WatchedLog(PastClasses.class.getName())) {
            assertThat(boards.all()).extracting(ClassBoard::id).containsExactlyInAnyOrder("over-0", "over-2");
            assertThat(boards.oneByOne()).hasSize(2);
            assertThatThrownBy(() -> boards.find("over-1")).isInstanceOf(StoreException.class);
            assertThat(told.records()).as("told once").hasSize(1);
        }
        assertThat(boards.unreadable()).isEmpty();
        assertThat(boards.deleteUnreadable("over-0")).isFalse();

        failing.clear();
        assertThat(boards.find("over-1")).isPresent();
        assertThat(boards.all()).hasSize(3);
    }

    @Test void a_class_whose_beginning_is_unsound_is_read_once_all_the_same() {
        keepOver(2);
        RoomLessons unsound = new RoomLessons(new Rooms(database), () -> now);
        sql("insert into class_prior (class_id, room, log_loss_mean, log_loss_sd, ready_mean, ready_sd, observations) "
                + "values ('over-0', 'here', 0, -1, 0.5, 0.1, 1)");
        boards = new Boards(counting(), () -> now, maker(), () -> "x",
                new LeavingEarly(ShelfBoard.open(database, () -> now)), unsound,
                new StepLessons(new StepBeliefs(database), () -> now));

        try (WatchedLog told = new WatchedLog(Taught.class.getName())) {
            ClassBoard first = boards.find("over-0").orElseThrow();

            assertThat(boards.all()).hasSize(2);
            assertThat(boards.find("over-0")).containsSame(first);
            assertThat(told.records()).as("told once").hasSize(1);
        }
        assertThat(read).containsExactlyInAnyOrder("over-0", "over-1");
    }

    // ---- rounds

    @Test void a_class_nobody_looks_at_is_not_looked_at_again_and_again() {
        keep("tonight", unfinished());
        start();

        await().during(Duration.ofSeconds(3)).atMost(Duration.ofSeconds(5)).until(() -> roundsReadings.get() < 20);
    }

    @Test void one_that_was_over_long_ago_rests_once_it_was_made_anew() {
        keepOver(5);
        start();
        boards.all().forEach(ClassBoard::lookAgain);
        await().until(() -> roundsReadings.getAndSet(0) > 0);

        // no round is longer in coming than ten seconds
        await().during(Duration.ofMillis(10_500)).atMost(Duration.ofSeconds(15))
                .until(() -> roundsReadings.getAndSet(0) == 0);
    }

    // ---- which are over

    @Test void what_is_open_again_or_was_closed_within_the_day_is_there_after_the_start() {
        keep("undone", and(EVENING, undoneClose()));
        keep("over", EVENING);
        start();
        assertThat(boards.atHand()).extracting(ClassBoard::id).containsExactly("undone");
        boards.close();

        now = CLOSED.plus(Duration.ofHours(23));
        start();
        assertThat(boards.atHand()).extracting(ClassBoard::id).containsExactlyInAnyOrder("undone", "over");
    }

    @Test void only_what_is_closed_by_its_whole_log_counts_as_closed_by_the_kinds_of_its_events() {
        Map<String, List<Recorded>> classes = Map.of("closed", EVENING, "running", unfinished(),
                "undone", and(EVENING, undoneClose()),
                "noted", and(EVENING, new ClassEvent.ClassNoted("swept"),
                        new ClassEvent.JudgedSet(new SeatNumber(1))),
                "undone and closed again", and(EVENING, undoneClose(), new ClassEvent.ClassClosed()),
                "closed at another time", and(EVENING, new ClassEvent.TapRetimed(EVENING.size(),
                        CLOSED.minus(Duration.ofMinutes(9)))),
                "shifted", and(EVENING, new ClassEvent.ClockShifted(1, Duration.ofDays(400))));
        classes.forEach(this::keep);

        Map<String, Instant> closed = log.closed(CLOSED.plus(Duration.ofDays(500)));

        assertThat(closed).containsOnlyKeys("closed", "noted");
        assertThat(closed).allSatisfy((id, at) -> assertThat(LiveClass.of(classes.get(id)).closedAt()).contains(at));
        assertThat(log.closed(CLOSED.minus(Duration.ofHours(1)))).isEmpty();
    }

    // ---- forgetting

    @Test void forgetting_by_age_reads_those_that_are_due_alone() {
        keepOver(2);
        List<Recorded> later = EVENING.stream().map(event -> new Recorded(event.seq(), event.commandId(), event.by(),
                event.device(), event.at().plus(Duration.ofDays(30)), event.recordedAt().plus(Duration.ofDays(30)),
                event.event())).toList();
        keep("later", later);
        now = CLOSED.plus(Duration.ofDays(33));
        start();
        Forgetting forgetting = forgetting();
        forgetting.forgetDue();
        assertThat(read).isEmpty();

        forgetting.days(OptionalInt.of(30));
        forgetting.forgetDue();

        assertThat(read).containsExactlyInAnyOrder("over-0", "over-1");
        assertThat(log.forgotten()).containsOnlyKeys("over-0", "over-1");
        read.clear();
        boards.close();
        start();
        forgetting().forgetDue();
        assertThat(read).as("whose guests are forgotten is not read for it again").isEmpty();
    }

    private Forgetting forgetting() {
        Settings settings = new Settings(database);
        return new Forgetting(boards, ShelfBoard.open(database, () -> now), settings,
                new Sweeping(new FileSweep(database), boards::atHand, () -> now),
                new Backups(folder, settings, BoardTime.of(() -> now), ZoneOffset.UTC, "Benchpace"), () -> now);
    }
}
