package benchpace.web.screen;

import benchpace.board.view.ClassView;
import benchpace.plan.SeatNumber;
import benchpace.plan.Studio;
import benchpace.shelf.ClaimWord;
import benchpace.shelf.EntryId;
import benchpace.shelf.ShelfEntry;
import benchpace.shelf.ShelfPlace;
import benchpace.units.UnitChoice;
import benchpace.web.screen.data.BackupCard;
import benchpace.web.screen.data.DataPage;
import benchpace.web.screen.devices.DevicesPage;
import benchpace.web.screen.drawing.DrawingSheet;
import benchpace.web.screen.guest.GuestPage;
import benchpace.web.screen.instructor.GuessLine;
import benchpace.web.screen.plans.EditPage;
import benchpace.web.screen.shell.Message;
import benchpace.web.screen.shell.Role;
import benchpace.web.screen.shell.ScreenKind;
import benchpace.web.screen.shell.Shell;
import benchpace.web.screen.shell.Viewer;
import benchpace.web.screen.start.StartView;
import benchpace.web.screen.studio.StudioFields;
import benchpace.web.screen.studio.StudioPage;
import benchpace.web.screen.wall.WallSituations;
import benchpace.web.style.Samples;
import benchpace.words.BackupWords;
import benchpace.words.Times;
import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.ScreenshotCaret;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Lays every screen out in many situations and photographs it, to be looked at: pictures and pages land in
 * {@code target/gallery}. Run by hand ({@code mvn test-compile exec:java -Dexec.classpathScope=test
 * -Dmain.class=benchpace.web.screen.ScreenGallery}); {@code --only=expression} limits it to names that match,
 * {@code --unseen} leaves the pictures off; {@code --readme} draws those of the README, and nothing else.
 */
public final class ScreenGallery {
    private static final String HOST = OfflineScreens.HOST;
    private static final Path OUT = Path.of("target/gallery");

    /** What to do with a page before its picture is taken. */
    record Shot(String name, String html, int width, int height, String then) { }

    private final OfflineScreens offline = new OfflineScreens();
    private int violations;

    public static void main(String[] args) throws IOException {
        String only = ".*";
        for (String arg : args) {
            only = arg.startsWith("--only=") ? arg.substring("--only=".length()) : only;
        }
        ScreenGallery gallery = new ScreenGallery();
        if (List.of(args).contains("--readme")) {
            gallery.inABrowser(browser -> ReadmePictures.draw(browser, gallery));
        } else {
            gallery.run(only, !List.of(args).contains("--unseen"));
        }
    }

    /** What answers in the board's place. */
    OfflineScreens offline() {
        return offline;
    }

    private void run(String only, boolean pictures) throws IOException {
        Files.createDirectories(OUT);
        List<Shot> shots = shots().stream().filter(s -> s.name().matches(only)).toList();
        for (Shot shot : shots) {
            offline.page("/" + shot.name(), shot.html());
            Files.writeString(OUT.resolve(shot.name() + ".html"), shot.html());
        }
        if (!pictures) {
            return;
        }
        inABrowser(browser -> {
            for (ColorScheme scheme : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
                photograph(browser, shots, scheme);
            }
        });
        System.out.println(shots.size() + " screens, " + violations + " axe violations, in " + OUT);
    }

    private void inABrowser(Consumer<Browser> work) {
        try (Playwright playwright = Playwright.create(new Playwright.CreateOptions()
                .setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")))) {
            work.accept(playwright.chromium().launch(new BrowserType.LaunchOptions()
                    .setExecutablePath(Path.of("/usr/bin/chromium"))
                    .setArgs(List.of("--no-sandbox", "--disable-background-networking", "--no-first-run",
                            "--disable-component-update", "--disable-sync"))));
        }
    }

    /** Every screen, in each situation. */
    List<Shot> shots() {
        Screens screens = new Screens();
        List<Shot> shots = new java.util.ArrayList<>();
        Viewer lead = new Viewer(Role.INSTRUCTOR, "", Evening.TABLET);
        Viewer helper = new Viewer(Role.HELPER, "MO");
        Evenings.all().forEach((name, view) -> {
            String page = screens.page(ScreenKind.INSTRUCTOR, view, lead);
            shots.add(new Shot("tablet-" + name, page, 1280, 800, ""));
            shots.add(new Shot("pocket-" + name, page, 390, 844, ""));
            shots.add(new Shot("phone-" + name, screens.page(ScreenKind.HELPER, view, helper), 390, 844, ""));
            if (name.startsWith("cure") || name.startsWith("computed") || name.equals("pour")
                    || name.equals("try-it")) {
                shots.add(new Shot("wait-" + name, screens.page(ScreenKind.WAIT, view, lead), 1280, 800, ""));
                shots.add(new Shot("waitphone-" + name, screens.page(ScreenKind.WAIT, view, helper), 390, 844, ""));
            }
            shots.add(new Shot("wall-" + name, screens.page(ScreenKind.WALL, view, Viewer.GUEST), 1920, 1080, ""));
        });
        WallSituations.all().forEach((name, wall) -> {
            shots.add(new Shot("lying-" + name, wall, 1920, 1080, ""));
            shots.add(new Shot("onend-" + name, wall, 1080, 1920, ""));
        });
        shots.add(new Shot("drawings", DrawingSheet.page(), 1280, 2000, ""));
        ClassView wicks = Evenings.wicks().view(19.5);
        String page = screens.page(ScreenKind.INSTRUCTOR, wicks, lead);
        for (int seat : new int[] {1, 4, 8}) {
            shots.add(new Shot("sheet-" + seat, page, 1280, 800, "[data-open-seat='" + seat + "']"));
            offline.sheet("/classes/evening/seats/" + seat + "/sheet", screens.sheet(wicks, seat, lead));
        }
        ClassView cure = Evenings.all().get("cure");
        shots.add(new Shot("sheet-5-cure", screens.page(ScreenKind.INSTRUCTOR, cure, lead), 1280, 800,
                "[data-open-seat='5']"));
        offline.sheet("/classes/evening/seats/5/sheet", screens.sheet(cure, 5, lead));
        ClassView read = Evenings.read().computed(62);
        String computed = screens.page(ScreenKind.INSTRUCTOR, read, lead);
        offline.sheet("/classes/evening/seats/6/sheet", screens.sheet(read, 6, lead, Evenings.read().cutAway(6, 62)));
        offline.sheet("/classes/evening/seats/2/sheet", screens.sheet(read, 2, lead, Evenings.read().cutAway(2, 62)));
        shots.add(new Shot("sheet-6-computed", computed, 1280, 800, "[data-open-seat='6']"));
        shots.add(new Shot("sheet-2-computed-pocket", computed, 390, 844, "[data-open-seat='2']"));
        shots.add(new Shot("warmth", computed, 1280, 800, "#warmth-button"));
        shots.add(new Shot("ask-next", page, 1280, 800, "#next-button"));
        shots.add(new Shot("menu", page, 1280, 800, "#menu-button"));
        shots.add(new Shot("menu-pocket", page, 320, 700, "#menu-button"));
        shots.add(new Shot("menu-phone", screens.page(ScreenKind.HELPER, wicks, helper), 390, 844, "#menu-button"));
        shots.add(new Shot("ask-next-phone", page, 390, 844, "#next-button"));
        shots.add(new Shot("ask-next-24", screens.page(ScreenKind.INSTRUCTOR, Evenings.all().get("twenty-four"), lead),
                1280, 800, "#next-button"));
        Evenings.closing().forEach((name, view) -> shots.add(new Shot("closing-" + name,
                screens.page(ScreenKind.INSTRUCTOR, view, lead), 1280, 800, "#next-button")));
        shots.add(new Shot("me", screens.page(ScreenKind.HELPER, wicks, helper), 390, 844, "[data-open='me-dialog']"));
        String report = screens.report(Evenings.read().report(62), Optional.empty(), Evenings.read().live().plan(),
                lead, SampleGuests.known());
        shots.add(new Shot("report", report, 1280, 1500, ""));
        shots.add(new Shot("report-phone", report, 390, 1500, ""));
        shots.add(new Shot("report-forget", report, 1280, 800, "[data-open='forget-dialog']"));
        shots.add(new Shot("report-forget-phone", report, 390, 844, "[data-open='forget-dialog']"));
        Evening ended = Evenings.over();
        String over = screens.report(ended.report(111).with(leftBehind()), Optional.empty(), ended.live().plan(), lead,
                SampleGuests.forgotten());
        shots.add(new Shot("report-over", over, 1280, 3000, ""));
        shots.add(new Shot("report-top", over, 1280, 1000, ""));
        shots.add(new Shot("report-over-phone", over, 390, 4600, ""));
        shots.add(new Shot("report-contents-phone", over.replaceFirst("<details class=\"fold\">",
                "<details class=\"fold\" open>"), 390, 1000, ""));
        String learned = screens.learned(LearnedScreens.full());
        shots.add(new Shot("learned", learned, 1280, 1500, ""));
        shots.add(new Shot("learned-phone", learned, 390, 2600, ""));
        shots.add(new Shot("learned-nothing", screens.learned(LearnedScreens.nothing()), 390, 844, ""));
        shots.add(new Shot("problem", screens.problem(LearnedScreens.problem()), 1280, 1100, ""));
        shots.add(new Shot("problem-phone", screens.problem(LearnedScreens.problem()), 390, 1700, ""));
        offline.sheet("/classes/evening/report/what-if", screens.whatIf(ended.whatIf(111), Map.of()));
        shots.add(new Shot("what-if", over, 1280, 3700, ""));
        shots.add(new Shot("what-if-phone", over, 390, 5600, ""));
        PlaybackScreens.all(screens).forEach(p -> shots.add(new Shot("played-" + p.name(), p.html(), p.width(),
                p.height(), p.then())));
        ClassView asks = Evenings.asks().view(14);
        shots.add(new Shot("guest-asked", screens.guest(GuestPage.of(asks, 4, "code")), 390, 844, ""));
        shots.add(new Shot("guest-told", screens.guest(GuestPage.of(Evenings.asks().view(16), 5, "code")), 390, 844,
                ""));
        shots.add(new Shot("guest-off", screens.guest(GuestPage.of(wicks, 5, "code")), 390, 844, ""));
        shots.add(new Shot("guest-setting", screens.guest(GuestPage.of(setting(), 4, "code")), 390, 844, ""));
        PhoneScreens.all().forEach(p -> shots.add(new Shot(p.name(), p.html(), p.width(), p.height(), "")));
        PrepSituations.all().forEach((name, given) -> {
            shots.add(new Shot("prep-" + name, screens.prep(given), 1280, 800, ""));
            shots.add(new Shot("prepphone-" + name, screens.prep(given), 390, 844, ""));
        });
        shots.add(new Shot("start-guest", screens.start(start(Optional.empty())), 390, 844, ""));
        shots.add(new Shot("start-pocket", screens.start(start(Optional.of(Role.INSTRUCTOR))), 390, 844, ""));
        shots.add(new Shot("sign-out", screens.start(start(Optional.of(Role.INSTRUCTOR))), 1280, 900, "#sign-out"));
        for (Role role : List.of(Role.INSTRUCTOR, Role.HELPER)) {
            String first = screens.start(newcomer(role));
            shots.add(new Shot("start-first-" + role.token(), first, 1280, 800, ""));
            shots.add(new Shot("start-first-pocket-" + role.token(), first, 390, 844, ""));
        }
        shots.add(new Shot("start-instructor", screens.start(start(Optional.of(Role.INSTRUCTOR))), 1280, 900, ""));
        String devices = screens.devices(devices(false));
        shots.add(new Shot("devices", devices, 1280, 900, ""));
        shots.add(new Shot("devices-phone", devices, 390, 844, ""));
        shots.add(new Shot("devices-alone", screens.devices(devices(true)), 1280, 900, ""));
        shots.add(new Shot("devices-ask", devices, 1280, 900, "[data-act=all]"));
        shots.add(new Shot("data", screens.data(data()), 1280, 900, ""));
        String forgetting = screens.data(new DataPage("/home/loft/benchpace/data", "48.1 MB", data().backup(),
                SampleGuests.on(), SampleGuests.unreadable()));
        shots.add(new Shot("data-forgetting", forgetting, 1280, 1300, ""));
        shots.add(new Shot("data-forgetting-phone", forgetting, 390, 2700, ""));
        shots.add(new Shot("data-phone", screens.data(data()), 390, 844, ""));
        HistoryScreens.all(lead).forEach((name, given) -> {
            shots.add(new Shot("history-" + name, screens.history(given), 1280, 1300, ""));
            shots.add(new Shot("history-" + name + "-phone", screens.history(given), 390, 1600, ""));
        });
        shots.add(new Shot("cure", screens.cure(CureScreens.tried(lead)), 1280, 2600, ""));
        shots.add(new Shot("cure-phone", screens.cure(CureScreens.tried(lead)), 390, 4600, ""));
        Screens loft = new Screens(() -> new Studio("The Tallow Loft", "Quay Lane, Marrowby", Optional.empty()));
        shots.add(new Shot("shelf", screens.shelf(ShelfScreens.busy(), "", lead, Evening.ZONE), 1280, 1300, ""));
        shots.add(new Shot("shelf-phone", screens.shelf(ShelfScreens.busy(), "", lead, Evening.ZONE), 390, 1600, ""));
        shots.add(new Shot("shelf-none", screens.shelf(ShelfScreens.none(), "", lead, Evening.ZONE), 1280, 800, ""));
        shots.add(new Shot("tags", loft.tags(ShelfScreens.tags(), "1,2", false, lead), 1280, 1300, ""));
        shots.add(new Shot("tags-single", loft.tags(ShelfScreens.tags(), "1,2", true, lead), 1280, 1300, ""));
        shots.add(new Shot("tags-no-studio", screens.tags(ShelfScreens.tags(), "1,2", false, lead), 1280, 1300, ""));
        String plans = screens.plans(PlanScreens.list(lead));
        shots.add(new Shot("plans", plans, 1280, 1100, ""));
        shots.add(new Shot("plans-phone", plans, 390, 1300, ""));
        shots.add(new Shot("plans-none", screens.plans(PlanScreens.none(lead)), 1280, 800, ""));
        shots.add(new Shot("plans-helper", screens.plans(PlanScreens.list(helper)), 390, 844, ""));
        shots.add(new Shot("plans-import", plans, 390, 844, "[data-open=import-dialog]"));
        shots.add(new Shot("plans-new", plans, 390, 844, "[data-open=new-dialog]"));
        String edited = EditPlanScreens.page(screens, EditPage.Standing.OWN, UnitChoice.METRIC);
        shots.add(new Shot("plan-edit", edited, 1280, 1100, ""));
        shots.add(new Shot("plan-edit-phone", edited, 390, 1300, ""));
        shots.add(new Shot("plan-edit-candle", EditPlanScreens.atTheCandles(EditPlanScreens.page(screens,
                EditPage.Standing.OWN, UnitChoice.NORTH_AMERICAN)), 1280, 1500, ""));
        shots.add(new Shot("plan-edit-starter", EditPlanScreens.page(screens, EditPage.Standing.STARTER,
                UnitChoice.METRIC), 1280, 800, ""));
        shots.add(new Shot("plans-versions", screens.versions(PlanScreens.versions(lead)), 1280, 800, ""));
        shots.add(new Shot("plans-version", screens.version(PlanScreens.version(lead)), 1280, 1100, ""));
        shots.add(new Shot("plans-version-phone", screens.version(PlanScreens.version(lead)), 390, 844, ""));
        String guessed = page.replace("sse-swap=\"guesses\">", "sse-swap=\"guesses\">"
                + screens.guesses(GuessLine.of(34, 3, Optional.of(Evening.at(60)), new Times(Evening.ZONE))));
        shots.add(new Shot("guessed", guessed, 1280, 800, ""));
        shots.add(new Shot("guessed-pocket", guessed, 390, 844, ""));
        shots.add(new Shot("style", screens.style(new Samples(Evening.ZONE).given(Optional.empty()), lead), 1280, 12000,
                ""));
        Studio studio = new Studio("Wachs- und Dochtwerkstätte am Alten Speicher, Schönfärberhof",
                "Speicherzeile 3, Marrowby", Optional.of("#c98a00"));
        StudioPage said = new StudioPage(new Shell("Studio", "studio", List.of(), "", "", "UTC",
                Role.INSTRUCTOR.token(), ""), new StudioFields(studio));
        shots.add(new Shot("studio", screens.studio(said), 1280, 800, ""));
        shots.add(new Shot("studio-phone", screens.studio(said), 390, 1900, ""));
        shots.add(new Shot("studio-unsaid", screens.studio(new StudioPage(said.shell(),
                new StudioFields(Studio.NONE))), 1280, 800, ""));
        shots.add(new Shot("message", screens.message(new Message("There is no such class",
                "It may have been closed and put away.", "/", "All classes")), 390, 600, ""));
        return shots;
    }

    private static ClassView setting() {
        return Evenings.computed().event(50, new benchpace.live.ClassEvent.GuestsMayTell(true)).computed(62);
    }

    static StartView start(Optional<Role> role) {
        boolean[][] code = new boolean[29][29];
        for (int y = 0; y < 29; y++) {
            for (int x = 0; x < 29; x++) {
                code[y][x] = (x * 7 + y * 13 + x * y) % 3 == 0;
            }
        }
        ZoneId zone = Evening.ZONE;
        return new StartView(role, "", List.of(
                new StartView.ClassRow("evening", "Evening pour", "The Tallow Loft, Quay Lane, Marrowby", Evening.START,
                        Evening.at(20), zone, "running"),
                new StartView.ClassRow("late", "Late table", "", Evening.at(90), Evening.at(20), zone, "not begun"),
                new StartView.ClassRow("next", "Table of six", "", Evening.at(4000), Evening.at(20), zone, "not begun"),
                new StartView.ClassRow("old", "Table of six", "", Evening.at(-3000), Evening.at(20), zone, "closed")),
                List.of(new StartView.PlanChoice("evening-pour", "Evening pour", 8),
                        new StartView.PlanChoice("big-table", "Big table", 24)),
                new StartView.Link("http://192.168.1.20:7070/", code), Optional.of("http://benchpace.local:7070/"),
                role.map(r -> new StartView.Joining(new StartView.Link(
                        "http://192.168.1.20:7070/helper#helper=0123456789abcdef", code), "246801")),
                role.isEmpty() ? "Pair this device first, then the page opens." : "",
                role.filter(Role.INSTRUCTOR::equals).map(r -> GuessLine.of(34, 3, Optional.of(Evening.at(60)),
                        new Times(zone)).words()).orElse(""));
    }

    /** Of a board on which there is only what it set up by itself. */
    static StartView newcomer(Role role) {
        return start(Optional.of(role)).forNewcomer(List.of(new StartView.ClassRow("demo", "Demo: evening class",
                "The Tallow Loft, Quay Lane, Marrowby", Evening.START, Evening.at(2), Evening.ZONE, "not begun")));
    }

    static DataPage data() {
        return new DataPage("/home/loft/benchpace/data", "3.2 MB", new BackupCard(
                BackupWords.last(Optional.of(Evening.at(-30_000)), Evening.at(60), new Times(Evening.ZONE)),
                BackupWords.due(Optional.of(Evening.at(-30_000)), Evening.at(60), true),
                BackupWords.ready(12, 3411, 2, 0), false, Optional.of(new BackupCard.Fetched(
                        "benchpace-2027-03-04-1930.backup", "/data/backup/benchpace-2027-03-04-1930.backup", "3.2 MB")),
                "/home/loft/benchpace/data"),
                SampleGuests.off(), SampleGuests.allReadable());
    }

    static DevicesPage devices(boolean alone) {
        StartView.Joining helpers = start(Optional.of(Role.INSTRUCTOR)).helpers().orElseThrow();
        DevicesPage.Row own = new DevicesPage.Row("0a", Role.INSTRUCTOR, "", "Counter tablet", "Today, 18:42",
                "Today, 19:20", true, true);
        return new DevicesPage(alone ? List.of(own) : List.of(
                new DevicesPage.Row("0c", Role.HELPER, "MO", "", "Today, 18:55", "Today, 19:19", true, false), own,
                new DevicesPage.Row("0b", Role.WALL, "", "", "Today, 18:40", "Today, 19:20", true, false),
                new DevicesPage.Row("0d", Role.HELPER, "JBD", "", "Tuesday 2 March, 17:02", "Tuesday 2 March, 21:15",
                        false, false)), helpers, helpers, !alone);
    }

    private void photograph(Browser browser, List<Shot> shots, ColorScheme scheme) {
        Page page = browser.newContext(new Browser.NewContextOptions().setColorScheme(scheme)).newPage();
        page.onConsoleMessage(message -> {
            if (message.type().equals("error") && !message.text().equals("[object Event]")) { // the stream, when left
                System.out.println(page.url() + ": " + message.text());
            }
        });
        page.onPageError(error -> System.out.println(page.url() + ": " + error));
        page.route("**/*", offline::answer);
        for (Shot shot : shots) {
            String name = shot.name() + (scheme == ColorScheme.DARK ? "-dark" : "");
            page.setViewportSize(shot.width(), shot.height());
            page.navigate(HOST + "/" + shot.name());
            if (!shot.then().isEmpty()) {
                page.click(shot.then());
                page.waitForSelector("dialog[open] button");
            }
            page.screenshot(new Page.ScreenshotOptions().setPath(OUT.resolve(name + ".png"))
                    .setCaret(ScreenshotCaret.INITIAL)); // hiding it is an inline style, which pages refuse
            measure(page, name);
        }
    }

    private void measure(Page page, String name) {
        Object wide = page.evaluate("document.documentElement.scrollWidth > innerWidth + 1");
        Object high = page.evaluate("document.documentElement.scrollHeight > innerHeight + 1 "
                + "|| [...document.querySelectorAll('.room, .lead')].some(e => e.scrollHeight > e.clientHeight + 1)"
                + "|| [...document.querySelectorAll('.wall > *')].some(e => e.scrollHeight > e.clientHeight + 2)");
        boolean mustFit = name.startsWith("tablet") || name.startsWith("wall");
        if (Boolean.TRUE.equals(wide) || mustFit && Boolean.TRUE.equals(high)) {
            System.out.println(name + ": does not fit" + (Boolean.TRUE.equals(wide) ? " (wide)" : ""));
        }
        new AxeBuilder(page).analyze().getViolations().forEach(v -> {
            violations++;
            System.out.println(name + ": " + v.getId() + " " + v.getHelp() + " "
                    + v.getNodes().stream().limit(4).map(n -> n.getTarget() + " " + n.getAny().stream()
                            .map(c -> c.getMessage()).toList()).toList());
        });
    }

    /** Two candles of the evening that is over: one was fetched, one is still there. */
    private static List<ShelfEntry> leftBehind() {
        Instant put = Evening.START.plus(Duration.ofMinutes(109));
        Instant ready = Evening.START.plus(Duration.ofMinutes(125));
        Instant until = put.plus(Duration.ofDays(7));
        return List.of(new ShelfEntry(new EntryId(1), "evening", new SeatNumber(8), new ShelfPlace("Window", 3), ready,
                        until, new ClaimWord("amber", 47), "", put, ShelfEntry.NOT_YET),
                new ShelfEntry(new EntryId(2), "evening", new SeatNumber(7), new ShelfPlace("Window", 4), put, until,
                        new ClaimWord("cedar", 12), "Finn", put, put.plus(Duration.ofMinutes(1))));
    }
}
