package benchpace.plan;

import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Whose room it is: what stands at the top of the wall and on what is printed.
 *
 * @param name   as guests know it, at most {@value #LONGEST_NAME} characters; may be empty
 * @param place  where it is, in words, at most {@value #LONGEST_PLACE} characters; may be empty
 * @param colour one colour of theirs, {@code #rrggbb} in small letters; the screens keep the contrast
 */
public record Studio(String name, String place, Optional<String> colour) {
    public static final int LONGEST_NAME = 60;
    public static final int LONGEST_PLACE = 80;

    /** Nobody has said yet. */
    public static final Studio NONE = new Studio("", "", Optional.empty());

    private static final Pattern COLOUR = Pattern.compile("#[0-9a-f]{6}");

    public Studio {
        Texts.line("the name of the studio", name, LONGEST_NAME);
        Texts.line("the place of the studio", place, LONGEST_PLACE);
        colour.filter(c -> !COLOUR.matcher(c).matches()).ifPresent(c -> {
            throw new IllegalArgumentException("a colour is written like #1f4d43, not \"" + c + "\"");
        });
    }

    /**
     * How a class is headed that it holds: its name and colour, and the class's own place. What goes by the studio's
     * name in front ({@code The Tallow Loft, Quay Lane}) is not said twice.
     *
     * @param held where the class is held, at most {@value #LONGEST_PLACE} characters; may be empty
     */
    public Studio heldAt(String held) {
        String named = name + ",";
        return new Studio(name, !name.isEmpty() && held.startsWith(named) ? held.substring(named.length()).strip()
                : held, colour);
    }

    /** Whether anybody has said anything of it. */
    public boolean known() {
        return !equals(NONE);
    }
}
