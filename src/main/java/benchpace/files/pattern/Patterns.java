package benchpace.files.pattern;

import benchpace.files.plan.PlanFile;
import benchpace.files.plan.PlanReading;
import benchpace.plan.Plan;
import benchpace.plan.pattern.Answers;
import java.io.IOException;
import java.io.InputStream;
import java.util.Map;

/** The pattern plans: one for each way to pour, in {@code benchpace/plan/pattern} among the resources. */
final class Patterns {
    private static final Map<Answers.Pouring, Plan> ALL = Map.of(
            Answers.Pouring.GUESTS, read("guests"),
            Answers.Pouring.HELPERS, read("helpers"),
            Answers.Pouring.HELPERS_FOR_CHILDREN, read("children"));

    private Patterns() { }

    static Plan of(Answers.Pouring pouring) {
        return ALL.get(pouring);
    }

    private static Plan read(String name) {
        try (InputStream in = Patterns.class.getResourceAsStream("/benchpace/plan/pattern/" + name + ".json")) {
            PlanReading reading = PlanFile.read(in);
            return reading.ifSound().orElseThrow(() ->
                    new IllegalStateException("the program's own pattern " + name + ": " + reading.problems()));
        } catch (IOException e) {
            throw new IllegalStateException("the program cannot read its own pattern " + name, e);
        }
    }
}
