package benchpace.shelf;

import java.time.Instant;

/** Why the shelf refuses; each case carries what is needed to explain it. */
public sealed interface ShelfRefusal {
    /** Another candle stands there. */
    record PlaceTaken(ShelfPlace place, EntryId by) implements ShelfRefusal { }

    /** A candle may stand there of which the record cannot be read. */
    record PlaceWithheld(ShelfPlace place) implements ShelfRefusal { }

    /** The layout has no such place. */
    record NoSuchPlace(ShelfPlace place) implements ShelfRefusal { }

    /** This seat's candle of this class stands on the shelf already. */
    record AlreadyOnShelf(EntryId entry, ShelfPlace at) implements ShelfRefusal { }

    /** It was handed out already. */
    record AlreadyCollected(EntryId entry, Instant at) implements ShelfRefusal { }

    /** It was not handed out, so there is nothing to undo. */
    record NotCollected(EntryId entry) implements ShelfRefusal { }

    /** It should still set, and nobody said that it passed the hand test. */
    record StillSetting(EntryId entry, Instant readyFrom) implements ShelfRefusal { }

    /** Its claim word was erased; it cannot go back to waiting for somebody. */
    record WordsErased(EntryId entry) implements ShelfRefusal { }

    /** There is no such candle. */
    record NoSuchEntry(EntryId entry) implements ShelfRefusal { }

    /** No candle on the shelf has this claim word. */
    record NoSuchWord(String typed) implements ShelfRefusal { }

    /** Another command has this id already. @param entry the candle that one was about */
    record IdTaken(EntryId entry) implements ShelfRefusal { }

    /** That claim word waits on the shelf already. */
    record WordTaken(ClaimWord word) implements ShelfRefusal { }
}
