package benchpace.web.shelf;

import benchpace.board.Answer;
import benchpace.board.Boards;
import benchpace.board.ClassBoard;
import benchpace.board.ShelfBoard;
import benchpace.board.ShelfBoard.Outcome;
import benchpace.board.cooling.CandleClock;
import benchpace.board.view.ClassView;
import benchpace.board.view.SeatView;
import benchpace.live.ClassEvent;
import benchpace.live.Command;
import benchpace.live.Refusal;
import benchpace.plan.SeatNumber;
import benchpace.shelf.Claim;
import benchpace.shelf.ClaimWord;
import benchpace.shelf.ShelfEntry;
import benchpace.shelf.ShelfEvent;
import benchpace.shelf.ShelfPlace;
import benchpace.web.pairing.Access;
import benchpace.web.request.AskedClass;
import benchpace.web.request.Bodies;
import benchpace.web.request.Problem;
import benchpace.web.request.RefusalWords;
import benchpace.web.request.Refused;
import benchpace.web.screen.shell.Viewer;
import com.fasterxml.jackson.databind.JsonNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import java.util.Optional;

/**
 * A guest leaves before the candle is set: the candle goes to the shelf, then the seat leaves. In this order, so that a
 * place somebody else took meanwhile leaves the class as it was; if the class refuses, the candle is taken back.
 */
public final class LeaveApi {
    private static final int LONGEST_NAME = 60;

    private final Boards boards;
    private final ShelfBoard shelf;
    private final ShelfApi shelfApi;
    private final Access access;
    private final ZoneId zone;

    public LeaveApi(Boards boards, ShelfBoard shelf, ShelfApi shelfApi, Access access, ZoneId zone) {
        this.boards = boards;
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
        SeatView seat = seat(board.view(), ctx.pathParam("seat"));
        CandleClock candle = seat.candle().orElseThrow(() -> new Refused(new Problem(409, "not-poured",
                "Nothing is poured yet", "Seat " + seat.seat() + " has no candle of its own to put on the shelf.")));
        JsonNode body = Bodies.object(ctx);
        String commandId = ShelfApi.commandId(body);
        ShelfPlace place = ShelfApi.place(body).orElseThrow(() -> new Refused(
                Problem.unprocessable("\"shelf\" and \"place\" are missing.")));
        Optional<ClaimWord> typed = typedClaim(body);
        ClaimWord claim = typed.orElseGet(() -> ShelfApi.freshWord(shelf));
        String name = Bodies.text(body, "name", LONGEST_NAME).strip();
        Optional<Instant> collectBy = collectBy(body);
        SeatNumber number = new SeatNumber(seat.seat());
        Outcome outcome = shelf.submit(commandId, e -> e instanceof ShelfEvent.Placed put
                        && isPut(put, board.id(), number, place, typed, name, collectBy),
                s -> shelf.standing(board.id(), number).map(ShelfEntry::id),
                (rules, s, now) -> rules.put(s, board.id(), number, place, candle.said().until(), collectBy, claim,
                        name, now));
        if (outcome instanceof Outcome.Refused refused) {
            throw new Refused(ShelfWords.of(refused.why(), zone));
        }
        Outcome.Done done = (Outcome.Done) outcome;
        boolean left = leave(shelf, board, seat, commandId, viewer.device(), !done.duplicate());
        ShelfEntry entry = done.entry().orElseThrow(() -> new Refused(new Problem(409,
                "taken-back", "It was taken back", "This candle was put on the shelf and taken back since.")));
        Bodies.send(ctx, 201, EntryJson.of(entry, shelf.now(), shelfApi::className).put("left", left));
    }

    /**
     * A class that is over, or a seat that has left already, does not keep a candle from the shelf.
     *
     * @param seat as it was seen; it may have left meanwhile
     * @param device the mark of the device that asks
     * @param put  whether this request put the candle there: what another one put is not its to take back
     */
    static boolean leave(ShelfBoard shelf, ClassBoard board, SeatView seat, String commandId, String device,
                         boolean put) {
        if (seat.mark() == SeatView.Mark.LEFT || board.live().closedAt().isPresent()) {
            return seat.mark() == SeatView.Mark.LEFT;
        }
        SeatNumber number = new SeatNumber(seat.seat());
        Answer answer = board.submit(new Command(Command.own("leave." + commandId), "instructor", device,
                board.now(), new ClassEvent.SeatLeft(number)));
        if (answer instanceof Answer.Refused refused && !(refused.reason() instanceof Refusal.AlreadySo)) {
            if (put) {
                shelf.guestIsBack(Command.own("back." + commandId), board.id(), number, shelf.now());
            }
            throw new Refused(RefusalWords.of(board.live(), refused.reason()));
        }
        return true;
    }

    static SeatView seat(ClassView view, String text) {
        return view.seats().stream().filter(s -> Integer.toString(s.seat()).equals(text)).findFirst()
                .orElseThrow(() -> new Refused(Problem.notFound("There is no seat " + text + " in this class.")));
    }

    /** Whether that candle was put there with these words; those that were erased since are as they are sent. */
    private static boolean isPut(ShelfEvent.Placed put, String classId, SeatNumber seat, ShelfPlace place,
                                 Optional<ClaimWord> typed, String name, Optional<Instant> collectBy) {
        boolean erased = put.claim() instanceof Claim.Erased;
        return put.classId().equals(classId) && put.seat().equals(seat) && put.place().equals(place)
                && collectBy.filter(day -> !day.isBefore(put.readyFrom())).map(put.collectBy()::equals).orElse(true)
                && (erased || put.name().equals(name) && typed.map(put.claim()::equals).orElse(true));
    }

    /** The word that was drawn for the guest; empty if none was. */
    private static Optional<ClaimWord> typedClaim(JsonNode body) {
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
