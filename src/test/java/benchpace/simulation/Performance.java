package benchpace.simulation;

import benchpace.board.Answer;
import benchpace.board.Boards;
import benchpace.board.ClassBoard;
import benchpace.board.cooling.CureClock;
import benchpace.board.cooling.PlanCureClock;
import benchpace.board.cooling.RoomCureClock;
import benchpace.board.pacing.PosteriorPaceWatch;
import benchpace.board.time.ClockChoice;
import benchpace.board.time.SteadyClock;
import benchpace.board.view.ClassModels;
import benchpace.board.view.ClassView;
import benchpace.board.view.Computed;
import benchpace.board.view.ViewMaker;
import benchpace.cure.room.RoomFit;
import benchpace.files.BadField;
import benchpace.files.log.CommandJson;
import benchpace.live.ClassEvent;
import benchpace.live.Command;
import benchpace.live.LiveClass;
import benchpace.live.Recorded;
import benchpace.plan.SeatNumber;
import benchpace.shelf.ShelfEntry;
import benchpace.store.EventLog;
import benchpace.web.NetworkedBoard;
import benchpace.words.MissingWords;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** A class on a real board, act by act. Whatever does not hold after an act is thrown as {@link Broken}. */
final class Performance implements AutoCloseable {
    private static final CureClock COMPUTED = new RoomCureClock((id, room) -> RoomFit.untaught());
    private static final List<String> NAMES = List.of("Ada", "", "Bruno", "Cleo", "O'Dea <b>", "");

    /** What a command became. */
    private record Acknowledged(long seq, ClassEvent wish) { }

    /** A small difference of clocks is made up for by one part in so many of the time that passes. */
    private static final int SLOWLY = 100;
    /** A replay goes through the class from its beginning: a few a class are enough. */
    private static final int REPLAYS = 2;
    private static final Duration ROUNDING = Duration.ofMillis(5);

    /** When an event was written down, in time lived and in what the board says. */
    private record Moment(Duration lived, Instant recordedAt) { }

    private final Setting setting;
    private final SimulatedClock computer;
    private final Map<String, Acknowledged> acknowledged = new LinkedHashMap<>();
    private Optional<Path> folder = Optional.empty();
    /** The board's own server, where the class is held on disk. */
    private Optional<NetworkedBoard> network = Optional.empty();
    private EventLog log;
    private InstantSource clock;
    private Boards boards;
    private String id;
    private int replays;
    /** What was computed when somebody looked last. */
    private Optional<Computed> computed = Optional.empty();
    private Instant seen = Instant.MIN;
    private Optional<Moment> lastEvent = Optional.empty();

    Performance(Setting setting) {
        this.setting = setting;
        this.computer = new SimulatedClock(setting.now());
        start();
        List<ClassEvent.Place> places = IntStream.rangeClosed(1, setting.seats()).mapToObj(n ->
                new ClassEvent.Place(new SeatNumber(n), NAMES.get(n % NAMES.size()))).toList();
        try {
            id = boards.create(setting.plan(), "Simulated", setting.startsAt(), places, "instructor").id();
        } catch (RuntimeException e) {
            throw new Broken("a class is set up", e);
        }
    }

    private void start() {
        if (setting.onDisk()) {
            network.ifPresentOrElse(NetworkedBoard::restart, () -> network = Optional.of(
                    new NetworkedBoard(folder(), this::clock, maker())));
            log = network.get().log();
            clock = network.get().clock();
            boards = network.get().boards();
        } else {
            log = log == null ? new MemoryLog() : log;
            clock = clock(log);
            boards = new Boards(log, clock, maker(), () -> "s");
        }
    }

    private SteadyClock clock(EventLog written) {
        return new SteadyClock(computer, computer, written::fits);
    }

    private Path folder() {
        if (folder.isEmpty()) {
            try {
                folder = Optional.of(Files.createTempDirectory("simulated"));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return folder.get();
    }

    private ViewMaker maker() {
        return new ViewMaker(setting.computed() ? COMPUTED : new PlanCureClock(), new PosteriorPaceWatch(),
                setting.zone());
    }

    /** A server on the network is stopped when it is started again. */
    private void stop() {
        if (network.isEmpty()) {
            boards.close();
        }
    }

    LiveClass live() {
        return board().live();
    }

    /** How often a replay of the log was held against what was shown. */
    int replays() {
        return replays;
    }

    /** What the computer's clock says. */
    Instant wall() {
        return computer.instant();
    }

    /** What the board takes the time to be. */
    Instant now() {
        return clock.instant();
    }

    private ClassBoard board() {
        return boards.find(id).orElseThrow(() -> new Broken("a class that was set up is there", id));
    }

    void play(Act act) {
        if (act instanceof Act.Pass pass) {
            computer.pass(pass.by());
        } else if (act instanceof Act.Jump jump) {
            computer.setBy(jump.by());
        } else if (act instanceof Act.Sleep sleep) {
            computer.pass(sleep.by());
        } else if (act instanceof Act.Send send) {
            send(send);
        } else if (act instanceof Act.Choose choose) {
            choose(choose.clock());
        } else if (act instanceof Act.Leave leave) {
            leave(leave);
        } else if (act instanceof Act.Restart) {
            restart();
        } else {
            look();
        }
    }

    // ---- a request

    private void send(Act.Send send) {
        Command command;
        try {
            command = CommandJson.read(send.command(), send.by(), clock.instant()).on(send.device());
        } catch (BadField e) {
            return; // refused before it came to the class
        }
        LiveClass before = live();
        Optional<Answer.Recorded> answer = network.isPresent() ? told(network.get(), send) : submitted(command);
        int stored = log instanceof MemoryLog memory ? memory.size(id) : log.read(id).size();
        Acknowledged known = acknowledged.get(command.id());
        if (answer.isPresent() && known == null) {
            Answer.Recorded recorded = answer.get();
            Recorded last = log instanceof MemoryLog memory ? memory.last(id) : log.read(id).get(stored - 1);
            Broken.unless(!recorded.duplicate() && recorded.seq() == before.seq() + 1
                            && stored == before.seq() + 1 && last.seq() == recorded.seq(),
                    "what is acknowledged is written down once", () -> answer + " after " + before.seq());
            Broken.unless(last.event().equals(command.wish()) && last.commandId().equals(command.id()),
                    "what is acknowledged is what was wished for", () -> command + " became " + last);
            acknowledged.put(command.id(), new Acknowledged(recorded.seq(), command.wish()));
            lived(last);
        } else {
            Broken.unless(stored == before.seq(), "what is refused or known leaves no trace",
                    () -> answer + ", and " + stored + " events instead of " + before.seq());
            Broken.unless(answer.filter(again -> !again.duplicate() || again.seq() != known.seq()).isEmpty(),
                    "a command sent again has its first answer", () -> answer + " for " + known);
        }
    }

    private Optional<Answer.Recorded> submitted(Command command) {
        try {
            return board().submit(command) instanceof Answer.Recorded recorded ? Optional.of(recorded)
                    : Optional.empty();
        } catch (RuntimeException | StackOverflowError e) {
            throw new Broken("a tap is answered", e);
        }
    }

    private Optional<Answer.Recorded> told(NetworkedBoard board, Act.Send send) {
        NetworkedBoard.Told told = board.command(id, send.by(), send.command());
        Broken.unless(told.status() < 500, "a tap is answered", told::toString);
        return told.done() ? Optional.of(new Answer.Recorded(told.seq(), told.duplicate())) : Optional.empty();
    }

    /** What was written by a clock that was wrong moves along, by one event at most. */
    private void choose(ClockChoice choice) {
        long before = live().seq();
        try {
            boards.clocks().choose(choice);
        } catch (RuntimeException e) {
            throw new Broken("a clock can be chosen", e);
        }
        List<Recorded> stored = log.read(id);
        if (stored.size() > before) {
            Recorded last = stored.get(stored.size() - 1);
            Broken.unless(stored.size() == before + 1 && last.event() instanceof ClassEvent.ClockShifted,
                    "setting the clock right is one event", last::toString);
            acknowledged.put(last.commandId(), new Acknowledged(last.seq(), last.event()));
        }
        lastEvent = Optional.empty();
        seen = Instant.MIN;
    }

    // ---- an early leaver

    /** The candle goes to the shelf, and the seat leaves if it had not. */
    private void leave(Act.Leave leave) {
        if (network.isEmpty()) {
            return; // the shelf is kept on disk
        }
        long before = live().seq();
        NetworkedBoard.Told told = network.get().leave(id, leave.seat(), leave.wish());
        Broken.unless(told.status() < 500, "a leaving is answered", told::toString);
        List<Recorded> stored = log.read(id);
        long more = stored.size() - before;
        Broken.unless(more == 0 || more == 1 && told.done(), "leaving is one event, and a refused one none",
                () -> told + ", " + more + " more");
        if (more == 1) {
            Recorded last = stored.get(stored.size() - 1);
            acknowledged.put(last.commandId(), new Acknowledged(last.seq(), last.event()));
            lived(last);
        }
    }

    private static void shelf(Collection<ShelfEntry> standing) {
        Broken.unless(standing.stream().map(ShelfEntry::place).distinct().count() == standing.size(),
                "no place of the shelf holds two candles", standing::toString);
        Broken.unless(standing.stream().map(e -> e.classId() + e.seat()).distinct().count() == standing.size(),
                "no candle stands on the shelf twice", standing::toString);
    }

    /** Between two events of one run of the program lies what was lived, whatever the clock on the wall was set to. */
    private void lived(Recorded event) {
        Moment then = new Moment(computer.now(), event.recordedAt());
        Moment before = lastEvent.orElse(then);
        Duration lived = then.lived.minus(before.lived);
        Duration told = Duration.between(before.recordedAt, then.recordedAt);
        Broken.unless(told.minus(lived).abs().compareTo(lived.dividedBy(SLOWLY).plus(ROUNDING)) <= 0,
                "a class lasts as long as it was lived", () -> told + " told, " + lived + " lived, up to " + event);
        lastEvent = Optional.of(then);
    }

    private void restart() {
        ClassView before = view();
        List<ShelfEntry> shelved = network.map(n -> n.shelf().shelf().standing().toList()).orElse(List.of());
        lastEvent = Optional.empty();
        stop();
        start();
        ClassView after = view();
        seen = after.now(); // a start goes by the computer's clock again, whatever it was set to
        Broken.unless(network.map(n -> n.shelf().shelf().standing().toList()).orElse(List.of()).equals(shelved),
                "the shelf holds after a start what it held before", shelved::toString);
        if (before.now().equals(after.now())) {
            Broken.unless(before.equals(after), "a board shows after a start what it showed before",
                    () -> Apart.of(before, after));
        }
    }

    private ClassView view() {
        try {
            return board().view();
        } catch (RuntimeException | StackOverflowError e) {
            throw new Broken("a view can be made", e);
        }
    }

    // ---- all screens

    private void look() {
        ClassView view = view();
        Broken.unless(view.missing().models().isEmpty(), "every model says something",
                () -> MissingWords.fact(view.missing()));
        stored();
        LiveClass again = LiveClass.of(log.read(id));
        fresh(new Computed.Moment(again, view.now()), view);
        Broken.unless(!view.now().isBefore(seen) && !view.now().isBefore(again.lastRecordedAt()),
                "time never goes back", () -> "from " + seen + " to " + view.now());
        seen = view.now();
        Screenful.check(board(), view);
        network.ifPresent(board -> {
            Screenful.check(board.addresses(id));
            shelf(board.shelf().shelf().standing().toList());
        });
        if (replays < REPLAYS && again.closedAt().isEmpty() && Replay.check(again, setting.computed(), view)) {
            replays++;
        }
    }

    /** The whole view once more from the log, and what would have been shown before the last of it was computed. */
    private void fresh(Computed.Moment moment, ClassView view) {
        ViewMaker maker = maker();
        ClassModels models = maker.models(id);
        Computed now = maker.compute(id, moment, models);
        ClassView fresh = maker.view(id, moment, now, models);
        Broken.unless(view.equals(fresh), "the log alone gives the view that is shown", () -> Apart.of(view, fresh));
        computed.filter(before -> before.mayCarry(moment.live())).ifPresent(before ->
                AtOnce.check(maker.view(id, moment, before, models), before, view));
        computed = Optional.of(now);
    }

    /** The log as a whole against everything that was answered. */
    private void stored() {
        List<Recorded> stored = log.read(id);
        Broken.unless(stored.size() == acknowledged.size() + 1, "nothing is lost and nothing is there twice",
                () -> stored.size() + " events for " + acknowledged.size() + " answers");
        Broken.unless(LiveClass.of(stored).history().equals(live().history()),
                "the state is the fold of what is stored", () -> Apart.of(stored, live().history()));
        Instant last = Instant.MIN;
        for (int i = 0; i < stored.size(); i++) {
            Recorded event = stored.get(i);
            Instant before = event.event() instanceof ClassEvent.ClockShifted ? Instant.MIN : last;
            Broken.unless(event.seq() == i + 1, "events are numbered without gaps", event::toString);
            Broken.unless(!event.recordedAt().isBefore(before) && !event.at().isAfter(event.recordedAt()),
                    "events stand in the order of their recording", () -> event + " after " + before);
            last = event.recordedAt();
        }
    }

    @Override public void close() {
        stop();
        network.ifPresent(NetworkedBoard::close);
        folder.ifPresent(Performance::delete);
    }

    private static void delete(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
