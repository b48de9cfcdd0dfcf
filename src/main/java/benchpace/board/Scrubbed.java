package benchpace.board;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Takes out of what the program noted whatever could name somebody or let somebody in: all that it quotes, names that
 * the board knows, paths, addresses, keys and numbers as long as a PIN.
 */
final class Scrubbed {
    private static final String GONE = "…";
    /** From what swallows most to what swallows least. */
    private static final List<Pattern> SHAPES = List.of(
            Pattern.compile("\"[^\"]*\"?|“[^”]*”?|«[^»]*»?|(?<![\\p{L}\\p{N}])'[^']*'"),
            Pattern.compile("\\b[a-zA-Z][a-zA-Z+.-]+:/\\S*"),
            Pattern.compile("(?:[A-Za-z]:)?(?:[/\\\\][^\\s/\\\\,;:()]+){2,}[/\\\\]?"),
            Pattern.compile("(?<![\\w.])/[\\w.{}-]+"),
            Pattern.compile("\\S+@\\S+"),
            Pattern.compile("(?i)\\b(?:[0-9a-f]{0,4}:){2,7}[0-9a-f]{1,4}\\b(?<!\\d\\d:\\d\\d:\\d\\d)"),
            Pattern.compile("\\b\\d{1,3}(?:\\.\\d{1,3}){3}\\b(?::\\d+)?"),
            Pattern.compile("\\b[\\w-]+(?:\\.[\\w-]+)*\\.(?:local|lan|home|internal|invalid|example)\\b"),
            Pattern.compile("(?=[\\w+/=-]*\\d)[\\w+/=-]{14,}"),
            Pattern.compile("(?<!:)(?<!\\d)\\d{4,}"));

    private final List<Pattern> names;

    /** @param names whatever people and places are called, and ids made of that */
    Scrubbed(Collection<String> names) {
        this.names = names.stream().map(String::strip).filter(name -> name.length() > 1).distinct()
                .sorted(Comparator.comparingInt(String::length).reversed())
                .map(name -> Pattern.compile("(?<![\\p{L}\\p{N}])" + Pattern.quote(name) + "(?![\\p{L}\\p{N}])",
                        Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE)).toList();
    }

    String of(String line) {
        String scrubbed = line;
        for (Pattern name : names) {
            scrubbed = name.matcher(scrubbed).replaceAll(Matcher.quoteReplacement(GONE));
        }
        for (Pattern shape : SHAPES) {
            scrubbed = shape.matcher(scrubbed).replaceAll(Matcher.quoteReplacement(GONE));
        }
        return scrubbed;
    }
}
