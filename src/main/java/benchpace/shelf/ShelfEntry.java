package benchpace.shelf;

import benchpace.plan.SeatNumber;
import java.time.Instant;
import java.util.Optional;

/**
 * One candle that was put on the shelf.
 *
 * @param place       where it stands, or stood when it was collected
 * @param claim       what the guest says to get it, until that is erased
 * @param name        empty when none was given or it was erased
 * @param leftAt      when it was put there
 * @param collectedAt {@link #NOT_YET} while it stands there
 */
public record ShelfEntry(EntryId id, String classId, SeatNumber seat, ShelfPlace place, Instant readyFrom,
                         Instant collectBy, Claim claim, String name, Instant leftAt, Instant collectedAt) {
    /** Not collected. */
    public static final Instant NOT_YET = Instant.MAX;

    public Optional<ClaimWord> claimWord() {
        return claim instanceof ClaimWord word ? Optional.of(word) : Optional.empty();
    }

    public boolean collected() {
        return !collectedAt.equals(NOT_YET);
    }

    /** Whether name and claim word are gone for good. */
    public boolean erased() {
        return claim instanceof Claim.Erased;
    }

    public ShelfStatus status(Instant now) {
        if (collected()) {
            return ShelfStatus.COLLECTED;
        }
        if (now.isBefore(readyFrom)) {
            return ShelfStatus.SETTING;
        }
        return now.isAfter(collectBy) ? ShelfStatus.OVERDUE : ShelfStatus.READY;
    }

    ShelfEntry at(ShelfPlace other) {
        return new ShelfEntry(id, classId, seat, other, readyFrom, collectBy, claim, name, leftAt, collectedAt);
    }

    ShelfEntry collectedAt(Instant when) {
        return new ShelfEntry(id, classId, seat, place, readyFrom, collectBy, claim, name, leftAt, when);
    }

    ShelfEntry withoutWords() {
        return new ShelfEntry(id, classId, seat, place, readyFrom, collectBy, new Claim.Erased(), "", leftAt,
                collectedAt);
    }
}
