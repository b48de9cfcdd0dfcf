package benchpace.board;

import benchpace.board.view.ProblemFacts;
import benchpace.files.log.RecordedClass;
import benchpace.files.log.StartedFrom;
import benchpace.live.ClassEvent;
import benchpace.live.LiveClass;
import benchpace.live.Nameless;
import benchpace.live.Setup;
import benchpace.pace.StepPrior;
import benchpace.plan.StepId;
import benchpace.plan.Studio;
import benchpace.store.EventLog;
import benchpace.store.KeptStudio;
import benchpace.store.Rooms;
import benchpace.store.Settings;
import benchpace.store.SqliteEventLog;
import benchpace.store.StepBeliefs;
import benchpace.store.StoreFacts;
import benchpace.store.sqlite.Database;
import benchpace.store.sqlite.StoreException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
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

/**
 * Gathers what may be sent along with a question about the board. The classes that go along are read from the store as
 * they are kept; of the others only the names are asked for, so that no line bears one.
 */
public final class ProblemReports {
    /** So many classes are taken if none is chosen. */
    public static final int USUAL_CLASSES = 3;
    private static final int LEAST_NAME = 2;

    private final Database database;
    private final EventLog log;
    private final Supplier<Map<String, LiveClass>> classes;
    private final Supplier<StoreFacts> store;
    private final String program;
    private final Supplier<List<String>> lines;
    private final ProblemFacts.Source source;

    private ProblemReports(Database database, Supplier<Map<String, LiveClass>> classes, Supplier<StoreFacts> store,
                           String program, Supplier<List<String>> lines, ProblemFacts.Source source) {
        this.database = database;
        this.log = new SqliteEventLog(database);
        this.classes = classes;
        this.store = store;
        this.program = program;
        this.lines = lines;
        this.source = source;
    }

    /**
     * Of a board that runs.
     *
     * @param classes what it has in memory, by id: nothing is read and folded for these
     * @param program its name and version
     * @param lines   what it noted last
     */
    public static ProblemReports running(Database database, Supplier<Map<String, LiveClass>> classes, String program,
                                         Supplier<List<String>> lines) {
        return new ProblemReports(database, classes, () -> StoreFacts.of(database), program, lines,
                ProblemFacts.Source.BOARD);
    }

    /**
     * Of a copy of a board's data, whose classes are read once.
     *
     * @param original what it was made of, for how that is kept
     * @param beside   whether a board is open on the original
     * @param lines    what was noted meanwhile
     */
    public static ProblemReports ofCopy(Database copy, Database original, boolean beside, String program,
                                        Supplier<List<String>> lines) {
        Map<String, LiveClass> classes = readable(new SqliteEventLog(copy));
        return new ProblemReports(copy, () -> classes, () -> StoreFacts.ofCopy(copy, original), program, lines,
                beside ? ProblemFacts.Source.BESIDE_BOARD : ProblemFacts.Source.STOPPED);
    }

    /** Of a board whose store cannot be opened. */
    public static ProblemFacts unopened(String program, StoreException fault, String folder) {
        Scrubbed scrubbed = new Scrubbed(Stream.concat(Stream.of(folder), surroundings()).toList());
        return new ProblemFacts(versions(program), Optional.empty(), scrubbed.of(fault.getMessage()), List.of(),
                List.of(), ProblemFacts.Source.STOPPED, List.of(), List.of());
    }

    /** A class that can be chosen. */
    public record Choice(String id, String name, Instant startsAt, boolean begun) { }

    /** Whatever can be read, the latest first. */
    public List<Choice> choices() {
        return classes.get().entrySet().stream().map(e -> new Choice(e.getKey(), e.getValue().name(),
                e.getValue().startsAt(), e.getValue().begun()))
                .sorted(Comparator.comparing(Choice::startsAt).reversed().thenComparing(Choice::id)).toList();
    }

    /** Those that are taken if none is chosen: the latest that have begun, or if none has the latest. */
    public static List<String> usual(List<Choice> choices) {
        boolean begun = choices.stream().anyMatch(Choice::begun);
        return choices.stream().filter(choice -> !begun || choice.begun()).limit(USUAL_CLASSES).map(Choice::id)
                .toList();
    }

    /** Every class that can be read, by its id. */
    static Map<String, LiveClass> readable(EventLog log) {
        Map<String, LiveClass> readable = new HashMap<>();
        log.classIds().forEach(id -> read(log, id, new ArrayList<>()).ifPresent(live -> readable.put(id, live)));
        return readable;
    }

    /** @param unreadable takes why, if it cannot be read */
    private static Optional<LiveClass> read(EventLog log, String id, List<String> unreadable) {
        try {
            return Optional.of(LiveClass.of(log.read(id)));
        } catch (RuntimeException e) {
            unreadable.add(String.valueOf(e.getMessage()));
            return Optional.empty();
        }
    }

    /**
     * Everything.
     *
     * @param chosen   ids of classes that can be read; others are left out
     * @param degraded what does not work as it should just now
     */
    public ProblemFacts facts(List<String> chosen, List<String> degraded) {
        Map<String, LiveClass> known = classes.get();
        Set<String> kept = new LinkedHashSet<>(log.classIds());
        List<String> unreadable = new ArrayList<>();
        kept.stream().filter(id -> !known.containsKey(id)).forEach(id -> read(log, id, unreadable));
        List<ProblemFacts.ReportedClass> reported = new ArrayList<>();
        new LinkedHashSet<>(chosen).stream().filter(kept::contains).filter(known::containsKey)
                .forEach(id -> read(log, id, unreadable)
                        .ifPresent(live -> reported.add(reported(reported.size() + 1, id, live))));
        Scrubbed scrubbed = new Scrubbed(names(known.values()));
        StoreFacts facts = store.get();
        Map<String, String> versions = versions(program);
        versions.put("SQLite", facts.sqlite());
        versions.put("Store", Integer.toString(facts.version()));
        return new ProblemFacts(versions, Optional.of(new ProblemFacts.StoreState(facts.rows(),
                facts.integrity().stream().map(scrubbed::of).toList(), facts.settings())), "",
                degraded.stream().map(scrubbed::of).toList(),
                lines.get().stream().map(scrubbed::of).toList(), source, reported,
                unreadable.stream().map(scrubbed::of).toList());
    }

    private ProblemFacts.ReportedClass reported(int number, String id, LiveClass live) {
        Nameless nameless = Nameless.ofEverybody();
        return new ProblemFacts.ReportedClass(number, live.startsAt(), live.log().size(),
                RecordedClass.write(nameless.all(live.log())), startedFrom(id, nameless));
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

    private Set<String> names(Collection<LiveClass> known) {
        Set<String> names = new HashSet<>(StoreFacts.names(database));
        surroundings().forEach(names::add);
        studio(names);
        names.addAll(log.classIds());
        names.addAll(log.deleted().keySet());
        Stream<LiveClass> deleted = log.deleted().keySet().stream()
                .flatMap(id -> read(log, id, new ArrayList<>()).stream());
        Stream.concat(known.stream(), deleted).flatMap(live -> live.log().stream()).forEach(recorded -> {
            if (!List.of("instructor", "helper", "guest", "wall", "board").contains(recorded.by())) {
                names.add(recorded.by());
            }
            names(recorded.event(), names);
        });
        return names;
    }

    /** Where it cannot be read no screen shows it, so that no line names it either. */
    private void studio(Set<String> names) {
        try {
            Studio studio = new KeptStudio(new Settings(database)).get();
            names.addAll(List.of(studio.name(), studio.place()));
            Stream.of(studio.place().split(",")).forEach(names::add);
        } catch (StoreException unreadable) {
            // nothing is known that could be named
        }
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
