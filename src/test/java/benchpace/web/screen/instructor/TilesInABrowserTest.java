package benchpace.web.screen.instructor;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.view.ClassView;
import benchpace.web.Browsers;
import benchpace.web.screen.Evening;
import benchpace.web.screen.Evenings;
import benchpace.web.screen.OfflineScreens;
import benchpace.web.screen.Screens;
import benchpace.web.screen.shell.Role;
import benchpace.web.screen.shell.ScreenKind;
import benchpace.web.screen.shell.Viewer;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** What the instructor's tablet shows of a table can be read: no words on each other, none cut off by an edge. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
@ExtendWith(Browsers.class)
class TilesInABrowserTest {
    /**
     * The lines of text in each part that is named, as boxes. A line that was wrapped wholly out of sight is left out;
     * one that an edge cuts through, or that meets another, is told.
     */
    private static final String FAULTS = """
            selector => [...document.querySelectorAll(selector)].flatMap(part => {
              const frame = part.getBoundingClientRect();
              const boxes = [];
              const faults = [];
              const tell = (what, text) => faults.push(part.closest('[data-place]')?.dataset.place + ': ' + text
                      + what);
              const texts = document.createTreeWalker(part, NodeFilter.SHOW_TEXT);
              while (texts.nextNode()) {
                const element = texts.currentNode.parentElement;
                const text = texts.currentNode.textContent.trim();
                if (!text || element.closest('.unseen')) continue;
                const range = document.createRange();
                range.selectNodeContents(texts.currentNode);
                for (const line of range.getClientRects()) {
                  // the box of a font is higher than its letters
                  const box = { top: line.top + 2, bottom: line.bottom - 2, left: line.left, right: line.right, text,
                    node: texts.currentNode };
                  const style = getComputedStyle(element);
                  if (/^[0-9:\\u2013]+$/.test(text) && style.fontFamily.includes('Young Serif')) {
                    // figures reach from the baseline to 0.76 em, in a box from 0.37 em below it to 1.05 em above
                    box.top = line.top + .28 * parseFloat(style.fontSize);
                    box.bottom = line.bottom - .35 * parseFloat(style.fontSize);
                  }
                  const shut = element.closest('.face__foot')?.getBoundingClientRect() ?? frame;
                  if (box.top >= shut.bottom || box.right - box.left < 1) continue;
                  if (style.textOverflow === 'ellipsis') {
                    box.right = Math.min(box.right, element.getBoundingClientRect().right);
                  }
                  const clamp = element.closest('.face__line')?.getBoundingClientRect();
                  if (clamp && box.top >= clamp.bottom - 3) continue;
                  boxes.push(box);
                  if (box.bottom > shut.bottom + 1) tell(' is cut', text);
                  if (box.top < frame.top || box.bottom > frame.bottom || box.left < frame.left + 3
                      || box.right > frame.right - 3) tell(' leaves the tile', text);
                }
              }
              for (const seal of part.querySelectorAll('.face__word .mark')) {
                const box = seal.getBoundingClientRect();
                if (box.bottom > frame.bottom - 2 || box.right > frame.right - 2) tell(' is cut', 'the mark');
                boxes.push({ top: box.top, bottom: box.bottom, left: box.left, right: box.right, text: 'the mark',
                  node: seal });
              }
              for (const more of part.closest('[data-place]').querySelectorAll('.place__more svg')) {
                const box = more.getBoundingClientRect();
                boxes.push({ top: box.top + 4, bottom: box.bottom - 4, left: box.left, right: box.right, text: 'more',
                  node: more });
              }
              boxes.forEach((a, i) => boxes.slice(i + 1).forEach(b => {
                if (a.node !== b.node && a.left < b.right - 1 && b.left < a.right - 1
                    && a.top < b.bottom && b.top < a.bottom) {
                  tell(' meets ' + b.text, a.text);
                }
              }));
              return faults;
            })""";
    private static final String CUT_TAGS = """
            () => [...document.querySelectorAll('.lines__tag')].filter(tag => tag.getBoundingClientRect().right
              > tag.closest('.lines__room').getBoundingClientRect().right).map(tag => tag.textContent)""";
    /** The same tiles with the longest words they may get: slipping, at leisure, hours to go. */
    private static final String LONGER = """
            () => {
              const say = (mark, word, other) => document.querySelectorAll('.face--' + mark).forEach(face => {
                face.classList.replace('face--' + mark, 'face--' + other);
                face.querySelector('.face__word').lastChild.textContent = word;
              });
              say('behind', 'slipping', 'slipping');
              say('setting', 'at leisure', 'at-leisure');
              document.querySelectorAll('.face [data-count-to]').forEach(e => { e.textContent = '1 h 12 min left'; });
            }""";

    private static Page tablet(Browser browser, String name, ClassView view) {
        OfflineScreens offline = new OfflineScreens();
        offline.page("/" + name, new Screens().page(ScreenKind.INSTRUCTOR, view,
                new Viewer(Role.INSTRUCTOR, "", Evening.TABLET)));
        Page page = browser.newContext(new Browser.NewContextOptions().setViewportSize(1280, 800)).newPage();
        page.route("**/*", offline::answer);
        page.navigate(OfflineScreens.HOST + "/" + name);
        page.waitForFunction("document.querySelector('[data-clock]').textContent !== ''");
        return page;
    }

    @Test void no_words_of_a_tile_meet_others_or_leave_it_from_8_to_40_seats(Browser browser) {
        Map<String, Object> faults = new TreeMap<>();
        Evenings.crowds().forEach((name, view) -> {
            Page page = tablet(browser, name, view);
            faults.put(name, page.evaluate(FAULTS, ".face"));
            page.evaluate(LONGER);
            faults.put(name + " with longer words", page.evaluate(FAULTS, ".face"));
            page.context().close();
        });
        faults.values().removeIf(List.of()::equals);
        assertThat(faults).isEmpty();
    }

    @Test void the_numbers_of_flagged_lines_are_not_cut_off(Browser browser) {
        for (String name : List.of("flagged-16", "flagged-24", "flagged-40")) {
            Page page = tablet(browser, name, Evenings.crowds().get(name));
            assertThat((List<?>) page.evaluate(CUT_TAGS)).as(name).isEmpty();
            page.context().close();
        }
    }

    @Test void every_seat_named_below_the_cards_is_a_button_for_a_finger(Browser browser) {
        Page page = tablet(browser, "flagged-24", Evenings.crowds().get("flagged-24"));

        assertThat(page.locator(".help__more button").count()).isEqualTo(2);
        page.locator(".help__more button").all().forEach(button -> {
            assertThat(button.boundingBox().height).isGreaterThanOrEqualTo(44);
            assertThat(button.getAttribute("data-open-seat")).isNotEmpty();
        });
        page.context().close();
    }
}
