package benchpace.web.shelf;

import benchpace.board.Boards;
import benchpace.board.ClassBoard;
import benchpace.board.LeavingEarly;
import benchpace.board.LeavingEarly.Outcome;
import benchpace.board.ShelfBoard;
import benchpace.board.view.ClassView;
import benchpace.board.view.SeatView;
import benchpace.plan.SeatNumber;
import benchpace.shelf.ClaimWord;
import benchpace.shelf.ShelfPlace;
import benchpace.web.pairing.Access;
import benchpace.web.request.AskedClass;
import benchpace.web.request.Bodies;
import benchpace.web.request.Problem;
import benchpace.web.request.Refused;
import benchpace.web.screen.shell.Viewer;
import benchpace.words.RefusalWords;
import benchpace.words.ShelfWords;
import benchpace.words.Times;
import com.fasterxml.jackson.databind.JsonNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import java.util.Optional;

/** Reads that a guest leaves before the candle is set, and answers what {@link LeavingEarly} made of it. */
public final class LeaveApi {
    private static final int LONGEST_NAME = 60;

    private final Boards boards;
    private final LeavingEarly leaving;
    private final ShelfBoard shelf;
    private final ShelfApi shelfApi;
    private final Access access;
    private final ZoneId zone;

    public LeaveApi(Boards boards, LeavingEarly leaving, ShelfBoard shelf, ShelfApi shelfApi, Access access,
                    ZoneId zone) {
        this.boards = boards;
        this.leaving = leaving;
        this.shelf = shelf;
        this.shelfApi = shelfApi;
        this.access = access;
        this.zone = zone;
    }

    public void routes(RoutesConfig routes) {
        routes.post("/api/classes/{id}/seats/{seat}/leave", this::leave);
    }

    private void leave(Context ctx) {
        Viewer viewer = access.instructor(ctx);
        ClassBoard board = AskedClass.of(ctx, boards);
        SeatNumber seat = new SeatNumber(seat(board.view(), ctx.pathParam("seat")).seat());
        JsonNode body = Bodies.object(ctx);
        ShelfPlace place = ShelfApi.place(body).orElseThrow(() -> new Refused(
                Problem.unprocessable("\"shelf\" and \"place\" are missing.")));
        Outcome outcome = leaving.leave(board, new LeavingEarly.Wish(ShelfApi.commandId(body), viewer.device(), seat,
                place, claim(body), Bodies.text(body, "name", LONGEST_NAME).strip(), collectBy(body)),
                () -> ShelfApi.freshWord(shelf));
        if (!(outcome instanceof Outcome.OnTheShelf done)) {
            throw new Refused(problem(outcome, board));
        }
        Bodies.send(ctx, 201, EntryJson.of(done.candle(), shelf.now(), shelfApi::className).put("left", done.left()));
    }

    private Problem problem(Outcome outcome, ClassBoard board) {
        if (outcome instanceof Outcome.NotPoured r) {
            return new Problem(409, "not-poured", "Nothing is poured yet", "Seat " + r.seat()
                    + " has no candle of its own to put on the shelf.");
        } else if (outcome instanceof Outcome.ShelfRefused r) {
            return Problem.of(ShelfWords.of(r.why(), new Times(zone)));
        } else if (outcome instanceof Outcome.ClassRefused r) {
            return Problem.of(RefusalWords.of(board.live().plan(), r.why()));
        }
        return new Problem(409, "taken-back", "It was taken back",
                "This candle was put on the shelf and taken back since.");
    }

    static SeatView seat(ClassView view, String text) {
        return view.seats().stream().filter(s -> Integer.toString(s.seat()).equals(text)).findFirst()
                .orElseThrow(() -> new Refused(Problem.notFound("There is no seat " + text + " in this class.")));
    }

    /** The word that was drawn for the guest; empty if none was. */
    private static Optional<ClaimWord> claim(JsonNode body) {
        String typed = Bodies.text(body, "claim", 40);
        return typed.isBlank() ? Optional.empty() : Optional.of(ClaimWord.read(typed).orElseThrow(() -> new Refused(
                Problem.unprocessable("\"claim\" must be a word and two digits, such as maple 42."))));
    }

    /** Until the end of that day. */
    private Optional<Instant> collectBy(JsonNode body) {
        String text = Bodies.text(body, "collectBy", 10);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        try {
            LocalDate day = LocalDate.parse(text);
            LocalDate today = LocalDate.ofInstant(shelf.now(), zone);
            if (day.isBefore(today) || day.isAfter(today.plusYears(1))) {
                throw new Refused(Problem.unprocessable("\"collectBy\" must be a day within a year from today."));
            }
            return Optional.of(day.atTime(LocalTime.of(23, 59)).atZone(zone).toInstant());
        } catch (DateTimeParseException e) {
            throw new Refused(Problem.unprocessable("\"collectBy\" must be a day such as 2027-03-18."));
        }
    }
}
