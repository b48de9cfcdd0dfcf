package benchpace;

import benchpace.board.Backups;
import benchpace.board.Boards;
import benchpace.board.ClassBoard;
import benchpace.board.Erasing;
import benchpace.board.Forgetting;
import benchpace.board.HistoryBoard;
import benchpace.board.LeavingEarly;
import benchpace.board.PrepBoard;
import benchpace.board.ProblemReports;
import benchpace.board.ShelfBoard;
import benchpace.board.Sweeping;
import benchpace.board.cooling.RoomLessons;
import benchpace.board.pacing.PosteriorPaceWatch;
import benchpace.board.pacing.StepLessons;
import benchpace.board.plans.PlanBook;
import benchpace.board.playback.PlaybackModels;
import benchpace.board.playback.Playbacks;
import benchpace.board.time.ImpossibleClock;
import benchpace.board.time.SteadyClock;
import benchpace.board.view.ViewMaker;
import benchpace.files.BadFile;
import benchpace.files.plan.PlanFolder;
import benchpace.files.plan.StarterPlans;
import benchpace.files.roster.Demo;
import benchpace.store.FileSweep;
import benchpace.store.PairingKeys;
import benchpace.store.Rooms;
import benchpace.store.SavedPlans;
import benchpace.store.SeatCodes;
import benchpace.store.Sessions;
import benchpace.store.Settings;
import benchpace.store.SqliteEventLog;
import benchpace.store.StepBeliefs;
import benchpace.store.sqlite.Database;
import benchpace.store.sqlite.Draft;
import benchpace.store.sqlite.StoreException;
import benchpace.web.Addresses;
import benchpace.web.LocalName;
import benchpace.web.OlderSecrets;
import benchpace.web.Server;
import benchpace.web.StartFailure;
import benchpace.web.entrance.TlsKeys;
import benchpace.web.guest.GuestCodes;
import benchpace.web.pairing.Access;
import benchpace.web.pairing.Keys;
import benchpace.web.pairing.Pins;
import benchpace.web.pairing.Secrets;
import benchpace.web.request.QrCode;
import benchpace.words.ClockWords;
import benchpace.words.Times;
import java.io.PrintWriter;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Opens the board: wires all parts, prints how to reach it, and stops cleanly when asked to. */
@Command(name = "serve", mixinStandardHelpOptions = true, description = "Opens the board.")
final class ServeCommand implements Callable<Integer> {
    /** Not an exit code: the board is open, and the program ends when it is closed. */
    static final int SERVING = -1;
    private static final String DEMO_NAME = "Demo: evening class";
    private static final Duration DEMO_STAYS = Duration.ofHours(4);

    @Spec
    private CommandSpec spec;
    @Option(names = "--port", defaultValue = "7070", paramLabel = "N",
            description = "default ${DEFAULT-VALUE}; 0 takes a free one")
    private int port;
    @Option(names = "--data", defaultValue = "data", paramLabel = "DIR",
            description = "where classes are kept; default ${DEFAULT-VALUE}")
    private Path data;
    @Option(names = "--host", defaultValue = "0.0.0.0", paramLabel = "ADDRESS",
            description = "the address to listen on; default all")
    private String host;
    @Option(names = "--host-name", paramLabel = "NAME",
            description = "a further name under which this machine is reached")
    private Set<String> hostNames = Set.of();
    @Option(names = "--demo", negatable = true,
            description = "set up the demo class; by default if there is no class of yours")
    private Boolean demo;
    @Option(names = "--pin", paramLabel = "PIN",
            description = "the instructor's PIN; default a random one at each start")
    private String pin;

    @Mixin
    private TlsOptions tls;

    @Override public Integer call() {
        checkOptions();
        Optional<TlsKeys> keys = tls.keys(Instant.now());
        PlanFolder folder = soundPlans();
        Database database = open();
        Draft.sweepTemporary();
        database.told().forEach(spec.commandLine().getErr()::println);
        try {
            serve(database, folder, keys);
            return SERVING;
        } catch (RuntimeException e) {
            database.close();
            if (e instanceof StartFailure || e instanceof StoreException) {
                throw new Stop(1, e.getMessage(), e);
            }
            throw e;
        }
    }

    private void checkOptions() {
        if (port < 0 || port > 65_535) {
            throw new ParameterException(spec.commandLine(), "--port must be 0 to 65535, not " + port + ".");
        }
        requireLine("--host", host);
        hostNames.forEach(name -> requireLine("--host-name", name));
        requireLine("--data", data.toString());
        if (Files.exists(data) && !Files.isDirectory(data)) {
            throw new ParameterException(spec.commandLine(), "--data must be a folder, and " + data + " is a file.");
        }
        if (pin != null && (pin.length() < 4 || pin.length() > 64)) {
            throw new ParameterException(spec.commandLine(), "--pin must have 4 to 64 characters.");
        }
    }

    private void requireLine(String option, String value) {
        if (value.isBlank()) {
            throw new ParameterException(spec.commandLine(), option + " must not be empty; leave it out for the "
                    + "usual one.");
        }
        if (value.chars().anyMatch(Character::isISOControl)) {
            throw new ParameterException(spec.commandLine(), option + " must not hold a control character.");
        }
    }

    /** The organiser's plans in files, each of them sound: else nothing is opened. */
    private PlanFolder soundPlans() {
        try {
            PlanFolder folder = new PlanFolder(data.resolve("plans"));
            folder.found();
            return folder;
        } catch (BadFile e) {
            throw new Stop(Main.BAD_INPUT, e.getMessage(), e);
        }
    }

    private Database open() {
        try {
            return Database.open(data);
        } catch (StoreException e) {
            throw new Stop(1, e.getMessage(), e);
        }
    }

    private void serve(Database database, PlanFolder folder, Optional<TlsKeys> keys) {
        SqliteEventLog log = new SqliteEventLog(database);
        SteadyClock clock = SteadyClock.system(log::fits);
        ZoneId zone = ZoneId.systemDefault();
        PlanBook plans = PlanBook.open(StarterPlans::all, new SavedPlans(database), folder, clock);
        RoomLessons lessons = new RoomLessons(new Rooms(database), clock);
        StepLessons steps = new StepLessons(new StepBeliefs(database), clock);
        ViewMaker maker = new ViewMaker(lessons.cureClock(), new PosteriorPaceWatch(steps), zone);
        ShelfBoard shelf = ShelfBoard.open(database, clock);
        Boards boards = new Boards(log, clock, maker, Secrets::idEnding, new LeavingEarly(shelf), lessons, steps);
        PrepBoard prep = new PrepBoard(database, boards, clock);
        Playbacks playbacks = new Playbacks(boards, of -> PlaybackModels.of(of, lessons, steps, zone),
                Secrets::idEnding);
        HistoryBoard history = new HistoryBoard(boards, shelf, database);
        Keys links = new Keys(new PairingKeys(database), clock);
        GuestCodes codes = new GuestCodes(new SeatCodes(database), clock);
        OlderSecrets.takeOver(new Settings(database), links, codes, boards);
        Access access = new Access(new Sessions(database), clock, Pins.drawn(Optional.ofNullable(pin)), links);
        Sweeping sweeping = new Sweeping(new FileSweep(database), boards::atHand, clock);
        Backups backups = new Backups(data, new Settings(database), clock, zone, Main.VERSION);
        Forgetting forgetting = new Forgetting(boards, shelf, new Settings(database), sweeping, backups, clock);
        Erasing erasing = new Erasing(clock, List.of(
                new Erasing.Part("words of candles that left the shelf", shelf::eraseDue),
                new Erasing.Part("classes that were deleted a day ago", boards::eraseDeleted),
                new Erasing.Part("guests of classes that are over", forgetting::forgetDue),
                new Erasing.Part("codes of seats whose class is over", () -> codes.forgetThoseOf(boards)),
                new Erasing.Part("devices that were paired a year ago", access::forgetOld),
                new Erasing.Part("unused parts of the file with words", sweeping::sweepBySelf)));
        demoClass(boards, clock.instant(), zone);
        String address = reachable();
        String scheme = Server.scheme(keys);
        Server server;
        try {
            server = new Server(host, port, hostNames, n -> scheme + address + ":" + n + "/", boards,
                    playbacks, shelf, prep, history, plans, new Settings(database), access, codes, erasing, forgetting,
                    backups, ProblemReports.running(database, boards::classes, Main.VERSION, Logs::recent), clock,
                    zone, keys);
        } catch (StartFailure e) {
            erasing.close();
            playbacks.close();
            history.close();
            prep.close();
            boards.close();
            throw e;
        }
        LocalName localName = new LocalName();
        server.alsoKnownAs(localName::name);
        Runtime.getRuntime().addShutdownHook(new Thread(() -> {
            localName.close();
            server.close();
            erasing.close();
            playbacks.close();
            history.close();
            prep.close();
            boards.close();
            database.close();
        }, "closing"));
        announce(scheme, server.port(), address, access);
        tellAhead(boards, clock.instant(), new Times(zone));
        access.whenPinsAreNew(() -> announceAnew(scheme, server.port(), access));
        lan(address).ifPresent(at -> localName.announce(at, server.port(), name -> say(
                "  By name     " + scheme + name + ":" + server.port() + "/   (/wall, /helper and /table too)\n")));
    }

    /** The address to announce a name at: none for a board that only this machine or a named host reaches. */
    private static Optional<InetAddress> lan(String address) {
        if (!address.matches("[0-9.]+")) {
            return Optional.empty();
        }
        try {
            return Optional.of(InetAddress.getByName(address)).filter(a -> !a.isLoopbackAddress());
        } catch (UnknownHostException e) {
            return Optional.empty();
        }
    }

    /** Tells of classes whose last times lie in the future: this clock is wrong, or an earlier one was. */
    private void tellAhead(Boards boards, Instant now, Times times) {
        boards.atHand().stream().filter(ClassBoard::tellsAhead).map(ClassBoard::live).forEach(live -> say("\""
                + live.name() + "\" has times up to " + times.dated(live.lastRecordedAt())
                + "; the computer's clock says " + times.dated(now) + ". Its page asks which is right.\n"));
    }

    /** Sets up the demo class of today, if the board should have one: asked for, or nothing of the user's is there. */
    private void demoClass(Boards boards, Instant now, ZoneId zone) {
        boolean wanted = demo == null ? boards.oneByOne().allMatch(b -> b.live().name().equals(DEMO_NAME)) : demo;
        if (wanted && boards.atHand().stream().map(ClassBoard::live).noneMatch(c -> c.closedAt().isEmpty()
                && c.name().equals(DEMO_NAME) && c.createdAt().isAfter(now.minus(DEMO_STAYS)))) {
            try {
                boards.create(Demo.eveningPlan(), DEMO_NAME, now, Demo.eveningRoster().places(), Demo.BY);
            } catch (ImpossibleClock e) {
                say("No demo class. " + ClockWords.of(e, zone) + "\n\n");
            }
        }
    }

    private String reachable() {
        boolean everywhere = host.equals("0.0.0.0") || host.equals("::");
        return everywhere ? Addresses.onNetwork().orElse("localhost") : host;
    }

    private void announce(String scheme, int port, String address, Access access) {
        String local = scheme + "localhost:" + port + "/";
        String network = scheme + address + ":" + port + "/";
        say("""
                Benchpace is ready: %s

                  Instructor  %s#key=%s   (opens once, on one device)
                              or PIN %s at %stable
                  Helpers     %shelper#helper=%s
                              or PIN %s at %shelper
                  Wall        %swall#wall=%s
                              or PIN %s at %s; it also shows without
                  Phones      %s

                The table, the helpers and the wall show whichever class runs, else the next of today.

                %s
                Ctrl-C stops the board; nothing is lost.
                """.formatted(local, local, access.keys().newInstructorKey(), access.pins().instructor(), network,
                network, access.keys().helper(), access.pins().helper(), network, network, access.keys().wall(),
                access.pins().wall(), network, network, QrCode.terminal(network)));
    }

    /** For whoever is at the console while somebody draws PINs anew on a page, perhaps signing all devices out. */
    private void announceAnew(String scheme, int port, Access access) {
        say("""

                  New PINs    %s for the instructor, %s for helpers, %s for walls
                  Instructor  %slocalhost:%d/#key=%s   (opens once, on one device)
                """.formatted(access.pins().instructor(), access.pins().helper(), access.pins().wall(), scheme, port,
                access.keys().newInstructorKey()));
    }

    /** To the console; a line may come later, so each is written whole. */
    private synchronized void say(String text) {
        PrintWriter out = spec.commandLine().getOut();
        out.print(text);
        out.flush();
    }
}
