package benchpace.board;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

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

    private static final Pattern BETWEEN_WORDS = Pattern.compile("[^\\p{L}\\p{N}]+");

    /** By their first word, as only those whose first word stands in a line can be in it; by "" those without one. */
    private final Map<String, List<Name>> names = new HashMap<>();

    /** @param rank the longest name is the first that is looked for */
    private record Name(int rank, Pattern pattern) {
        static Name of(int rank, String name) {
            return new Name(rank, Pattern.compile("(?<![\\p{L}\\p{N}])" + Pattern.quote(name) + "(?![\\p{L}\\p{N}])",
                    Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE));
        }
    }

    /** @param names whatever people and places are called, and ids made of that */
    Scrubbed(Collection<String> names) {
        List<String> longestFirst = names.stream().map(String::strip).filter(name -> name.length() > 1).distinct()
                .sorted(Comparator.comparingInt(String::length).reversed()).toList();
        for (int rank = 0; rank < longestFirst.size(); rank++) {
            String name = longestFirst.get(rank);
            this.names.computeIfAbsent(words(name).findFirst().orElse(""), word -> new ArrayList<>())
                    .add(Name.of(rank, name));
        }
    }

    /** All alike in upper and in lower case, as patterns take them to be (see {@link Pattern#UNICODE_CASE}). */
    private static Stream<String> words(String text) {
        String alike = text.codePoints().map(c -> Character.toLowerCase(Character.toUpperCase(c)))
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append).toString();
        return BETWEEN_WORDS.splitAsStream(alike).filter(word -> !word.isEmpty());
    }

    String of(String line) {
        String scrubbed = line;
        for (Name name : Stream.concat(Stream.of(""), words(line)).distinct()
                .flatMap(word -> names.getOrDefault(word, List.of()).stream())
                .sorted(Comparator.comparingInt(Name::rank)).toList()) {
            scrubbed = name.pattern().matcher(scrubbed).replaceAll(Matcher.quoteReplacement(GONE));
        }
        for (Pattern shape : SHAPES) {
            scrubbed = shape.matcher(scrubbed).replaceAll(Matcher.quoteReplacement(GONE));
        }
        return scrubbed;
    }
}
