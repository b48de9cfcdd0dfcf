package benchpace.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.plan.SeatNumber;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;

class ShelfProperties {
    private static final ShelfLayout LAYOUT = new ShelfLayout(List.of(new ShelfLayout.Board("Window", 3),
            new ShelfLayout.Board("Corner", 2)));
    private static final Instant START = Instant.parse("2027-03-04T21:00:00Z");

    /** Any wishes in any order: what is accepted never puts two candles in one place or gives one word twice. */
    @Property(tries = 200)
    void a_place_never_holds_two_candles_and_a_word_never_names_two(@ForAll @LongRange long seed,
                                                                    @ForAll @IntRange(min = 1, max = 60) int wishes) {
        Random random = new Random(seed);
        ShelfRules rules = new ShelfRules(LAYOUT, new ShelfSettings(Duration.ZERO, Duration.ofDays(2),
                Duration.ofDays(1)));
        Shelf shelf = Shelf.empty();
        List<ShelfEvent> log = new ArrayList<>();
        Instant now = START;
        int collected = 0;
        for (int i = 0; i < wishes; i++) {
            now = now.plusSeconds(random.nextInt(40_000));
            List<ShelfEvent> events = new ArrayList<>(rules.erasuresDue(shelf, now));
            if (wish(rules, shelf, now, random) instanceof ShelfDecision.Accepted accepted) {
                events.addAll(accepted.events());
            }
            for (ShelfEvent event : events) {
                shelf = shelf.after(event);
                log.add(event);
                collected += event instanceof ShelfEvent.Collected ? 1
                        : event instanceof ShelfEvent.CollectionUndone ? -1 : 0;
            }
            assertThat(shelf.standing().map(ShelfEntry::place)).doesNotHaveDuplicates().allMatch(LAYOUT::has);
            assertThat(shelf.standing().map(ShelfEntry::claim)).doesNotHaveDuplicates();
            assertThat(shelf.suggest(LAYOUT, "c", 99)).hasSize(5 - (int) shelf.standing().count());
        }
        assertThat(shelf.entries().stream().filter(ShelfEntry::collected)).hasSize(collected);
        assertThat(Shelf.of(log).entries()).isEqualTo(shelf.entries());
    }

    private static ShelfDecision wish(ShelfRules rules, Shelf shelf, Instant now, Random random) {
        List<ShelfPlace> places = LAYOUT.places().toList();
        ShelfPlace place = places.get(random.nextInt(places.size()));
        EntryId id = new EntryId(1 + random.nextInt(12));
        return switch (random.nextInt(7)) {
            case 0 -> rules.collect(shelf, id, random.nextBoolean(), now);
            case 1 -> rules.undo(shelf, id, now);
            case 2 -> rules.move(shelf, id, place, now);
            case 3 -> rules.takeBack(shelf, id, now);
            case 4 -> rules.putBack(shelf, id, now);
            default -> rules.put(shelf, "c", new SeatNumber(1 + random.nextInt(20)), place, now,
                    random.nextInt(4) == 0 ? new ClaimWord("maple", 42)
                            : ClaimWords.draw(random.nextLong(), shelf.takenWords()), "", now);
        };
    }

    @Property(tries = 100)
    void drawn_words_differ_and_even_their_words_do_while_the_list_lasts(@ForAll @LongRange long seed) {
        Set<ClaimWord> taken = new HashSet<>();
        Set<String> words = new HashSet<>();
        for (int i = 0; i < 100; i++) {
            ClaimWord word = ClaimWords.draw(seed + i, taken);
            assertThat(taken.add(word)).isTrue();
            assertThat(words.add(word.word())).isTrue();
            assertThat(ClaimWord.read(word.toString())).contains(word);
        }
    }

    @Property(tries = 2)
    void the_walk_finds_the_last_free_word(@ForAll @LongRange long seed) {
        Set<ClaimWord> taken = new HashSet<>();
        ClaimWords.all().forEach(w -> {
            for (int n = 10; n < 100; n++) {
                taken.add(new ClaimWord(w, n));
            }
        });
        ClaimWord last = new ClaimWord("maple", 42);
        taken.remove(last);
        assertThat(ClaimWords.draw(seed, taken)).isEqualTo(last);
    }
}
