package benchpace.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Scripts and style sheets lose what is for those who write them, and nothing else. */
@ExtendWith(Browsers.class)
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class WithoutCommentsTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '\0', value = {
        "a; // b|a;",
        "a /* b */ + c|a  + c",
        "f('// no'); // yes|f('// no');",
        "f(\"it's // here\")|f(\"it's // here\")",
        "f('\\'// no')|f('\\'// no')",
        "a = b / c; // d / e|a = b / c;",
        "x = /[/*]'/.test(y) // z|x = /[/*]'/.test(y)",
        "return /\\/\\//.exec(a)|return /\\/\\//.exec(a)",
        "f(`a // ${g(`/* ${h} */`, { k: 1 })} // b`) // c|f(`a // ${g(`/* ${h} */`, { k: 1 })} // b`)",
        "n = (a + b) / 2 / c|n = (a + b) / 2 / c",
        "n = i++ / 2 // c|n = i++ / 2",
        "'https://x'|'https://x'",
    })
    void a_line_of_a_script_keeps_all_but_its_comment(String line, String kept) {
        assertThat(WithoutComments.ofScript(line + "\n")).isEqualTo(kept + "\n");
    }

    @Test void lines_stay_lines_and_what_is_between_backquotes_keeps_its_blanks() {
        assertThat(WithoutComments.ofScript("/** A. */\n\nlet a = 1\n  // b\n  let c = `\n    d\n\n    e`\n\n"))
                .isEqualTo("let a = 1\nlet c = `\n    d\n\n    e`\n");
    }

    @Test void a_style_sheet_keeps_its_strokes_and_what_stands_in_quotes() {
        assertThat(WithoutComments.ofStyle("/* a */\n.b { /* c */\n  font: 1rem/1.2 x;\n  content: \"/* d */\";\n}\n"))
                .isEqualTo(".b {\nfont: 1rem/1.2 x;\ncontent: \"/* d */\";\n}\n");
    }

    /** The same functions, read back by a browser as it understood them, which tells of no comments in between. */
    @Test void a_browser_understands_every_script_and_sheet_as_before(Browser browser) throws IOException {
        try (Page page = browser.newPage(); Stream<Path> files = Files.walk(Path.of("static"))) {
            for (Path file : files.filter(f -> f.toString().matches(".*\\.(js|css)")).sorted().toList()) {
                String text = Files.readString(file);
                if (file.toString().endsWith(".css")) {
                    assertThat(rules(page, WithoutComments.ofStyle(text))).as(file.toString()).isNotEmpty()
                            .isEqualTo(rules(page, text));
                } else {
                    String less = WithoutComments.ofScript(text);
                    assertThat(WithoutComments.ofScript(less)).as(file.toString()).isEqualTo(less);
                    assertThat(words(less)).as(file.toString()).isSubsetOf(words(text));
                    assertThat(page.evaluate(PARSES, less)).as(file.toString()).isEqualTo("");
                }
            }
        }
    }

    @Test void a_browser_understands_the_scripts_of_others_as_before(Browser browser) throws IOException {
        try (Page page = browser.newPage()) {
            for (String script : List.of("htmx.org/2.0.10/dist/htmx.min.js", "htmx-ext-sse/2.2.2/sse.js")) {
                try (InputStream in = getClass().getResourceAsStream("/META-INF/resources/webjars/" + script)) {
                    String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
                    String less = WithoutComments.ofScript(text);
                    assertThat(words(less)).as(script).isSubsetOf(words(text));
                    assertThat(page.evaluate(PARSES, less)).as(script).isEqualTo("");
                }
            }
        }
    }

    /** What is wrong with it as a module; what it asks for need not be there. */
    private static final String PARSES = """
            async (text) => {
              const bare = text.replace(/\\bfrom '[^']*'/g, "from 'data:text/javascript,'")
                .replace(/^import '[^']*'/gm, '');
              try {
                await import('data:text/javascript,' + encodeURIComponent(bare));
                return '';
              } catch (e) {
                return e instanceof SyntaxError && !/does not provide an export/.test(e.message) ? String(e) : '';
              }
            }""";

    private static String rules(Page page, String text) {
        return (String) page.evaluate("""
                (text) => {
                  const sheet = new CSSStyleSheet();
                  sheet.replaceSync(text);
                  return [...sheet.cssRules].map((rule) => rule.cssText).join(' ').replace(/\\s+/g, ' ');
                }""", text);
    }

    private static List<String> words(String text) {
        return Stream.of(text.split("[\\s(){};,]+")).filter(word -> !word.isEmpty()).toList();
    }
}
