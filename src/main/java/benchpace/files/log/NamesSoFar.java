package benchpace.files.log;

import benchpace.files.BadField;
import benchpace.files.Words;
import benchpace.live.ClassEvent;
import benchpace.live.Setup;
import benchpace.plan.Plan;
import benchpace.plan.SeatNumber;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What the events of a class may speak of, event by event: the steps, activities and candles of its plan, the seats
 * that were ever at its table, and the events before. A log that holds to it can be added up.
 */
final class NamesSoFar {
    private final List<ClassEvent> before = new ArrayList<>();
    private final Set<Integer> seats = new HashSet<>();
    private Plan plan;

    /** @throws BadField if the event speaks of what there is not, or is a creation where none may stand */
    void see(ClassEvent event) {
        boolean creates = event instanceof ClassEvent.ClassCreated;
        if (creates != before.isEmpty()) {
            throw new BadField("type", creates ? "is \"create\" a second time"
                    : "must be \"create\" in the first event");
        }
        if (event instanceof ClassEvent.ClassCreated created) {
            setUp(created.setup());
        } else if (event instanceof ClassEvent.ClassSetUpAgain again) {
            setUp(again.setup());
        } else {
            if (event instanceof ClassEvent.SeatAdded added) {
                seats.add(added.seat().value());
            }
            names(EventJson.fields(event));
        }
        before.add(event);
    }

    private void setUp(Setup setup) {
        plan = setup.plan();
        setup.seats().stream().map(ClassEvent.Place::seat).map(SeatNumber::value).forEach(seats::add);
    }

    /** Whatever names something does so under the same field in every event. */
    private void names(ObjectNode fields) {
        known(fields, "step", plan.steps().stream().map(step -> step.id().value()).toList());
        known(fields, "activity", plan.activities().stream().map(activity -> activity.id().value()).toList());
        known(fields, "candle", plan.candles().stream().map(candle -> candle.id()).toList());
        for (String field : List.of("seat", "with", "to")) {
            if (fields.path(field).isInt() && !seats.contains(fields.get(field).intValue())) {
                throw new BadField(field, "is " + fields.get(field) + ", and this class has no such seat");
            }
        }
        if (fields.has("seq")) {
            target(fields.get("seq").longValue());
        }
    }

    private static void known(ObjectNode fields, String field, Collection<String> there) {
        if (fields.has(field) && !there.contains(fields.get(field).textValue())) {
            String name = fields.get(field).textValue();
            throw new BadField(field, "is \"" + name + "\", which is not in the class's plan"
                    + Words.suggestion(name, there));
        }
    }

    private void target(long seq) {
        if (seq > before.size()) {
            throw new BadField("target", "is " + seq + ", and no such event came before");
        }
        ClassEvent event = before.get((int) seq - 1);
        if (event instanceof ClassEvent.ClassCreated || event instanceof ClassEvent.ClassSetUpAgain
                || event instanceof ClassEvent.Undone || event instanceof ClassEvent.ClockShifted) {
            throw new BadField("target", "is " + seq + ", an event that cannot be taken back or corrected");
        }
    }
}
