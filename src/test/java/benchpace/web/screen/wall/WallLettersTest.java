package benchpace.web.screen.wall;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.web.Browsers;
import benchpace.web.screen.OfflineScreens;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ReducedMotion;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * The wall's letters as a guest 5 m away sees them, on a set of 43 inches with 1920 by 1080 pixels (0.496 mm each), and
 * whether all of them are to be seen. The angle is that of the capitals' height, by the heights in the files of the two
 * typefaces.
 *
 * <p>ISO 9241-3, as quoted at pc.ibm.com/ww/healthycomputing/vdc-crf.html: "Character heights of from 20 to 22 minutes
 * of arc are preferred", and the "minimum ... shall be 16 minutes of arc". At 5 m these are 29.09 to 32.00 mm, and
 * 23.27 mm. (Succeeded by ISO 9241-303:2011, which was not at hand.)
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
@ExtendWith(Browsers.class)
class WallLettersTest {
    private static final double LEAST = 16;
    private static final double PREFERRED = 20;
    private static final double AWAY_MM = 5_000;
    /** 43 inches along the diagonal of 1920 by 1080. */
    private static final double PIXEL_MM = 43 * 25.4 / Math.hypot(1920, 1080);
    /** Longer words may be smaller. */
    private static final int USUAL = 75;
    /** Read from afar first. */
    private static final String FIRST = ".told__heading, .told__sentence, .told__progress > span, .told__caution b, "
            + ".told__count, .wall__clock, .ready__heading, .ready__when b, .call:first-child .call__what, "
            + ".between__heading, .between__sentence, .between__next";

    /** Each text that is seen: its words, height of its capitals in pixels, whether it is read first, its ink's box. */
    private static final String TEXTS = """
            first => {
              const capitals = { 'Young Serif': .75, 'Atkinson Hyperlegible Next': .668 };
              const texts = [];
              const walker = document.createTreeWalker(document.querySelector('main'), NodeFilter.SHOW_TEXT);
              for (let node = walker.nextNode(); node; node = walker.nextNode()) {
                const of = node.parentElement;
                const style = getComputedStyle(of);
                if (!node.textContent.trim() || of.closest('title, desc, .unseen, [hidden]')
                    || style.visibility === 'hidden'
                    || of.closest('.candles__heading') && style.clipPath !== 'none') continue;
                const range = document.createRange();
                range.selectNodeContents(node);
                const boxes = [...range.getClientRects()].filter(b => b.width > 1 && b.height > 1);
                if (!boxes.length) continue;
                const calls = of.closest('.calls'); // the second is whole or stands beside them, unseen
                if (calls && boxes.every(b => b.left >= calls.getBoundingClientRect().right)) continue;
                const face = style.fontFamily.split(',')[0].replaceAll('"', '');
                const drawn = of.ownerSVGElement ? of.getScreenCTM().a : 1;
                texts.push({ words: node.textContent.trim(),
                  capitals: parseFloat(style.fontSize) * drawn * capitals[face],
                  first: of.closest(first) !== null, area: of.closest('main > *, .ready > *').className,
                  boxes: boxes.map(b => ({ left: b.left, right: b.right, top: b.top + b.height * .24,
                    bottom: b.bottom - b.height * .1 })) });
              }
              return texts;
            }""";

    /** What leaves the screen or its part of it, is cut by something, or meets other words or the drawing. */
    private static final String FAULTS = """
            texts => {
              const faults = [];
              const areas = Object.fromEntries([...document.querySelectorAll('main > *, .ready > *')]
                .map(e => [e.className, e.getBoundingClientRect()]));
              const outside = (a, b) => a.left < b.left - 2 || a.right > b.right + 2 || a.top < b.top - 2
                || a.bottom > b.bottom + 2;
              const meet = (a, b) => a.left < b.right - 1 && b.left < a.right - 1 && a.top < b.bottom - 1
                && b.top < a.bottom - 1;
              const screen = { left: 0, top: 0, right: innerWidth, bottom: innerHeight };
              texts.forEach((text, i) => {
                if (text.boxes.some(b => outside(b, screen))) faults.push('leaves the screen: ' + text.words);
                if (text.boxes.some(b => outside(b, areas[text.area]))) {
                  faults.push('leaves ' + text.area + ': ' + text.words);
                }
                texts.slice(i + 1).forEach(other => {
                  if (text.boxes.some(a => other.boxes.some(b => meet(a, b)))) {
                    faults.push(text.words + ' meets ' + other.words);
                  }
                });
              });
              for (const e of document.querySelectorAll('main, main *')) {
                if (e.ownerSVGElement || getComputedStyle(e).overflow === 'visible') continue;
                const above = parseFloat(getComputedStyle(e).fontSize) * .35; // what a face keeps free around its ink
                const wide = e.matches('.calls') ? e.clientWidth : e.scrollWidth;
                if (wide > e.clientWidth + 1 || e.scrollHeight > e.clientHeight + above) {
                  if (e.clientWidth > 1) faults.push('cut: ' + e.className);
                }
              }
              return faults;
            }""";

    private static final OfflineScreens OFFLINE = new OfflineScreens();
    private static final Map<String, String> PAGES = new LinkedHashMap<>();
    private static Page page;

    @BeforeAll static void draw(Browser browser) {
        PAGES.putAll(WallSituations.all());
        PAGES.forEach((name, html) -> OFFLINE.page("/" + name, html));
        page = browser.newContext(new Browser.NewContextOptions()
                .setReducedMotion(ReducedMotion.REDUCE)).newPage();
        page.route("**/*", OFFLINE::answer);
    }

    @AfterAll static void close() {
        page.context().close();
    }

    private static double minutesOfArc(double pixels, double millimetres) {
        return Math.toDegrees(2 * Math.atan(pixels * millimetres / 2 / AWAY_MM)) * 60;
    }

    @Test void a_capital_of_29_mm_is_20_minutes_of_arc_at_5_m_and_one_of_23_mm_is_16() {
        assertThat(PIXEL_MM).isBetween(0.4955, 0.4965);
        assertThat(minutesOfArc(29.09, 1)).isBetween(19.99, 20.01);
        assertThat(minutesOfArc(23.27, 1)).isBetween(15.99, 16.01);
    }

    @Test void the_heights_of_capitals_are_those_of_the_files_that_come_with_the_program() throws Exception {
        assertThat(Files.readString(Path.of("static/css/tokens.css"))).contains("--head: \"Young Serif\"",
                "--body: \"Atkinson Hyperlegible Next\"");
        open("wicks", 1920, 1080);
        // a capital without curves, drawn: what is measured is ink, not what a table says
        assertThat(inked("400 1000px 'Young Serif'")).isBetween(745.0, 755.0);
        assertThat(inked("400 1000px 'Atkinson Hyperlegible Next'")).isBetween(663.0, 673.0);
    }

    private static double inked(String font) {
        return ((Number) page.evaluate("""
                async font => { await document.fonts.load(font);
                  const on = document.createElement('canvas').getContext('2d');
                  on.font = font;
                  return on.measureText('H').actualBoundingBoxAscent; }""", font)).doubleValue();
    }

    @Test void every_word_is_16_minutes_of_arc_at_5_m_and_what_is_read_first_is_20() {
        List<String> faults = new ArrayList<>();
        for (String name : PAGES.keySet()) {
            for (Map<String, Object> text : open(name, 1920, 1080)) {
                double angle = minutesOfArc(((Number) text.get("capitals")).doubleValue(), PIXEL_MM);
                String words = text.get("words").toString(); // what was shortened is unusually long, too
                boolean first = (Boolean) text.get("first") && words.length() <= USUAL && !words.endsWith("\u2026");
                if (!(angle >= (first ? PREFERRED : LEAST))) {
                    faults.add("%s: %.1f' %s".formatted(name, angle, text.get("words")));
                }
            }
        }
        assertThat(faults).isEmpty();
    }

    @Test void nothing_is_cut_and_no_words_meet_on_any_television_lying_or_on_end() {
        List<String> faults = new ArrayList<>();
        for (int[] size : new int[][] {{1920, 1080}, {1280, 720}, {3840, 2160}, {1080, 1920}, {1366, 768}}) {
            for (String name : PAGES.keySet()) {
                ((List<?>) page.evaluate(FAULTS, open(name, size[0], size[1])))
                        .forEach(fault -> faults.add(name + " at " + size[0] + ": " + fault));
            }
        }
        assertThat(faults).isEmpty();
    }

    @Test void no_place_of_the_screen_bears_the_same_all_evening_and_nothing_leaves_it_for_that() {
        Page moving = page.context().browser().newPage(new Browser.NewPageOptions().setViewportSize(1920, 1080)
                .setReducedMotion(ReducedMotion.NO_PREFERENCE));
        try {
            moving.route("**/*", OFFLINE::answer);
            moving.navigate(OfflineScreens.HOST + "/stir");
            List<?> places = (List<?>) moving.evaluate("""
                    () => [0, 1, 2, 3, 4, 5].map(sixth => {
                      const rest = document.querySelector('.wall').getAnimations()[0];
                      rest.currentTime = (sixth + .5) / 6 * rest.effect.getTiming().duration;
                      const of = s => document.querySelector(s).getBoundingClientRect();
                      return [of('.wall__clock').left, of('.wall__studio').top, innerWidth - of('.wall__clock').right,
                        innerHeight - of('.wall__rail').bottom];
                    })""");
            assertThat(places).doesNotHaveDuplicates().allSatisfy(place -> assertThat((List<?>) place)
                    .allSatisfy(edge -> assertThat(((Number) edge).doubleValue()).isGreaterThan(12)));
        } finally {
            moving.close();
        }
        open("stir", 1920, 1080);
        assertThat(page.evaluate("document.querySelector('.wall').getAnimations().length")).isEqualTo(0);
    }

    @Test void another_step_comes_softly_once_and_a_tap_fills_its_dot_alone() {
        Page moving = page.context().browser().newPage(new Browser.NewPageOptions().setViewportSize(1920, 1080)
                .setReducedMotion(ReducedMotion.NO_PREFERENCE));
        try {
            moving.route("**/*", OFFLINE::answer);
            moving.navigate(OfflineScreens.HOST + "/stir");
            moving.evaluate("""
                    () => { const main = document.getElementById('wall-main');
                      main.innerHTML = main.innerHTML.replace('class="dot"', 'class="dot dot--done"'); }""");
            assertThat(moving.locator(".dot--comes").count()).isEqualTo(1);
            assertThat(moving.locator(".told--goes").count()).isZero();
            moving.evaluate("""
                    () => { const main = document.getElementById('wall-main');
                      main.innerHTML = main.innerHTML.replace('Weigh and stir', 'Pour'); }""");
            assertThat(moving.locator(".told--comes").count()).isEqualTo(1);
            moving.waitForFunction("() => document.querySelectorAll('.told').length === 1");
            assertThat(moving.locator(".told__heading").innerText()).isEqualTo("Pour");
        } finally {
            moving.close();
        }
    }

    @Test void out_of_touch_it_says_so_in_a_place_of_its_own() {
        for (String name : List.of("wicks", "talk-caution", "long-studio")) {
            open(name, 1920, 1080);
            page.evaluate("""
                    () => { const status = document.getElementById('status');
                      status.classList.add('status--says');
                      document.getElementById('status-words').textContent = 'Not live: trying again.'; }""");
            assertThat((List<?>) page.evaluate(FAULTS, page.evaluate(TEXTS, FIRST))).as(name).isEmpty();
            assertThat(page.locator(".wall__clock").isVisible()).isTrue();
        }
    }

    @SuppressWarnings("unchecked")
    private static List<Map<String, Object>> open(String name, int width, int height) {
        page.setViewportSize(width, height);
        page.navigate(OfflineScreens.HOST + "/" + name);
        page.waitForFunction("() => document.fonts.ready.then(() => true)");
        return (List<Map<String, Object>>) page.evaluate(TEXTS, FIRST);
    }
}
