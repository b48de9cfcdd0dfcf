package benchpace.breaks;

import java.time.Instant;

/** Something guests were told that does not hold any more, and why. */
public sealed interface AnnouncedChange {
    Announced was();

    Reason why();

    /** It begins at another time. */
    record Moved(Announced was, Instant nowFrom, Reason why) implements AnnouncedChange { }

    /** It does not happen for this seat. */
    record Dropped(Announced was, Reason why) implements AnnouncedChange { }

    /** Why it could not stay. */
    enum Reason {
        /** The guest has gone, is away for a moment, or leaves too early for it. */
        GUEST_AWAY,
        /** The instructor skipped or ended it, or it is no longer in the plan. */
        NOT_OFFERED,
        /** The instructor moved or lengthened it. */
        INSTRUCTOR_MOVED_IT,
        /** The guest did something else instead, or has done it already. */
        DONE_OTHERWISE,
        /** The seat's hands are not free in time: its pour, or what it is in, takes longer. */
        NOT_FREE_IN_TIME,
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
