package benchpace.web.plans;

import benchpace.board.Boards;
import benchpace.board.ClassBoard;
import benchpace.board.PlanUse;
import benchpace.board.plans.BookPlan;
import benchpace.board.plans.PlanBook;
import benchpace.board.plans.PlanRefusal;
import benchpace.live.LiveClass;
import benchpace.plan.Picture;
import benchpace.plan.Plan;
import benchpace.store.SavedPlans;
import benchpace.web.pairing.Access;
import benchpace.web.request.Problem;
import benchpace.web.request.Reads;
import benchpace.web.request.Refused;
import benchpace.web.screen.Screens;
import benchpace.web.screen.drawing.Drawing;
import benchpace.web.screen.plans.PlanRow;
import benchpace.web.screen.plans.PlansPage;
import benchpace.web.screen.plans.VersionPage;
import benchpace.web.screen.plans.VersionsPage;
import benchpace.web.screen.shell.Viewer;
import benchpace.words.PlanWords;
import benchpace.words.Times;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** The page that lists the plans, and those of a plan's versions. Helpers look; the instructor changes. */
public final class PlansPages {
    private final PlanBook book;
    private final Boards boards;
    private final Access access;
    private final Screens screens;
    private final InstantSource clock;
    private final Times times;

    public PlansPages(PlanBook book, Boards boards, Access access, Screens screens, InstantSource clock, ZoneId zone) {
        this.book = book;
        this.boards = boards;
        this.access = access;
        this.screens = screens;
        this.clock = clock;
        this.times = new Times(zone);
    }

    public void routes(RoutesConfig routes) {
        Reads.route(routes, "/plans", this::list);
        Reads.route(routes, "/plans/{id}/versions", this::versions);
        Reads.route(routes, "/plans/{id}/versions/{number}", this::version);
    }

    private static void html(Context ctx, String page) {
        ctx.contentType("text/html; charset=utf-8").result(page);
    }

    private void list(Context ctx) {
        Viewer viewer = access.paired(ctx);
        List<LiveClass> classes = classes();
        Instant now = clock.instant();
        html(ctx, screens.plans(new PlansPage(viewer,
                rows(plan -> !plan.starter(), viewer, classes, now), rows(BookPlan::starter, viewer, classes, now),
                book.deleted().stream().map(plan -> row(plan, viewer, classes, now)).toList(),
                book.troubles().stream().map(PlanWords::of).toList(),
                List.copyOf(NewPlans.candles(book).keySet()))));
    }

    private List<LiveClass> classes() {
        return boards.all().stream().map(ClassBoard::live).toList();
    }

    private List<PlanRow> rows(Predicate<BookPlan> which, Viewer viewer, List<LiveClass> classes, Instant now) {
        return book.all().stream().filter(which).map(plan -> row(plan, viewer, classes, now)).toList();
    }

    private PlanRow row(BookPlan listed, Viewer viewer, List<LiveClass> classes, Instant now) {
        Plan plan = listed.plan();
        PlanUse use = PlanUse.of(listed.id(), classes, now);
        return new PlanRow(listed.id(), plan.name(), '"' + PlanJson.tag(listed) + '"', plan.about(),
                PlanWords.what(plan), PlanWords.used(use.lastRan(), use.next(), times, now),
                listed.saved().map(version -> saved(version, viewer, now)).orElse(""),
                Drawing.of(Picture.SETTING, plan));
    }

    private String saved(SavedPlans.Version version, Viewer viewer, Instant now) {
        return PlanWords.saved(version.number(), version.at(), where(version.by(), viewer), times, now);
    }

    private String where(SavedPlans.By by, Viewer viewer) {
        if (by.equals(SavedPlans.By.FOLDER)) {
            return "from the data folder";
        }
        String name = access.nameOf(by.device());
        return by.device().equals(viewer.device()) ? "on this device" : name.isEmpty() ? "" : "on " + name;
    }

    private BookPlan asked(Context ctx) {
        String id = ctx.pathParam("id");
        return book.find(id).filter(plan -> !plan.starter()).orElseThrow(() -> refused(book.missing(id)));
    }

    private Refused refused(PlanRefusal why) {
        return new Refused(Problem.of(PlanWords.of(why, times, clock.instant())));
    }

    private void versions(Context ctx) {
        Viewer viewer = access.paired(ctx);
        BookPlan plan = asked(ctx);
        Instant now = clock.instant();
        List<LiveClass> ran = classes().stream().filter(LiveClass::begun).toList();
        List<VersionsPage.Row> rows = book.versions(plan.id()).stream().map(version -> new VersionsPage.Row(
                version.number(), saved(version, viewer, now), version.plan().map(Plan::name).orElse(""),
                PlanWords.ran(ran.stream().filter(live -> version.plan().equals(Optional.of(live.plan())))
                        .map(LiveClass::startsAt).toList(), times),
                version.plan().isPresent(), version.number() == plan.version())).toList();
        html(ctx, screens.versions(new VersionsPage(viewer, plan.id(), plan.plan().name(), tag(plan), rows)));
    }

    private static String tag(BookPlan plan) {
        return '"' + PlanJson.tag(plan) + '"';
    }

    private void version(Context ctx) {
        Viewer viewer = access.paired(ctx);
        BookPlan now = asked(ctx);
        int number = AskedVersion.number(ctx);
        SavedPlans.Version version = book.versions(now.id()).stream()
                .filter(v -> v.number() == number && v.plan().isPresent()).findFirst()
                .orElseThrow(() -> refused(new PlanRefusal.NoSuchVersion(now.plan(), number)));
        html(ctx, screens.version(VersionPage.of(viewer, version.plan().orElseThrow(), now.plan(), number, tag(now),
                saved(version, viewer, clock.instant()), number == now.version())));
    }
}
