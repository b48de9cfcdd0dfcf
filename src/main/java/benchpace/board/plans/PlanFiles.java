package benchpace.board.plans;

import benchpace.files.BadFile;
import benchpace.files.plan.PlanFolder;
import benchpace.files.plan.PlanFolder.Found;
import benchpace.store.SavedPlans;
import benchpace.store.SavedPlans.Mark;
import benchpace.store.sqlite.StoreException;
import java.io.IOException;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * The copies of saved plans in the data folder. The store remembers what each file held when it was last written or
 * read: a file that holds something else was put there by somebody, one that holds just that may be written over. What
 * the folder does not take is tried again with the next change of the plan and at the next start.
 */
final class PlanFiles {
    private static final Logger LOG = System.getLogger(PlanFiles.class.getName());

    private final SavedPlans saved;
    private final PlanFolder folder;
    private final Map<String, Mark> marks;
    private final Set<String> notWritten = new TreeSet<>();

    PlanFiles(SavedPlans saved, PlanFolder folder) {
        this.saved = saved;
        this.folder = folder;
        this.marks = saved.files();
    }

    /** Ids of plans whose files are not up to date. */
    Set<String> notWritten() {
        return Set.copyOf(notWritten);
    }

    /** Those of the files that somebody put there; of plans that are deleted, the files go. */
    List<Found> changed(List<Found> found, Set<String> deleted) {
        folder.clear();
        List<Found> changed = new ArrayList<>();
        for (Found file : found) {
            Mark mark = marks.get(file.file());
            if (mark == null || !mark.sha256().equals(file.sha256())) {
                changed.add(file);
            } else if (deleted.contains(mark.planId()) && file.file().equals(PlanFolder.file(file.plan().id()))) {
                removeUnchanged(mark.planId(), file.file());
            }
        }
        return changed;
    }

    /** What somebody put in the place of a plan's file since it was written; a file that holds no plan is put aside. */
    Optional<Found> putThere(BookPlan plan) {
        String file = PlanFolder.file(plan.plan().id());
        try {
            Optional<String> there = folder.sha256(file);
            Mark mark = marks.get(file);
            if (there.isEmpty() || mark != null && mark.sha256().equals(there.get())) {
                return Optional.empty();
            }
            return folder.found(file);
        } catch (BadFile e) {
            putAside(file);
            return Optional.empty();
        } catch (IOException e) {
            LOG.log(Level.WARNING, "the file " + file + " of the plans cannot be read", e);
            return Optional.empty();
        }
    }

    private void putAside(String file) {
        try {
            folder.putAside(file);
        } catch (IOException e) {
            LOG.log(Level.WARNING, "the file " + file + " of the plans holds no plan and cannot be put aside", e);
        }
    }

    void tookIn(Found file) {
        mark(file.file(), new Mark(file.plan().id().value(), file.sha256()));
    }

    private void mark(String file, Mark mark) {
        saved.mark(file, mark);
        marks.put(file, mark);
    }

    /** Writes a plan's file if it is not there or holds an older version. */
    void bringUpToDate(BookPlan plan) {
        String file = PlanFolder.file(plan.plan().id());
        try {
            if (!folder.sha256(file).equals(Optional.of(PlanFolder.sha256(plan.plan())))
                    && !isPlan(file, plan)) {
                write(plan);
            }
        } catch (IOException e) {
            write(plan);
        }
    }

    /** Whether it holds that very plan, however somebody has laid it out. */
    private boolean isPlan(String file, BookPlan plan) throws IOException {
        try {
            return folder.found(file).filter(found -> found.plan().equals(plan.plan())).isPresent();
        } catch (BadFile e) {
            return false;
        }
    }

    void write(BookPlan plan) {
        String file = PlanFolder.file(plan.plan().id());
        try {
            folder.write(plan.plan());
            mark(file, new Mark(plan.id(), PlanFolder.sha256(plan.plan())));
            notWritten.remove(plan.id());
        } catch (IOException | StoreException e) {
            notWritten.add(plan.id());
            LOG.log(Level.WARNING, "the file " + file + " of the plans cannot be written", e);
        }
    }

    void remove(BookPlan plan) {
        notWritten.remove(plan.id());
        removeUnchanged(plan.id(), PlanFolder.file(plan.plan().id()));
    }

    private void removeUnchanged(String id, String file) {
        try {
            Mark mark = marks.get(file);
            if (mark != null && folder.sha256(file).equals(Optional.of(mark.sha256()))) {
                folder.delete(file);
                saved.unmark(file);
                marks.remove(file);
            }
        } catch (IOException | StoreException e) {
            LOG.log(Level.WARNING, "the file of the deleted plan " + id + " is still there", e);
        }
    }
}
