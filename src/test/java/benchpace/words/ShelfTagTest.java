package benchpace.words;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.plan.SeatNumber;
import benchpace.shelf.Claim;
import benchpace.shelf.ClaimWord;
import benchpace.shelf.EntryId;
import benchpace.shelf.ShelfEntry;
import benchpace.shelf.ShelfPlace;
import benchpace.words.ShelfTag.Fact;
import java.time.Instant;
import java.time.ZoneOffset;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ShelfTagTest {
    private static final Instant LEFT = Instant.parse("2027-03-04T21:00:00Z");

    private static ShelfTag tag(Claim claim, String name) {
        ShelfEntry entry = new ShelfEntry(new EntryId(1), "thursday", new SeatNumber(4), new ShelfPlace("Window", 1),
                Instant.parse("2027-03-04T22:30:00Z"), Instant.parse("2027-03-18T22:30:00Z"), claim, name, LEFT,
                ShelfEntry.NOT_YET);
        return ShelfTag.of(entry, "Thursday candles", new Times(ZoneOffset.UTC));
    }

    /** The first three cautions are the rules of ASTM F2058 (from memory; "and pets" is the trade's). */
    @Test void a_tag_carries_the_word_the_times_and_the_cautions_of_makers() {
        ShelfTag tag = tag(new ClaimWord("maple", 42), "Robin");

        assertThat(tag.claim()).isEqualTo("maple 42");
        assertThat(tag.name()).isEqualTo("Robin");
        assertThat(tag.from()).isEqualTo("Thursday candles, seat 4");
        assertThat(tag.facts()).containsExactly(new Fact("Ready from about", "Thu 4 Mar, 22:30"),
                new Fact("Collect by", "Thu 18 Mar 2027"), new Fact("Shelf", "Window 1"));
        assertThat(tag.cautions()).contains("Burn within sight.", "Keep away from things that catch fire.",
                "Keep away from children and pets.");
    }

    @Test void once_its_words_are_erased_it_says_so() {
        assertThat(tag(new Claim.Erased(), "").claim()).isEqualTo("erased");
        assertThat(tag(new Claim.Erased(), "").name()).isEmpty();
        assertThat(tag(new Claim.Erased(), "").from()).isEqualTo("Thursday candles, seat 4");
    }
}
