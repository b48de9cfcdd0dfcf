package benchpace.web.shelf;

import benchpace.board.Boards;
import benchpace.board.ClassBoard;
import benchpace.board.ShelfBoard;
import benchpace.board.cooling.CandleClock;
import benchpace.board.view.ClassView;
import benchpace.board.view.SeatView;
import benchpace.board.waiting.WaitView;
import benchpace.files.calendar.CalendarFile;
import benchpace.files.calendar.ClassCalendar;
import benchpace.shelf.EntryId;
import benchpace.shelf.ShelfEntry;
import benchpace.web.classes.Pages;
import benchpace.web.pairing.Access;
import benchpace.web.request.AskedClass;
import benchpace.web.request.Problem;
import benchpace.web.request.Reads;
import benchpace.web.request.Refused;
import benchpace.web.screen.Screens;
import benchpace.web.screen.shelf.LeaveSheet;
import benchpace.web.screen.shelf.ShelfPage;
import benchpace.web.screen.shell.Viewer;
import benchpace.words.ShelfTag;
import benchpace.words.Times;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The pages of the pickup shelf, its tags, the dialogue of leaving early, and a class's calendar file. */
public final class ShelfPages {
    private static final int MOST_TAGS = 60;

    private final ShelfBoard shelf;
    private final ShelfApi api;
    private final Boards boards;
    private final Access access;
    private final Screens screens;
    private final ZoneId zone;

    public ShelfPages(ShelfBoard shelf, ShelfApi api, Boards boards, Access access, Screens screens, ZoneId zone) {
        this.shelf = shelf;
        this.api = api;
        this.boards = boards;
        this.access = access;
        this.screens = screens;
        this.zone = zone;
    }

    public void routes(RoutesConfig routes) {
        Reads.route(routes, "/shelf", this::page);
        Reads.route(routes, "/shelf/tags", this::tags);
        Reads.route(routes, "/classes/{id}/seats/{seat}/leave", this::leave);
        Reads.route(routes, "/classes/{id}/calendar.ics", this::calendar);
    }

    private ClassBoard board(Context ctx) {
        return AskedClass.of(ctx, boards);
    }

    private void page(Context ctx) {
        Viewer viewer = access.paired(ctx);
        String typed = ShelfApi.clipped(Optional.ofNullable(ctx.queryParam("q")).orElse("").strip());
        Pages.html(ctx, screens.shelf(new ShelfPage.Given(shelf.shelf(), shelf.arrangement(), shelf.now(),
                ShelfApi.REMIND_AHEAD, api::className), typed, viewer, zone));
    }

    private void tags(Context ctx) {
        Viewer viewer = access.paired(ctx);
        String ids = Optional.ofNullable(ctx.queryParam("ids")).orElse("");
        if (!ids.matches("\\d{1,12}(,\\d{1,12}){0," + (MOST_TAGS - 1) + "}")) {
            throw new Refused(Problem.badRequest("\"ids\" must be numbers of candles on the shelf, such as 3,4."));
        }
        List<ShelfTag> tags = Arrays.stream(ids.split(",")).filter(id -> Long.parseLong(id) > 0)
                .flatMap(id -> shelf.shelf().entry(new EntryId(Long.parseLong(id))).stream())
                .map(e -> ShelfTag.of(e, api.className(e.classId()), new Times(zone))).toList();
        if (tags.isEmpty()) {
            throw new Refused(Problem.notFound("None of these candles is on the shelf."));
        }
        Pages.html(ctx, screens.tags(tags, ids, "label".equals(ctx.queryParam("form")), viewer));
    }

    private void leave(Context ctx) {
        access.instructor(ctx);
        ClassBoard board = board(ctx);
        ClassView view = board.view();
        SeatView seat = LeaveApi.seat(view, ctx.pathParam("seat"));
        CandleClock candle = seat.candle().orElseThrow(() -> new Refused(Problem.notFound(
                "Seat " + seat.seat() + " has no candle of its own yet.")));
        Instant ready = shelf.arrangement().settings().readyFrom(candle.said().until());
        Pages.html(ctx, screens.leave(LeaveSheet.of(seat.seat(), seat.name(), seat.mark() == SeatView.Mark.LEFT, candle,
                ready, shelf.arrangement().settings().collectBy(ready),
                shelf.shelf().suggest(shelf.arrangement().layout(), board.id(), 200),
                ShelfApi.freshWord(shelf).toString(), view.now(), new Times(zone))));
    }

    private void calendar(Context ctx) {
        access.paired(ctx);
        ClassView view = board(ctx).view();
        List<ShelfEntry> candles = shelf.shelf().standing().filter(e -> e.classId().equals(view.id())).toList();
        ClassCalendar calendar = new ClassCalendar(view.id(), view.name(), view.place(), view.startsAt(),
                end(view)).with(view.waiting().calls().stream().map(WaitView.CallView::event).toList())
                .withShelf(candles, zone);
        ctx.header("Content-Disposition", "attachment; filename=\"" + view.id() + ".ics\"");
        ctx.contentType(CalendarFile.MEDIA_TYPE).result(CalendarFile.text(calendar.entries(), view.now()));
    }

    private static Instant end(ClassView view) {
        Instant promised = view.home().promised();
        return promised.isAfter(view.startsAt()) ? promised : view.startsAt();
    }
}
