package benchpace.web.screen.wall;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.web.Browsers;
import benchpace.web.screen.OfflineScreens;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ReducedMotion;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** What fades out on the wall goes, whatever happens to its motion, and decides nothing meanwhile. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
@ExtendWith(Browsers.class)
class WallChangesTest {
    private static final String NEXT_STEP = """
            () => { const main = document.getElementById('wall-main');
              main.innerHTML = main.innerHTML.replace(/(told__heading"><bdi>)[^<]*/, '$1Another step'); }""";

    private Page page;

    @BeforeEach void open(Browser browser) {
        OfflineScreens offline = new OfflineScreens();
        offline.page("/wall", WallSituations.page(WallSituations.views().get("wicks"), WallSituations.STUDIO));
        offline.page("/ribbons", "<!doctype html><body data-zone=\"UTC\">" + ribbon(200) + ribbon(400) + "</body>");
        page = browser.newContext(new Browser.NewContextOptions().setViewportSize(1920, 1080)
                .setReducedMotion(ReducedMotion.NO_PREFERENCE)).newPage();
        page.route("**/*", offline::answer);
        page.navigate(OfflineScreens.HOST + "/wall");
    }

    @AfterEach void close() {
        page.context().close();
    }

    private static String ribbon(int band) {
        return """
                <svg viewBox="0 0 960 132" data-ribbon-from="2027-03-04T18:00:00Z"
                data-ribbon-until="2027-03-04T20:00:00Z">
                <rect data-ribbon-passed height="60"/><rect data-ribbon-band x="%d" width="90" height="60"/>
                <g data-ribbon-now></g></svg>""".formatted(band);
    }

    private Object fading() {
        return page.evaluate("document.querySelectorAll('.told--goes').length");
    }

    @Test void a_step_whose_fading_is_cancelled_is_gone_at_once() {
        Object gone = page.evaluate("""
                async () => { (%s)();
                  await Promise.resolve();
                  const goes = document.querySelector('.told--goes');
                  goes.dispatchEvent(new AnimationEvent('animationcancel'));
                  return !goes.isConnected; }""".formatted(NEXT_STEP));

        assertThat(gone).isEqualTo(true);
    }

    @Test void a_step_that_never_fades_is_gone_after_a_while() {
        page.evaluate("""
                () => { const sheet = new CSSStyleSheet();
                  sheet.replaceSync('.told--goes { animation: none !important; }');
                  document.adoptedStyleSheets = [sheet]; }""");
        page.evaluate(NEXT_STEP);
        assertThat(fading()).isEqualTo(1);

        page.waitForFunction("() => !document.querySelector('.told--goes')");
    }

    @Test void of_several_ribbons_none_moves_until_one_is_drawn_anew_elsewhere() {
        page.navigate(OfflineScreens.HOST + "/ribbons");
        assertThat(page.evaluate("""
                async () => { const clock = await import('/static/js/clock.js');
                  (await import('/static/js/wall-ribbon.js')).start();
                  clock.tick();
                  clock.tick();
                  return document.getAnimations().length; }""")).isEqualTo(0);
        assertThat((Integer) page.evaluate("""
                async html => { const clock = await import('/static/js/clock.js');
                  document.querySelectorAll('svg')[1].outerHTML = html;
                  clock.tick();
                  return document.querySelectorAll('svg')[1].getAnimations({ subtree: true }).length; }""",
                ribbon(500)))
                .isPositive();
    }

    @Test void what_fades_out_does_not_hide_the_name_of_the_studio_or_a_step_on_the_rail() {
        page.evaluate("""
                () => { document.querySelector('.wall__studio').classList
                    .add('wall__studio--class', 'wall__studio--long');
                  document.querySelector('.rail__present').parentElement.classList.add('rail--wraps');
                  document.querySelector('.told').classList.add('told--names', 'told--bare'); }""");
        assertThat(page.locator(".wall__studio").isVisible()).isFalse();
        page.evaluate("""
                () => { const main = document.getElementById('wall-main');
                  main.innerHTML = main.innerHTML.replace(/ told--(names|bare)/g, '')
                    .replace(/(told__heading"><bdi>)[^<]*/, '$1Another step'); }""");

        assertThat(fading()).isEqualTo(1);
        assertThat(page.locator(".wall__studio").isVisible()).isTrue();
        assertThat(page.locator(".rail__present").isVisible()).isTrue();
    }
}
