package benchpace.web.plans;

import benchpace.board.plans.BookPlan;
import benchpace.board.plans.PlanBook;
import benchpace.files.Json;
import benchpace.files.Words;
import benchpace.files.plan.PlanFile;
import benchpace.plan.Plan;
import benchpace.units.UnitChoice;
import benchpace.web.pairing.Access;
import benchpace.web.request.Bodies;
import benchpace.web.request.Problem;
import benchpace.web.request.Reads;
import benchpace.web.request.Refused;
import benchpace.web.screen.Screens;
import benchpace.web.screen.plans.EditPage;
import benchpace.web.screen.plans.EditSections;
import benchpace.web.screen.shell.Shell;
import benchpace.web.screen.shell.Viewer;
import com.fasterxml.jackson.databind.JsonNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/** The page that edits a plan, or shows one that is not to be changed; and the units it is written in. */
public final class EditPages {
    private static final List<String> SHEETS = List.of("lines");

    private static final int LONGEST = 40;

    private final PlanBook book;
    private final ChosenUnits units;
    private final Access access;
    private final Screens screens;
    private final ZoneId zone;

    public EditPages(PlanBook book, ChosenUnits units, Access access, Screens screens, ZoneId zone) {
        this.book = book;
        this.units = units;
        this.access = access;
        this.screens = screens;
        this.zone = zone;
    }

    public void routes(RoutesConfig routes) {
        Reads.route(routes, "/plans/{id}", this::page);
        routes.put("/api/units", this::choose);
    }

    /** {@code ?version=3} shows that version, to be looked at. */
    private void page(Context ctx) {
        Viewer viewer = access.instructor(ctx);
        String id = ctx.pathParam("id");
        BookPlan plan = book.find(id).orElseThrow(() -> new Refused(Problem.notFound("There is no such plan.")));
        Optional<Plan> earlier = Optional.ofNullable(ctx.queryParam("version"))
                .filter(asked -> !asked.equals(Integer.toString(plan.version())))
                .map(asked -> earlier(id, asked));
        EditPage.Standing standing = earlier.isPresent() ? EditPage.Standing.EARLIER
                : plan.starter() ? EditPage.Standing.STARTER : EditPage.Standing.OWN;
        int version = earlier.isPresent() ? Integer.parseInt(ctx.queryParam("version")) : plan.version();
        ctx.contentType("text/html; charset=utf-8")
                .result(screens.plan(page(viewer, earlier.orElse(plan.plan()), standing, version, plan.version())));
    }

    private Plan earlier(String id, String version) {
        return book.versions(id).stream().filter(v -> version.equals(Integer.toString(v.number())))
                .flatMap(v -> v.plan().stream()).findFirst()
                .orElseThrow(() -> new Refused(Problem.notFound("There is no such version of this plan.")));
    }

    private EditPage page(Viewer viewer, Plan plan, EditPage.Standing standing, int version,
                          int current) {
        Shell shell = new Shell(plan.name() + ", plan", "plan-edit", SHEETS, "", "", zone.getId(),
                viewer.role().token(), viewer.initials());
        UnitChoice chosen = units.now();
        return new EditPage(shell, plan.id().value(), plan.name(), version, current, standing, chosen,
                new EditSections(plan, chosen).all(), Json.text(PlanFile.write(plan)));
    }

    /** PUT /api/units: {@code {"mass", "volume", "temperature"}}, each as it is spelt in files, or left as it is. */
    private void choose(Context ctx) {
        access.instructor(ctx);
        JsonNode body = Bodies.object(ctx);
        UnitChoice now = units.choose(Bodies.text(body, "mass", LONGEST), Bodies.text(body, "volume", LONGEST),
                Bodies.text(body, "temperature", LONGEST));
        Bodies.send(ctx, 200, Json.object().put("mass", Words.of(now.mass())).put("volume", Words.of(now.volume()))
                .put("temperature", Words.of(now.temperature())));
    }
}
