package benchpace.breaks;

import benchpace.plan.ActivityId;
import java.time.Instant;
import java.util.Optional;

/** Something guests were told that does not hold any more, and why. */
public sealed interface BrokenAnnouncement {
    Announced was();

    Reason why();

    /** The other activity that is in the way, where the reason is one. */
    Optional<ActivityId> other();

    /** It begins at another time. */
    record Moved(Announced was, Instant nowFrom, Reason why, Optional<ActivityId> other) implements BrokenAnnouncement {
        public Moved(Announced was, Instant nowFrom, Reason why) {
            this(was, nowFrom, why, Optional.empty());
        }
    }

    /** It does not happen for this seat. */
    record Dropped(Announced was, Reason why, Optional<ActivityId> other) implements BrokenAnnouncement { }

    /** Why it could not stay. */
    enum Reason {
        /** The guest has gone, is away for a moment, or leaves too early for it. */
        GUEST_AWAY,
        /** The instructor skipped or ended it, or it is no longer in the plan. */
        NOT_OFFERED,
        /** The instructor moved it, or started it. */
        INSTRUCTOR_MOVED_IT,
        /** The guest did something else instead, or has done it already. */
        DONE_OTHERWISE,
        /** The seat's hands are not free in time: its pour took longer. */
        NOT_FREE_IN_TIME,
        /** The instructor started something else, which holds the whole class. */
        OTHER_STARTED,
        /** What the seat is at takes longer. */
        STILL_AT_OTHER,
        /** A break of the class is at that time now. */
        OTHER_AT_THAT_TIME,
        /** It is a break of the class, and not everybody is free then any more. */
        NOT_TOGETHER,
        /** The candle is now expected too early for it. */
        CANDLE_TOO_EARLY,
        /** The candle is not expected to be ready by then. */
        CANDLE_LATER,
        /** It is wrapping, and the candle is not judged set (any more), or is still to be trimmed. */
        NOT_JUDGED_SET,
        /** Possible for this seat alone, but not together with everybody else: places or a class break. */
        NO_PLACE
    }
}
