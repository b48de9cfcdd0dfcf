package benchpace.web.cure;

import benchpace.board.cooling.CureTrials;
import benchpace.board.cooling.RoomLessons;
import benchpace.board.plans.BookPlan;
import benchpace.board.plans.PlanBook;
import benchpace.cure.TableCase;
import benchpace.cure.room.RoomFit;
import benchpace.files.Json;
import benchpace.plan.Plan;
import benchpace.plan.Wax;
import benchpace.web.pairing.Access;
import benchpace.web.request.Bodies;
import benchpace.web.request.Problem;
import benchpace.web.request.Reads;
import benchpace.web.request.Refused;
import benchpace.web.screen.Screens;
import benchpace.web.screen.cure.CureForm;
import benchpace.web.screen.cure.CurePage;
import benchpace.web.screen.shell.Shell;
import benchpace.web.screen.shell.Viewer;
import benchpace.words.RoomWords;
import benchpace.words.Times;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The page on which candles are tried out before a class, and where what rooms have taught is seen and reset. */
public final class CurePages {
    private static final int LONGEST_ROOM = 80;

    private final PlanBook plans;
    private final RoomLessons lessons;
    private final Access access;
    private final Screens screens;
    private final ZoneId zone;
    private final CureTrials trials = new CureTrials();

    public CurePages(PlanBook plans, RoomLessons lessons, Access access, Screens screens, ZoneId zone) {
        this.plans = plans;
        this.lessons = lessons;
        this.access = access;
        this.screens = screens;
        this.zone = zone;
    }

    public void routes(RoutesConfig routes) {
        Reads.route(routes, "/cure", this::page);
        routes.post("/api/rooms/reset", this::reset);
    }

    private void page(Context ctx) {
        Viewer viewer = access.paired(ctx);
        Map<String, Wax> waxes = CureFormReading.waxes(all());
        boolean filled = CureFormReading.LETTERS.stream()
                .anyMatch(l -> ctx.queryParam(l.toLowerCase(java.util.Locale.ROOT) + "-fill") != null);
        Map<String, String> ofPlan = filled ? Map.of() : parameters(ctx);
        CureFormReading.Read read = new CureFormReading(name -> {
            String asked = filled ? ctx.queryParam(name) : ofPlan.get(name);
            return asked == null ? "" : asked;
        }, waxes).read();
        String place = read.form().room();
        RoomFit fit = lessons.next(place);
        Map<String, CureTrials.Trial> tried = new LinkedHashMap<>();
        for (Map.Entry<String, TableCase> one : read.cases().entrySet()) {
            tried.put(one.getKey(), trials.of(one.getValue(), fit));
        }
        Times times = new Times(zone);
        List<RoomWords> rooms = lessons.taught().stream()
                .map(t -> RoomWords.of(t.room(), t.fit(), t.classes(), t.at(), times)).toList();
        Shell shell = new Shell("Vessels and waxes", "cure", List.of(), "", "", zone.getId(), viewer.role().token(),
                viewer.initials());
        String html = screens.cure(CurePage.of(shell, viewer.instructor(),
                all().stream().filter(p -> !p.candles().isEmpty())
                        .map(p -> new CureForm.Choice(p.id().value(), p.name())).toList(),
                waxes.values().stream().map(w -> new CureForm.Choice(w.id(), w.name())).toList(),
                read.form(), tried, read.minutes(), place, fit, rooms));
        ctx.status(read.form().sound() ? 200 : 422);
        ctx.contentType("text/html; charset=utf-8").result(html);
    }

    /** Of the plan that was asked for, else of the first that names candles. */
    private Map<String, String> parameters(Context ctx) {
        String id = ctx.queryParam("plan");
        return Optional.ofNullable(id).flatMap(plans::find).map(BookPlan::plan)
                .or(() -> all().stream().filter(p -> !p.candles().isEmpty()).findFirst())
                .map(plan -> plan.orHeldAt(screens.studioOf("").place())).map(CureFormReading::parameters)
                .orElse(Map.of());
    }

    private List<Plan> all() {
        return plans.all().stream().map(BookPlan::plan).toList();
    }

    /** POST /api/rooms/reset: {@code {"room"}}, empty for "this room". */
    private void reset(Context ctx) {
        access.instructor(ctx);
        String room = Bodies.text(Bodies.object(ctx), "room", LONGEST_ROOM);
        if (!lessons.reset(room)) {
            throw new Refused(Problem.notFound("That room has taught nothing that could be forgotten."));
        }
        Bodies.send(ctx, 200, Json.object().put("room", room));
    }
}
