package benchpace.board;

/** What became of the wish to delete a class. */
public sealed interface Deletion {
    /** @param restorable it can be had back for a day; else all that it held is gone */
    record Done(boolean restorable) implements Deletion { }

    /** It has begun, and its name was not typed. */
    record NeedsItsName() implements Deletion { }
}
