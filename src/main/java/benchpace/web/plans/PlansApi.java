package benchpace.web.plans;

import benchpace.board.Boards;
import benchpace.board.ClassBoard;
import benchpace.board.PlanUse;
import benchpace.board.plans.BookPlan;
import benchpace.board.plans.PlanAnswer;
import benchpace.board.plans.PlanBook;
import benchpace.board.plans.PlanRefusal;
import benchpace.files.Json;
import benchpace.files.pattern.NewPlan;
import benchpace.files.plan.PlanFolder;
import benchpace.live.LiveClass;
import benchpace.plan.Plan;
import benchpace.store.SavedPlans;
import benchpace.web.pairing.Access;
import benchpace.web.request.Bodies;
import benchpace.web.request.IfMatch;
import benchpace.web.request.Problem;
import benchpace.web.request.Reads;
import benchpace.web.request.Refused;
import benchpace.web.screen.shell.Viewer;
import benchpace.words.NewPlanWords;
import benchpace.words.PlanWords;
import benchpace.words.Times;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.List;
import java.util.function.IntPredicate;

/**
 * The JSON interface to the book of plans. A plan is given and taken as its file would be; what is changed says in
 * {@code If-Match} which version it was read as, so that nobody overwrites what they have not seen.
 */
public final class PlansApi {
    private static final int LONGEST_NAME = 80;

    private final PlanBook book;
    private final Boards boards;
    private final Access access;
    private final InstantSource clock;
    private final Times times;

    public PlansApi(PlanBook book, Boards boards, Access access, InstantSource clock, ZoneId zone) {
        this.book = book;
        this.boards = boards;
        this.access = access;
        this.clock = clock;
        this.times = new Times(zone);
    }

    public void routes(RoutesConfig routes) {
        Reads.route(routes, "/api/plans", this::list);
        routes.post("/api/plans", this::add);
        routes.post("/api/plans/check", this::check);
        routes.post("/api/plans/new", this::begin);
        Reads.route(routes, "/api/plans/{id}", this::read);
        routes.put("/api/plans/{id}", this::save);
        routes.delete("/api/plans/{id}", this::delete);
        routes.post("/api/plans/{id}/copy", this::copy);
        routes.post("/api/plans/{id}/restore", this::restore);
        Reads.route(routes, "/api/plans/{id}/versions", this::versions);
        Reads.route(routes, "/api/plans/{id}/versions/{number}", this::version);
        routes.post("/api/plans/{id}/versions/{number}/bring-back", this::bringBack);
    }

    // ---- looking

    private void list(Context ctx) {
        access.paired(ctx);
        Instant now = clock.instant();
        List<LiveClass> classes = boards.all().stream().map(ClassBoard::live).toList();
        ArrayNode list = Json.mapper().createArrayNode();
        book.all().forEach(plan -> list.add(PlanJson.of(plan, PlanUse.of(plan.id(), classes, now))));
        Bodies.send(ctx, 200, list);
    }

    /** GET: the plan as its file would be; {@code ?download} makes the browser keep it as one. */
    private void read(Context ctx) {
        access.paired(ctx);
        BookPlan plan = asked(ctx);
        tagged(ctx, plan);
        if (ctx.queryParam("download") != null) {
            ctx.header("Content-Disposition", "attachment; filename=\"" + PlanFolder.file(plan.plan().id()) + "\"");
        }
        ctx.contentType("application/json").result(PlanFolder.text(plan.plan()));
    }

    private BookPlan asked(Context ctx) {
        String id = ctx.pathParam("id");
        return book.find(id).orElseThrow(() -> refused(book.missing(id)));
    }

    private void versions(Context ctx) {
        access.paired(ctx);
        List<SavedPlans.Version> versions = book.versions(asked(ctx).id());
        ArrayNode list = Json.mapper().createArrayNode();
        versions.forEach(version -> list.addObject().put("version", version.number())
                .put("savedAt", version.at().toString()).put("by", version.by().who())
                .put("device", access.nameOf(version.by().device()))
                .put("name", version.plan().map(Plan::name).orElse(null))
                .put("readable", version.plan().isPresent()));
        Bodies.send(ctx, 200, list);
    }

    private void version(Context ctx) {
        access.paired(ctx);
        BookPlan plan = asked(ctx);
        int number = AskedVersion.number(ctx);
        Plan version = book.version(plan.id(), number)
                .orElseThrow(() -> refused(new PlanRefusal.NoSuchVersion(plan.plan(), number)));
        ctx.header("ETag", quoted(PlanJson.tag(number)));
        ctx.contentType("application/json").result(PlanFolder.text(version));
    }

    /** POST: everything that is wrong with a draft, as the {@code check} command says it; nothing if it is sound. */
    private void check(Context ctx) {
        access.paired(ctx);
        ObjectNode answer = Json.object();
        answer.set("problems", Problem.list(PlanBody.read(ctx).problems()));
        Bodies.send(ctx, 200, answer);
    }

    // ---- changing

    private void add(Context ctx) {
        Viewer viewer = access.instructor(ctx);
        made(ctx, book.add(PlanBody.sound(ctx), by(viewer)));
    }

    /** POST, the answers of the dialogue: a sound plan at once, and what it could not do as asked. */
    private void begin(Context ctx) {
        Viewer viewer = access.instructor(ctx);
        NewPlan made = NewPlans.of(Bodies.object(ctx), book);
        BookPlan kept = book.add(made.plan(), by(viewer));
        ctx.header("Location", "/api/plans/" + kept.id());
        tagged(ctx, kept);
        ObjectNode answer = PlanJson.of(kept);
        made.remarks().stream().map(NewPlanWords::of).forEach(answer.putArray("remarks")::add);
        Bodies.send(ctx, 201, answer);
    }

    /** POST {@code {"name"}}; without one the copy says what it is a copy of. */
    private void copy(Context ctx) {
        Viewer viewer = access.instructor(ctx);
        String name = Bodies.text(Bodies.object(ctx), "name", LONGEST_NAME).strip();
        BookPlan of = asked(ctx);
        made(ctx, kept(book.copy(of.id(), name.isEmpty() ? PlanWords.copy(of.plan().name()) : name, by(viewer))));
    }

    private static void made(Context ctx, BookPlan plan) {
        ctx.header("Location", "/api/plans/" + plan.id());
        told(ctx, 201, plan);
    }

    private void save(Context ctx) {
        Viewer viewer = access.instructor(ctx);
        String id = changeable(ctx);
        IntPredicate looked = looked(ctx);
        told(ctx, 200, kept(ctx, book.save(PlanBody.soundOf(ctx, id), looked, by(viewer))));
    }

    private void delete(Context ctx) {
        access.instructor(ctx);
        String id = changeable(ctx);
        kept(ctx, book.delete(id, looked(ctx)));
        ctx.status(204);
    }

    private void restore(Context ctx) {
        access.instructor(ctx);
        told(ctx, 200, kept(ctx, book.restore(ctx.pathParam("id"))));
    }

    private void bringBack(Context ctx) {
        Viewer viewer = access.instructor(ctx);
        String id = changeable(ctx);
        int number = AskedVersion.number(ctx);
        told(ctx, 200, kept(ctx, book.bringBack(id, number, looked(ctx), by(viewer))));
    }

    /** What cannot be changed at all is told before which version is meant (RFC 9110, 13.2.1). */
    private String changeable(Context ctx) {
        BookPlan plan = asked(ctx);
        if (plan.starter()) {
            throw refused(new PlanRefusal.Starter(plan.plan()));
        }
        return plan.id();
    }

    private static IntPredicate looked(Context ctx) {
        IfMatch wanted = IfMatch.required(ctx);
        return version -> wanted.matches(PlanJson.tag(version));
    }

    private static SavedPlans.By by(Viewer viewer) {
        return new SavedPlans.By(viewer.role().token(), viewer.device());
    }

    // ---- answering

    private BookPlan kept(PlanAnswer answer) {
        if (answer instanceof PlanAnswer.Refused no) {
            throw refused(no.why());
        }
        return ((PlanAnswer.Kept) answer).plan();
    }

    /** A refusal for being stale says which version stands now. */
    private BookPlan kept(Context ctx, PlanAnswer answer) {
        if (answer instanceof PlanAnswer.Refused no && no.why() instanceof PlanRefusal.Stale stale) {
            tagged(ctx, stale.now());
        }
        return kept(answer);
    }

    private Refused refused(PlanRefusal why) {
        return new Refused(Problem.of(PlanWords.of(why, times, clock.instant())));
    }

    private static void told(Context ctx, int status, BookPlan plan) {
        tagged(ctx, plan);
        Bodies.send(ctx, status, PlanJson.of(plan));
    }

    private static void tagged(Context ctx, BookPlan plan) {
        ctx.header("ETag", quoted(PlanJson.tag(plan)));
    }

    private static String quoted(String tag) {
        return '"' + tag + '"';
    }
}
