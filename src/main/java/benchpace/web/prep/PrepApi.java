package benchpace.web.prep;

import benchpace.board.Boards;
import benchpace.board.ClassBoard;
import benchpace.board.PrepBoard;
import benchpace.board.StudioBoard;
import benchpace.board.plans.BookPlan;
import benchpace.board.plans.PlanAnswer;
import benchpace.board.plans.PlanBook;
import benchpace.board.plans.PlanRefusal;
import benchpace.board.prep.Occasion;
import benchpace.board.prep.Odds;
import benchpace.files.Json;
import benchpace.files.prep.PrepJson;
import benchpace.plan.Plan;
import benchpace.plan.kit.Melter;
import benchpace.prep.card.LabelRegion;
import benchpace.prep.evening.Setting;
import benchpace.prep.melter.MelterLine;
import benchpace.prep.sheet.PrepSheet;
import benchpace.store.SavedPlans;
import benchpace.web.pairing.Access;
import benchpace.web.request.AskedClass;
import benchpace.web.request.Bodies;
import benchpace.web.request.Problem;
import benchpace.web.request.Reads;
import benchpace.web.request.Refused;
import benchpace.web.screen.shell.Viewer;
import benchpace.words.prep.MelterWords;
import benchpace.words.prep.PrepWords;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Duration;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;

/** The JSON interface to the day before: the sheet as the command writes it, the region, and the stop-watch. */
public final class PrepApi {
    /** Within this the evenings are simulated even on a small machine; else the sheet goes without. */
    private static final Duration PATIENCE = Duration.ofSeconds(10);

    private final Boards boards;
    private final PrepBoard prep;
    private final PlanBook plans;
    private final StudioBoard studio;
    private final Access access;

    public PrepApi(Boards boards, PrepBoard prep, PlanBook plans, StudioBoard studio, Access access) {
        this.boards = boards;
        this.prep = prep;
        this.plans = plans;
        this.studio = studio;
        this.access = access;
    }

    public void routes(RoutesConfig routes) {
        Reads.route(routes, "/api/classes/{id}/prep", this::ofClass);
        Reads.route(routes, "/api/plans/{id}/prep", this::ofPlan);
        routes.put("/api/prep/region", this::region);
        routes.post("/api/plans/{id}/prep/melters/{melter}", this::stopwatch);
    }

    private void ofClass(Context ctx) {
        access.paired(ctx);
        ClassBoard board = AskedClass.of(ctx, boards);
        send(ctx, Occasion.of(board.live()), prep.setting(board));
    }

    private void ofPlan(Context ctx) {
        access.instructor(ctx);
        Occasion occasion = AskedOccasion.of(ctx, PrepPages.asked(ctx, plans).plan().orHeldAt(studio.now().place()));
        send(ctx, occasion, prep.setting(occasion));
    }

    private void send(Context ctx, Occasion occasion, Setting evening) {
        PrepSheet sheet = prep.sheet(occasion);
        PrepSheet whole = odds(evening) instanceof Odds.Told told ? sheet.with(told.timetable())
                : sheet.withoutTimetable();
        Bodies.send(ctx, 200, PrepJson.write(whole, PrepWords.problems(whole)));
    }

    private Odds odds(Setting evening) {
        try {
            return prep.odds().awaited(evening, PATIENCE);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return new Odds.Missing();
        }
    }

    private void region(Context ctx) {
        access.instructor(ctx);
        String asked = Bodies.text(Bodies.object(ctx), "region", 40);
        LabelRegion region = Arrays.stream(LabelRegion.values())
                .filter(r -> r.name().equals(asked.toUpperCase(Locale.ROOT).replace('-', '_'))).findFirst()
                .orElseThrow(() -> new Refused(Problem.unprocessable("\"region\" must be united-states, "
                        + "european-union or great-britain.")));
        prep.choose(region);
        Bodies.send(ctx, 200, Json.object().put("region", asked));
    }

    /** What a melt took says how much of the heat reaches the wax; kept as a new version of the plan if wished. */
    private void stopwatch(Context ctx) {
        Viewer viewer = access.instructor(ctx);
        BookPlan asked = PrepPages.asked(ctx, plans);
        JsonNode body = Bodies.object(ctx);
        double grams = figure(body, "grams", 1, 1_000_000);
        double minutes = figure(body, "minutes", 0.1, 1440);
        double watts = figure(body, "watts", 1, 50_000);
        Plan plan = asked.plan();
        MelterLine line = prep.sheet(Occasion.of(plan, plan.usualSeats(), Map.of())).melters().stream()
                .filter(m -> m.melter().id().equals(ctx.pathParam("melter"))).findFirst()
                .orElseThrow(() -> new Refused(Problem.notFound("The plan has no such melter.")));
        double efficiency = line.melting().orElseThrow(() -> new Refused(Problem.unprocessable(
                "What this melter melts is not known, so that its heat cannot be worked out.")))
                .efficiency(grams, watts, minutes);
        boolean sound = efficiency <= 1 && efficiency >= 0.01;
        if (body.path("keep").asBoolean() && sound) {
            keep(asked, line.melter().measured(efficiency, watts), viewer);
            Bodies.send(ctx, 200, answer(efficiency, "Kept with the plan: " + MelterWords.efficiency(efficiency)
                    + ". A class that is set up already keeps the plan it has.", false));
        } else {
            boolean starter = sound && asked.starter();
            Bodies.send(ctx, 200, answer(efficiency, MelterWords.measured(efficiency) + (starter
                    ? " This plan comes with the program: copy it to keep the figure." : ""), sound && !starter));
        }
    }

    /** With the very version that was worked with: what somebody saved since is not undone. */
    private void keep(BookPlan asked, Melter measured, Viewer viewer) {
        Plan plan = asked.plan();
        PlanAnswer answer = plans.save(plan.with(plan.kit().with(measured)), version -> version == asked.version(),
                new SavedPlans.By("instructor", viewer.device()));
        if (answer instanceof PlanAnswer.Refused no) {
            throw new Refused(new Problem(409, "not-kept", "The plan was not changed",
                    no.why() instanceof PlanRefusal.Stale
                            ? "The plan was changed just now, so nothing was kept. Work it out once more."
                            : "This plan cannot be changed: copy it, and keep the figure with the copy."));
        }
    }

    private static ObjectNode answer(double efficiency, String words, boolean mayKeep) {
        return Json.object().put("efficiency", efficiency).put("words", words).put("mayKeep", mayKeep);
    }

    private static double figure(JsonNode body, String name, double least, double most) {
        JsonNode value = body.path(name);
        if (!value.isNumber() || !(value.doubleValue() >= least && value.doubleValue() <= most)) {
            throw new Refused(Problem.unprocessable("\"" + name + "\" must be a number from " + (least < 1 ? least
                    : (long) least) + " to " + (long) most + "."));
        }
        return value.doubleValue();
    }
}
