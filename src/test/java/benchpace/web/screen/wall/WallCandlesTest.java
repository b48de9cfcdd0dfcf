package benchpace.web.screen.wall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchpace.board.view.ClassView;
import benchpace.board.view.SeatView;
import benchpace.plan.Studio;
import benchpace.web.Browsers;
import benchpace.web.screen.Evening;
import benchpace.web.screen.OfflineScreens;
import benchpace.web.screen.Screens;
import benchpace.web.screen.shell.ScreenKind;
import benchpace.web.screen.shell.Viewer;
import benchpace.words.Times;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ReducedMotion;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** While candles set the wall shows every one of them, as computed, and nothing is cut off or lies on another. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
@ExtendWith(Browsers.class)
class WallCandlesTest {
    private static final Studio STUDIO = new Studio("The Tallow Loft", "Marrowby", Optional.empty());
    private static final int[][] SCREENS = {{1920, 1080}, {1280, 720}, {3840, 2160}, {1080, 1920}};

    /** Lines of text and drawings that leave their part of the wall, are cut, or meet others. */
    private static final String FAULTS = """
            () => {
              const faults = [];
              const parts = [...document.querySelectorAll('.wall__top, .told, .ready__heading, .ready__time,'
                + ' .wall__wait, .wall__seats, .ready__rests, .wall__rail')].filter(part => part.children.length
                || part.textContent.trim());
              const boxes = parts.map(part => ({ part, name: part.className, box: part.getBoundingClientRect() }));
              const meet = (a, b) => a.left < b.right - 2 && b.left < a.right - 2 && a.top < b.bottom - 2
                && b.top < a.bottom - 2;
              boxes.forEach((a, i) => boxes.slice(i + 1).forEach(b => {
                if (meet(a.box, b.box)) faults.push(a.name + ' lies on ' + b.name);
              }));
              for (const { part, name, box } of boxes) {
                if (box.right > innerWidth + 1 || box.bottom > innerHeight + 1) {
                  faults.push(name + ' leaves the screen');
                }
                if (part.matches('.told')) continue;
                const lines = [];
                const texts = document.createTreeWalker(part, NodeFilter.SHOW_TEXT);
                while (texts.nextNode()) {
                  const element = texts.currentNode.parentElement;
                  const text = texts.currentNode.textContent.trim();
                  if (!text || element.closest('.unseen')) continue;
                  const range = document.createRange();
                  range.selectNodeContents(texts.currentNode);
                  for (const line of range.getClientRects()) {
                    if (line.width < 1 || line.left > box.right) continue;
                    const letters = line.height * 0.24; // the box of a font is higher than its letters
                    const ink = { top: line.top + letters, bottom: line.bottom - letters, left: line.left,
                      right: line.right };
                    if (ink.bottom > box.bottom + 2 || ink.right > box.right + 2) {
                      faults.push(text + ' is cut in ' + name);
                    }
                    const cell = element.closest('.candle')?.getBoundingClientRect();
                    if (cell && (ink.left < cell.left || ink.right > cell.right || ink.bottom > cell.bottom)) {
                      faults.push(text + ' leaves its candle');
                    }
                    lines.push({ text, ink });
                  }
                }
                lines.forEach((a, i) => lines.slice(i + 1).forEach(b => {
                  if (a.text !== b.text && meet(a.ink, b.ink)) faults.push(a.text + ' lies on ' + b.text);
                }));
              }
              for (const drawing of document.querySelectorAll('.candle__picture, .candle__form')) {
                const { width, height } = drawing.getBoundingClientRect();
                const unit = innerWidth < innerHeight ? innerWidth / 1080
                  : Math.min(innerWidth / 1920, innerHeight / 1080);
                if (Math.min(width, height) < 34 * unit) faults.push('a candle is ' + width + ' by ' + height);
              }
              return faults;
            }""";

    private static Map<String, ClassView> views;
    private static final Times TIMES = new Times(Evening.ZONE);

    @BeforeAll static void make() {
        views = CandleSituations.all();
    }

    private static String page(ClassView view) {
        return new Screens(() -> STUDIO).page(ScreenKind.WALL, view, Viewer.GUEST);
    }

    private static BrowserContext context(Browser browser, OfflineScreens screens, ReducedMotion motion) {
        BrowserContext context = browser.newContext(new Browser.NewContextOptions().setReducedMotion(motion));
        context.route("**/*", screens::answer);
        return context;
    }

    @Test void nothing_is_cut_off_and_nothing_lies_on_another_on_any_screen(Browser browser) {
        OfflineScreens screens = new OfflineScreens();
        views.forEach((name, view) -> screens.page("/" + name, page(view)));
        Map<String, Object> faults = new LinkedHashMap<>();
        try (BrowserContext context = context(browser, screens, ReducedMotion.REDUCE)) {
            Page page = context.newPage();
            for (String name : views.keySet()) {
                page.navigate(OfflineScreens.HOST + "/" + name);
                page.evaluate("() => document.fonts.ready");
                for (int[] screen : SCREENS) {
                    page.setViewportSize(screen[0], screen[1]);
                    Object found = page.evaluate(FAULTS);
                    if (!((List<?>) found).isEmpty()) {
                        faults.put(name + " at " + screen[0] + "x" + screen[1], found);
                    }
                }
            }
        }
        assertThat(faults).isEmpty();
    }

    @Test void each_seat_that_makes_a_candle_is_there_exactly_once_while_all_wait() {
        views.forEach((name, view) -> {
            if (WallMain.waits(view)) {
                List<Integer> shown = shown(view).stream().map(WallCandle::seat).toList();
                List<Integer> making = view.seats().stream()
                        .filter(s -> s.counts() && s.mark() != SeatView.Mark.DONE).map(SeatView::seat).toList();
                assertThat(shown).as(name).containsExactlyInAnyOrderElementsOf(making);
            }
        });
    }

    @Test void states_have_shapes_of_their_own() {
        TreeSet<WallCandle.State> seen = new TreeSet<>();
        views.forEach((name, view) -> {
            String html = page(view);
            for (WallCandle candle : shown(view)) {
                seen.add(candle.state());
                String of = html.replaceAll("(?s).*(<li class=\"[^\"]*\" data-candle=\"" + candle.seat()
                        + "\">.*?</li>).*", "$1");
                assertThat(of).as(name).contains("candle--" + candle.state().token());
                assertThat(of.contains("class=\"candle__set\"")).as(name)
                        .isEqualTo(candle.state() == WallCandle.State.SET);
                assertThat(of.contains("class=\"candle__level\"") || of.contains("candle--empty")).as(name)
                        .isEqualTo(candle.state() == WallCandle.State.EMPTY);
                assertThat(of.contains("try it")).as(name).isEqualTo(candle.state() == WallCandle.State.TRY_IT);
            }
        });
        assertThat(seen).containsExactly(WallCandle.State.values());
    }

    /** What the drawing leaves out is what lies between two fronts, so the computed share is between what they hold. */
    @Test void the_wax_is_drawn_as_far_as_it_is_computed() {
        int drawn = 0;
        for (ClassView view : views.values()) {
            for (WallCandle candle : shown(view)) {
                if (candle.solid().isPresent() && candle.drawn().isPresent()) {
                    SmallCandle small = candle.drawn().get();
                    double liquid = volume(small.liquid()) / volume(small.wax());
                    double setting = volume(small.setting()) / volume(small.wax());
                    double solid = candle.solid().get();
                    // at most 25 per cent of the liquid part is solid, 25 to 75 of the rest inside the outer front
                    assertThat(solid).isGreaterThan(0.75 * (1 - setting) + 0.25 * (setting - liquid) - 0.06)
                            .isLessThan(1 - setting + 0.75 * (setting - liquid) + 0.25 * liquid + 0.06);
                    drawn++;
                } else if (candle.solid().isPresent()) {
                    double side = candle.core().isEmpty() ? 0
                            : Double.parseDouble(candle.core().replaceAll(".*h([\\d.]+)v.*", "$1"));
                    assertThat(side * side / 196).isEqualTo(1 - candle.solid().get(), within(0.02));
                    drawn++;
                }
            }
        }
        assertThat(drawn).isGreaterThan(300);
    }

    /** Of the body that a path makes when it turns round the axis, as half of it is drawn; any unit. */
    private static double volume(String path) {
        double sum = 0;
        for (String outline : path.split("(?=M)")) {
            List<double[]> points = new ArrayList<>();
            for (String point : outline.replace("Q", "L").replaceAll("[MZ]", "").split("[L]")) {
                String[] xy = point.strip().split(" ");
                if (xy.length >= 2) {
                    double x = Double.parseDouble(xy[xy.length - 2]);
                    points.add(new double[] {x, Double.parseDouble(xy[xy.length - 1])});
                }
            }
            double turned = 0;
            for (int i = 0; i < points.size(); i++) {
                double[] a = points.get(i);
                double[] b = points.get((i + 1) % points.size());
                turned += (b[1] - a[1]) * (a[0] * Math.abs(a[0]) + a[0] * Math.abs(b[0]) + b[0] * Math.abs(a[0])
                        + b[0] * Math.abs(b[0]));
            }
            sum += Math.abs(turned);
        }
        return sum;
    }

    @Test void candles_of_one_range_stand_under_it_where_ranges_differ_and_the_ribbon_says_it_where_they_do_not() {
        int apart = 0;
        for (ClassView view : views.values()) {
            for (WallSeats.Group group : WallSeats.of(view, TIMES).groups()) {
                if (!group.clock().isEmpty() && !group.clock().equals("try it")) {
                    apart++;
                    assertThat(group.candles()).allSatisfy(candle -> assertThat(
                            TIMES.briefly(candle.clock().orElseThrow().said())).isEqualTo(group.clock()));
                }
            }
        }
        assertThat(apart).isGreaterThan(10);
        assertThat(WallSeats.of(views.get("at-once-8"), TIMES).groups()).singleElement()
                .satisfies(all -> assertThat(all.clock()).isEmpty());
    }

    @Test void a_candle_is_told_to_who_cannot_see_it() {
        assertThat(shown(views.get("at-once-8")).get(2).words()).matches(
                "Seat 3: setting, ready about \\d\\d:\\d\\d to \\d\\d:\\d\\d");
        assertThat(shown(views.get("tried")).stream().map(WallCandle::words)).contains("Seat 4: tried by hand",
                "Seat 5: try it");
    }

    @Test void a_band_that_has_moved_says_why_for_some_minutes_and_glides(Browser browser) {
        ClassView moved = views.get("moved");
        assertThat(WallRibbon.of(moved, TIMES).orElseThrow().moved()).isEqualTo("Measured at seat 5.");
        assertThat(WallRibbon.of(views.get("two-kinds"), TIMES).orElseThrow().moved()).isEmpty();
        OfflineScreens screens = new OfflineScreens();
        screens.page("/moved", page(moved));
        assertThat(animations(browser, screens, ReducedMotion.NO_PREFERENCE)).isPositive();
        assertThat(animations(browser, screens, ReducedMotion.REDUCE)).isZero();
    }

    private static int animations(Browser browser, OfflineScreens screens, ReducedMotion motion) {
        try (BrowserContext context = context(browser, screens, motion)) {
            Page page = context.newPage();
            page.navigate(OfflineScreens.HOST + "/moved");
            page.waitForFunction("() => document.querySelector('[data-clock]').textContent !== ''");
            return (int) page.evaluate("""
                    () => {
                      const main = document.getElementById('wall-main');
                      const band = /(ribbon__band" x="[^"]*" y="[^"]*" width=")[^"]*/;
                      main.innerHTML = main.innerHTML.replace(band, '$1100');
                      main.dispatchEvent(new CustomEvent('htmx:sseMessage', { bubbles: true }));
                      return main.querySelector('[data-ribbon-band]').getAnimations().length;
                    }""");
        }
    }

    private static List<WallCandle> shown(ClassView view) {
        return WallSeats.of(view, TIMES).groups().stream().flatMap(g -> g.candles().stream()).toList();
    }
}
