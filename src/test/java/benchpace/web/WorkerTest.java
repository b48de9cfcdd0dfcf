package benchpace.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** What a device keeps of the program for when the board is away, and how long it waits for what the board says. */
@ExtendWith(Browsers.class)
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class WorkerTest extends OneEvening {
    /** The worker's text among stand-ins: a cache that has a sheet or has none, and a board that never answers. */
    private static final String ASKED = """
            async ([script, kept]) => {
              const handlers = {};
              const self = { addEventListener: (name, handler) => { handlers[name] = handler; },
                location: new URL('http://board.test/sw.js') };
              const shell = { match: async () => kept ? new Response(kept) : undefined, put: async () => {} };
              new Function('self', 'caches', 'fetch', script)(self, { open: async () => shell },
                () => new Promise(() => {}));
              const began = performance.now();
              const answer = await new Promise((resolve) => handlers.fetch({ respondWith: resolve, waitUntil: () => {},
                request: { url: 'http://board.test/studio.css', method: 'GET', mode: 'no-cors' } }));
              return [await answer.text(), performance.now() - began];
            }""";

    private String script() {
        return board.get("/sw.js", "").ok().body();
    }

    private List<String> listed() {
        return Pattern.compile("'(/[^']+)'").matcher(script().lines().skip(1).findFirst().orElseThrow()).results()
                .map((MatchResult found) -> found.group(1)).toList();
    }

    @Test void every_script_style_picture_and_typeface_is_kept_and_no_film() throws IOException {
        List<String> kept = listed();

        try (Stream<Path> files = Files.walk(Path.of("static"))) {
            List<String> own = files.filter(Files::isRegularFile).map(f -> "/" + f.toString().replace('\\', '/'))
                    .filter(f -> !f.endsWith("worker.js")).toList();
            assertThat(own).filteredOn(f -> f.endsWith(".woff2")).hasSize(6).allMatch(kept::contains);
            assertThat(own).filteredOn(f -> f.matches(".*\\.(js|css|svg)")).isNotEmpty().allMatch(kept::contains);
        }
        assertThat(kept).noneMatch(f -> f.endsWith(".webm") || f.endsWith(".mp4") || f.endsWith(".txt"));
        assertThat(kept).allSatisfy(f -> assertThat(board.get(f, "").status()).isEqualTo(200));
    }

    @Test void a_release_is_named_by_all_that_is_kept_of_the_program_typefaces_too() throws Exception {
        List<String> hashed = Stream.concat(listed().stream().filter(f -> f.startsWith("/static/")),
                Stream.of("/static/js/worker.js")).sorted().toList();
        MessageDigest sha256 = MessageDigest.getInstance("SHA-256");
        for (String file : hashed) {
            sha256.update(file.getBytes(StandardCharsets.UTF_8));
            sha256.update(Files.readAllBytes(Path.of(file.substring(1))));
        }

        assertThat(hashed).anyMatch(f -> f.endsWith(".woff2"));
        assertThat(script()).startsWith("const VERSION = '" + HexFormat.of().formatHex(sha256.digest())
                .substring(0, 16) + "';");
    }

    @Test void a_page_waits_no_longer_than_a_blink_for_the_studios_colour_where_it_is_kept(Browser browser) {
        try (Page page = browser.newPage()) {
            List<?> kept = (List<?>) page.evaluate(ASKED, List.of(script(), ":root { --lead: #20407a; }"));
            assertThat(kept.get(0)).isEqualTo(":root { --lead: #20407a; }");
            assertThat(((Number) kept.get(1)).doubleValue()).isLessThan(4_000); // a blink, on a busy machine

            assertThat((List<?>) page.evaluate(ASKED, List.of(script(), ""))).first().isEqualTo("");
        }
    }
}
