package benchpace.web.report;

import benchpace.board.Boards;
import benchpace.board.ClassBoard;
import benchpace.board.Forgetting;
import benchpace.board.ShelfBoard;
import benchpace.board.pacing.StepLessons;
import benchpace.files.Json;
import benchpace.live.LiveClass;
import benchpace.web.classes.Pages;
import benchpace.web.pairing.Access;
import benchpace.web.request.AskedClass;
import benchpace.web.request.Bodies;
import benchpace.web.request.Problem;
import benchpace.web.request.Reads;
import benchpace.web.request.Refused;
import benchpace.web.screen.Screens;
import benchpace.web.screen.report.GuestsPart;
import benchpace.web.screen.shell.Viewer;
import benchpace.words.Times;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/**
 * The page on which a class is looked back on, and the answer to what past classes taught about its steps. For the
 * instructor: it says who was slow.
 */
public final class ReportPages {
    private final Boards boards;
    private final ShelfBoard shelf;
    private final Forgetting forgetting;
    private final Access access;
    private final Screens screens;
    private final ZoneId zone;

    public ReportPages(Boards boards, ShelfBoard shelf, Forgetting forgetting, Access access, Screens screens,
                       ZoneId zone) {
        this.boards = boards;
        this.shelf = shelf;
        this.forgetting = forgetting;
        this.zone = zone;
        this.access = access;
        this.screens = screens;
    }

    public void routes(RoutesConfig routes) {
        Reads.route(routes, "/classes/{id}/report", this::page);
        boards.stepLessons().ifPresent(lessons -> {
            routes.post("/api/classes/{id}/step-lesson", ctx -> accept(ctx, lessons));
            routes.delete("/api/classes/{id}/step-lesson", ctx -> forget(ctx, lessons));
        });
    }

    private void page(Context ctx) {
        Viewer viewer = access.paired(ctx);
        if (!viewer.instructor()) {
            throw new Refused(Problem.forbidden("The look back on a class is the instructor's; it needs the "
                    + "instructor's PIN or link."));
        }
        ClassBoard board = AskedClass.of(ctx, boards);
        LiveClass live = board.live();
        Optional<StepLessons.Lesson> lesson = boards.stepLessons().flatMap(l -> board.lesson(l, classes()));
        Pages.html(ctx, screens.report(board.report().with(shelf.shelf().entries()), lesson, live.plan(), viewer,
                GuestsPart.of(board, forgetting, new Times(zone))));
    }

    private List<LiveClass> classes() {
        return boards.all().stream().map(ClassBoard::live).toList();
    }

    /** POST: what closed classes of this class's plan and place taught is in force from the next class on. */
    private void accept(Context ctx, StepLessons lessons) {
        access.instructor(ctx);
        LiveClass live = AskedClass.of(ctx, boards).live();
        if (!lessons.accept(live.plan().id().value(), live.plan().place(), classes())) {
            throw new Refused(Problem.notFound("No class of this plan has been closed here, so none has taught "
                    + "anything yet."));
        }
        Bodies.send(ctx, 200, Json.object().put("plan", live.plan().id().value()));
    }

    /** DELETE: the plan's own figures again, from the next class on. */
    private void forget(Context ctx, StepLessons lessons) {
        access.instructor(ctx);
        LiveClass live = AskedClass.of(ctx, boards).live();
        if (!lessons.forget(live.plan().id().value(), live.plan().place())) {
            throw new Refused(Problem.notFound("The plan's own figures are in force already."));
        }
        Bodies.send(ctx, 200, Json.object().put("plan", live.plan().id().value()));
    }
}
