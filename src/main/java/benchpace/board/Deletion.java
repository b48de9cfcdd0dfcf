package benchpace.board;

import benchpace.live.LiveClass;

/** What became of the wish to delete a class. */
public sealed interface Deletion {
    /**
     * Decides it. One that has not begun goes, and can be had back.
     *
     * @param typed the class's name, as whoever wishes it typed it; asked for once the class has begun
     */
    static Deletion of(LiveClass live, String typed) {
        boolean begun = live.begun() || live.closedAt().isPresent();
        return begun && !typed.strip().equals(live.name().strip()) ? new NeedsItsName() : new Done(!begun);
    }

    /** @param restorable it can be had back for a day; else all that it held is gone */
    record Done(boolean restorable) implements Deletion { }

    /** It has begun, and its name was not typed. */
    record NeedsItsName() implements Deletion { }
}
