package benchpace.web.screen;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.web.Browsers;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Page;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.opentest4j.TestAbortedException;

/**
 * The two typefaces that come with the program: whole, licensed, light, there before a page is drawn, and what its
 * words are really set in. What the browser drew with is asked of the browser itself (Chrome DevTools Protocol,
 * {@code CSS.getPlatformFontsForNode}), as a style sheet only says what was wished for.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
@ExtendWith(Browsers.class)
class LettersTest {
    private static final Path FONTS = Path.of("static/fonts");
    private static final long HEAVIEST = 64 * 1024;
    private static final Pattern PRELOAD = Pattern.compile("<link rel=\"preload\" href=\"/([^\"]+)\" as=\"font\" "
            + "type=\"font/woff2\" crossorigin>");
    private static final Pattern LATIN = Pattern.compile("[\\s\\p{Punct}\\p{IsLatin}0-9\u00b0\u00b7\u2013\u2026]+");
    private static final Set<String> UNSEEN = Set.of("SCRIPT", "STYLE", "NOSCRIPT", "TITLE", "HEAD", "TEMPLATE",
            "SUMMARY"); // its triangle is no word
    /** One of each screen that has most to say. */
    private static final List<String> SAMPLE = List.of("tablet-flagged-8", "phone-flagged-8", "wall-six",
            "wall-computed-read", "wait-computed", "guest-asked", "report-top", "plan-edit", "start-instructor");
    /** Two lines of a page that goes on for a screen may break otherwise before the face is there. */
    private static final double MOVES_AT_MOST = 0.03;

    private static List<Path> faces() throws IOException {
        try (Stream<Path> files = Files.list(FONTS)) {
            return files.filter(file -> file.toString().endsWith(".woff2")).sorted().toList();
        }
    }

    @Test void each_face_is_woff2_has_its_licence_beside_it_and_all_are_light_together() throws IOException {
        long weight = 0;
        for (Path face : faces()) {
            byte[] bytes = Files.readAllBytes(face);
            assertThat(new String(bytes, 0, 4, StandardCharsets.US_ASCII)).isEqualTo("wOF2");
            String family = face.getFileName().toString().replaceFirst("-latin(-ext|-accents)?\\.woff2$", "");
            assertThat(Files.readString(FONTS.resolve(family + "-OFL.txt"))).contains("SIL OPEN FONT LICENSE")
                    .contains("Version 1.1");
            weight += bytes.length;
        }
        assertThat(faces()).hasSize(6);
        assertThat(weight).isLessThan(HEAVIEST);
    }

    @Test void every_page_asks_for_both_faces_before_it_is_drawn() {
        for (var shot : EveryShot.all().stream().filter(s -> s.html().contains("page page--")).toList()) {
            assertThat(PRELOAD.matcher(shot.html()).results().map((MatchResult found) -> found.group(1)))
                    .as(shot.name()).containsExactly("static/fonts/young-serif-latin.woff2",
                            "static/fonts/atkinson-hyperlegible-next-latin.woff2")
                    .allMatch(file -> Files.exists(Path.of(file)));
        }
    }

    @Test void no_latin_word_is_drawn_in_a_face_of_the_machine(Browser browser) {
        List<String> wrong = new ArrayList<>();
        int asked = 0;
        try (BrowserContext context = browser.newContext()) {
            Page page = EveryShot.tab(context);
            for (String name : SAMPLE) {
                EveryShot.show(page, name);
                CDPSession session = context.newCDPSession(page);
                session.send("DOM.enable");
                session.send("CSS.enable");
                JsonObject depth = new JsonObject();
                depth.addProperty("depth", -1);
                List<JsonObject> worded = new ArrayList<>();
                worded(session.send("DOM.getDocument", depth).getAsJsonObject("root"), worded);
                for (JsonObject node : worded) {
                    JsonObject which = new JsonObject();
                    which.add("nodeId", node.get("nodeId"));
                    for (JsonElement font : session.send("CSS.getPlatformFontsForNode", which)
                            .getAsJsonArray("fonts")) {
                        asked++;
                        if (!font.getAsJsonObject().get("isCustomFont").getAsBoolean()) {
                            wrong.add(name + ": <" + node.get("localName").getAsString() + "> in " + font);
                        }
                    }
                }
                session.detach();
            }
        }

        assertThat(wrong).isEmpty();
        assertThat(asked).isGreaterThan(100);
    }

    /** Elements with nothing but Latin letters, figures and signs in them. */
    private static void worded(JsonObject node, List<JsonObject> found) {
        JsonArray children = node.has("children") ? node.getAsJsonArray("children") : new JsonArray();
        String own = "";
        for (JsonElement child : children) {
            JsonObject each = child.getAsJsonObject();
            if (each.get("nodeType").getAsInt() == 3) {
                own += each.get("nodeValue").getAsString();
            } else if (!UNSEEN.contains(each.get("nodeName").getAsString())) {
                worded(each, found);
            }
        }
        if (!own.isBlank() && LATIN.matcher(own).matches()) {
            found.add(node);
        }
    }

    @Test void nothing_moves_when_the_faces_come(Browser browser) {
        try (BrowserContext with = browser.newContext(); BrowserContext without = browser.newContext()) {
            Page come = EveryShot.tab(with);
            Page away = EveryShot.tab(without);
            away.route("**/*.woff2", route -> route.abort());
            EveryShot.show(away, SAMPLE.get(0));
            if (away.evaluate("document.fonts.load('16px \"Stand-in sans\"').then(f => f.length, () => 0)").equals(0)) {
                throw new TestAbortedException("None of the faces that stand in until ours are there is on this "
                        + "machine (fonts-liberation has two): whether anything moves was not measured.");
            }
            for (String name : List.of("report-top", "start-instructor", "wait-computed", "plan-edit")) {
                assertThat(height(away, name)).as(name).isBetween(height(come, name) * (1 - MOVES_AT_MOST),
                        height(come, name) * (1 + MOVES_AT_MOST));
            }
        }
    }

    private static double height(Page page, String name) {
        EveryShot.show(page, name);
        return ((Number) page.evaluate("document.querySelector('main').scrollHeight")).doubleValue();
    }
}
