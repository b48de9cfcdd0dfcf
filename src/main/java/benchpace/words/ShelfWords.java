package benchpace.words;

import static benchpace.words.Explanation.conflict;

import benchpace.shelf.ShelfRefusal;

/** Says why the shelf refused, in words for the person who tapped. */
public final class ShelfWords {
    private ShelfWords() { }

    public static Explanation of(ShelfRefusal why, Times times) {
        if (why instanceof ShelfRefusal.PlaceTaken r) {
            return conflict("place-taken", "The place is taken", "Another candle stands at " + r.place()
                    + " already. Choose another place.");
        } else if (why instanceof ShelfRefusal.PlaceWithheld r) {
            return conflict("place-unreadable", "Something may stand there", "What was written down of the candle at "
                    + r.place() + " cannot be read. Look there, and choose another place.");
        } else if (why instanceof ShelfRefusal.NoSuchPlace r) {
            return Explanation.value("no-such-place", "The shelf has no such place", "There is no place " + r.place()
                    + " in the layout of the shelf.");
        } else if (why instanceof ShelfRefusal.AlreadyOnShelf r) {
            return conflict("already-on-shelf", "It is on the shelf already",
                    "The candle of this seat stands at " + r.at() + " already.");
        } else if (why instanceof ShelfRefusal.AlreadyCollected r) {
            return conflict("already-collected", "It was collected already",
                    "It was handed out on " + times.day(r.at()) + ".");
        } else if (why instanceof ShelfRefusal.StillSetting r) {
            return conflict("still-setting", "It should still set", "It should set until about "
                    + times.day(r.readyFrom())
                    + ". Hand it out only if a hand test finds it firm.");
        } else if (why instanceof ShelfRefusal.NoSuchEntry r) {
            return Explanation.absent("no-such-candle-on-shelf", "There is no such candle",
                    "There is no candle " + r.entry() + " on the shelf.");
        } else if (why instanceof ShelfRefusal.NoSuchWord r) {
            return Explanation.absent("no-such-word", "No candle has that claim word",
                    "No candle on the shelf has the claim word \"" + r.typed() + "\".");
        } else if (why instanceof ShelfRefusal.WordTaken r) {
            return conflict("word-taken", "That claim word is taken",
                    "Another candle has the claim word \"" + r.word() + "\". Draw another one.");
        } else if (why instanceof ShelfRefusal.IdTaken r) {
            return Explanation.idTaken("Something else was done with candle " + r.entry()
                    + " of the shelf under the same id.");
        } else if (why instanceof ShelfRefusal.WordsErased) {
            return conflict("words-erased", "Its claim word was erased",
                    "Its name and claim word were erased, so it cannot wait for anybody again.");
        }
        return conflict("not-collected", "It was not collected", "It stands on the shelf; there is nothing to undo.");
    }
}
