package benchpace.web.shelf;

import benchpace.board.Boards;
import benchpace.board.LeavingEarly;
import benchpace.board.ShelfBoard;
import benchpace.board.ShelfBoard.Outcome;
import benchpace.files.Json;
import benchpace.files.ShelfJson;
import benchpace.live.Command;
import benchpace.shelf.ClaimWord;
import benchpace.shelf.ClaimWords;
import benchpace.shelf.EntryId;
import benchpace.shelf.Shelf;
import benchpace.shelf.ShelfEntry;
import benchpace.shelf.ShelfEvent;
import benchpace.shelf.ShelfPlace;
import benchpace.web.pairing.Access;
import benchpace.web.pairing.Secrets;
import benchpace.web.request.Bodies;
import benchpace.web.request.Problem;
import benchpace.web.request.Reads;
import benchpace.web.request.Refused;
import benchpace.words.ShelfWords;
import benchpace.words.Times;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Duration;
import java.time.ZoneId;
import java.util.Collection;
import java.util.Optional;

/** The JSON interface to the pickup shelf. Putting a candle there is part of its seat leaving: {@link LeaveApi}. */
public final class ShelfApi {
    static final Duration REMIND_AHEAD = Duration.ofDays(3);
    private static final int SUGGESTIONS = 12;
    private static final int LONGEST_QUERY = 80;

    private final ShelfBoard shelf;
    private final Boards boards;
    private final Access access;
    private final ZoneId zone;

    public ShelfApi(ShelfBoard shelf, Boards boards, Access access, ZoneId zone) {
        this.shelf = shelf;
        this.boards = boards;
        this.access = access;
        this.zone = zone;
    }

    public void routes(RoutesConfig routes) {
        Reads.route(routes, "/api/shelf", this::list);
        Reads.route(routes, "/api/shelf/reminders", this::reminders);
        Reads.route(routes, "/api/shelf/claim-words", this::claimWord);
        Reads.route(routes, "/api/shelf/settings", ctx -> {
            access.paired(ctx);
            Bodies.send(ctx, 200, ShelfJson.arrangement(shelf.arrangement()));
        });
        routes.put("/api/shelf/settings", ctx -> {
            access.instructor(ctx);
            shelf.arrange(ShelfJson.readArrangement(Bodies.object(ctx)));
            Bodies.send(ctx, 200, ShelfJson.arrangement(shelf.arrangement()));
        });
        routes.post("/api/shelf/collect", this::collectByWord);
        routes.post("/api/shelf/{entry}/collect", this::collect);
        routes.post("/api/shelf/{entry}/undo", this::undo);
        routes.post("/api/shelf/{entry}/move", this::move);
        routes.post("/api/shelf/{entry}/take-back", this::takeBack);
    }

    String className(String classId) {
        return boards.find(classId).map(b -> b.live().name()).orElse(classId);
    }

    private void list(Context ctx) {
        access.paired(ctx);
        String typed = Optional.ofNullable(ctx.queryParam("q")).orElse("").strip();
        Shelf now = shelf.shelf();
        ObjectNode body = Json.object().put("now", shelf.now().toString());
        body.set("entries", entries(typed.isEmpty() ? now.entries() : now.search(clipped(typed))));
        ArrayNode free = body.putArray("free");
        now.suggest(shelf.arrangement().layout(), "", SUGGESTIONS)
                .forEach(p -> free.addObject().put("shelf", p.shelf()).put("place", p.number()));
        Bodies.send(ctx, 200, body);
    }

    static String clipped(String typed) {
        return typed.substring(0, Math.min(typed.length(), LONGEST_QUERY));
    }

    private void reminders(Context ctx) {
        access.paired(ctx);
        Bodies.send(ctx, 200, entries(shelf.shelf().reminders(shelf.now(), REMIND_AHEAD)));
    }

    private void claimWord(Context ctx) {
        access.paired(ctx);
        Bodies.send(ctx, 200, Json.object().put("claim", freshWord(shelf).toString()));
    }

    static ClaimWord freshWord(ShelfBoard shelf) {
        return ClaimWords.draw(Secrets.seed(), shelf.shelf().takenWords());
    }

    private ArrayNode entries(Collection<ShelfEntry> entries) {
        ArrayNode list = Json.mapper().createArrayNode();
        entries.forEach(e -> list.add(EntryJson.of(e, shelf.now(), this::className)));
        return list;
    }

    private void collectByWord(Context ctx) {
        access.paired(ctx);
        JsonNode body = Bodies.object(ctx);
        String typed = Bodies.text(body, "claim", LONGEST_QUERY);
        if (typed.isBlank()) {
            throw new Refused(Problem.unprocessable("\"claim\" is missing."));
        }
        boolean tested = yes(body, "handTested");
        answer(ctx, shelf.submit(commandId(body),
                e -> e instanceof ShelfEvent.Collected && hasWord(e.entry(), typed), s -> Optional.empty(),
                (rules, s, now) -> rules.collect(s, typed, tested, now)));
    }

    /** Whether a candle has, or once had, the word that was typed. */
    private boolean hasWord(EntryId id, String typed) {
        return shelf.shelf().entry(id).filter(e -> e.erased() || e.claimWord().equals(ClaimWord.read(typed)))
                .isPresent();
    }

    private void collect(Context ctx) {
        access.paired(ctx);
        EntryId id = id(ctx);
        JsonNode body = Bodies.object(ctx);
        boolean tested = yes(body, "handTested");
        answer(ctx, shelf.submit(commandId(body), e -> e instanceof ShelfEvent.Collected && e.entry().equals(id),
                s -> Optional.of(id), (rules, s, now) -> rules.collect(s, id, tested, now)));
    }

    private void undo(Context ctx) {
        access.paired(ctx);
        EntryId id = id(ctx);
        JsonNode body = Bodies.object(ctx);
        Optional<ShelfPlace> elsewhere = place(body);
        answer(ctx, shelf.submit(commandId(body), e -> e instanceof ShelfEvent.CollectionUndone undone
                && e.entry().equals(id) && elsewhere.map(undone.place()::equals).orElse(true),
                s -> Optional.of(id), (rules, s, now) -> elsewhere
                .map(p -> rules.undo(s, id, p, now)).orElseGet(() -> rules.undo(s, id, now))));
    }

    private void move(Context ctx) {
        access.paired(ctx);
        EntryId id = id(ctx);
        JsonNode body = Bodies.object(ctx);
        ShelfPlace to = place(body).orElseThrow(() -> new Refused(
                Problem.unprocessable("\"shelf\" and \"place\" are missing.")));
        answer(ctx, shelf.submit(commandId(body), e -> e instanceof ShelfEvent.Moved moved && e.entry().equals(id)
                && moved.to().equals(to), s -> Optional.of(id),
                (rules, s, now) -> rules.move(s, id, to, now)));
    }

    private void takeBack(Context ctx) {
        access.instructor(ctx);
        EntryId id = id(ctx);
        answer(ctx, shelf.submit(commandId(Bodies.object(ctx)),
                e -> e instanceof ShelfEvent.TakenBack && e.entry().equals(id), s -> Optional.of(id),
                (rules, s, now) -> rules.takeBack(s, id, now)));
    }

    private void answer(Context ctx, Outcome outcome) {
        if (outcome instanceof Outcome.Refused refused) {
            throw new Refused(Problem.of(ShelfWords.of(refused.why(), new Times(zone))));
        }
        Outcome.Done done = (Outcome.Done) outcome;
        Bodies.send(ctx, 200, done.entry().map(e -> EntryJson.of(e, shelf.now(), this::className))
                .orElseGet(() -> Json.object().put("id", done.id().value()).put("status", "taken-back"))
                .put("duplicate", done.duplicate()));
    }

    private static EntryId id(Context ctx) {
        String text = ctx.pathParam("entry");
        if (!text.matches("[1-9]\\d{0,11}")) {
            throw new Refused(Problem.notFound("There is no candle \"" + text + "\" on the shelf."));
        }
        return new EntryId(Long.parseLong(text));
    }

    /** The id that makes repeating harmless. */
    static String commandId(JsonNode body) {
        String id = Bodies.text(body, "commandId", LeavingEarly.LONGEST_ID).strip();
        if (id.isEmpty()) {
            throw new Refused(Problem.unprocessable("\"commandId\" is missing."));
        }
        if (Command.isOwn(id)) {
            throw new Refused(Problem.unprocessable("\"commandId\" must not begin with \"board.\": the board gives "
                    + "itself such ids."));
        }
        return id;
    }

    static Optional<ShelfPlace> place(JsonNode body) {
        String board = Bodies.text(body, "shelf", 30).strip();
        JsonNode number = body.get("place");
        if (board.isEmpty() && (number == null || number.isNull())) {
            return Optional.empty();
        }
        if (board.isEmpty() || number == null || !number.isIntegralNumber() || !number.canConvertToInt()
                || number.intValue() < 1) {
            throw new Refused(Problem.unprocessable("\"shelf\" must be text and \"place\" a number from 1 on."));
        }
        return Optional.of(new ShelfPlace(board, number.intValue()));
    }

    private static boolean yes(JsonNode body, String field) {
        JsonNode value = body.get(field);
        if (value != null && !value.isNull() && !value.isBoolean()) {
            throw new Refused(Problem.unprocessable("\"" + field + "\" must be true or false."));
        }
        return value != null && value.booleanValue();
    }
}
