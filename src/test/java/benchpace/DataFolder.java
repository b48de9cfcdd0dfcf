package benchpace;

import benchpace.board.Boards;
import benchpace.board.ClassBoard;
import benchpace.board.LeavingEarly;
import benchpace.board.ShelfBoard;
import benchpace.board.cooling.RoomLessons;
import benchpace.board.pacing.PosteriorPaceWatch;
import benchpace.board.pacing.StepLessons;
import benchpace.board.plans.PlanBook;
import benchpace.board.view.ViewMaker;
import benchpace.cure.room.RoomFit;
import benchpace.files.BadFile;
import benchpace.files.plan.PlanFolder;
import benchpace.files.roster.Demo;
import benchpace.live.ClassEvent;
import benchpace.live.Command;
import benchpace.plan.SeatNumber;
import benchpace.plan.StepId;
import benchpace.shelf.ClaimWord;
import benchpace.shelf.EntryId;
import benchpace.shelf.ShelfPlace;
import benchpace.store.Rooms;
import benchpace.store.SavedPlans;
import benchpace.store.Sessions;
import benchpace.store.Settings;
import benchpace.store.SqliteEventLog;
import benchpace.store.StepBeliefs;
import benchpace.store.sqlite.Database;
import benchpace.store.sqlite.StoreException;
import benchpace.words.MissingWords;
import benchpace.words.PlanWords;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;

/** A data folder that a test may damage, and what a board makes of it. */
record DataFolder(Path folder) {
    private static final Instant EVENING = Instant.parse("2027-03-04T18:30:00Z");

    /**
     * What a start came to.
     *
     * @param refusal    the one sentence, if the board does not start
     * @param classes    the number of events by class
     * @param told       what is said of the rest
     * @param candles    on the shelf
     * @param freePlaces on the shelf
     */
    record Start(Optional<String> refusal, Map<String, Long> classes, List<String> told, List<EntryId> candles,
                 int freePlaces) {
        long events() {
            return classes.values().stream().mapToLong(Long::longValue).sum();
        }
    }

    // ---- making

    /**
     * A folder with two classes, three candles on the shelf, one of them collected, and what a room has taught.
     *
     * @param killed as a board leaves it that is killed: everything stands in the write-ahead log
     */
    static DataFolder filled(Path folder, boolean killed) throws IOException {
        Path work = folder.resolveSibling(folder.getFileName() + "-work");
        InstantSource clock = () -> EVENING;
        try (Database database = Database.open(work)) {
            if (killed) {
                database.write(connection -> {
                    try (Statement statement = connection.createStatement()) {
                        return statement.execute("pragma wal_autocheckpoint = 0");
                    }
                });
            }
            ShelfBoard shelf = ShelfBoard.open(database, clock);
            try (Boards boards = boards(database, clock, shelf, new ArrayList<>(List.of("two", "one")))) {
                fill(boards, shelf);
            }
            Rooms rooms = new Rooms(database);
            rooms.prior("evening-pour-one", "The loft");
            rooms.learn("evening-pour-one", "The loft", Optional.of(new RoomFit(0.1, 0.1, 0.5, 0.1, 3)), 9, EVENING);
            new Sessions(database).create("token", "instructor", "", EVENING);
            new Settings(database).put("helper-key", "key");
            if (killed) {
                return new DataFolder(work).copy(folder);
            }
        }
        return new DataFolder(work).copy(folder);
    }

    private static Boards boards(Database database, InstantSource clock, ShelfBoard shelf, List<String> endings) {
        RoomLessons lessons = new RoomLessons(new Rooms(database), clock);
        StepLessons steps = new StepLessons(new StepBeliefs(database), clock);
        return new Boards(new SqliteEventLog(database), clock, new ViewMaker(lessons.cureClock(),
                new PosteriorPaceWatch(steps), ZoneOffset.UTC), () -> endings.remove(endings.size() - 1),
                new LeavingEarly(shelf), lessons, steps);
    }

    private static void fill(Boards boards, ShelfBoard shelf) {
        for (String name : List.of("Thursday", "Friday")) {
            ClassBoard board = boards.create(Demo.eveningPlan(), name, EVENING, Demo.eveningRoster().places(), "test");
            for (int n = 1; n <= 20; n++) {
                board.submit(new Command("tap-" + n, "instructor", EVENING, n % 2 == 0
                        ? new ClassEvent.ClassNoted("note " + n)
                        : new ClassEvent.StepFinished(new SeatNumber(1 + n % 6), new StepId("vessel"))));
            }
        }
        shelf.arrange(shelf.arrangement());
        ShelfPlace[] places = shelf.arrangement().layout().places().limit(3).toArray(ShelfPlace[]::new);
        for (int n = 1; n <= 3; n++) {
            int seat = n;
            shelf.submit("put-" + n, e -> true, s -> Optional.empty(), (rules, s, now) -> rules.put(s,
                    "evening-pour-one", new SeatNumber(seat), places[seat - 1], now,
                    new ClaimWord("maple", 40 + seat), "", now));
        }
        shelf.submit("collect-3", e -> true, s -> Optional.empty(), (rules, s, now) ->
                rules.collect(s, new EntryId(3), true, now));
    }

    DataFolder copy(Path to) throws IOException {
        Files.createDirectories(to);
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, to.resolve(file.getFileName()));
            }
        }
        return new DataFolder(to);
    }

    // ---- starting, as ServeCommand does it, but for the network

    Start start() {
        List<String> told = new ArrayList<>();
        try {
            PlanFolder plans = new PlanFolder(folder.resolve("plans"));
            plans.found();
            try (Database database = Database.open(folder)) {
                told.addAll(database.told());
                InstantSource clock = () -> EVENING;
                told.addAll(PlanBook.open(Demo::plans, new SavedPlans(database), plans, clock).troubles().stream()
                        .map(PlanWords::of).toList());
                new Sessions(database).prune(EVENING.minusSeconds(60));
                ShelfBoard shelf = ShelfBoard.open(database, clock);
                try (Boards boards = boards(database, clock, shelf, new ArrayList<>())) {
                    new Rooms(database).all();
                    new Rooms(database).before("next", "The loft");
                    new StepBeliefs(database).accepted("evening-pour", "");
                    Map<String, Long> classes = new TreeMap<>();
                    boards.all().forEach(board -> {
                        board.view();
                        classes.put(board.id(), board.live().seq());
                    });
                    told.addAll(MissingWords.told(boards.unreadable(), boards.missing()));
                    told.addAll(shelf.degraded());
                    return new Start(Optional.empty(), classes, told,
                            shelf.shelf().entries().stream().map(e -> e.id()).toList(),
                            shelf.shelf().suggest(shelf.arrangement().layout(), "", 1000).size());
                }
            }
        } catch (StoreException | BadFile refused) {
            return new Start(Optional.of(refused.getMessage()), Map.of(), told, List.of(), 0);
        }
    }

    // ---- damaging

    Path file() {
        return folder.resolve(Database.FILE);
    }

    Path log() {
        return folder.resolve(Database.FILE + "-wal");
    }

    Path index() {
        return folder.resolve(Database.FILE + "-shm");
    }

    Path planFile() {
        return folder.resolve("plans/own.json");
    }

    long size() throws IOException {
        return Files.size(file());
    }

    void cut(Path path, long size) throws IOException {
        try (RandomAccessFile bytes = new RandomAccessFile(path.toFile(), "rw")) {
            bytes.setLength(size);
        }
    }

    void flip(Path path, long at) throws IOException {
        try (RandomAccessFile bytes = new RandomAccessFile(path.toFile(), "rw")) {
            bytes.seek(at);
            int before = bytes.read();
            bytes.seek(at);
            bytes.write(before ^ 0x5a);
        }
    }

    void write(Path path, long at, byte[] what) throws IOException {
        try (RandomAccessFile bytes = new RandomAccessFile(path.toFile(), "rw")) {
            bytes.seek(at);
            bytes.write(what);
        }
    }

    byte[] noise(int length) {
        byte[] bytes = new byte[length];
        new Random(length).nextBytes(bytes);
        return bytes;
    }

    void link(Path from, Path to) throws IOException {
        Files.createDirectories(from.getParent());
        Files.deleteIfExists(from);
        Files.createSymbolicLink(from, to);
    }

    /** The folder itself becomes a link. */
    void replaceBy(Path target) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
        Files.createSymbolicLink(folder, target);
    }

    void plan(byte[] bytes) throws IOException {
        Files.createDirectories(planFile().getParent());
        Files.write(planFile(), bytes);
    }

    /** Changes rows behind the board's back, past its own guards. */
    void sql(String sql) throws Exception {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file());
                Statement statement = connection.createStatement()) {
            List<String> guards = new ArrayList<>();
            try (var rows = statement.executeQuery("select name from sqlite_master where type = 'trigger'")) {
                while (rows.next()) {
                    guards.add(rows.getString(1));
                }
            }
            for (String guard : guards) {
                statement.executeUpdate("drop trigger " + guard);
            }
            for (String one : sql.split("; ")) {
                statement.executeUpdate(one);
            }
        }
    }
}
