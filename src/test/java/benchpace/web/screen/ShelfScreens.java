package benchpace.web.screen;

import benchpace.plan.SeatNumber;
import benchpace.shelf.ClaimWord;
import benchpace.shelf.EntryId;
import benchpace.shelf.Shelf;
import benchpace.shelf.ShelfArrangement;
import benchpace.shelf.ShelfEvent;
import benchpace.shelf.ShelfPlace;
import benchpace.web.screen.shelf.ShelfPage;
import benchpace.words.ShelfTag;
import benchpace.words.Times;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** Shelves as they stand at a counter: candles in every state, and names as long as may be. */
final class ShelfScreens {
    static final String LONG_NAME = "Wilhelmina Bartolomea von Donaudampfschifffahrt und Begleitung";
    private static final Instant NOW = Evening.at(200);
    private static final List<ClaimWord> WORDS = List.of(new ClaimWord("amber", 47), new ClaimWord("cedar", 12),
            new ClaimWord("maple", 33), new ClaimWord("willow", 88), new ClaimWord("linden", 61),
            new ClaimWord("rowan", 20), new ClaimWord("thistle", 19), new ClaimWord("juniper", 75),
            new ClaimWord("hazel", 31));

    private ShelfScreens() {
    }

    static ShelfPage.Given none() {
        return given(Shelf.of(List.of()));
    }

    static ShelfPage.Given busy() {
        return given(shelf());
    }

    static List<ShelfTag> tags() {
        return shelf().entries().stream().map(e -> ShelfTag.of(e, "Evening pour", new Times(Evening.ZONE))).toList();
    }

    private static Shelf shelf() {
        List<ShelfEvent> events = new ArrayList<>();
        for (int i = 0; i < WORDS.size(); i++) {
            Instant ready = NOW.minus(Duration.ofDays(3L * i)).plus(Duration.ofHours(20));
            events.add(new ShelfEvent.Placed(new EntryId(i + 1), ready.minus(Duration.ofHours(2)), "evening",
                    new SeatNumber(i % 8 + 1), new ShelfPlace(i < 6 ? "Upper" : "Lower", i + 1), ready,
                    ready.plus(Duration.ofDays(14)), WORDS.get(i), i == 1 ? LONG_NAME.substring(0, 60) : i == 3 ? "Noor"
                    : ""));
        }
        events.add(new ShelfEvent.Collected(new EntryId(3), NOW.minus(Duration.ofHours(1))));
        return Shelf.of(events);
    }

    private static ShelfPage.Given given(Shelf shelf) {
        return new ShelfPage.Given(shelf, ShelfArrangement.STANDARD, NOW, Duration.ofDays(2), id -> "Evening pour");
    }
}
