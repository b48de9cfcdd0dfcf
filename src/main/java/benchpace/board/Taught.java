package benchpace.board;

import benchpace.board.attempt.Faults;
import benchpace.board.cooling.RoomLessons;
import benchpace.board.pacing.StepLessons;
import benchpace.live.LiveClass;
import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.util.Optional;

/**
 * What classes begin with, and what they teach the next ones.
 *
 * @param rooms of rooms, where that is kept
 * @param steps of steps, where that is kept
 */
record Taught(Optional<RoomLessons> rooms, Optional<StepLessons> steps, Faults faults) {
    private static final Logger LOG = System.getLogger(Taught.class.getName());

    Taught(Optional<RoomLessons> rooms, Optional<StepLessons> steps) {
        this(rooms, steps, new Faults());
    }

    /**
     * A class that has begun keeps what it began with, whatever is taught or accepted later. One for which that cannot
     * be told goes by its plan meanwhile.
     */
    void begin(ClassBoard board) {
        LiveClass live = board.live();
        try {
            if (live.begun()) {
                rooms.ifPresent(l -> l.begin(board.id(), live));
                steps.ifPresent(s -> s.begin(board.id(), live));
            }
        } catch (RuntimeException e) {
            if (faults.isNew(board.id(), e)) {
                LOG.log(Level.ERROR, "what class " + board.id() + " starts from cannot be kept", e);
            }
        }
    }

    /** The lesson of a closed class, unless it is drawn; may take long. */
    void draw(ClassBoard board) {
        rooms.filter(l -> !board.isDeleted()).ifPresent(l -> l.draw(board.id(), board.live()));
    }
}
