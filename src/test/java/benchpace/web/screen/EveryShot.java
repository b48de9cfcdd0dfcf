package benchpace.web.screen;

import benchpace.web.screen.ScreenGallery.Shot;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import java.util.List;

/** Every screen that the gallery shows, made once for all tests of a process, and a browser's way to them. */
final class EveryShot {
    private static final ScreenGallery GALLERY = new ScreenGallery();
    private static final List<Shot> ALL = GALLERY.shots();

    static {
        ALL.forEach(shot -> GALLERY.offline().page("/" + shot.name(), shot.html()));
    }

    private EveryShot() { }

    static List<Shot> all() {
        return List.copyOf(ALL);
    }

    /** A tab in which each of them is at its name. */
    static Page tab(BrowserContext context) {
        Page page = context.newPage();
        page.route("**/*", GALLERY.offline()::answer);
        return page;
    }

    /** Shows one, in its faces. */
    static void show(Page page, String name) {
        page.navigate(OfflineScreens.HOST + "/" + name);
        page.evaluate("document.fonts.ready.then(() => 0)");
    }
}
