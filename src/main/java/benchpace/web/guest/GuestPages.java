package benchpace.web.guest;

import benchpace.board.Answer;
import benchpace.board.Boards;
import benchpace.board.ClassBoard;
import benchpace.board.time.BoardTime;
import benchpace.board.view.ClassView;
import benchpace.live.ClassEvent;
import benchpace.live.Command;
import benchpace.plan.SeatNumber;
import benchpace.plan.StepId;
import benchpace.web.classes.Pages;
import benchpace.web.pairing.Access;
import benchpace.web.pairing.Secrets;
import benchpace.web.request.AskedClass;
import benchpace.web.request.Bodies;
import benchpace.web.request.Guard;
import benchpace.web.request.Problem;
import benchpace.web.request.QrCode;
import benchpace.web.request.Reads;
import benchpace.web.request.Refused;
import benchpace.web.screen.Screens;
import benchpace.web.screen.guest.CodeSheet;
import benchpace.web.screen.guest.GuestPage;
import benchpace.web.screen.shell.Message;
import benchpace.web.screen.start.StartView;
import benchpace.words.RefusalWords;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Duration;
import java.time.InstantSource;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/**
 * What guests can do with their own phones: scan the code at their seat and say "we are done". No names, no login, and
 * nothing that could touch another seat; the instructor's tap settles it.
 */
public final class GuestPages {
    /** A code may speak this often. */
    static final Duration REST = Duration.ofSeconds(20);
    private static final int REMEMBERED = 10_000;

    private final Boards boards;
    private final GuestCodes codes;
    private final Access access;
    private final Screens screens;
    private final BoardTime clock;
    private final Supplier<String> reachable;
    /** In time lived. */
    private final Map<String, Duration> spoke = new ConcurrentHashMap<>();

    public GuestPages(Boards boards, GuestCodes codes, Access access, Screens screens, InstantSource clock,
               Supplier<String> reachable) {
        this.boards = boards;
        this.codes = codes;
        this.access = access;
        this.screens = screens;
        this.clock = BoardTime.of(clock);
        this.reachable = reachable;
    }

    public void routes(RoutesConfig routes) {
        Reads.route(routes, "/g/{code}", this::look);
        routes.post("/g/{code}/done", this::done);
        Reads.route(routes, "/classes/{id}/guest-codes", this::sheet);
    }

    private void look(Context ctx) {
        GuestCodes.Place place = place(ctx);
        ClassView view = board(place).view();
        Pages.html(ctx, screens.guest(page(view, place, ctx), view));
    }

    private GuestCodes.Place place(Context ctx) {
        return codes.place(ctx.pathParam("code"), boards).orElseThrow(GuestPages::noSeat);
    }

    private static Refused noSeat() {
        return new Refused(Problem.notFound("This code belongs to no seat here. Scan the one on your table again."));
    }

    /** Of a class that may be deleted at any moment. */
    private ClassBoard board(GuestCodes.Place place) {
        return boards.find(place.classId()).orElseThrow(GuestPages::noSeat);
    }

    private static GuestPage page(ClassView view, GuestCodes.Place place, Context ctx) {
        return GuestPage.of(view, place.seat().value(), ctx.pathParam("code"));
    }

    private void done(Context ctx) {
        requireOwnPage(ctx);
        GuestCodes.Place place = place(ctx);
        GuestPage shown = page(board(place).view(), place, ctx);
        String step = Bodies.formField(ctx, "step");
        if (!shown.mayTell() || !step.equals(shown.step())) {
            ctx.redirect("/g/" + ctx.pathParam("code"), io.javalin.http.HttpStatus.SEE_OTHER); // it shows what is so
            return;
        }
        requireRest(ctx);
        Answer answer = board(place).submit(new Command(Command.own("guest.") + Secrets.token(), "guest",
                board(place).now(), new ClassEvent.DoneHinted(place.seat(), new StepId(step))));
        if (answer instanceof Answer.Refused refused) {
            throw new Refused(Problem.of(RefusalWords.of(board(place).live().plan(), refused.reason())));
        }
        ctx.redirect("/g/" + ctx.pathParam("code"), io.javalin.http.HttpStatus.SEE_OTHER);
    }

    /** Nothing but the page has a form to send here. */
    private static void requireOwnPage(Context ctx) {
        if (!Guard.namesOwnOrigin(ctx)) {
            throw new Refused(new Problem(403, "foreign-origin", "The request comes from another site",
                    "Only the page behind the code on the table may do that."));
        }
    }

    /** What a guest reads when it did not work: the way back to their seat, never the start page. */
    public static Message message(Context ctx, Problem problem) {
        return problem.status() == 404 ? new Message("Scan it once more", problem.detail(), "", "")
                : new Message(problem.title(), problem.detail(), ctx.path().replaceFirst("/done$", ""),
                        "Back to your seat");
    }

    private void requireRest(Context ctx) {
        String code = ctx.pathParam("code");
        Duration now = clock.lived();
        if (spoke.size() > REMEMBERED) {
            spoke.values().removeIf(at -> at.plus(REST).compareTo(now) <= 0);
        }
        Duration before = spoke.put(code, now);
        if (before != null && before.plus(REST).compareTo(now) > 0) {
            spoke.put(code, before);
            long wait = Math.max(1, before.plus(REST).minus(now).toSeconds() + 1);
            ctx.header("Retry-After", Long.toString(wait));
            throw new Refused(new Problem(429, "too-soon", "Just a moment",
                    "Your host was told a moment ago. Try again in " + wait + " seconds."));
        }
    }

    /** One code a seat, to be cut out and laid on the table. */
    private void sheet(Context ctx) {
        access.instructor(ctx);
        ClassBoard board = AskedClass.of(ctx, boards);
        ClassView view = board.view();
        Map<Integer, String> bySeat = codes.codes(view.id(), view.seats().stream()
                .map(seat -> new SeatNumber(seat.seat())).toList());
        List<CodeSheet.Card> cards = view.seats().stream().map(seat -> {
            String url = reachable.get() + "g/" + bySeat.get(seat.seat());
            return new CodeSheet.Card(seat.seat(), new StartView.Link(url, QrCode.modules(url)));
        }).toList();
        Pages.html(ctx, screens.codes(new CodeSheet(view.name(), view.id(), view.guestsMayTell(), cards),
                view.place()));
    }
}
