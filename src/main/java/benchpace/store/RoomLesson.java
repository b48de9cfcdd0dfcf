package benchpace.store;

import benchpace.cure.room.RoomFit;
import java.time.Instant;
import java.util.Optional;

/**
 * What one class taught its room.
 *
 * @param fit       what the room had taught with it and with all before it that count
 * @param seq       the class's last event that it rests on
 * @param learnedAt when it was drawn
 * @param said      what the organiser said of it last, if anything
 */
public record RoomLesson(String classId, String room, RoomFit fit, long seq, Instant learnedAt, Optional<Said> said) {
    /**
     * A decision.
     *
     * @param counts whether it counts
     * @param seq    the event up to which the lesson went that was looked at
     */
    public record Said(boolean counts, long seq, Instant at) { }

    /** What holds of it now. */
    public enum State {
        /** It counts, and nobody said so: it was not looked at yet, or drawn anew since. */
        NEW,
        ACCEPTED,
        /** It teaches no more, whatever is noted in its class later. */
        TAKEN_BACK
    }

    public State state() {
        return said.map(s -> !s.counts() ? State.TAKEN_BACK : s.seq() >= seq ? State.ACCEPTED : State.NEW)
                .orElse(State.NEW);
    }

    public boolean counts() {
        return state() != State.TAKEN_BACK;
    }
}
