package benchpace.shelf;

import benchpace.plan.SeatNumber;
import java.time.Instant;
import java.util.Optional;

/** Something that happened at the pickup shelf. */
public sealed interface ShelfEvent {
    EntryId entry();

    Instant at();

    /**
     * A candle was put on the shelf.
     *
     * @param classId   the class it was poured in
     * @param name      what the guest wants to be called; empty when they gave none
     * @param readyFrom when it may be fetched, as far as can be foreseen; the hand test decides
     * @param collectBy until when it is kept
     */
    record Placed(EntryId entry, Instant at, String classId, SeatNumber seat, ShelfPlace place, Instant readyFrom,
                  Instant collectBy, Claim claim, String name) implements ShelfEvent {
        public Placed {
            if (classId == null || classId.isBlank()) {
                throw new IllegalArgumentException("a candle on the shelf needs its class");
            }
            if (name == null || name.length() > 60 || name.chars().anyMatch(Character::isISOControl)) {
                throw new IllegalArgumentException("a name has at most 60 characters, and no control characters");
            }
            if (collectBy.isBefore(readyFrom)) {
                throw new IllegalArgumentException("a candle cannot be collected before it is ready");
            }
        }

        /**
         * The same event without name and claim word: what a log must put in its place once {@link Erased} was
         * recorded, as erasing what is still written elsewhere is no erasing.
         */
        public Placed withoutWords() {
            return new Placed(entry, at, classId, seat, place, readyFrom, collectBy, new Claim.Erased(), "");
        }
    }

    /** It was handed out. */
    record Collected(EntryId entry, Instant at) implements ShelfEvent { }

    /** It was not handed out after all; it stands at {@code place}. */
    record CollectionUndone(EntryId entry, Instant at, ShelfPlace place) implements ShelfEvent { }

    /** It stands somewhere else now. */
    record Moved(EntryId entry, Instant at, ShelfPlace to) implements ShelfEvent { }

    /**
     * It was not left there after all: its guest stayed, or it was put there by mistake. Its words are kept as long as
     * those of a collected one, as that may have been the mistake.
     */
    record TakenBack(EntryId entry, Instant at) implements ShelfEvent { }

    /** It was left there after all, with the word it had; it stands at {@code place}. */
    record PutBack(EntryId entry, Instant at, ShelfPlace place) implements ShelfEvent { }

    /** Its name and claim word were erased; the fact that it was here, and collected or taken back, stays. */
    record Erased(EntryId entry, Instant at) implements ShelfEvent { }

    /**
     * Something happened to it, and the record of that cannot be read. Never written down: a log answers it in the
     * place of what it cannot read, so that the candle's number and the place where it may stand are not given away.
     *
     * @param place where it stood afterwards, if that much can be read
     */
    record Unreadable(EntryId entry, Instant at, Optional<ShelfPlace> place) implements ShelfEvent { }
}
