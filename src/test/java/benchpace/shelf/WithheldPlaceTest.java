package benchpace.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.plan.SeatNumber;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** A candle of which something cannot be read may still stand somewhere: its place is given to nobody else. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class WithheldPlaceTest {
    private static final Instant NINE = Instant.parse("2027-03-04T21:00:00Z");
    private static final ShelfPlace FIRST = new ShelfPlace("Window", 1);
    private static final ShelfPlace SECOND = new ShelfPlace("Window", 2);
    private static final ShelfLayout LAYOUT = new ShelfLayout(List.of(new ShelfLayout.Board("Window", 2)));
    private static final ShelfRules RULES = new ShelfRules(LAYOUT, ShelfSettings.STANDARD);
    private static final EntryId LOST = new EntryId(1);

    /** A candle was put on the first place, and of that only the place can be read. */
    private final Shelf lost = Shelf.of(List.of(new ShelfEvent.Unreadable(LOST, NINE, Optional.of(FIRST))));

    @Test void the_place_of_a_candle_that_cannot_be_read_is_neither_offered_nor_given() {
        assertThat(lost.suggest(LAYOUT, "thursday", 9)).containsExactly(SECOND);
        assertThat(put(lost, FIRST)).isEqualTo(ShelfDecision.refuse(new ShelfRefusal.PlaceWithheld(FIRST)));
        assertThat(put(lost, SECOND)).isInstanceOf(ShelfDecision.Accepted.class);
    }

    @Test void where_nothing_is_known_of_its_place_none_is_withheld() {
        Shelf nowhere = Shelf.of(List.of(new ShelfEvent.Unreadable(LOST, NINE, Optional.empty())));
        assertThat(nowhere.suggest(LAYOUT, "thursday", 9)).containsExactly(FIRST, SECOND);
    }

    @Test void when_it_is_moved_its_new_place_is_withheld_instead() {
        assertThat(withheld(new ShelfEvent.Moved(LOST, NINE, SECOND))).containsExactly(SECOND);
    }

    @Test void handed_out_or_taken_back_it_stands_nowhere_and_back_again_it_stands_where_it_is_said() {
        ShelfEvent collected = new ShelfEvent.Collected(LOST, NINE);
        assertThat(withheld(collected)).isEmpty();
        assertThat(withheld(collected, new ShelfEvent.CollectionUndone(LOST, NINE, SECOND))).containsExactly(SECOND);
        ShelfEvent takenBack = new ShelfEvent.TakenBack(LOST, NINE);
        assertThat(withheld(takenBack)).isEmpty();
        assertThat(withheld(takenBack, new ShelfEvent.PutBack(LOST, NINE, SECOND))).containsExactly(SECOND);
    }

    @Test void a_candle_that_can_be_read_withholds_no_place_but_its_own() {
        ShelfEvent placed = new ShelfEvent.Placed(LOST, NINE, "thursday", new SeatNumber(4), FIRST, NINE, NINE,
                new ClaimWord("maple", 42), "");
        Shelf moved = Shelf.of(List.of(placed, new ShelfEvent.Moved(LOST, NINE, SECOND)));
        assertThat(LAYOUT.places().filter(moved::withholds)).isEmpty();
        Shelf back = moved.after(new ShelfEvent.TakenBack(LOST, NINE)).after(new ShelfEvent.PutBack(LOST, NINE, FIRST));
        assertThat(LAYOUT.places().filter(back::withholds)).isEmpty();
        Shelf doubted = moved.after(new ShelfEvent.Unreadable(LOST, NINE, Optional.of(FIRST)));
        assertThat(LAYOUT.places().filter(doubted::withholds)).containsExactly(FIRST);
        Shelf told = doubted.after(new ShelfEvent.Moved(LOST, NINE, SECOND));
        assertThat(LAYOUT.places().filter(told::withholds)).isEmpty();
    }

    private List<ShelfPlace> withheld(ShelfEvent... events) {
        Shelf shelf = lost;
        for (ShelfEvent event : events) {
            shelf = shelf.after(event);
        }
        return LAYOUT.places().filter(shelf::withholds).toList();
    }

    private static ShelfDecision put(Shelf shelf, ShelfPlace place) {
        return RULES.put(shelf, "thursday", new SeatNumber(5), place, NINE, new ClaimWord("daisy", 17), "", NINE);
    }
}
