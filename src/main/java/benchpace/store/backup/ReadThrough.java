package benchpace.store.backup;

import benchpace.live.LiveClass;
import benchpace.live.Recorded;
import benchpace.shelf.Shelf;
import benchpace.store.SavedPlans;
import benchpace.store.ShelfLog;
import benchpace.store.SqliteEventLog;
import benchpace.store.sqlite.Database;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Reads every event of a store back by the readers that a start of the board uses: what is accepted is readable. */
final class ReadThrough {
    private ReadThrough() { }

    /** @param file of the newest version; left as it is */
    static Holdings of(Path file, Progress progress) {
        try (Database database = Database.ofCopy(file)) {
            SqliteEventLog log = new SqliteEventLog(database);
            Set<String> deleted = log.deleted().keySet();
            List<String> ids = Stream.concat(log.classIds().stream(), deleted.stream()).toList();
            long events = 0;
            long unreadable = 0;
            long empty = 0;
            for (int i = 0; i < ids.size(); i++) {
                progress.at(Progress.Stage.READING, i, ids.size());
                try {
                    List<Recorded> read = log.read(ids.get(i));
                    empty += read.isEmpty() ? 1 : 0; // deleted and erased
                    events += read.isEmpty() ? 0 : LiveClass.of(read).seq();
                } catch (RuntimeException | StackOverflowError fault) { // as the board does: it takes that class alone
                    unreadable++;
                }
                Stopped.unlessWanted(progress);
            }
            ShelfLog.Content shelf = new ShelfLog(database).read();
            Shelf.of(shelf.events());
            return new Holdings(ids.size() - empty, deleted.size() - empty, unreadable, events,
                    shelf.events().size(), plans(new SavedPlans(database)));
        }
    }

    private static long plans(SavedPlans saved) {
        saved.deleted();
        saved.files();
        Set<String> ids = saved.lastNumbers().keySet();
        ids.forEach(saved::versions);
        return ids.size();
    }
}
