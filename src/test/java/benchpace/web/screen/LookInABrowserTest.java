package benchpace.web.screen;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.web.Browsers;
import benchpace.web.screen.ScreenGallery.Shot;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ReducedMotion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * Every screen that the gallery shows, looked at once in a real browser: its letters, and what becomes of it in a
 * narrow window, with larger letters, wider spaces, without motion and under a finger. Success criteria of WCAG 2.2
 * (https://www.w3.org/TR/WCAG22/) by their numbers; 1.4.10 is a window of 1280 px at 400 %. A screen that joins the
 * gallery is looked at, too.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
@TestInstance(Lifecycle.PER_CLASS)
@ExtendWith(Browsers.class)
class LookInABrowserTest {
    private static final int NARROW = 320;
    /** Further moments of the live screens: they say nothing new of letters and edges, and cost as all others do. */
    private static final Pattern MORE_OF_THE_SAME = Pattern.compile("(tablet|pocket|phone|wall|wait|waitphone)-("
            + "silent|sorted.*|pour|cure.*|computed-(early|read|24|40)|slow.*|spread|wrapped|trim-opens|late|went|"
            + "(flagged|leisure)-(12|16|20|40)|forty.*|twenty-four-long|try-it|six)");
    /** Fingers are on these; the others have a pointer, too, or nobody touches them. */
    private static final List<String> UNDER_FINGERS = List.of("tablet", "pocket", "phone", "guest");
    /** Of what is touched, at least: WCAG 2.2, 2.5.8, and 2.5.5 of buttons where fingers are at work. */
    private static final int TARGET = 24;
    private static final int TOUCHED = 44;

    private enum Check { LETTERS, FACES, NARROW, LARGE, OVERLAID, SPACED, TARGETS, MOTION }

    private final Map<Check, Map<String, List<String>>> wrong = new EnumMap<>(Check.class);
    private int looked;

    @BeforeAll void look(Browser browser) throws IOException {
        Map<String, Shot> once = new TreeMap<>();
        EveryShot.all().stream().filter(shot -> shot.then().isEmpty())
                .filter(shot -> !MORE_OF_THE_SAME.matcher(shot.name()).matches())
                .forEach(shot -> once.putIfAbsent(shot.html(), shot));
        String looks = Files.readString(Path.of("src/test/resources/look/looks.js"));
        try (BrowserContext context = browser.newContext(new Browser.NewContextOptions()
                .setReducedMotion(ReducedMotion.REDUCE))) {
            Page page = EveryShot.tab(context);
            for (Shot shot : once.values()) {
                look(page, shot, looks);
                looked++;
            }
        }
    }

    private void look(Page page, Shot shot, String looks) {
        page.setViewportSize(shot.width(), Math.min(shot.height(), 1200));
        EveryShot.show(page, shot.name());
        page.evaluate("(looks) => { window.looks = eval(looks); }", looks);
        note(Check.LETTERS, shot, page, "letters()");
        note(Check.FACES, shot, page, "missingFaces()");
        note(Check.MOTION, shot, page, "moves()");
        note(Check.TARGETS, shot, page, "small(" + TARGET + ", " + button(shot) + ")");
        if (shot.html().contains("page--wall")) {
            return; // nobody zooms a television
        }
        page.evaluate("looks.space(true)");
        note(Check.SPACED, shot, page, "cut()");
        page.evaluate("looks.space(false)");
        page.setViewportSize(NARROW, 640);
        note(Check.NARROW, shot, page, "sideways()");
        page.setViewportSize(Math.max(NARROW, shot.width() / 2), 400);
        note(Check.LARGE, shot, page, "sideways()");
        note(Check.LARGE, shot, page, "cut()");
        note(Check.OVERLAID, shot, page, "overlaid()");
    }

    private static int button(Shot shot) {
        return UNDER_FINGERS.stream().anyMatch(shot.name()::startsWith) ? TOUCHED : TARGET;
    }

    private void note(Check check, Shot shot, Page page, String question) {
        List<String> found = ((Collection<?>) page.evaluate("looks." + question)).stream().map(String::valueOf)
                .distinct().toList();
        if (!found.isEmpty()) {
            wrong.computeIfAbsent(check, c -> new TreeMap<>()).computeIfAbsent(shot.name(), s -> new ArrayList<>())
                    .addAll(found);
        }
    }

    private void assertNothing(Check check) {
        assertThat(looked).isGreaterThan(60);
        assertThat(wrong.getOrDefault(check, Map.of())).isEmpty();
    }

    @Test void every_word_is_set_in_a_face_of_ours_upright_and_no_bolder_than_it_is_cut() {
        assertNothing(Check.LETTERS);
        assertNothing(Check.FACES);
    }

    @Test void no_page_scrolls_sideways_in_a_window_of_320_pixels() {
        assertNothing(Check.NARROW);
    }

    @Test void at_twice_the_size_nothing_is_cut_and_no_page_scrolls_sideways() {
        assertNothing(Check.LARGE);
    }

    @Test void at_twice_the_size_nothing_in_a_header_or_on_a_tile_lies_over_anything_else() {
        assertNothing(Check.OVERLAID);
    }

    @Test void with_spaces_as_readers_may_set_them_no_word_is_cut() {
        assertNothing(Check.SPACED);
    }

    @Test void what_is_touched_is_as_large_as_a_finger_needs() {
        assertNothing(Check.TARGETS);
    }

    @Test void nothing_moves_for_those_who_ask_for_no_motion() {
        assertNothing(Check.MOTION);
    }
}
