package benchpace.files;

import benchpace.plan.Studio;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.regex.Pattern;

/** Whose room it is, as JSON: {@code name}, {@code place} and {@code colour}, each of which may be left out. */
public final class StudioJson {
    private static final Pattern COLOUR = Pattern.compile("#?([0-9a-f]{6}|[0-9a-f]{3})");
    private static final int SHORT = 3;

    private StudioJson() { }

    /** All three, an empty colour where none was chosen. */
    public static ObjectNode write(Studio studio) {
        return Json.object().put("name", studio.name()).put("place", studio.place())
                .put("colour", studio.colour().orElse(""));
    }

    /** Names what is said, so that a change tells what it was meant for. */
    public static String tag(Studio studio) {
        return UUID.nameUUIDFromBytes(Json.text(write(studio)).getBytes(StandardCharsets.UTF_8)).toString();
    }

    /** @throws BadField in one sentence if that is none; nothing else is thrown */
    public static Studio read(JsonNode node) {
        return read(node, problem -> {
            throw BadField.of(problem);
        }).orElseThrow(() -> new BadField("", "is no studio"));
    }

    /** @param problems takes all that is wrong, each at its field; the answer is then empty */
    public static Optional<Studio> read(JsonNode node, Consumer<Finding> problems) {
        Fields fields = new Fields(node, "", problems);
        Optional<String> name = fields.line("name", 0, Studio.LONGEST_NAME);
        Optional<String> place = fields.line("place", 0, Studio.LONGEST_PLACE);
        Optional<String> typed = fields.text("colour", "");
        Optional<String> colour = typed.flatMap(StudioJson::colour);
        if (typed.isPresent() && colour.isEmpty()) {
            fields.tell("colour", "must be written like #1f4d43: a hash and six of 0 to 9 and a to f");
        }
        return fields.sound() ? Optional.of(new Studio(name.orElseThrow().strip(), place.orElseThrow().strip(),
                colour.filter(c -> !c.isEmpty()))) : Optional.empty();
    }

    /**
     * A colour as people type it: in letters of either case, with or without the hash, and with one figure a part.
     *
     * @return {@code #rrggbb}; an empty text where nothing was typed; nothing if that is no colour
     */
    public static Optional<String> colour(String typed) {
        String text = typed.strip().toLowerCase(Locale.ROOT);
        if (text.isEmpty()) {
            return Optional.of("");
        }
        if (!COLOUR.matcher(text).matches()) {
            return Optional.empty();
        }
        String figures = text.startsWith("#") ? text.substring(1) : text;
        return Optional.of("#" + (figures.length() > SHORT ? figures : figures.replaceAll("(.)", "$1$1")));
    }
}
