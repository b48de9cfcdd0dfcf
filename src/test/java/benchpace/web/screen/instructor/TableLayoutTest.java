package benchpace.web.screen.instructor;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.view.ClassView;
import benchpace.plan.TableShape;
import benchpace.web.Browsers;
import benchpace.web.screen.Evening;
import benchpace.web.screen.Evenings;
import benchpace.web.screen.OfflineScreens;
import benchpace.web.screen.Screens;
import benchpace.web.screen.shell.Role;
import benchpace.web.screen.shell.ScreenKind;
import benchpace.web.screen.shell.Viewer;
import benchpace.words.Times;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ForcedColors;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** The table's screen at its edges: long names, many seats, twice its size, the reader's own colours. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
@ExtendWith(Browsers.class)
class TableLayoutTest {
    private static final String LONG_NAME = "Candles for the long evening of the harvest supper in the old granary, "
            + "by hand";
    /** Parts of the bar whose boxes meet, leave the bar, or whose own words are cut; all but the name of the class. */
    private static final String BAR_FAULTS = """
            () => {
              const parts = [...document.querySelector('.bar').children].filter(e => e.getClientRects().length > 0
                && !e.querySelector('.bar__nothing'));
              const faults = [];
              const box = e => e.getBoundingClientRect();
              parts.forEach((a, i) => parts.slice(i + 1).forEach(b => {
                const [p, q] = [box(a), box(b)];
                if (p.left < q.right - 1 && q.left < p.right - 1 && p.top < q.bottom - 1 && q.top < p.bottom - 1) {
                  faults.push(a.className + ' meets ' + b.className);
                }
              }));
              for (const part of parts) {
                if (box(part).right > innerWidth + 1) faults.push(part.className + ' leaves the page');
                if (part.matches('.bar__title')) continue;
                for (const words of part.querySelectorAll('button > span, button')) {
                  if (words.scrollWidth > words.clientWidth + 1 && words.clientWidth > 0
                      || words.scrollHeight > words.clientHeight + 2 && words.clientHeight > 0) {
                    faults.push('cut: ' + words.textContent);
                  }
                }
              }
              return faults;
            }""";
    private static final String IN_SIGHT = """
            selector => { const box = document.querySelector(selector).getBoundingClientRect();
              return box.top >= 0 && box.bottom <= innerHeight + 1 && box.left >= 0
                && box.right <= innerWidth + 1; }""";

    private final List<Page> pages = new ArrayList<>();
    private Browser browser;

    @BeforeEach void take(Browser browser) {
        this.browser = browser;
    }

    @AfterEach void close() {
        pages.forEach(page -> page.context().close());
    }

    private Page table(ClassView view, int width, int height) {
        return table(new Screens().page(ScreenKind.INSTRUCTOR, view, new Viewer(Role.INSTRUCTOR, "")), width, height);
    }

    private Page table(String html, int width, int height) {
        OfflineScreens offline = new OfflineScreens();
        offline.page("/table", html);
        ClassView wicks = Evenings.wicks().view(19.5);
        offline.sheet("/classes/evening/seats/4/sheet", new Screens().sheet(wicks, 4, new Viewer(Role.INSTRUCTOR, "")));
        Page page = browser.newContext(new Browser.NewContextOptions().setViewportSize(width, height)).newPage();
        pages.add(page);
        page.route("**/*", offline::answer);
        page.navigate(OfflineScreens.HOST + "/table");
        page.waitForFunction("document.querySelector('[data-clock]').textContent !== ''");
        return page;
    }

    private static String longNamed(ClassView view) {
        return new Screens().page(ScreenKind.INSTRUCTOR, view, new Viewer(Role.INSTRUCTOR, ""))
                .replace("<h1 class=\"bar__title\"><bdi>" + view.name(), "<h1 class=\"bar__title\"><bdi>" + LONG_NAME);
    }

    private static String style(Page page, String selector, String property) {
        return (String) page.evalOnSelector(selector, "(e, property) => getComputedStyle(e)[property]", property);
    }

    private static double size(Page page, String selector, String property) {
        return Double.parseDouble(style(page, selector, property).replace("px", ""));
    }

    // ---- the bar

    @Test void what_undo_takes_back_is_read_whole_beside_a_class_name_of_80_letters() {
        for (int width : new int[] {320, 390, 768, 900, 1024, 1180, 1280, 1366}) {
            Page page = table(longNamed(Evenings.all().get("twenty-four")), width, 800);

            assertThat((List<?>) page.evaluate(BAR_FAULTS)).as(width + " wide").isEmpty();
            assertThat((Boolean) page.evaluate("document.documentElement.scrollWidth <= innerWidth"))
                    .as(width + " wide").isTrue();
        }
    }

    @Test void on_a_phone_the_menu_stands_beside_the_name_of_the_class() {
        for (int width : new int[] {320, 390}) {
            Page page = table(longNamed(Evenings.wicks().view(19.5)), width, 800);

            assertThat(page.locator("#menu-button").boundingBox().y).as(width + " wide")
                    .isLessThan(page.locator("#undo").boundingBox().y);
        }
    }

    @Test void a_class_of_another_day_says_so_at_its_head_and_one_of_today_does_not() {
        Screens screens = new Screens();
        Viewer lead = new Viewer(Role.INSTRUCTOR, "");
        String date = new Times(Evening.ZONE).date(Evening.START);

        assertThat(screens.page(ScreenKind.INSTRUCTOR, Evenings.wicks().view(19.5), lead)).doesNotContain(date);
        assertThat(screens.page(ScreenKind.INSTRUCTOR, Evenings.wicks().view(-1500), lead)).contains(date);
    }

    // ---- many seats

    @Test void head_now_next_and_undo_stay_in_sight_at_any_number_of_seats_and_no_chart_is_cut() {
        Stream.of("six", "flagged-8", "flagged-12", "flagged-24", "twenty-four", "cure-24", "forty").forEach(name -> {
            Page page = table(Evenings.all().get(name), 1280, 800);

            for (String part : List.of(".bar", ".now__heading", "#next .next", "#undo")) {
                assertThat((Boolean) page.evaluate(IN_SIGHT, part)).as(part + ", " + name).isTrue();
            }
            assertThat((Boolean) page.evaluate("document.documentElement.scrollHeight <= innerHeight")).as(name)
                    .isTrue();
            boolean open = (Boolean) page.evaluate("document.getElementById('lines-box').open");
            if (open) {
                assertThat((Boolean) page.evaluate(IN_SIGHT, "#lines-box")).as("chart, " + name).isTrue();
            }
        });
    }

    @Test void a_chart_that_was_folded_for_want_of_room_comes_whole_into_sight_when_it_is_asked_for() {
        int folded = 0;
        for (String name : List.of("twenty-four", "flagged-24", "cure-24", "forty")) {
            Page page = table(Evenings.all().get(name), 1280, 800);
            if (!(Boolean) page.evaluate("document.getElementById('lines-box').open")) {
                folded++;
                page.click("#lines-box summary");
                page.waitForFunction("() => document.getElementById('lines-box').open");
                page.waitForFunction(IN_SIGHT, "#lines-box");
            }
        }
        assertThat(folded).as("charts that were folded").isPositive();
    }

    /** Where a large table's height is asked for, every tile is laid out twice for any tap. */
    @Test void how_high_the_row_of_a_large_table_is_asks_no_tile_while_its_lines_are_folded() {
        Page page = table(Evenings.all().get("forty"), 1280, 800);
        assertThat((Boolean) page.evaluate("document.getElementById('lines-box').open")).isFalse();
        String before = style(page, ".room", "gridTemplateRows");

        page.evaluate("document.getElementById('table').style.gridAutoRows = '700px'");

        assertThat(style(page, ".room", "gridTemplateRows")).isEqualTo(before);
        assertThat((Boolean) page.evaluate("(room => room.scrollHeight > 3000)(document.querySelector('.room'))"))
                .as("it scrolls").isTrue();
    }

    // ---- twice its size

    @Test void at_twice_its_size_the_next_step_can_be_read_and_opened_and_leaves_room_for_the_table() {
        Page page = table(Evenings.wicks().view(19.5), 640, 400);

        assertThat((Boolean) page.evaluate(IN_SIGHT, "#next-button")).isTrue();
        assertThat(((Number) page.evaluate("document.querySelector('.lead__next').offsetHeight")).intValue())
                .isLessThan(80);
        page.click("#next-button");
        assertThat((Boolean) page.evaluate(IN_SIGHT, "#next-dialog")).isTrue();
        for (String button : List.of("#ask-wait", "#ask-open")) {
            assertThat((Boolean) page.evaluate(IN_SIGHT, button)).as(button).isTrue();
        }
    }

    @Test void the_corners_of_the_seat_sheet_stay_round_while_it_scrolls() {
        Page page = table(Evenings.wicks().view(19.5), 1280, 500);
        page.click("[data-open-seat='4']");
        page.waitForSelector("#sheet-close");

        assertThat(style(page, "#seat-sheet", "overflowY")).isEqualTo("hidden");
        assertThat((Boolean) page.evaluate(
                "(b => b.scrollHeight > b.clientHeight)(document.getElementById('sheet-body'))"))
                .as("it scrolls inside").isTrue();
        page.evaluate("document.getElementById('sheet-body').scrollTo(0, 9999)");
        assertThat((Boolean) page.evaluate(IN_SIGHT, "#sheet-close")).isTrue();
    }

    // ---- what is around the table

    @Test void the_ring_of_the_keyboard_around_the_pace_lines_words_is_cut_by_nothing() {
        Page page = table(Evenings.wicks().view(19.5), 1280, 800);
        page.locator("#lines-box > summary").focus();

        assertThat((List<?>) page.evaluate("""
                () => { const summary = document.activeElement;
                  const look = getComputedStyle(summary);
                  const out = parseFloat(look.outlineWidth) + parseFloat(look.outlineOffset);
                  const ring = summary.getBoundingClientRect();
                  const cutting = [];
                  for (let e = summary.parentElement; e; e = e.parentElement) {
                    if (getComputedStyle(e).overflow === 'visible' || e === document.documentElement) continue;
                    const box = e.getBoundingClientRect();
                    if (ring.left - out < box.left || ring.bottom + out > box.bottom) cutting.push(e.className);
                  }
                  return look.outlineStyle === 'solid' ? cutting : ['no ring']; }""")).isEmpty();
    }

    @Test void the_buttons_that_note_the_room_and_the_pour_stand_below_each_other() {
        for (int width : new int[] {390, 1280}) {
            Page page = table(Evenings.read().computed(62), width, 844);
            page.locator("#warmth-button").click();

            assertThat(page.locator("#pour-note").boundingBox().x).as(width + " wide")
                    .isEqualTo(page.locator("#room-note").boundingBox().x);
        }
    }

    // ---- done and not done

    @Test void a_seat_that_is_done_is_told_from_one_at_work_by_fill_and_form() {
        for (String name : List.of("six", "twelve", "twenty-four", "forty")) {
            Page page = table(Evenings.all().get(name), 1280, 800);

            assertThat(style(page, ".face--waiting", "backgroundColor")).as(name)
                    .isNotEqualTo(style(page, ".face--on-pace", "backgroundColor"))
                    .isEqualTo(style(page, ".face--waiting", "borderTopColor"));
            assertThat(size(page, ".face--on-pace", "borderTopWidth")).as(name).isGreaterThanOrEqualTo(3);
            assertThat(size(page, ".face--waiting .face__word .mark", "width")).as(name).isGreaterThanOrEqualTo(24);
            assertThat(page.locator(".face--on-pace .mark").count()).as(name).isZero();
        }
    }

    /**
     * ISO 9241-3 as it is commonly quoted, from memory: letters of 16 minutes of arc at least, 20 to 22 better. A
     * tablet of ten inches and 1280 pixels across has 0.17 mm a pixel; figures of the serif are 0.75 em tall.
     */
    @Test void from_two_metres_the_number_and_the_minutes_of_a_seat_at_a_table_of_six_or_eight_can_be_read() {
        for (int seats : new int[] {6, 8}) {
            Page page = table(Evening.of(Evening.plan("evening-pour", TableShape.LONG_TABLE), seats, List.of("Ada"))
                    .open(0, "welcome").open(8, "vessel").done(11, "vessel", 1, 2).view(12), 1280, 800);

            for (String figures : List.of(".face--on-pace .face__number", ".face--on-pace .face__foot b")) {
                double millimetres = size(page, figures, "fontSize") * 0.75 * 0.17;
                assertThat(Math.toDegrees(Math.atan(millimetres / 2000)) * 60).as(figures + ", " + seats + " seats")
                        .isGreaterThanOrEqualTo(16);
            }
            assertThat(size(page, ".face--waiting .face__word .mark", "width")).as(seats + " seats")
                    .isGreaterThanOrEqualTo(60);
        }
    }

    @Test void before_the_class_nobody_looks_done() {
        Page page = table(Evenings.all().get("before"), 1280, 800);

        assertThat(style(page, ".face--waiting", "backgroundColor")).isEqualTo(style(page, ".flag, .menu, dialog",
                "backgroundColor"));
    }

    // ---- the reader's own colours

    @Test void in_forced_colours_the_seat_behind_is_filled_and_a_seat_that_is_done_is_told_by_its_seal() {
        Page page = table(Evenings.wicks().view(19.5), 1280, 800);
        page.emulateMedia(new Page.EmulateMediaOptions().setForcedColors(ForcedColors.ACTIVE));

        String plain = style(page, ".face--waiting", "backgroundColor");
        assertThat(style(page, ".face--behind", "backgroundColor")).isNotEqualTo(plain);
        assertThat(style(page, ".face--behind", "color")).isNotEqualTo(style(page, ".face--behind", "backgroundColor"));
        assertThat(size(page, ".face--slipping", "borderTopWidth")).isGreaterThan(size(page, ".face--waiting",
                "borderTopWidth") + 2);
        assertThat(style(page, ".face--waiting .face__word .mark", "backgroundColor")).isNotEqualTo(plain);
    }
}
