package benchpace.shelf;

import benchpace.plan.SeatNumber;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Decides what may happen at the pickup shelf. Pure: same shelf, wish and instant, same answer. */
public final class ShelfRules {
    private final ShelfLayout layout;
    private final ShelfSettings settings;

    ShelfRules(ShelfLayout layout, ShelfSettings settings) {
        this.layout = layout;
        this.settings = settings;
    }

    /**
     * Puts a seat's candle on the shelf.
     *
     * @param lateEndOfRange by when nine candles in ten like it are ready
     * @param claim          drawn with {@link ClaimWords#draw}
     * @param name           empty unless the guest wants one kept
     */
    public ShelfDecision put(Shelf shelf, String classId, SeatNumber seat, ShelfPlace place, Instant lateEndOfRange,
                             ClaimWord claim, String name, Instant now) {
        return put(shelf, classId, seat, place, lateEndOfRange, Optional.empty(), claim, name, now);
    }

    /** @param collectBy until when it is kept; the shop's usual time if empty. Not before it is ready */
    public ShelfDecision put(Shelf shelf, String classId, SeatNumber seat, ShelfPlace place, Instant lateEndOfRange,
                             Optional<Instant> collectBy, ClaimWord claim, String name, Instant now) {
        Optional<ShelfEntry> same = shelf.standing()
                .filter(e -> e.classId().equals(classId) && e.seat().equals(seat)).findFirst();
        if (same.isPresent()) {
            return same.get().place().equals(place) ? ShelfDecision.accept()
                    : ShelfDecision.refuse(new ShelfRefusal.AlreadyOnShelf(same.get().id(), same.get().place()));
        }
        Optional<ShelfRefusal> noRoom = whyNotAt(shelf, place);
        if (noRoom.isPresent()) {
            return ShelfDecision.refuse(noRoom.get());
        }
        if (shelf.takenWords().contains(claim)) {
            return ShelfDecision.refuse(new ShelfRefusal.WordTaken(claim));
        }
        Instant readyFrom = settings.readyFrom(lateEndOfRange);
        return ShelfDecision.accept(new ShelfEvent.Placed(shelf.nextId(), now, classId, seat, place, readyFrom,
                collectBy.filter(t -> !t.isBefore(readyFrom)).orElse(settings.collectBy(readyFrom)), claim, name));
    }

    /** Hands out the candle whose claim word was typed; a word whose candle has gone is answered with that. */
    public ShelfDecision collect(Shelf shelf, String typed, boolean handTested, Instant now) {
        Optional<ClaimWord> word = ClaimWord.read(typed);
        Optional<ShelfEntry> entry = word.isEmpty() ? Optional.empty() : shelf.entries().stream()
                .filter(e -> e.claimWord().equals(word)).findFirst();
        return entry.map(e -> collect(shelf, e.id(), handTested, now))
                .orElseGet(() -> ShelfDecision.refuse(new ShelfRefusal.NoSuchWord(typed)));
    }

    /** Hands out a candle. @param handTested whether somebody felt that it is firm, though its time has not come */
    public ShelfDecision collect(Shelf shelf, EntryId id, boolean handTested, Instant now) {
        Optional<ShelfEntry> entry = shelf.entry(id);
        if (entry.isEmpty()) {
            return ShelfDecision.refuse(new ShelfRefusal.NoSuchEntry(id));
        }
        ShelfEntry e = entry.get();
        if (e.collected()) {
            return ShelfDecision.refuse(new ShelfRefusal.AlreadyCollected(id, e.collectedAt()));
        }
        if (e.status(now) == ShelfStatus.SETTING && !handTested) {
            return ShelfDecision.refuse(new ShelfRefusal.StillSetting(id, e.readyFrom()));
        }
        return ShelfDecision.accept(new ShelfEvent.Collected(id, now));
    }

    /** Takes a candle off the shelf as if it had never been put there: its guest stayed, or it was a mistake. */
    public ShelfDecision takeBack(Shelf shelf, EntryId id, Instant now) {
        Optional<ShelfEntry> entry = shelf.entry(id);
        if (entry.isEmpty()) {
            return ShelfDecision.refuse(new ShelfRefusal.NoSuchEntry(id));
        }
        return entry.get().collected()
                ? ShelfDecision.refuse(new ShelfRefusal.AlreadyCollected(id, entry.get().collectedAt()))
                : ShelfDecision.accept(new ShelfEvent.TakenBack(id, now));
    }

    /**
     * Puts a candle that was taken back where it stood, with the word it had; if that place was given away, on another
     * free one.
     */
    public ShelfDecision putBack(Shelf shelf, EntryId id, Instant now) {
        Shelf.TakenBack taken = shelf.takenBack().get(id);
        if (taken == null) {
            return ShelfDecision.refuse(new ShelfRefusal.NoSuchEntry(id));
        }
        ShelfEntry entry = taken.entry();
        if (entry.erased()) {
            return ShelfDecision.refuse(new ShelfRefusal.WordsErased(id));
        }
        Optional<ShelfEntry> again = shelf.standing().filter(e -> e.classId().equals(entry.classId())
                && e.seat().equals(entry.seat())).findFirst();
        if (again.isPresent()) {
            return ShelfDecision.refuse(new ShelfRefusal.AlreadyOnShelf(again.get().id(), again.get().place()));
        }
        Optional<ShelfRefusal> given = whyNotAt(shelf, entry.place());
        return given.isEmpty() ? ShelfDecision.accept(new ShelfEvent.PutBack(id, now, entry.place()))
                : shelf.suggest(layout, entry.classId(), 1).stream().findFirst()
                        .map(p -> ShelfDecision.accept(new ShelfEvent.PutBack(id, now, p)))
                        .orElseGet(() -> ShelfDecision.refuse(given.get()));
    }

    /** Takes a collection back; the candle stands at its old place again, if that is free. */
    public ShelfDecision undo(Shelf shelf, EntryId id, Instant now) {
        return shelf.entry(id).map(e -> undo(shelf, id, e.place(), now))
                .orElseGet(() -> ShelfDecision.refuse(new ShelfRefusal.NoSuchEntry(id)));
    }

    /** Takes a collection back; the candle stands at another place than before. */
    public ShelfDecision undo(Shelf shelf, EntryId id, ShelfPlace place, Instant now) {
        Optional<ShelfEntry> entry = shelf.entry(id);
        if (entry.isEmpty()) {
            return ShelfDecision.refuse(new ShelfRefusal.NoSuchEntry(id));
        }
        if (!entry.get().collected()) {
            return ShelfDecision.refuse(new ShelfRefusal.NotCollected(id));
        }
        if (entry.get().erased()) {
            return ShelfDecision.refuse(new ShelfRefusal.WordsErased(id));
        }
        Optional<ShelfEntry> again = shelf.standing().filter(e -> e.classId().equals(entry.get().classId())
                && e.seat().equals(entry.get().seat())).findFirst();
        if (again.isPresent()) {
            return ShelfDecision.refuse(new ShelfRefusal.AlreadyOnShelf(again.get().id(), again.get().place()));
        }
        return whyNotAt(shelf, place).map(ShelfDecision::refuse)
                .orElseGet(() -> ShelfDecision.accept(new ShelfEvent.CollectionUndone(id, now, place)));
    }

    /** Moves a candle to another place. */
    public ShelfDecision move(Shelf shelf, EntryId id, ShelfPlace to, Instant now) {
        Optional<ShelfEntry> entry = shelf.entry(id);
        if (entry.isEmpty()) {
            return ShelfDecision.refuse(new ShelfRefusal.NoSuchEntry(id));
        }
        if (entry.get().collected()) {
            return ShelfDecision.refuse(new ShelfRefusal.AlreadyCollected(id, entry.get().collectedAt()));
        }
        if (entry.get().place().equals(to)) {
            return ShelfDecision.accept();
        }
        return whyNotAt(shelf, to).map(ShelfDecision::refuse)
                .orElseGet(() -> ShelfDecision.accept(new ShelfEvent.Moved(id, now, to)));
    }

    /** The erasures that are due: names and words of candles collected or taken back long enough ago. */
    public List<ShelfEvent> erasuresDue(Shelf shelf, Instant now) {
        Stream<EntryId> collected = shelf.entries().stream().filter(e -> e.collected() && !e.erased())
                .filter(e -> !e.collectedAt().plus(settings.eraseAfter()).isAfter(now)).map(ShelfEntry::id);
        Stream<EntryId> takenBack = shelf.takenBack().values().stream().filter(t -> !t.entry().erased())
                .filter(t -> !t.at().plus(settings.eraseAfter()).isAfter(now)).map(t -> t.entry().id());
        return Stream.concat(collected, takenBack).<ShelfEvent>map(id -> new ShelfEvent.Erased(id, now)).toList();
    }

    /**
     * The erasures of candles whose words nobody needs any more, as the guests of their class are forgotten: those that
     * had left the shelf by then.
     *
     * @param forgotten when the guests of which class were forgotten, by its id
     */
    public List<ShelfEvent> erasuresOf(Shelf shelf, Map<String, Instant> forgotten, Instant now) {
        Stream<ShelfEntry> collected = shelf.entries().stream().filter(e -> e.collected()
                && goneBy(forgotten, e, e.collectedAt()));
        Stream<ShelfEntry> takenBack = shelf.takenBack().values().stream()
                .filter(t -> goneBy(forgotten, t.entry(), t.at())).map(Shelf.TakenBack::entry);
        return Stream.concat(collected, takenBack).filter(entry -> !entry.erased())
                .<ShelfEvent>map(entry -> new ShelfEvent.Erased(entry.id(), now)).toList();
    }

    private static boolean goneBy(Map<String, Instant> forgotten, ShelfEntry entry, Instant left) {
        Instant at = forgotten.get(entry.classId());
        return at != null && !left.isAfter(at);
    }

    private Optional<ShelfRefusal> whyNotAt(Shelf shelf, ShelfPlace place) {
        if (!layout.has(place)) {
            return Optional.of(new ShelfRefusal.NoSuchPlace(place));
        }
        return shelf.standingAt(place).<ShelfRefusal>map(e -> new ShelfRefusal.PlaceTaken(place, e.id()))
                .or(() -> shelf.withholds(place) ? Optional.of(new ShelfRefusal.PlaceWithheld(place))
                        : Optional.empty());
    }
}
