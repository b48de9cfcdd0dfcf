package benchpace.web.screen.studio;

import benchpace.files.Json;
import benchpace.files.StudioJson;
import benchpace.plan.Studio;
import benchpace.plan.colour.Light;
import benchpace.plan.colour.Srgb;
import benchpace.words.StudioWords;
import java.util.Optional;

/** What is typed of whose room it is. */
public record StudioFields(Studio studio) {

    /** Names what is said now, for whoever changes it. */
    public String tag() {
        return '"' + StudioJson.tag(studio) + '"';
    }

    /** How its colour is shown, as JSON. */
    public String look() {
        return Json.text(ColourLook.of(colour()));
    }

    private Optional<Srgb> colour() {
        return studio.colour().map(Srgb::of);
    }

    /** What the field for colours shows, which always shows one. */
    public String picked() {
        return studio.colour().orElseGet(this::usual);
    }

    /** What is shown where no colour was chosen. */
    public String usual() {
        return Light.DAY.usual().lead().hex();
    }

    /** What becomes of the colour, in a sentence. */
    public String told() {
        return StudioWords.kept(colour());
    }

    /** What it could be taken for; empty for most. */
    public String apart() {
        return colour().flatMap(StudioWords::apart).orElse("");
    }
}
