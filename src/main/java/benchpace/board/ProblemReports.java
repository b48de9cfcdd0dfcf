package benchpace.board;

import benchpace.board.view.ProblemFacts;
import benchpace.files.log.RecordedClass;
import benchpace.files.log.StartedFrom;
import benchpace.live.ClassEvent;
import benchpace.live.LiveClass;
import benchpace.live.Nameless;
import benchpace.live.Recorded;
import benchpace.live.Setup;
import benchpace.pace.StepPrior;
import benchpace.plan.StepId;
import benchpace.store.EventLog;
import benchpace.store.Rooms;
import benchpace.store.SqliteEventLog;
import benchpace.store.StepBeliefs;
import benchpace.store.StoreFacts;
import benchpace.store.sqlite.Database;
import benchpace.store.sqlite.StoreException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** Gathers what may be sent along with a question about the board. Everything is read from the store as it is kept. */
public final class ProblemReports {
    /** So many classes are taken if none is chosen. */
    public static final int USUAL_CLASSES = 3;
    private static final int LEAST_NAME = 2;

    private final Database database;
    private final EventLog log;
    private final String program;
    private final Supplier<List<String>> lines;
    private final boolean running;

    private ProblemReports(Database database, String program, Supplier<List<String>> lines, boolean running) {
        this.database = database;
        this.log = new SqliteEventLog(database);
        this.program = program;
        this.lines = lines;
        this.running = running;
    }

    /**
     * Of a board that runs.
     *
     * @param program its name and version
     * @param lines   what it noted last
     */
    public static ProblemReports running(Database database, String program, Supplier<List<String>> lines) {
        return new ProblemReports(database, program, lines, true);
    }

    /** Of a board that does not run. @param lines what was noted while its data were opened */
    public static ProblemReports stopped(Database database, String program, Supplier<List<String>> lines) {
        return new ProblemReports(database, program, lines, false);
    }

    /** Of a board whose store cannot be opened. */
    public static ProblemFacts unopened(String program, StoreException fault, String folder) {
        Scrubbed scrubbed = new Scrubbed(Stream.concat(Stream.of(folder), surroundings()).toList());
        return new ProblemFacts(versions(program), Optional.empty(), scrubbed.of(fault.getMessage()), List.of(),
                List.of(), false, List.of(), List.of());
    }

    /** A class that can be chosen. */
    public record Choice(String id, String name, Instant startsAt, boolean begun) { }

    /** Whatever can be read, the latest first. */
    public List<Choice> choices() {
        return readable(new ArrayList<>()).entrySet().stream().map(e -> {
            LiveClass live = LiveClass.of(e.getValue());
            return new Choice(e.getKey(), live.name(), live.startsAt(), live.begun());
        }).sorted(Comparator.comparing(Choice::startsAt).reversed()).toList();
    }

    /** Those that are taken if none is chosen: the latest that have begun, or if none has the latest. */
    public static List<String> usual(List<Choice> choices) {
        boolean begun = choices.stream().anyMatch(Choice::begun);
        return choices.stream().filter(choice -> !begun || choice.begun()).limit(USUAL_CLASSES).map(Choice::id)
                .toList();
    }

    /** @param unreadable takes why others cannot be read */
    private Map<String, List<Recorded>> readable(List<String> unreadable) {
        Map<String, List<Recorded>> readable = new LinkedHashMap<>();
        for (String id : log.classIds()) {
            try {
                List<Recorded> events = log.read(id);
                LiveClass.of(events);
                readable.put(id, events);
            } catch (RuntimeException e) {
                unreadable.add(String.valueOf(e.getMessage()));
            }
        }
        return readable;
    }

    /**
     * Everything.
     *
     * @param chosen   ids of classes that can be read; others are left out
     * @param degraded what does not work as it should just now
     */
    public ProblemFacts facts(List<String> chosen, List<String> degraded) {
        List<String> unreadable = new ArrayList<>();
        Map<String, List<Recorded>> readable = readable(unreadable);
        Scrubbed scrubbed = new Scrubbed(names(readable));
        StoreFacts store = StoreFacts.of(database);
        Map<String, String> versions = versions(program);
        versions.put("SQLite", store.sqlite());
        versions.put("Store", Integer.toString(store.version()));
        List<ProblemFacts.ReportedClass> classes = new ArrayList<>();
        for (String id : new LinkedHashSet<>(chosen)) {
            if (readable.containsKey(id)) {
                classes.add(reported(classes.size() + 1, id, readable.get(id)));
            }
        }
        return new ProblemFacts(versions, Optional.of(new ProblemFacts.StoreState(store.rows(),
                store.integrity().stream().map(scrubbed::of).toList(), store.settings())), "",
                degraded.stream().map(scrubbed::of).toList(),
                lines.get().stream().map(scrubbed::of).toList(), running, classes,
                unreadable.stream().map(scrubbed::of).toList());
    }

    private ProblemFacts.ReportedClass reported(int number, String id, List<Recorded> log) {
        Nameless nameless = Nameless.ofEverybody();
        LiveClass live = LiveClass.of(log);
        return new ProblemFacts.ReportedClass(number, live.startsAt(), log.size(),
                RecordedClass.write(nameless.all(log)), startedFrom(id, nameless));
    }

    /** What a class started from, so that its flags and forecasts come out as they were. */
    private String startedFrom(String id, Nameless nameless) {
        Map<String, StepPrior> steps = new TreeMap<>();
        new StepBeliefs(database).started(id).orElse(Map.of()).forEach((step, prior) ->
                steps.put(nameless.of(new StepId(step)).value(), prior));
        return StartedFrom.write(new Rooms(database).started(id), steps);
    }

    private static Map<String, String> versions(String program) {
        Map<String, String> versions = new LinkedHashMap<>();
        versions.put("Program", program);
        versions.put("Java", System.getProperty("java.version") + ", " + System.getProperty("java.vendor"));
        versions.put("System", System.getProperty("os.name") + " " + System.getProperty("os.version") + ", "
                + System.getProperty("os.arch"));
        return versions;
    }

    // ---- whom the log could name

    private Set<String> names(Map<String, List<Recorded>> readable) {
        Set<String> names = new HashSet<>(StoreFacts.names(database));
        surroundings().forEach(names::add);
        names.addAll(log.classIds());
        names.addAll(log.deleted().keySet());
        readable.values().stream().flatMap(List::stream).forEach(recorded -> {
            if (!List.of("instructor", "helper", "guest", "wall", "board").contains(recorded.by())) {
                names.add(recorded.by());
            }
            names(recorded.event(), names);
        });
        return names;
    }

    private static void names(ClassEvent event, Set<String> names) {
        if (event instanceof ClassEvent.ClassCreated created) {
            names(created.setup(), names);
        } else if (event instanceof ClassEvent.ClassSetUpAgain again) {
            names(again.setup(), names);
        } else if (event instanceof ClassEvent.SeatAdded added) {
            names(added.place(), names);
        } else if (event instanceof ClassEvent.GuestCorrected guest) {
            names(new ClassEvent.Place(guest.seat(), guest.name(), guest.party(), Optional.empty(), guest.note()),
                    names);
        } else if (event instanceof ClassEvent.SeatArrived arrived) {
            words(arrived.name(), names);
        } else if (event instanceof ClassEvent.SeatNoted noted) {
            names.add(noted.text());
        } else if (event instanceof ClassEvent.ClassNoted noted) {
            names.add(noted.text());
        }
    }

    private static void names(Setup setup, Set<String> names) {
        names.addAll(List.of(setup.name(), setup.plan().name(), setup.plan().id().value(), setup.plan().place()));
        Stream.of(setup.plan().place().split(",")).forEach(names::add);
        setup.seats().forEach(place -> names(place, names));
    }

    private static void names(ClassEvent.Place place, Set<String> names) {
        words(place.name(), names);
        words(place.party(), names);
        names.add(place.note());
    }

    /** Somebody's name, as a whole and word by word. */
    private static void words(String name, Set<String> names) {
        names.add(name);
        Stream.of(name.split("[^\\p{L}\\p{N}]+")).filter(word -> word.length() >= LEAST_NAME).forEach(names::add);
    }

    /** Who holds this machine, and where: in paths and messages. */
    private static Stream<String> surroundings() {
        return Stream.of("user.name", "user.home", "user.dir").map(System::getProperty)
                .filter(value -> value != null && !value.equals("root") && value.length() > LEAST_NAME);
    }
}
