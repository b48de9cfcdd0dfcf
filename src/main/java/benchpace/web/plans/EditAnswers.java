package benchpace.web.plans;

import benchpace.board.PrepBoard;
import benchpace.board.cooling.CureTrials;
import benchpace.board.cooling.RoomLessons;
import benchpace.board.prep.Occasion;
import benchpace.board.prep.Odds;
import benchpace.cure.TableCase;
import benchpace.cure.room.RoomFit;
import benchpace.files.Finding;
import benchpace.files.Json;
import benchpace.files.plan.PlanFile;
import benchpace.files.plan.PlanReading;
import benchpace.plan.Candle;
import benchpace.plan.Plan;
import benchpace.prep.evening.Setting;
import benchpace.units.UnitChoice;
import benchpace.web.pairing.Access;
import benchpace.web.request.Bodies;
import benchpace.web.request.Problem;
import benchpace.web.request.Refused;
import benchpace.web.screen.Screens;
import benchpace.web.screen.plans.EditChance;
import benchpace.web.screen.plans.EditPreview;
import benchpace.words.FieldWords;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the page that edits a plan asks while somebody types: is it sound, and what does it come to. */
public final class EditAnswers {
    private static final int LONGEST_ID = 40;

    private final Optional<RoomLessons> lessons;
    private final ChosenUnits units;
    private final PrepBoard prep;
    private final Access access;
    private final Screens screens;
    private final CureTrials trials = new CureTrials();
    private final FewEvenings few = new FewEvenings();

    /** @param lessons what rooms have taught, where that is kept */
    public EditAnswers(Optional<RoomLessons> lessons, ChosenUnits units, PrepBoard prep, Access access,
                       Screens screens) {
        this.lessons = lessons;
        this.units = units;
        this.prep = prep;
        this.access = access;
        this.screens = screens;
    }

    public void routes(RoutesConfig routes) {
        routes.post("/api/plans/form", this::form);
        routes.post("/api/plans/preview", this::preview);
        routes.post("/api/plans/odds", this::odds);
    }

    /**
     * POST /api/plans/form: {@code {"id", "form"}}, the form as the page has it. Says what is wrong, each at its place;
     * the plan it makes, if nothing is; and what some figures come to, by their place.
     */
    private void form(Context ctx) {
        access.instructor(ctx);
        JsonNode body = Bodies.object(ctx);
        UnitChoice chosen = units.now();
        EditReading.Read read = EditReading.read(Bodies.text(body, "id", LONGEST_ID), body.path("form"), chosen);
        List<Finding> problems = new ArrayList<>(read.problems());
        PlanReading reading = PlanFile.read(read.plan());
        // what could not be read as a measure is not in the plan, and is not missing either
        reading.problems().stream().filter(found -> read.problems().stream()
                .noneMatch(told -> told.place().equals(found.place()))).forEach(problems::add);
        ObjectNode answer = Json.object();
        ArrayNode all = answer.putArray("problems");
        problems.forEach(problem -> all.addObject().put("place", problem.place())
                .put("sentence", FieldWords.beside(problem.sentence())));
        if (problems.isEmpty()) {
            answer.set("plan", read.plan());
        }
        ObjectNode beside = answer.putObject("beside");
        EditBeside.of(read.plan(), chosen).forEach(beside::put);
        Bodies.send(ctx, 200, answer);
    }

    /** One that says no place is worked out for the studio. */
    private Plan plan(Context ctx) {
        return PlanFile.read(Bodies.object(ctx).path("plan")).ifSound()
                .map(plan -> plan.orHeldAt(screens.studioOf("").place()))
                .orElseThrow(() -> new Refused(Problem.unprocessable("The plan has problems: mend them first.")));
    }

    /** POST /api/plans/preview: {@code {"plan"}}; a part of the page. */
    private void preview(Context ctx) {
        access.instructor(ctx);
        Plan plan = plan(ctx);
        ctx.contentType("text/html; charset=utf-8").result(screens.planPreview(plan, () -> cures(plan),
                () -> few.typical(setting(plan))));
    }

    private List<EditPreview.CandleLine> cures(Plan plan) {
        RoomFit room = lessons.map(l -> l.next(plan.place())).orElseGet(RoomFit::untaught);
        return plan.candles().stream().map(candle -> EditPreview.CandleLine.of(candle.name(),
                trials.of(table(candle), room).outlook().ready())).toList();
    }

    private static TableCase table(Candle candle) {
        return TableCase.of(candle.vessel(), candle.wax(), candle.fillGrams(), candle.fragranceFraction(),
                candle.roomCelsius(), candle.pourCelsius(), candle.tableTop(), 1);
    }

    private Setting setting(Plan plan) {
        return prep.setting(Occasion.of(plan, plan.usualSeats(), Map.of()));
    }

    /** POST /api/plans/odds: {@code {"plan"}}; a part of the page, which asks again until all evenings are known. */
    private void odds(Context ctx) {
        access.instructor(ctx);
        Plan plan = plan(ctx);
        Odds odds = prep.odds(Occasion.of(plan, plan.usualSeats(), Map.of()));
        ctx.contentType("text/html; charset=utf-8").result(screens.planChance(
                EditChance.of(odds, () -> few.of(setting(plan)).timetable(), plan)));
    }
}
