package benchpace.web.screen.shell;

import benchpace.board.view.ClassView;
import benchpace.board.view.KnownClass;
import benchpace.files.Json;
import benchpace.files.Words;
import benchpace.files.log.EventJson;
import benchpace.live.EventTrait;
import benchpace.live.Seat;
import benchpace.plan.Step;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.Locale;
import java.util.Optional;

/** What a page carries to go on without the board, read by {@code static/js/offline}. Times are ms since 1970. */
public final class KnownJson {
    private KnownJson() { }

    /** What holds of commands by their type alone, as far as a page goes by it; the same for every class. */
    public static String traits() {
        ObjectNode traits = Json.object();
        types(traits.putArray("eachCounts"), EventTrait.EACH_COUNTS);
        types(traits.putArray("afterTheClose"), EventTrait.AFTER_THE_CLOSE);
        return Json.text(traits);
    }

    private static void types(ArrayNode list, EventTrait trait) {
        EventJson.types(trait).forEach(list::add);
    }

    /** The plan's steps: they stay the same while a class runs. */
    public static String steps(KnownClass known) {
        ArrayNode steps = Json.mapper().createArrayNode();
        for (Step step : known.steps()) {
            steps.addObject().put("id", step.id().value()).put("name", step.name())
                    .put("kind", Words.of(step.kind()))
                    .put("led", step.led()).put("tap", step.needsTap())
                    .put("minutes", step.planned().toSeconds() / 60.0)
                    .put("say", step.say()).put("caution", step.caution());
        }
        return Json.text(steps);
    }

    /** All that the taps so far have come to. */
    public static String known(ClassView view) {
        return known(view.known(), view.seq());
    }

    public static String known(KnownClass known, long seq) {
        ObjectNode json = Json.object().put("seq", seq).put("closed", known.closed())
                .put("upToCure", known.upToCure()).put("whole", known.whole()).put("tried", known.tried());
        ObjectNode opened = json.putObject("opened");
        known.opened().forEach(o -> mark(opened.putObject(o.step()), o.at(), o.seq()));
        ArrayNode seats = json.putArray("seats");
        known.seats().forEach(seat -> seat(seats.addObject(), seat,
                Optional.ofNullable(known.firm().get(seat.number()))));
        return Json.text(json);
    }

    private static void mark(ObjectNode mark, Instant at, long seq) {
        mark.put("at", at.toEpochMilli()).put("seq", seq);
    }

    private static void seat(ObjectNode json, Seat seat, Optional<Instant> firm) {
        json.put("seat", seat.number().value()).put("name", seat.name())
                .put("presence", seat.presence().name().toLowerCase(Locale.ROOT))
                .put("shares", seat.sharesWith().map(host -> host.value()).orElse(0))
                .put("paused", ms(seat.pausedSince())).put("again", ms(seat.pouredAgainAt()))
                .put("judged", ms(seat.judgedSetAt())).put("skin", ms(seat.skinSeenAt())).put("firm", ms(firm))
                .put("hint", seat.hint().map(h -> h.step().value()).orElse(""));
        ObjectNode finishes = json.putObject("finishes");
        seat.finishes().forEach((step, finish) ->
                mark(finishes.putObject(step.value()), finish.at(), finish.seq()));
        json.putNull("claim");
        seat.claim().ifPresent(claim -> json.putObject("claim").put("helper", claim.helper())
                .put("at", claim.at().toEpochMilli()));
        ArrayNode still = json.putArray("still");
        seat.stillAt().forEach(answer -> still.add(answer.step().value()));
    }

    private static long ms(Optional<Instant> at) {
        return at.map(Instant::toEpochMilli).orElse(0L);
    }
}
