package benchpace.web.report;

import benchpace.board.Boards;
import benchpace.board.plans.BookPlan;
import benchpace.board.plans.PlanBook;
import benchpace.board.view.ClassWhatIf;
import benchpace.files.Json;
import benchpace.plan.Plan;
import benchpace.report.whatif.Answer;
import benchpace.report.whatif.ChangedPlan;
import benchpace.store.SavedPlans;
import benchpace.web.classes.Pages;
import benchpace.web.pairing.Access;
import benchpace.web.request.AskedClass;
import benchpace.web.request.Bodies;
import benchpace.web.request.Problem;
import benchpace.web.request.Reads;
import benchpace.web.request.Refused;
import benchpace.web.screen.Screens;
import benchpace.web.screen.shell.Viewer;
import benchpace.words.report.WhatIfWords;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What a class would have saved with one thing changed, and the copy of its plan in which that is so. For the
 * instructor, as the look back is.
 */
public final class WhatIfApi {
    private final Boards boards;
    private final PlanBook book;
    private final Access access;
    private final Screens screens;

    public WhatIfApi(Boards boards, PlanBook book, Access access, Screens screens) {
        this.boards = boards;
        this.book = book;
        this.access = access;
        this.screens = screens;
    }

    public void routes(RoutesConfig routes) {
        Reads.route(routes, "/api/classes/{id}/what-if", this::read);
        Reads.route(routes, "/classes/{id}/report/what-if", this::section);
        routes.post("/api/classes/{id}/what-if/{change}/plan", this::copy);
    }

    private ClassWhatIf asked(Context ctx) {
        access.instructor(ctx);
        return AskedClass.of(ctx, boards).lookBack().whatIf();
    }

    /** GET: every change that applies, with the range of what it would have saved. */
    private void read(Context ctx) {
        ClassWhatIf whatIf = asked(ctx);
        ObjectNode told = Json.object().put("ways", ClassWhatIf.WAYS)
                .put("nothing", WhatIfWords.nothing(whatIf.standing()));
        ArrayNode answers = told.putArray("answers");
        whatIf.answers().forEach(a -> answers.add(answer(a, whatIf)));
        ArrayNode suggested = told.putArray("suggestions");
        whatIf.suggestions().forEach(a -> suggested.add(a.change().key(whatIf.plan())));
        Bodies.send(ctx, 200, told);
    }

    private static ObjectNode answer(Answer answer, ClassWhatIf whatIf) {
        ObjectNode told = Json.object().put("change", answer.change().key(whatIf.plan()))
                .put("what", WhatIfWords.change(answer.change(), whatIf.plan()));
        told.putObject("savedMinutes").put("p10", tenths(answer.saving().p10()))
                .put("p50", tenths(answer.saving().p50())).put("p90", tenths(answer.saving().p90()));
        return told.put("says", WhatIfWords.saving(answer.saving()))
                .put("evidence", WhatIfWords.evidence(answer.change(), whatIf))
                .put("assumes", WhatIfWords.assumed(answer.change(), whatIf.plan()))
                .put("plan", ChangedPlan.of(whatIf.plan(), answer.change()).isPresent());
    }

    private static double tenths(double minutes) {
        return Math.round(minutes * 10) / 10.0;
    }

    /** GET: the same as the part of the look back that its page asks for. */
    private void section(Context ctx) {
        ClassWhatIf whatIf = asked(ctx);
        Map<String, Plan> copies = new TreeMap<>();
        whatIf.answers().forEach(a -> changed(whatIf, a).flatMap(book::alike)
                .ifPresent(made -> copies.put(a.change().key(whatIf.plan()), made.plan())));
        Pages.html(ctx, screens.whatIf(whatIf, copies));
    }

    /** POST: the change made in a copy of the class's plan; 200 and that copy if there is one already. */
    private void copy(Context ctx) {
        Viewer viewer = access.instructor(ctx);
        ClassWhatIf whatIf = asked(ctx);
        Answer answer = whatIf.answer(ctx.pathParam("change")).orElseThrow(() -> new Refused(Problem.notFound(
                whatIf.answers().isEmpty() ? WhatIfWords.nothing(whatIf.standing())
                        : "That change does not apply to this class.")));
        Plan changed = changed(whatIf, answer).orElseThrow(() -> new Refused(new Problem(409, "no-plan-holds-it",
                "No plan can hold that", WhatIfWords.advice(answer.change()))));
        boolean there = book.alike(changed).isPresent();
        BookPlan made = book.addOnce(changed, new SavedPlans.By(viewer.role().token(), viewer.device()));
        ctx.header("Location", "/api/plans/" + made.id());
        Bodies.send(ctx, there ? 200 : 201, Json.object().put("id", made.id()).put("name", made.plan().name())
                .put("page", "/plans/" + made.id()));
    }

    private static Optional<Plan> changed(ClassWhatIf whatIf, Answer answer) {
        Plan plan = whatIf.plan();
        return ChangedPlan.of(plan, answer.change())
                .map(made -> made.as(plan.id(), WhatIfWords.planName(answer.change(), plan)));
    }
}
