package benchpace.shelf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchpace.plan.SeatNumber;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ShelfRulesTest {
    private static final Instant NINE = Instant.parse("2027-03-04T21:00:00Z");
    private static final ShelfLayout LAYOUT = new ShelfLayout(List.of(new ShelfLayout.Board("Window", 2),
            new ShelfLayout.Board("Corner", 3)));
    private static final ShelfRules RULES = new ShelfRules(LAYOUT, ShelfSettings.STANDARD);
    private static final ShelfPlace WINDOW_1 = new ShelfPlace("Window", 1);
    private static final ShelfPlace WINDOW_2 = new ShelfPlace("Window", 2);
    private static final ClaimWord MAPLE = new ClaimWord("maple", 42);
    private static final Instant READY = NINE.plusSeconds(90 * 60);

    private final Shelf one = then(Shelf.empty(), put(Shelf.empty(), 4, WINDOW_1, MAPLE, "Robin"));
    private final EntryId id = new EntryId(1);

    @Test void ready_from_is_the_late_end_plus_the_margin_and_collect_by_two_weeks_on() {
        ShelfEntry entry = one.entry(id).orElseThrow();
        assertThat(entry.readyFrom()).isEqualTo(READY);
        assertThat(entry.collectBy()).isEqualTo(READY.plus(Duration.ofDays(14)));
    }

    @Test void of_two_devices_taking_one_place_the_second_is_told() {
        assertThat(put(one, 5, WINDOW_1, new ClaimWord("daisy", 17), ""))
                .isEqualTo(refused(new ShelfRefusal.PlaceTaken(WINDOW_1, id)));
    }

    @Test void putting_the_same_candle_there_again_changes_nothing() {
        assertThat(put(one, 4, WINDOW_1, new ClaimWord("daisy", 17), "")).isEqualTo(ShelfDecision.accept());
        assertThat(put(one, 4, WINDOW_2, new ClaimWord("daisy", 17), ""))
                .isEqualTo(refused(new ShelfRefusal.AlreadyOnShelf(id, WINDOW_1)));
    }

    @Test void a_place_the_layout_does_not_have_is_refused() {
        ShelfPlace attic = new ShelfPlace("Window", 3);
        assertThat(put(one, 5, attic, new ClaimWord("daisy", 17), ""))
                .isEqualTo(refused(new ShelfRefusal.NoSuchPlace(attic)));
    }

    @Test void a_waiting_word_is_not_given_twice() {
        assertThat(put(one, 5, WINDOW_2, MAPLE, "")).isEqualTo(refused(new ShelfRefusal.WordTaken(MAPLE)));
    }

    @Test void the_claim_word_hands_the_candle_out_once() {
        Shelf gone = then(one, RULES.collect(one, " Maple-42 ", false, READY));
        assertThat(gone.entry(id).orElseThrow().status(READY)).isEqualTo(ShelfStatus.COLLECTED);
        assertThat(RULES.collect(gone, "maple 42", false, READY.plusSeconds(60)))
                .isEqualTo(refused(new ShelfRefusal.AlreadyCollected(id, READY)));
        assertThat(RULES.collect(one, "maple 43", false, READY))
                .isEqualTo(refused(new ShelfRefusal.NoSuchWord("maple 43")));
    }

    @Test void a_candle_still_setting_leaves_only_after_a_hand_test() {
        assertThat(RULES.collect(one, id, false, NINE)).isEqualTo(refused(new ShelfRefusal.StillSetting(id, READY)));
        assertThat(RULES.collect(one, id, true, NINE))
                .isEqualTo(ShelfDecision.accept(new ShelfEvent.Collected(id, NINE)));
    }

    @Test void a_collection_is_undone_to_its_place_or_to_another_when_that_was_given_away() {
        Shelf gone = then(one, RULES.collect(one, id, false, READY));
        Shelf back = then(gone, RULES.undo(gone, id, READY));
        assertThat(back.standingAt(WINDOW_1)).isPresent();
        Shelf retaken = then(gone, put(gone, 9, WINDOW_1, new ClaimWord("daisy", 17), ""));
        assertThat(RULES.undo(retaken, id, READY))
                .isEqualTo(refused(new ShelfRefusal.PlaceTaken(WINDOW_1, new EntryId(2))));
        assertThat(then(retaken, RULES.undo(retaken, id, WINDOW_2, READY)).standingAt(WINDOW_2)).isPresent();
        assertThat(RULES.undo(one, id, READY)).isEqualTo(refused(new ShelfRefusal.NotCollected(id)));
    }

    @Test void names_and_words_are_erased_seven_days_after_collection_and_the_fact_stays() {
        Shelf gone = then(one, RULES.collect(one, id, false, READY));
        Instant week = READY.plus(Duration.ofDays(7));
        assertThat(RULES.erasuresDue(gone, week.minusSeconds(1))).isEmpty();
        List<ShelfEvent> due = RULES.erasuresDue(gone, week);
        Shelf erased = gone.after(due.get(0));
        ShelfEntry entry = erased.entry(id).orElseThrow();
        assertThat(entry.name()).isEmpty();
        assertThat(entry.claimWord()).isEmpty();
        assertThat(entry.collectedAt()).isEqualTo(READY);
        assertThat(RULES.erasuresDue(erased, week)).isEmpty();
        assertThat(RULES.undo(erased, id, week)).isEqualTo(refused(new ShelfRefusal.WordsErased(id)));
        assertThat(erased.search("maple")).isEmpty();
    }

    @Test void a_candle_taken_back_by_mistake_is_put_back_with_its_word_where_it_stood_or_on_a_free_place() {
        Shelf back = then(one, RULES.takeBack(one, id, READY));
        assertThat(back.entries()).isEmpty();
        assertThat(then(back, RULES.putBack(back, id, READY)).entry(id)).isEqualTo(one.entry(id));

        Shelf given = then(back, put(back, 9, WINDOW_1, new ClaimWord("daisy", 17), ""));
        ShelfEntry elsewhere = then(given, RULES.putBack(given, id, READY)).entry(id).orElseThrow();
        assertThat(elsewhere.place()).isEqualTo(WINDOW_2);
        assertThat(elsewhere.claim()).isEqualTo(MAPLE);

        assertThat(RULES.putBack(one, id, READY)).isEqualTo(refused(new ShelfRefusal.NoSuchEntry(id)));
        Shelf again = then(back, put(back, 4, WINDOW_1, new ClaimWord("daisy", 17), ""));
        assertThat(RULES.putBack(again, id, READY))
                .isEqualTo(refused(new ShelfRefusal.AlreadyOnShelf(new EntryId(2), WINDOW_1)));
    }

    @Test void words_of_a_candle_taken_back_are_erased_after_the_same_seven_days() {
        Shelf back = then(one, RULES.takeBack(one, id, READY));
        Instant week = READY.plus(Duration.ofDays(7));
        assertThat(put(back, 5, WINDOW_2, MAPLE, "")).isEqualTo(refused(new ShelfRefusal.WordTaken(MAPLE)));
        assertThat(RULES.erasuresDue(back, week.minusSeconds(1))).isEmpty();
        Shelf erased = back.after(RULES.erasuresDue(back, week).get(0));
        assertThat(RULES.erasuresDue(erased, week)).isEmpty();
        assertThat(erased.takenWords()).isEmpty();
        assertThat(RULES.putBack(erased, id, week)).isEqualTo(refused(new ShelfRefusal.WordsErased(id)));
    }

    @Test void a_placing_without_its_words_folds_to_the_same_facts() {
        ShelfEvent.Placed placed = (ShelfEvent.Placed) events(put(Shelf.empty(), 4, WINDOW_1, MAPLE, "Robin")).get(0);
        ShelfEntry entry = Shelf.of(List.of(placed.withoutWords())).entry(id).orElseThrow();
        assertThat(entry).isEqualTo(one.after(new ShelfEvent.Erased(id, READY)).entry(id).orElseThrow());
    }

    @Test void what_nobody_put_there_cannot_be_fetched_moved_taken_back_or_undone() {
        EntryId nobody = new EntryId(9);
        ShelfDecision refused = refused(new ShelfRefusal.NoSuchEntry(nobody));
        assertThat(RULES.collect(one, nobody, true, READY)).isEqualTo(refused);
        assertThat(RULES.move(one, nobody, WINDOW_2, READY)).isEqualTo(refused);
        assertThat(RULES.takeBack(one, nobody, READY)).isEqualTo(refused);
        assertThat(RULES.undo(one, nobody, READY)).isEqualTo(refused);
        assertThat(RULES.undo(one, nobody, WINDOW_2, READY)).isEqualTo(refused);
    }

    @Test void a_candle_moves_to_a_free_place_of_the_layout() {
        Shelf moved = then(one, RULES.move(one, id, WINDOW_2, READY));
        assertThat(moved.standingAt(WINDOW_2)).contains(one.entry(id).orElseThrow().at(WINDOW_2));
        assertThat(moved.standingAt(WINDOW_1)).isEmpty();

        assertThat(RULES.move(one, id, WINDOW_1, READY)).as("it stands there").isEqualTo(ShelfDecision.accept());
        ShelfPlace attic = new ShelfPlace("Attic", 1);
        assertThat(RULES.move(one, id, attic, READY)).isEqualTo(refused(new ShelfRefusal.NoSuchPlace(attic)));
        Shelf two = then(one, put(one, 5, WINDOW_2, new ClaimWord("daisy", 17), ""));
        assertThat(RULES.move(two, id, WINDOW_2, READY))
                .isEqualTo(refused(new ShelfRefusal.PlaceTaken(WINDOW_2, new EntryId(2))));
        Shelf gone = then(one, RULES.collect(one, id, false, READY));
        assertThat(RULES.move(gone, id, WINDOW_2, READY))
                .isEqualTo(refused(new ShelfRefusal.AlreadyCollected(id, READY)));
    }

    @Test void a_candle_is_kept_until_the_day_that_was_agreed_unless_it_is_not_even_ready_by_then() {
        for (Instant agreed : List.of(READY, READY.plusSeconds(3600))) {
            assertThat(collectBy(agreed)).isEqualTo(agreed);
        }
        assertThat(collectBy(READY.minusSeconds(1))).isEqualTo(READY.plus(Duration.ofDays(14)));
    }

    private static Instant collectBy(Instant agreed) {
        return ((ShelfEvent.Placed) events(RULES.put(Shelf.empty(), "thursday", new SeatNumber(4), WINDOW_1,
                READY.minus(Duration.ofMinutes(30)), Optional.of(agreed), MAPLE, "", NINE)).get(0)).collectBy();
    }

    @Test void a_seat_whose_next_candle_stands_there_does_not_get_the_first_one_back_too() {
        Shelf gone = then(one, RULES.collect(one, id, false, READY));
        Shelf next = then(gone, put(gone, 4, WINDOW_2, new ClaimWord("daisy", 17), ""));
        assertThat(RULES.undo(next, id, READY))
                .isEqualTo(refused(new ShelfRefusal.AlreadyOnShelf(new EntryId(2), WINDOW_2)));
        Shelf neighbour = then(gone, put(gone, 5, WINDOW_2, new ClaimWord("daisy", 17), ""));
        assertThat(then(neighbour, RULES.undo(neighbour, id, READY)).standing()).hasSize(2);
    }

    @Test void a_candle_put_back_when_the_shelf_is_full_is_refused_with_who_has_its_place() {
        Shelf full = then(one, RULES.takeBack(one, id, READY));
        int seat = 5;
        for (ShelfPlace place : LAYOUT.places().toList()) {
            full = then(full, put(full, seat, place, new ClaimWord("daisy", 10 + seat), ""));
            seat++;
        }
        assertThat(RULES.putBack(full, id, READY))
                .isEqualTo(refused(new ShelfRefusal.PlaceTaken(WINDOW_1, new EntryId(2))));
    }

    @Test void a_name_may_be_sixty_characters_long() {
        assertThat(then(Shelf.empty(), put(Shelf.empty(), 4, WINDOW_1, MAPLE, "R".repeat(60))).entries()).hasSize(1);
        assertThatThrownBy(() -> put(Shelf.empty(), 4, WINDOW_1, MAPLE, "R".repeat(61)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test void a_shelf_read_from_its_log_goes_on_counting_where_it_stopped() {
        ShelfEvent placed = events(put(Shelf.empty(), 4, WINDOW_1, MAPLE, "")).get(0);
        Shelf read = Shelf.of(List.of(placed, new ShelfEvent.TakenBack(id, READY)));
        assertThat(read.nextId()).isEqualTo(new EntryId(2)).hasToString("2");
    }

    @Test void status_goes_from_setting_to_ready_to_overdue() {
        ShelfEntry entry = one.entry(id).orElseThrow();
        assertThat(entry.status(READY.minusSeconds(1))).isEqualTo(ShelfStatus.SETTING);
        assertThat(entry.status(READY)).isEqualTo(ShelfStatus.READY);
        assertThat(entry.status(entry.collectBy())).isEqualTo(ShelfStatus.READY);
        assertThat(entry.status(entry.collectBy().plusSeconds(1))).isEqualTo(ShelfStatus.OVERDUE);
    }

    @Test void search_finds_by_word_number_place_and_name() {
        for (String typed : List.of("maple", "MAPLE 42", "maple42", "42", "window 1", "rob")) {
            assertThat(one.search(typed)).as(typed).hasSize(1);
        }
        assertThat(one.search("43")).isEmpty();
        assertThat(one.search("  ")).isEmpty();
    }

    @Test void free_places_beside_the_same_class_come_first() {
        Shelf corner = then(Shelf.empty(), put(Shelf.empty(), 4, new ShelfPlace("Corner", 2), MAPLE, ""));
        assertThat(corner.suggest(LAYOUT, "thursday", 3)).containsExactly(new ShelfPlace("Corner", 1),
                new ShelfPlace("Corner", 3), WINDOW_1);
        assertThat(corner.suggest(LAYOUT, "friday", 1)).containsExactly(WINDOW_1);
    }

    @Test void reminders_name_the_overdue_and_the_soon_due_most_urgent_first() {
        Instant by = READY.plus(Duration.ofDays(14));
        assertThat(one.reminders(by.minus(Duration.ofDays(3)), Duration.ofDays(2))).isEmpty();
        assertThat(one.reminders(by.minus(Duration.ofDays(1)), Duration.ofDays(2))).hasSize(1);
        assertThat(one.reminders(by.plus(Duration.ofDays(30)), Duration.ZERO)).hasSize(1);
    }

    private static ShelfDecision put(Shelf shelf, int seat, ShelfPlace place, ClaimWord claim, String name) {
        return RULES.put(shelf, "thursday", new SeatNumber(seat), place, READY.minus(Duration.ofMinutes(30)), claim,
                name, NINE);
    }

    private static List<ShelfEvent> events(ShelfDecision decision) {
        assertThat(decision).isInstanceOf(ShelfDecision.Accepted.class);
        return ((ShelfDecision.Accepted) decision).events();
    }

    private static Shelf then(Shelf shelf, ShelfDecision decision) {
        Shelf next = shelf;
        for (ShelfEvent event : events(decision)) {
            next = next.after(event);
        }
        return next;
    }

    private static ShelfDecision refused(ShelfRefusal why) {
        return ShelfDecision.refuse(why);
    }
}
