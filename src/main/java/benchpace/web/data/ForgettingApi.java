package benchpace.web.data;

import benchpace.board.Boards;
import benchpace.board.Forgetting;
import benchpace.files.Json;
import benchpace.web.guest.GuestCodes;
import benchpace.web.pairing.Access;
import benchpace.web.request.AskedClass;
import benchpace.web.request.Bodies;
import benchpace.web.request.Problem;
import benchpace.web.request.Refused;
import benchpace.words.ForgettingWords;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Optional;
import java.util.OptionalInt;

/** The JSON interface to forgetting guests: those of one class at once, and of all some days after it. */
public final class ForgettingApi {
    private final Boards boards;
    private final Forgetting forgetting;
    private final GuestCodes codes;
    private final Access access;

    public ForgettingApi(Boards boards, Forgetting forgetting, GuestCodes codes, Access access) {
        this.boards = boards;
        this.forgetting = forgetting;
        this.codes = codes;
        this.access = access;
    }

    public void routes(RoutesConfig routes) {
        routes.post("/api/classes/{id}/forget-guests", this::forget);
        routes.put("/api/settings/forget-guests", this::choose);
    }

    private void forget(Context ctx) {
        access.instructor(ctx);
        Forgetting.Outcome outcome = forgetting.forget(AskedClass.of(ctx, boards));
        if (!(outcome instanceof Forgetting.Outcome.Done done)) {
            throw new Refused(new Problem(409, "class-not-over", "The class is not over", ForgettingWords.notOver()));
        }
        codes.forgetThoseOf(boards);
        Bodies.send(ctx, 200, Json.object().put("forgottenAt", done.at().toString()).put("cleared", done.swept())
                .put("candlesOnShelf", done.candles()).put("told", ForgettingWords.done(done.swept())));
    }

    /** PUT: {@code {"days": 30}}, or null to keep names; {@code "sure": true} where some would go at once. */
    private void choose(Context ctx) {
        access.instructor(ctx);
        JsonNode body = Bodies.object(ctx);
        OptionalInt days = days(body.get("days"));
        JsonNode sure = body.path("sure");
        if (!sure.isMissingNode() && !sure.isBoolean()) {
            throw new Refused(Problem.unprocessable("\"sure\" must be true or false."));
        }
        Optional<String> atOnce = days.isEmpty() ? Optional.empty()
                : ForgettingWords.atOnce(days.getAsInt(), forgetting.outlook(days.getAsInt()));
        if (atOnce.isPresent() && !sure.asBoolean()) {
            throw new Refused(new Problem(409, "needs-a-yes", "Guests would be forgotten at once", atOnce.get()));
        }
        forgetting.days(days);
        ObjectNode told = Json.object();
        days.ifPresentOrElse(d -> told.put("days", d), () -> told.putNull("days"));
        Bodies.send(ctx, 200, told.put("told", ForgettingWords.rule(days)));
    }

    private static OptionalInt days(JsonNode days) {
        if (days != null && days.isNull()) {
            return OptionalInt.empty();
        }
        if (days == null || !days.isIntegralNumber() || !days.canConvertToInt() || days.intValue() < 1
                || days.intValue() > Forgetting.MOST_DAYS) {
            throw new Refused(Problem.unprocessable("\"days\" must be a whole number from 1 to " + Forgetting.MOST_DAYS
                    + ", or null to keep names."));
        }
        return OptionalInt.of(days.intValue());
    }
}
