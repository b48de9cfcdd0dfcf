package benchpace.store.backup;

import benchpace.live.Command;
import benchpace.live.Nameless;
import benchpace.live.Recorded;
import benchpace.shelf.EntryId;
import benchpace.shelf.Shelf;
import benchpace.shelf.ShelfEntry;
import benchpace.shelf.ShelfEvent;
import benchpace.store.FileSweep;
import benchpace.store.Forgotten;
import benchpace.store.ShelfLog;
import benchpace.store.SqliteEventLog;
import benchpace.store.sqlite.Database;
import benchpace.store.sqlite.StoreException;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Words that were erased after a backup was made would be back with it. What the folder that it replaces has erased is
 * erased in it, too: the guests of classes, and what candles were given out for; where that folder is gone nobody knows
 * of it any more. What is due by the days that were chosen is erased when the board opens, as always.
 */
final class ForgottenAgain {
    private static final Logger LOG = System.getLogger(ForgottenAgain.class.getName());

    private final Map<String, Forgotten> guests;
    private final List<ShelfEvent> shelf;
    private boolean erased;

    private ForgottenAgain(Map<String, Forgotten> guests, List<ShelfEvent> shelf) {
        this.guests = guests;
        this.shelf = shelf;
    }

    /** What a folder has erased; nothing where there is no store, or none that can be read. */
    static ForgottenAgain of(Path folder) {
        if (Files.isRegularFile(folder.resolve(Database.FILE))) {
            try (Database old = Database.besideBoard(folder)) {
                return new ForgottenAgain(new SqliteEventLog(old).forgotten(), new ShelfLog(old).read().events());
            } catch (StoreException e) {
                LOG.log(Level.DEBUG, "what was erased in the data that are replaced cannot be read", e);
            }
        }
        return new ForgottenAgain(Map.of(), List.of());
    }

    /** Forgets those guests in a draft that is to take the folder's place, but for classes that cannot be read back. */
    void guests(Path draft) {
        try (Database database = Database.ofCopy(draft)) {
            SqliteEventLog log = new SqliteEventLog(database);
            missing(log).forEach((classId, forgotten) -> {
                try {
                    List<Recorded> events = log.read(classId);
                    if (!events.isEmpty()) {
                        log.forgetGuests(classId, forgotten, Nameless.ofGuests().all(events));
                        erased = true;
                    }
                } catch (StoreException e) {
                    LOG.log(Level.DEBUG, "class " + classId + " cannot be read back, so it is left for later", e);
                }
            });
        }
    }

    private Map<String, Forgotten> missing(SqliteEventLog log) {
        Map<String, Forgotten> missing = new LinkedHashMap<>(guests);
        missing.keySet().removeAll(log.forgotten().keySet());
        return missing;
    }

    /**
     * What changes what can be read back of the draft, and so comes after that was compared with the backup: guests of
     * classes that cannot be, and candles; one that still stands there leaves the shelf as it did.
     */
    void theRest(Path draft) {
        try (Database database = Database.ofCopy(draft)) {
            SqliteEventLog classes = new SqliteEventLog(database);
            missing(classes).forEach((classId, forgotten) -> {
                if (classes.keptWords(classId).last().isPresent()) {
                    classes.forgetUnreadable(classId, forgotten);
                    erased = true;
                }
            });
            ShelfLog log = new ShelfLog(database);
            List<ShelfEvent> there = log.read().events();
            Set<EntryId> standing = Shelf.of(there).standing().map(ShelfEntry::id).collect(Collectors.toSet());
            erasures(there).forEach((entry, last) -> {
                List<ShelfEvent> events = new ArrayList<>();
                if (standing.contains(entry)) {
                    shelf.stream().filter(event -> event.entry().equals(entry) && leaves(event))
                            .reduce((first, then) -> then).ifPresent(events::add);
                }
                events.add(last);
                log.append(Command.own("restore.") + entry + "-" + last.at().toEpochMilli(), events);
                erased = true;
            });
            if (erased) {
                clear(new FileSweep(database));
            }
        }
    }

    /** Of the same candles, as they are in both but for their words; not of those that are erased there. */
    private Map<EntryId, ShelfEvent.Erased> erasures(List<ShelfEvent> there) {
        Map<EntryId, ShelfEvent.Placed> worded = new HashMap<>();
        there.forEach(event -> {
            if (event instanceof ShelfEvent.Placed placed) {
                worded.put(placed.entry(), placed);
            } else if (event instanceof ShelfEvent.Erased) {
                worded.remove(event.entry());
            }
        });
        Set<EntryId> same = shelf.stream().filter(event -> event instanceof ShelfEvent.Placed placed
                        && worded.containsKey(placed.entry())
                        && worded.get(placed.entry()).withoutWords().equals(placed.withoutWords()))
                .map(ShelfEvent::entry).collect(Collectors.toSet());
        Map<EntryId, ShelfEvent.Erased> erasures = new LinkedHashMap<>();
        shelf.forEach(event -> {
            if (event instanceof ShelfEvent.Erased gone && same.contains(gone.entry())) {
                erasures.put(gone.entry(), gone);
            }
        });
        return erasures;
    }

    private static boolean leaves(ShelfEvent event) {
        return event instanceof ShelfEvent.Collected || event instanceof ShelfEvent.TakenBack;
    }

    /** What cannot be cleared now is owed, and done when the board opens. */
    private static void clear(FileSweep sweep) {
        try {
            sweep.sweep();
        } catch (StoreException e) {
            LOG.log(Level.WARNING, "what was erased cannot be cleared from the restored file yet", e);
        }
    }
}
