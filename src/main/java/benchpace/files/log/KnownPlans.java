package benchpace.files.log;

import benchpace.files.Finding;
import benchpace.files.plan.PlanReader;
import benchpace.plan.Plan;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Sound plans that were read out of classes last, by their text. Most classes were held by few plans, and a plan is
 * most of what there is to read of a class that is over: it is read once, and they share it.
 */
final class KnownPlans {
    private static final int MOST = 32;
    private static final Map<String, Plan> KNOWN = Collections.synchronizedMap(new LinkedHashMap<>(MOST, 0.75f, true) {
        @Override protected boolean removeEldestEntry(Map.Entry<String, Plan> eldest) {
            return size() > MOST;
        }
    });

    private KnownPlans() { }

    static Optional<Plan> read(JsonNode node, String pointer, Consumer<Finding> problems) {
        String text = node.toString();
        Plan known = KNOWN.get(text);
        if (known != null) {
            return Optional.of(known);
        }
        boolean[] sound = {true};
        Optional<Plan> plan = PlanReader.read(node, pointer, problem -> {
            sound[0] = false;
            problems.accept(problem);
        });
        plan.filter(read -> sound[0]).ifPresent(read -> KNOWN.put(text, read));
        return plan;
    }
}
