package benchpace.web.classes;

import benchpace.board.cooling.SaidRange;
import benchpace.board.view.ClassView;
import benchpace.board.waiting.WaitView;
import benchpace.board.waiting.WaitView.ActivityView;
import benchpace.board.waiting.WaitView.CallView;
import benchpace.board.waiting.WaitView.StripView;
import benchpace.files.Json;
import benchpace.files.Words;
import benchpace.words.ChangeWords;
import benchpace.words.Times;
import benchpace.words.WaitWords;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.Optional;

/** The plan of the wait as JSON. */
final class WaitJson {
    private WaitJson() { }

    static ObjectNode of(ClassView view) {
        WaitView wait = view.waiting();
        Times times = new Times(view.zone());
        ObjectNode node = Json.object().put("plannedAt", text(wait.plannedAt()));
        ArrayNode activities = node.putArray("activities");
        wait.activities().forEach(a -> activities.add(activity(a)));
        ArrayNode calls = node.putArray("calls");
        wait.calls().forEach(c -> calls.add(call(c, view, times)));
        ArrayNode strips = node.putArray("strips");
        wait.strips().forEach(s -> strips.add(strip(s)));
        ArrayNode leisure = node.putArray("atLeisure");
        wait.leisure().forEach(o -> o.offers().forEach(leisure.addObject().put("seat", o.seat())
                .put("until", o.until().toString()).putArray("offers")::add));
        ArrayNode changes = node.putArray("changes");
        wait.changes().forEach(c -> changes.addObject().put("at", c.at().toString())
                .put("words", ChangeWords.sentence(c, times)));
        WaitWords.warnings(wait).forEach(node.putArray("warnings")::add);
        node.putObject("idleMinutes").put("planned", wait.idle().planned()).put("unplanned", wait.idle().unplanned())
                .put("mostPlanned", wait.idle().mostPlanned()).put("mostUnplanned", wait.idle().mostUnplanned())
                .put("soFar", wait.idle().soFar());
        return node;
    }

    private static ObjectNode activity(ActivityView a) {
        ObjectNode node = Json.object().put("id", a.id()).put("name", a.name()).put("kind", Words.of(a.kind()))
                .put("wholeClass", a.wholeClass()).put("where", a.where()).put("places", a.places())
                .put("open", a.open()).put("skipped", a.skipped()).put("openedAt", text(a.openedAt()))
                .put("extraMinutes", a.extraMinutes()).put("nowUntil", text(a.nowUntil()))
                .put("expectedAt", text(a.expected().map(SaidRange::latest)));
        a.seats().forEach(node.putArray("tapped")::add);
        a.now().forEach(node.putArray("now")::add);
        a.next().ifPresentOrElse(
                w -> w.seats().forEach(node.putObject("next").put("at", w.at().toString()).putArray("seats")::add),
                () -> node.putNull("next"));
        return node;
    }

    private static ObjectNode call(CallView call, ClassView view, Times times) {
        ObjectNode node = Json.object().put("what", WaitWords.what(call.event())).put("where", call.event().where())
                .put("at", call.at().toString()).put("state", Words.of(call.state())).put("told", call.told())
                .put("words", WaitWords.say(call, view.waiting().plannedAt().orElse(view.now()), times));
        call.seats().forEach(node.putArray("seats")::add);
        return node;
    }

    private static ObjectNode strip(StripView strip) {
        ObjectNode node = Json.object().put("seat", strip.seat()).put("freeFrom", strip.freeFrom().toString())
                .put("until", strip.until().toString()).put("poured", strip.poured())
                .put("idleMinutes", strip.wholeIdle()).put("idleMinutesUnplanned", strip.idleUnplanned());
        ArrayNode parts = node.putArray("parts");
        strip.parts().forEach(p -> parts.addObject().put("activity", p.activity()).put("from", p.from().toString())
                .put("until", p.until().toString()).put("progress", Words.of(p.status())));
        return node;
    }

    private static String text(Optional<Instant> instant) {
        return instant.map(Instant::toString).orElse(null);
    }
}
