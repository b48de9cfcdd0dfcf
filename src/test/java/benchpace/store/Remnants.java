package benchpace.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What the bytes of a folder's files still hold of words, whatever any reader of those files says. */
public final class Remnants {
    private static final List<Charset> CHARSETS = List.of(StandardCharsets.UTF_8, StandardCharsets.UTF_16LE,
            StandardCharsets.UTF_16BE, StandardCharsets.ISO_8859_1);

    private Remnants() { }

    /**
     * Where which of the words are found, in any file of the folder and of those in it, in any of the ways in which a
     * program writes a text; also of words that are cut, if eight letters are left.
     */
    public static List<String> of(Path folder, List<String> words) {
        try (Stream<Path> all = Files.walk(folder)) {
            List<String> found = new ArrayList<>();
            for (Path file : all.filter(Files::isRegularFile).sorted().toList()) {
                String bytes = latin(Files.readAllBytes(file));
                for (String word : words) {
                    long times = written(word).stream().filter(bytes::contains).count();
                    if (times > 0) {
                        found.add(word + " in " + folder.relativize(file));
                    }
                }
            }
            return found;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Set<String> written(String word) {
        Set<String> ways = new LinkedHashSet<>();
        List<String> parts = word.length() < 8 ? List.of(word) : List.of(word.substring(0, 8),
                word.substring(word.length() - 8));
        for (String part : parts) {
            CHARSETS.forEach(charset -> ways.add(latin(part.getBytes(charset))));
            ways.add(escaped(part));
            ways.add(escaped(part).toUpperCase(java.util.Locale.ROOT).replace("\\U", "\\u"));
        }
        return ways;
    }

    /** As JSON may write it (RFC 8259, 7). */
    private static String escaped(String word) {
        return word.chars().mapToObj(c -> c < 0x80 ? String.valueOf((char) c) : String.format("\\u%04x", c))
                .collect(Collectors.joining());
    }

    private static String latin(byte[] bytes) {
        return new String(bytes, StandardCharsets.ISO_8859_1);
    }
}
