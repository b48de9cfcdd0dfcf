package benchpace.web.prep;

import benchpace.board.Boards;
import benchpace.board.ClassBoard;
import benchpace.board.PrepBoard;
import benchpace.board.plans.BookPlan;
import benchpace.board.plans.PlanBook;
import benchpace.board.prep.Occasion;
import benchpace.board.prep.Ticked;
import benchpace.files.Json;
import benchpace.live.LiveClass;
import benchpace.plan.Plan;
import benchpace.web.classes.Pages;
import benchpace.web.pairing.Access;
import benchpace.web.request.AskedClass;
import benchpace.web.request.Problem;
import benchpace.web.request.Reads;
import benchpace.web.request.Refused;
import benchpace.web.screen.Screens;
import benchpace.web.screen.prep.PrepGiven;
import benchpace.web.screen.shell.Viewer;
import benchpace.web.stream.LiveScreen;
import benchpace.web.stream.Streams;
import benchpace.words.Times;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.Map;
import java.util.Optional;

/** The prep pages: of a class, live, for everybody who works at its table; of a plan, for the instructor. */
public final class PrepPages {
    private final Boards boards;
    private final PrepBoard prep;
    private final PlanBook plans;
    private final Access access;
    private final Streams streams;
    private final Screens screens;
    private final InstantSource clock;
    private final ZoneId zone;

    public PrepPages(Boards boards, PrepBoard prep, PlanBook plans, Access access, Streams streams, Screens screens,
                     InstantSource clock, ZoneId zone) {
        this.boards = boards;
        this.prep = prep;
        this.plans = plans;
        this.access = access;
        this.streams = streams;
        this.screens = screens;
        this.clock = clock;
        this.zone = zone;
    }

    public void routes(RoutesConfig routes) {
        Reads.route(routes, "/classes/{id}/prep", this::ofClass);
        Reads.route(routes, "/classes/{id}/prep/stream", this::stream);
        Reads.route(routes, "/plans/{id}/prep", this::ofPlan);
    }

    private void ofClass(Context ctx) {
        Viewer viewer = access.paired(ctx);
        Pages.html(ctx, screens.prep(given(AskedClass.of(ctx, boards), viewer)));
    }

    /** Everything hangs on what stands beside the class, too, so that all of it is looked at with every nudge. */
    private void stream(Context ctx) {
        Viewer viewer = access.paired(ctx);
        ClassBoard board = AskedClass.of(ctx, boards);
        streams.serve(ctx, viewer, board, new LiveScreen() {
            @Override public Map<String, String> beside() {
                return screens.prepParts(given(board, viewer));
            }
        });
    }

    private PrepGiven given(ClassBoard board, Viewer viewer) {
        LiveClass live = board.live();
        Occasion occasion = Occasion.of(live);
        Ticked ticked = prep.ticked(board.id());
        return new PrepGiven(board.id(), live.name(), occasion, () -> prep.sheet(occasion),
                () -> prep.odds().of(prep.setting(board), board::nudge),
                Optional.of(new PrepGiven.OfClass(live.startsAt(), !live.begun() && live.closedAt().isEmpty())), ticked,
                Json.text(TicksApi.json(ticked)), prep.region(live.plan()), book(live.plan().id().value()), "",
                board.now(), new Times(zone), viewer);
    }

    private Optional<PrepGiven.Book> book(String planId) {
        return plans.find(planId).map(p -> new PrepGiven.Book(planId, p.starter()));
    }

    private void ofPlan(Context ctx) {
        Viewer viewer = access.instructor(ctx);
        Plan plan = asked(ctx, plans).plan().orHeldAt(screens.studioOf("").place());
        try {
            Pages.html(ctx, screens.prep(given(AskedOccasion.of(ctx, plan), "", viewer)));
        } catch (Refused refusal) {
            ctx.status(refusal.problem().status());
            Pages.html(ctx, screens.prep(given(Occasion.of(plan, plan.usualSeats(), Map.of()),
                    refusal.problem().detail() + " This is for " + plan.usualSeats() + " seats.", viewer)));
        }
    }

    private PrepGiven given(Occasion occasion, String answer, Viewer viewer) {
        Plan plan = occasion.plan();
        return new PrepGiven(plan.id().value(), plan.name(), occasion, () -> prep.sheet(occasion),
                () -> prep.odds().of(prep.setting(occasion), () -> { }), Optional.empty(), Ticked.NOTHING, "",
                prep.region(plan), book(plan.id().value()), answer, clock.instant(), new Times(zone), viewer);
    }

    /** The plan that an address names. @throws Refused if the book has none */
    static BookPlan asked(Context ctx, PlanBook plans) {
        return plans.find(ctx.pathParam("id")).orElseThrow(() -> new Refused(Problem.notFound(
                "There is no plan of that address. The list of plans shows those there are.")));
    }
}
