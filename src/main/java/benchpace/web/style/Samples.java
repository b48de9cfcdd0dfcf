package benchpace.web.style;

import benchpace.files.plan.StarterPlans;
import benchpace.plan.Candle;
import benchpace.plan.SeatNumber;
import benchpace.plan.Vessel;
import benchpace.plan.colour.Light;
import benchpace.shelf.ClaimWord;
import benchpace.shelf.EntryId;
import benchpace.shelf.ShelfEntry;
import benchpace.shelf.ShelfPlace;
import benchpace.web.screen.style.Situation;
import benchpace.web.screen.style.StyleGiven;
import benchpace.web.screen.style.Tokens;
import benchpace.words.ShelfTag;
import benchpace.words.Times;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What the look is shown with: all of it comes with the program. Safe for use by many threads. */
public final class Samples {
    /** Those that name colours of their own; the last ones count. */
    private static final List<String> SHEETS = List.of("cut", "wait", "tokens");

    private final ZoneId zone;
    private final Tokens tokens = Tokens.of(SHEETS.stream().map(Samples::sheet).collect(Collectors.joining("\n")));
    private List<Situation> situations = List.of();

    /** @param zone in which clock times are told */
    public Samples(ZoneId zone) {
        this.zone = zone;
    }

    /** @param light the light that the page is held to; empty to go by what the device prefers */
    public StyleGiven given(Optional<Light> light) {
        List<Situation> all = situations();
        return new StyleGiven(tokens, all, vessels(), List.of(tag(all.get(0).view().now(), new Times(zone))), light);
    }

    Tokens tokens() {
        return tokens;
    }

    /** Worked out once, when somebody first looks. */
    private synchronized List<Situation> situations() {
        if (situations.isEmpty()) {
            situations = new Situations(zone).all();
        }
        return situations;
    }

    /** Of the starter plans, one of each material. */
    private static List<Vessel> vessels() {
        Map<Vessel.Material, Vessel> one = new LinkedHashMap<>();
        StarterPlans.candles().stream().map(Candle::vessel).forEach(v -> one.putIfAbsent(v.material(), v));
        return List.copyOf(one.values());
    }

    private static ShelfTag tag(Instant now, Times times) {
        return ShelfTag.of(new ShelfEntry(new EntryId(1), "sample", new SeatNumber(7), new ShelfPlace("Window", 3),
                now.plus(Duration.ofHours(2)), now.plus(Duration.ofDays(7)), new ClaimWord("amber", 47), "Finn", now,
                ShelfEntry.NOT_YET), "An evening at the Tallow Loft", times);
    }

    private static String sheet(String name) {
        try (InputStream in = Samples.class.getResourceAsStream("/static/css/" + name + ".css")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
