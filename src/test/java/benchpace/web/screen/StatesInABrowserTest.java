package benchpace.web.screen;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.web.Browsers;
import benchpace.web.style.Samples;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.ForcedColors;
import com.microsoft.playwright.options.ScreenshotCaret;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * The states of a seat without their words and without colour: WCAG 2.2, 1.4.1, with the pictures themselves. All words
 * and the row of steps are taken off each tile of the look, so that what is left is frame, fill and mark; then no two
 * states may look alike, neither in greys nor where the reader's own few colours hold.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
@ExtendWith(Browsers.class)
class StatesInABrowserTest {
    /** A quarter of all greys: an edge that nobody overlooks. */
    private static final int STEP = 64;
    /** The ink of a mark 16 px high, drawn with a stroke of 2 px: its outline is some 30 px long. */
    private static final int FEWEST = 60;
    private static final String BARE = """
            (tiles) => tiles.forEach((tile) => {
              const walker = document.createTreeWalker(tile.shadowRoot, NodeFilter.SHOW_TEXT);
              while (walker.nextNode()) walker.currentNode.data = '';
              tile.shadowRoot.querySelectorAll('.pips').forEach((pips) => pips.remove());
            })""";

    private static Page look(BrowserContext context) {
        OfflineScreens offline = new OfflineScreens();
        offline.page("/style", new Screens().style(new Samples(Evening.ZONE).given(Optional.empty()),
                EveryScreen.LEAD));
        Page page = context.newPage();
        page.setViewportSize(1280, 800);
        page.route("**/*", offline::answer);
        page.navigate(OfflineScreens.HOST + "/style");
        page.evaluate("document.fonts.ready.then(() => 0)");
        return page;
    }

    /** A state's grey picture, by what it says without its words: the first of each mark, asked and not. */
    private static Map<String, int[]> pictures(Page page) throws IOException {
        Locator tiles = page.locator(".tiles__tile");
        tiles.evaluateAll(BARE);
        Map<String, int[]> pictures = new LinkedHashMap<>();
        for (int i = 0; i < tiles.count(); i++) {
            Locator tile = tiles.nth(i);
            String state = tile.getAttribute("data-state").replaceFirst("[:,] (?!asked).*", "").replace(":", ",")
                    .replaceFirst("(, asked).*", "$1");
            if (!state.equals("not sent yet") && !pictures.containsKey(state)) {
                pictures.put(state, greys(tile.screenshot(new Locator.ScreenshotOptions()
                        .setCaret(ScreenshotCaret.INITIAL))));
            }
        }
        return pictures;
    }

    private static int[] greys(byte[] png) throws IOException {
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(png));
        int[] greys = new int[image.getWidth() * image.getHeight()];
        for (int i = 0; i < greys.length; i++) {
            int rgb = image.getRGB(i % image.getWidth(), i / image.getWidth());
            greys[i] = (int) Math.round(0.2126 * (rgb >> 16 & 255) + 0.7152 * (rgb >> 8 & 255) + 0.0722 * (rgb & 255));
        }
        return greys;
    }

    private static List<String> alike(Map<String, int[]> pictures) {
        List<String> alike = new ArrayList<>();
        List<String> states = List.copyOf(pictures.keySet());
        for (int i = 0; i < states.size(); i++) {
            for (int j = i + 1; j < states.size(); j++) {
                int differ = differ(pictures.get(states.get(i)), pictures.get(states.get(j)));
                if (differ < FEWEST) {
                    alike.add(states.get(i) + " and " + states.get(j) + " differ in " + differ + " px");
                }
            }
        }
        return alike;
    }

    private static int differ(int[] one, int[] other) {
        int differ = 0;
        for (int i = 0; i < Math.min(one.length, other.length); i++) {
            differ += Math.abs(one[i] - other[i]) >= STEP ? 1 : 0;
        }
        return differ;
    }

    @Test void no_two_states_look_alike_in_greys_by_day_or_by_night(Browser browser) throws IOException {
        for (ColorScheme scheme : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
            try (BrowserContext context = browser.newContext(new Browser.NewContextOptions().setColorScheme(scheme))) {
                Map<String, int[]> pictures = pictures(look(context));

                assertThat(pictures).hasSizeGreaterThan(12);
                assertThat(alike(pictures)).as(scheme.toString()).isEmpty();
            }
        }
    }

    @Test void nor_where_the_reader_s_own_few_colours_hold(Browser browser) throws IOException {
        try (BrowserContext context = browser.newContext(new Browser.NewContextOptions()
                .setForcedColors(ForcedColors.ACTIVE))) {
            assertThat(alike(pictures(look(context)))).isEmpty();
        }
    }
}
