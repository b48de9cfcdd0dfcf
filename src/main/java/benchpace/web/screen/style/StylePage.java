package benchpace.web.screen.style;

import benchpace.plan.Picture;
import benchpace.plan.colour.Light;
import benchpace.web.screen.drawing.Drawing;
import benchpace.web.screen.shell.Role;
import benchpace.web.screen.shell.Shell;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The look, all of it.
 *
 * @param light   the light the page is held to; empty if it goes by what the device prefers
 * @param tiles   a seat's tile in each state, under the sheets of {@code table}
 * @param table   the screen they belong to
 * @param counters what ticks, before, inside and past
 * @param drawings each with the vessels that can stand in it
 * @param groups  whole screens in many situations
 */
public record StylePage(Shell shell, Optional<Light> light, List<Swatch> swatches, List<TileSample> tiles,
                        Excerpt table, List<CounterSample> counters, List<Pictured> drawings, List<Group> groups) {
    /** Every mark there is. */
    public static final List<String> MARKS = List.of("behind", "slipping", "slow", "try-it", "waiting", "done", "set",
            "asks", "queued", "paused", "setting", "at-leisure", "expected", "left", "shares", "sharing", "listening",
            "caution", "more", "undo", "close", "go", "thermometer", "note", "play", "to-start", "to-end", "earlier",
            "later", "screens");

    /** Screens of one kind. @param about who reads them, and from where */
    public record Group(String id, String title, String about, List<Excerpt> screens) { }

    /** One drawing. @param of once, or once with each vessel */
    public record Pictured(String name, List<Drawing> of) { }

    /** @param table any screen of the table */
    public static StylePage of(StyleGiven given, Role role, Excerpt table, List<Group> groups) {
        return new StylePage(new Shell("The look", "style", List.of(), "", "",
                given.situations().get(0).view().zone().getId(), role.token(), ""), given.light(),
                Swatch.all(given.tokens()), TileSample.all(given.situations()), table,
                CounterSample.all(given.situations()), drawings(given), groups);
    }

    private static List<Pictured> drawings(StyleGiven given) {
        return Stream.of(Picture.values()).map(picture -> new Pictured(
                picture.name().toLowerCase(Locale.ROOT).replace('_', ' '), picture.showsVessel()
                        ? given.vessels().stream().map(vessel -> new Drawing(picture, vessel)).toList()
                        : List.of(Drawing.of(picture)))).toList();
    }

    /** The address that holds the page to a light. */
    public static String sheet(Light held) {
        return "/style/" + held.name().toLowerCase(Locale.ROOT) + ".css";
    }

    public boolean held(Light to) {
        return light.filter(to::equals).isPresent();
    }
}
