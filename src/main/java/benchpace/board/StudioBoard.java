package benchpace.board;

import benchpace.files.roster.Demo;
import benchpace.plan.Studio;
import benchpace.store.KeptStudio;
import benchpace.store.Settings;
import benchpace.store.sqlite.StoreException;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Whose room it is: said once by an instructor, changed at any time, and shown by every screen from then on. The demo's
 * invented studio is shown of the demo's classes alone, as long as nobody has said anything. Safe for use by many
 * threads.
 */
public final class StudioBoard {
    private static final Logger LOG = System.getLogger(StudioBoard.class.getName());

    private final KeptStudio kept;
    private volatile Studio now;
    private volatile List<String> degraded = List.of();

    /** What cannot be read back leaves the screens without a name; it never keeps the board from starting. */
    public StudioBoard(Settings settings) {
        kept = new KeptStudio(settings);
        now = read();
    }

    private Studio read() {
        try {
            return kept.get();
        } catch (StoreException e) {
            LOG.log(Level.ERROR, e.getMessage(), e.getCause());
            degraded = List.of(e.getMessage());
            return Studio.NONE;
        }
    }

    /** As it was said last; {@link Studio#NONE} until somebody does. */
    public Studio now() {
        return now;
    }

    /** Whose room a class is in, with the room's own place. An evening of no class comes with the program. */
    public Studio of(Watched watched) {
        Studio said = now;
        return !said.known() && (watched.playing().filter(playing -> playing.classId().isEmpty()).isPresent()
                || Demo.is(watched.live())) ? Demo.STUDIO : said;
    }

    /**
     * Says it anew, durably before any screen shows it.
     *
     * @param looked whether that is meant to follow what stands now
     * @return how it stood before; empty if that was not looked at, and nothing is changed
     */
    public synchronized Optional<Studio> change(Studio wanted, Predicate<Studio> looked) {
        Studio before = now;
        if (!looked.test(before)) {
            return Optional.empty();
        }
        kept.put(wanted);
        now = wanted;
        degraded = List.of();
        return Optional.of(before);
    }

    /** What could not be read back at the start, a sentence, until it is said anew. */
    public List<String> degraded() {
        return degraded;
    }
}
