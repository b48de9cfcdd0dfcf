package benchpace.files.plan;

import benchpace.files.Json;
import benchpace.files.Words;
import benchpace.plan.Activity;
import benchpace.plan.Plan;
import benchpace.plan.Stations;
import benchpace.plan.Step;
import benchpace.plan.kit.Kit;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Duration;

/** Writes what {@link PlanReader} reads. */
final class PlanWriter {
    private PlanWriter() { }

    static ObjectNode write(Plan plan) {
        ObjectNode node = Json.object()
                .put("id", plan.id().value())
                .put("name", plan.name())
                .put("about", plan.about())
                .put("place", plan.place())
                .put("seats", plan.usualSeats())
                .put("table", Words.of(plan.table()));
        ArrayNode steps = node.putArray("steps");
        plan.steps().forEach(step -> steps.add(step(step)));
        ArrayNode activities = node.putArray("activities");
        plan.activities().forEach(activity -> activities.add(activity(activity)));
        ArrayNode candles = node.putArray("candles");
        plan.candles().forEach(candle -> candles.add(CandleJson.write(candle)));
        if (!plan.kit().equals(Kit.NONE)) {
            node.set("prep", KitJson.write(plan.kit()));
        }
        return node;
    }

    private static ObjectNode step(Step step) {
        ObjectNode node = Json.object()
                .put("id", step.id().value())
                .put("name", step.name())
                .put("kind", Words.of(step.kind()))
                .put("opening", Words.of(step.opening()));
        minutes(node, "minutes", step.planned());
        minutes(node, "allowanceMinutes", step.allowance());
        node.put("say", step.say())
                .put("caution", step.caution())
                .put("wall", step.wall());
        step.picture().ifPresent(shown -> node.put("picture", Words.of(shown)));
        step.stations().ifPresent(served -> node.set("stations", stations(served, step.planned())));
        return node;
    }

    /** A seat keeps its station as long as the step takes unless another time is written. */
    private static ObjectNode stations(Stations served, Duration step) {
        ObjectNode node = Json.object().put("atOnce", served.atOnce()).put("what", served.what());
        if (!served.each().equals(step)) {
            minutes(node, "minutesEach", served.each());
        }
        return node;
    }

    private static ObjectNode activity(Activity activity) {
        ObjectNode node = Json.object()
                .put("id", activity.id().value())
                .put("name", activity.name())
                .put("kind", Words.of(activity.kind()))
                .put("audience", Words.of(activity.audience()));
        minutes(node, "typicalMinutes", activity.typical());
        minutes(node, "longestMinutes", activity.longest());
        node.put("places", activity.places());
        ArrayNode needs = node.putArray("needs");
        activity.needs().stream().sorted().map(Words::of).forEach(needs::add);
        return node.put("interruptible", activity.interruptible())
                .put("where", activity.where())
                .put("ledBy", activity.ledBy())
                .put("cue", activity.cue())
                .put("caution", activity.caution());
    }

    /** Whole minutes are written whole: people read these files. */
    private static void minutes(ObjectNode node, String field, Duration length) {
        if (length.toMillis() % 60_000 == 0) {
            node.put(field, length.toMinutes());
        } else {
            node.put(field, length.toMillis() / 60_000.0);
        }
    }
}
