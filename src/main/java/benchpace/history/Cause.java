package benchpace.history;

import benchpace.report.Part;

/** What may have held a class: the same as a {@link Part}, and guests away from the table. */
public enum Cause {
    BEGINNING, START, OPENING, OVERTIME, TALK, STEP, POURED_AGAIN, CURE, AWAY;

    public static Cause of(Part.Kind kind) {
        return valueOf(kind.name());
    }
}
