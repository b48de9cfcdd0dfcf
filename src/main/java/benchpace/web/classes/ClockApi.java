package benchpace.web.classes;

import benchpace.board.Boards;
import benchpace.board.ClassBoard;
import benchpace.board.ClockBoard;
import benchpace.board.time.ClockChoice;
import benchpace.board.time.ClockDisagreement;
import benchpace.files.Json;
import benchpace.live.Era;
import benchpace.web.pairing.Access;
import benchpace.web.request.Bodies;
import benchpace.web.request.Problem;
import benchpace.web.request.Reads;
import benchpace.web.request.Refused;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Which clock is right, the board's or the computer's. The instructor's to say. */
public final class ClockApi {
    private static final Map<String, ClockChoice> CHOICES = Map.of("board", ClockChoice.BOARD,
            "computer", ClockChoice.COMPUTER, "slept", ClockChoice.SLEPT);

    private final Boards boards;
    private final Access access;

    public ClockApi(Boards boards, Access access) {
        this.boards = boards;
        this.access = access;
        boards.clocks().whenSetRight(access::setRight);
    }

    public void routes(RoutesConfig routes) {
        Reads.route(routes, "/api/clock", ctx -> {
            access.instructor(ctx);
            Bodies.send(ctx, 200, clocks());
        });
        routes.post("/api/clock", this::choose);
    }

    private ObjectNode clocks() {
        ClockBoard clocks = boards.clocks();
        ObjectNode json = Json.object().put("board", clocks.board().toString())
                .put("computer", clocks.computer().toString());
        clocks.disagreement().ifPresentOrElse(d -> {
            ArrayNode choices = json.putObject("disagreement").put("since", d.since().toString())
                    .put("computerAheadSeconds", d.ahead().toMillis() / 1000.0).putArray("choices");
            choices(d, choices);
        }, () -> json.putNull("disagreement"));
        ArrayNode ahead = json.putArray("classesAhead");
        boards.atHand().stream().filter(board -> !board.ahead().isZero()).forEach(board -> ahead.addObject()
                .put("id", board.id()).put("lastRecordedAt", board.live().lastRecordedAt().toString())
                .put("aheadSeconds", board.ahead().toMillis() / 1000.0));
        return json;
    }

    private static void choices(ClockDisagreement d, ArrayNode choices) {
        choices.add("board");
        if (d.possible()) {
            choices.add("computer");
        }
        if (d.possible() && d.slept()) {
            choices.add("slept");
        }
    }

    /** POST /api/clock: {@code {"choice"}} and {@code {"class"}} if it is about one class that is ahead. */
    private void choose(Context ctx) {
        access.instructor(ctx);
        JsonNode body = Bodies.object(ctx);
        ClockChoice choice = Optional.ofNullable(CHOICES.get(Bodies.text(body, "choice", 20)
                .toLowerCase(Locale.ROOT))).orElseThrow(() -> new Refused(Problem.unprocessable(
                        "\"choice\" must be \"board\", \"computer\" or \"slept\".")));
        String id = Bodies.text(body, "class", 80);
        boolean done = id.isEmpty() ? boards.clocks().choose(choice) : choose(boards.find(id).orElseThrow(() ->
                new Refused(Problem.notFound("There is no class of that name here."))), choice);
        if (!done) {
            throw new Refused(Era.isPossibleNow(boards.clocks().computer())
                    ? new Problem(409, "nothing-to-decide", "There is nothing to decide",
                            "The clocks agree by now, or this cannot be said of them. Nothing was changed.")
                    : new Problem(409, "impossible-clock", "The computer's clock cannot be right",
                            "The computer's clock shows a time that cannot be. Set it right first."));
        }
        Bodies.send(ctx, 200, clocks());
    }

    private boolean choose(ClassBoard board, ClockChoice choice) {
        if (choice == ClockChoice.COMPUTER) {
            return boards.clocks().bringBack(board);
        }
        boolean ahead = choice == ClockChoice.BOARD && !board.ahead().isZero();
        if (ahead) {
            board.leaveAhead();
        }
        return ahead;
    }
}
