package benchpace.board;

import benchpace.board.attempt.Faults;
import benchpace.board.view.FiguresMaker;
import benchpace.files.roster.Demo;
import benchpace.history.ClassFigures;
import benchpace.history.PastClass;
import benchpace.history.PastClass.Standing;
import benchpace.live.LiveClass;
import benchpace.plan.Step;
import benchpace.shelf.ShelfEntry;
import benchpace.store.ClassSummaries;
import benchpace.store.ClassSummaries.Kept;
import benchpace.store.sqlite.Database;
import benchpace.store.sqlite.StoreException;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;

/**
 * The classes that are over, and what each came to. Looking back on one takes long, so its figures are made once, in
 * the background and one class at a time, and kept; they are made anew when the class changed since, or the reckoning.
 * Between two classes it rests as long as the last one took: a class that runs has the computer to itself by half.
 */
public final class HistoryBoard implements AutoCloseable {
    private static final Logger LOG = System.getLogger(HistoryBoard.class.getName());
    /** Whoever starts the board looks at a class first; the past ones that nobody has looked at are read only then. */
    private static final long FIRST_LOOK_MILLIS = 2_000;
    /** How often it is looked whether a class was closed, or has changed since. */
    private static final long LOOKS_EVERY_MILLIS = 2_000;
    private static final long LONGEST_REST_MILLIS = 5_000;
    private static final long LONGEST_GOODBYE_MILLIS = 500;

    private final Boards boards;
    private final ShelfBoard shelf;
    private final ClassSummaries summaries;
    private final Map<String, Kept> kept = new ConcurrentHashMap<>();
    /** Made, and not written down yet, as the disk was full. */
    private final Set<String> owed = ConcurrentHashMap.newKeySet();
    /** The event up to which a class could not be reckoned. */
    private final Map<String, Long> failed = new ConcurrentHashMap<>();
    private final Faults faults = new Faults();
    private volatile boolean closed;
    private final ScheduledExecutorService thread = Executors.newSingleThreadScheduledExecutor(work -> {
        Thread made = new Thread(work, "board-history");
        made.setDaemon(true);
        made.setPriority(Thread.MIN_PRIORITY);
        return made;
    });

    /** Opens what the store holds, and goes on to make what is missing until it is closed. */
    public HistoryBoard(Boards boards, ShelfBoard shelf, Database database) {
        this.boards = boards;
        this.shelf = shelf;
        this.summaries = new ClassSummaries(database);
        try {
            kept.putAll(summaries.all());
        } catch (StoreException e) {
            LOG.log(Level.ERROR, "what past classes came to cannot be read; it is made anew", e);
        }
        thread.scheduleWithFixedDelay(this::look, FIRST_LOOK_MILLIS, LOOKS_EVERY_MILLIS, TimeUnit.MILLISECONDS);
    }

    // ---- telling

    /** Every class that is closed or was left open, the latest first. */
    public List<PastClass> classes() {
        Map<String, Long> shelved = shelf.shelf().entries().stream()
                .collect(Collectors.groupingBy(ShelfEntry::classId, Collectors.counting()));
        return boards.all().stream().filter(HistoryBoard::isPast)
                .map(board -> past(board, shelved.getOrDefault(board.id(), 0L).intValue()))
                .sorted(Comparator.comparing(PastClass::startsAt).reversed().thenComparing(PastClass::id)).toList();
    }

    private static boolean isPast(ClassBoard board) {
        LiveClass live = board.live();
        return live.closedAt().isPresent() || live.begun() && live.isLeftOpen(board.now());
    }

    private PastClass past(ClassBoard board, int shelved) {
        LiveClass live = board.live();
        Optional<ClassFigures> figures = Optional.ofNullable(kept.get(board.id()))
                .filter(k -> isCurrent(k, live)).map(Kept::figures);
        Map<String, String> steps = new LinkedHashMap<>();
        live.plan().steps().forEach((Step step) -> steps.put(step.id().value(), step.name()));
        return new PastClass(board.id(), live.name(), live.plan().id().value(), live.plan().name(),
                live.plan().place(), live.startsAt(), live.seats().size(), Demo.is(live), shelved,
                standing(board.id(), live, figures.isPresent()), figures, steps);
    }

    private Standing standing(String id, LiveClass live, boolean reckoned) {
        return live.closedAt().isEmpty() ? Standing.LEFT_OPEN : reckoned ? Standing.RECKONED
                : hasFailed(id, live) ? Standing.FAILED : Standing.TO_COME;
    }

    // ---- making

    private static boolean isCurrent(Kept kept, LiveClass live) {
        return live.closedAt().isPresent() && kept.seq() == live.seq()
                && kept.reckoning() == ClassFigures.RECKONING;
    }

    private boolean hasFailed(String id, LiveClass live) {
        return failed.getOrDefault(id, 0L) == live.seq();
    }

    /** Goes through what is to be made, the latest class first, as that is looked for soonest. */
    private void look() {
        try {
            boards.oneByOne().takeWhile(board -> !closed).forEach(this::drawLesson); // and are read for it
            kept.keySet().removeIf(id -> boards.find(id).isEmpty());
            owed.removeIf(id -> !kept.containsKey(id) || write(id, kept.get(id)));
            for (Optional<ClassBoard> next = due(); next.isPresent() && !closed; next = due()) {
                make(next.get());
            }
        } catch (RuntimeException | Error e) { // the next look tries again
            note("look", e);
        }
    }

    /** One that cannot be drawn keeps no other from it. */
    private void drawLesson(ClassBoard board) {
        try {
            boards.taught().draw(board);
        } catch (RuntimeException | Error e) {
            note(board.id(), e);
        }
    }

    private Optional<ClassBoard> due() {
        return boards.all().stream().filter(this::isDue)
                .max(Comparator.comparing((ClassBoard board) -> board.live().startsAt()));
    }

    private boolean isDue(ClassBoard board) {
        LiveClass live = board.live();
        Kept known = kept.get(board.id());
        return live.closedAt().isPresent() && !board.isDeleted() && !hasFailed(board.id(), live)
                && (known == null || !isCurrent(known, live));
    }

    private void make(ClassBoard board) {
        long began = System.nanoTime();
        LiveClass live = board.live();
        Optional<ClassFigures> figures = figures(board, live);
        if (figures.isPresent()) {
            Kept made = new Kept(live.seq(), ClassFigures.RECKONING, figures.get());
            kept.put(board.id(), made);
            if (!write(board.id(), made)) {
                owed.add(board.id());
            }
        } else {
            failed.put(board.id(), live.seq());
        }
        rest(TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - began));
    }

    private Optional<ClassFigures> figures(ClassBoard board, LiveClass live) {
        try {
            return FiguresMaker.of(boards.lookBackAside(board, live));
        } catch (RuntimeException | Error e) { // also a stack too deep: what it held is given back by now
            note(board.id(), e);
            return Optional.empty();
        }
    }

    private boolean write(String id, Kept made) {
        try {
            if (!summaries.put(id, made)) {
                kept.remove(id); // it was deleted meanwhile
            }
            return true;
        } catch (StoreException e) {
            note("write", e);
            return false;
        }
    }

    private void note(String what, Throwable fault) {
        if (!closed && faults.isNew(what, fault)) {
            LOG.log(Level.ERROR, "history, " + what + ": past classes are not all reckoned", fault);
        }
    }

    private void rest(long millis) {
        try {
            Thread.sleep(Math.min(LONGEST_REST_MILLIS, millis));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Waits a moment for what is being written, as the store may be closed next. */
    @Override public void close() {
        closed = true;
        thread.shutdownNow();
        try {
            thread.awaitTermination(LONGEST_GOODBYE_MILLIS, TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
