package benchpace.web.screen.style;

import benchpace.plan.Vessel;
import benchpace.plan.colour.Light;
import benchpace.words.ShelfTag;
import java.util.List;
import java.util.Optional;

/**
 * What the look is shown with.
 *
 * @param situations between them with a seat in each of its states
 * @param vessels    of the drawings, of different proportions
 * @param tags       of candles on the shelf
 * @param light      the light the page is held to; empty to go by what the device prefers
 */
public record StyleGiven(Tokens tokens, List<Situation> situations, List<Vessel> vessels, List<ShelfTag> tags,
                         Optional<Light> light) { }
