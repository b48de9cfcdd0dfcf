package benchpace;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/** What DEVELOPERS.md names is there, where it says, and no library is in the build without a row of its own. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class DevelopersPageTest {
    private static final Path PAGE = Path.of("DEVELOPERS.md");
    private static final List<Path> ROOTS = List.of(Path.of("src/main/java/benchpace"),
            Path.of("src/test/java/benchpace"));
    /** A class with the room it lives in, or alone: {@code board.time.SteadyClock}, {@code Rules.decide}. */
    private static final Pattern CLASS = Pattern.compile(
            "`(?:benchpace\\.)?((?:[a-z]+\\.)*)([A-Z]\\w*[a-z]\\w*)[^`\\n]*`");
    /** The web's words, and Java's. */
    private static final Set<String> NOT_OURS = Set.of("HttpOnly", "Host", "Instant", "Origin", "SameSite", "Secure");
    private static final Pattern ROW = Pattern.compile("(?m)^\\| (`[^|]+`) \\| ([^|]+) \\| ([^|]+) \\|$");
    private static final Pattern LIBRARY = Pattern.compile("`([\\w.-]+:[\\w.-]+)`");

    private static Set<String> classes() throws IOException {
        Set<String> classes = new TreeSet<>();
        for (Path root : ROOTS) {
            try (Stream<Path> files = Files.walk(root)) {
                files.map(file -> root.relativize(file).toString()).filter(file -> file.endsWith(".java"))
                        .map(file -> file.replace(".java", "").replace('/', '.')).forEach(classes::add);
            }
        }
        return classes;
    }

    @Test void every_class_that_is_named_lives_where_the_page_says() throws IOException {
        Set<String> classes = classes();
        Set<String> names = classes.stream().map(c -> c.substring(c.lastIndexOf('.') + 1)).collect(Collectors.toSet());
        List<MatchResult> named = CLASS.matcher(Files.readString(PAGE)).results().toList();

        List<String> missing = named.stream()
                .filter(found -> !NOT_OURS.contains(found.group(2)))
                .filter(found -> found.group(1).isEmpty() ? !names.contains(found.group(2))
                        : !classes.contains(found.group(1) + found.group(2)))
                .map(found -> found.group(1) + found.group(2))
                .toList();

        assertThat(named).hasSizeGreaterThan(100);
        assertThat(missing).isEmpty();
    }

    @Test void every_room_of_the_web_is_on_the_map() throws IOException {
        String page = Files.readString(PAGE);
        String map = page.substring(page.indexOf("web.*"), page.indexOf("floor 5"));
        String routes = map.substring(0, map.indexOf("web.screen.*"));
        Path web = ROOTS.get(0).resolve("web");

        assertThat(words(routes)).containsAll(rooms(web)).hasSizeGreaterThan(10);
        assertThat(words(map.substring(routes.length()))).containsAll(rooms(web.resolve("screen")));
    }

    private static Set<String> words(String text) {
        return new TreeSet<>(List.of(text.split("\\W+")));
    }

    private static List<String> rooms(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(Files::isDirectory).map(room -> room.getFileName().toString())
                    .filter(room -> !room.equals("screen")).toList();
        }
    }

    @Test void every_library_of_the_build_has_a_row_with_its_licence_and_why_and_no_row_is_left() throws Exception {
        List<String> rows = new ArrayList<>();
        ROW.matcher(Files.readString(PAGE)).results().forEach(row ->
                LIBRARY.matcher(row.group(1)).results().forEach(library -> rows.add(library.group(1))));

        assertThat(rows).doesNotHaveDuplicates().containsExactlyInAnyOrderElementsOf(libraries());
    }

    /** Dependencies and plugins of the build and of its profiles, as {@code group:artifact}. */
    private static Set<String> libraries() throws Exception {
        Element pom = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(Path.of("pom.xml").toFile())
                .getDocumentElement();
        Set<String> libraries = new TreeSet<>();
        for (String kind : List.of("dependency", "plugin")) {
            NodeList found = pom.getElementsByTagName(kind);
            for (int i = 0; i < found.getLength(); i++) {
                libraries.add(child(found.item(i), "groupId") + ":" + child(found.item(i), "artifactId"));
            }
        }
        return libraries;
    }

    private static String child(Node of, String name) {
        for (Node child = of.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child.getNodeName().equals(name)) {
                return child.getTextContent().strip();
            }
        }
        throw new AssertionError("A " + of.getNodeName() + " of pom.xml has no " + name);
    }
}
