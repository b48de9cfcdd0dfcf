package benchpace.plan;

/** At which end of a table seat 1 is, seen from the instructor, and which way the numbers run from there. */
public enum Numbering {
    CLOCKWISE_FROM_LEFT, ANTICLOCKWISE_FROM_LEFT, CLOCKWISE_FROM_RIGHT, ANTICLOCKWISE_FROM_RIGHT;

    boolean fromRight() {
        return this == CLOCKWISE_FROM_RIGHT || this == ANTICLOCKWISE_FROM_RIGHT;
    }

    /** Whether it begins on the side of the table that is nearer to the instructor. */
    boolean fromNear() {
        return this == ANTICLOCKWISE_FROM_LEFT || this == CLOCKWISE_FROM_RIGHT;
    }
}
