package benchpace.web.screen;

import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.BiFunction;

/**
 * What was drawn last, by what it was drawn from: of a class that somebody taps most stays as it was, and is not drawn
 * again. What is drawn must hang on the template and on what it shows alone, and that must be equal only where it reads
 * alike, as records of words and numbers are. Safe for use by many threads.
 */
final class Drawn {
    private final int mostCharacters;
    private final Map<Of, String> drawn = new LinkedHashMap<>(16, 0.75f, true);
    private long characters;

    private record Of(String template, Object shown) { }

    /** @param mostCharacters that are kept; what was not asked for longest goes first */
    Drawn(int mostCharacters) {
        this.mostCharacters = mostCharacters;
    }

    String of(String template, Object shown, BiFunction<String, Object, String> drawing) {
        Of of = new Of(template, shown);
        String known = known(of);
        return known != null ? known : kept(of, drawing.apply(template, shown));
    }

    private synchronized String known(Of of) {
        return drawn.get(of);
    }

    private synchronized String kept(Of of, String text) {
        String before = drawn.put(of, text);
        characters += text.length() - (before == null ? 0 : before.length());
        Iterator<String> oldest = drawn.values().iterator();
        while (characters > mostCharacters && oldest.hasNext()) {
            characters -= oldest.next().length();
            oldest.remove();
        }
        return text;
    }
}
