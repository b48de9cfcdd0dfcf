package benchpace;

import benchpace.board.cooling.RoomLessons;
import benchpace.board.export.ExportedClass;
import benchpace.board.pacing.PosteriorPaceWatch;
import benchpace.board.pacing.StepLessons;
import benchpace.board.view.ClassModels;
import benchpace.board.view.ViewMaker;
import benchpace.files.export.ClassFile;
import benchpace.files.export.ClassJson;
import benchpace.files.export.ClassTable;
import benchpace.files.log.StoredEvent;
import benchpace.live.LiveClass;
import benchpace.live.Recorded;
import benchpace.shelf.Shelf;
import benchpace.shelf.ShelfEntry;
import benchpace.store.Rooms;
import benchpace.store.ShelfLog;
import benchpace.store.SqliteEventLog;
import benchpace.store.StepBeliefs;
import benchpace.store.sqlite.Database;
import benchpace.store.sqlite.StoreException;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/**
 * A class and its look back on standard output. What is read is a copy of the data as they stood in one moment, made
 * beside a board that may be open on them; nothing of theirs is changed.
 */
@Command(name = "export", mixinStandardHelpOptions = true,
        description = "Writes a class, its events and its look back, to standard output: as JSON, or as one table.")
final class ExportCommand implements Callable<Integer> {
    private static final int FAILED = 1;
    private static final Logger LOG = System.getLogger(ExportCommand.class.getName());

    @Spec
    private CommandSpec spec;
    @Parameters(paramLabel = "CLASS_ID", description = "the class, as its addresses call it")
    private String id;
    @Option(names = "--data", defaultValue = "data", paramLabel = "DIR",
            description = "where classes are kept; default ${DEFAULT-VALUE}")
    private Path data;
    @ArgGroup
    private Form form = new Form();
    @Option(names = "--without-guests", description = "leave out names, parties, what is to be minded and notes")
    private boolean withoutGuests;

    /** One or the other. */
    static final class Form {
        @Option(names = "--csv", description = "one table")
        private boolean csv;
        @Option(names = "--json", description = "one JSON object, which is the usual")
        private boolean json;
    }

    @Override public Integer call() throws IOException {
        try (DataCopy copy = DataCopy.of(data)) {
            write(copy.database());
            return 0;
        } catch (StoreException e) {
            throw new Stop(FAILED, e.getMessage(), e);
        }
    }

    private void write(Database database) throws IOException {
        SqliteEventLog log = new SqliteEventLog(database);
        List<StoredEvent> events = log.stored(id);
        if (events.isEmpty() || log.deleted().containsKey(id)) {
            throw new Stop(Main.BAD_INPUT, "There is no class " + id + " in " + data + ".");
        }
        Optional<LiveClass> live = live(events);
        ExportedClass whole = live.map(l -> reckoned(database, l)).orElseGet(() -> {
            spec.commandLine().getErr().println("The events of class " + id + " cannot be read as a class, so there is "
                    + "no report; they are written as they stand there.");
            return ExportedClass.eventsOnly(id, events);
        });
        ClassFile file = (withoutGuests ? whole.withoutGuests() : whole).file();
        // whatever the console is set to, a file is UTF-8
        Writer writer = new BufferedWriter(new OutputStreamWriter(System.out, StandardCharsets.UTF_8));
        if (form.csv) {
            ClassTable.write(file, writer);
        } else {
            ClassJson.write(file, writer);
        }
        writer.flush();
        if (System.out.checkError()) {
            throw new Stop(FAILED, "It could not all be written to standard output.");
        }
    }

    /** Empty if they make no class: the log says why. */
    private Optional<LiveClass> live(List<StoredEvent> events) {
        List<Recorded> sound = events.stream().filter(StoredEvent.Sound.class::isInstance)
                .map(e -> ((StoredEvent.Sound) e).event()).toList();
        if (sound.size() < events.size()) {
            return Optional.empty();
        }
        try {
            return Optional.of(LiveClass.of(sound));
        } catch (RuntimeException e) {
            LOG.log(Level.DEBUG, "the events of class " + id + " make no class", e);
            return Optional.empty();
        }
    }

    private ExportedClass reckoned(Database database, LiveClass live) {
        InstantSource clock = InstantSource.system();
        RoomLessons lessons = new RoomLessons(new Rooms(database), clock);
        StepLessons steps = new StepLessons(new StepBeliefs(database), clock);
        ViewMaker maker = new ViewMaker(lessons.cureClock(), new PosteriorPaceWatch(steps), ZoneId.systemDefault());
        ClassModels models = maker.models(id);
        Instant now = clock.instant().isBefore(live.lastRecordedAt()) ? live.lastRecordedAt() : clock.instant();
        List<ShelfEntry> shelf = readable(() -> Shelf.of(new ShelfLog(database).read().events()).entries());
        return ExportedClass.of(live, maker.report(id, live, maker.view(id, live, models, now), models).with(shelf));
    }

    /** A shelf that cannot be read takes no class with it. */
    private List<ShelfEntry> readable(Supplier<List<ShelfEntry>> shelf) {
        try {
            return shelf.get();
        } catch (RuntimeException e) {
            spec.commandLine().getErr().println("The pickup shelf cannot be read, so its candles are left out.");
            return List.of();
        }
    }
}
