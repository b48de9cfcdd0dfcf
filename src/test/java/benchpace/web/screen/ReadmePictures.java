package benchpace.web.screen;

import benchpace.web.screen.ScreenGallery.Shot;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.ScreenshotCaret;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The pictures of the README: situations of the gallery by day, no wider than a page of text. */
final class ReadmePictures {
    static final Path OUT = Path.of("src/docs/screens");
    /** A television's picture in a page is half as wide, a tablet's three quarters, a phone's whole. */
    private static final int WIDEST = 960;

    private ReadmePictures() { }

    /** Name of the picture to that of the situation. */
    static Map<String, String> all() {
        Map<String, String> all = new LinkedHashMap<>();
        all.put("wall", "wall-six");
        all.put("wall-setting", "wall-computed-read");
        all.put("instructor", "tablet-flagged-8");
        all.put("helper", "phone-flagged-8");
        all.put("wait", "wait-computed");
        all.put("prep", "prep-class");
        all.put("report", "report-top");
        all.put("start", "start-instructor");
        return all;
    }

    static void draw(Browser browser, ScreenGallery gallery) {
        List<Shot> shots = gallery.shots();
        all().forEach((picture, name) -> draw(browser, gallery.offline(), shots.stream()
                .filter(shot -> shot.name().equals(name)).findFirst().orElseThrow(), OUT.resolve(picture + ".png")));
    }

    private static void draw(Browser browser, OfflineScreens offline, Shot shot, Path file) {
        offline.page("/" + shot.name(), shot.html());
        double scale = Math.min(1, WIDEST / (double) shot.width());
        try (BrowserContext context = browser.newContext(new Browser.NewContextOptions()
                .setColorScheme(ColorScheme.LIGHT).setViewportSize(shot.width(), shot.height())
                .setDeviceScaleFactor(scale))) {
            Page page = context.newPage();
            page.route("**/*", offline::answer);
            page.navigate(OfflineScreens.HOST + "/" + shot.name());
            page.evaluate("document.fonts.ready.then(() => 0)");
            page.screenshot(new Page.ScreenshotOptions().setPath(file).setCaret(ScreenshotCaret.INITIAL));
        }
    }
}
