package benchpace.web.plans;

import benchpace.files.Json;
import benchpace.files.plan.PlanFile;
import benchpace.files.plan.PlanReading;
import benchpace.plan.Plan;
import benchpace.units.UnitChoice;
import benchpace.web.screen.plans.EditPage;
import benchpace.web.screen.plans.EditSections;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Time of the check that follows a keystroke, on one core: a plan of 30 steps and 60 supplies, form to problems. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class EditBenchmark {
    private Plan plan;
    private ObjectNode form;

    @Setup
    public void fill() throws IOException {
        ObjectNode json = PlanFile.write(PlanFile.read(Path.of("src/test/resources/benchpace/web/plans/kit.json"))
                .ifSound().orElseThrow());
        ArrayNode steps = (ArrayNode) json.get("steps");
        for (int n = steps.size(); n < 30; n++) {
            steps.insert(1, Json.object().put("id", "extra-" + n).put("name", "Extra " + n).put("kind", "hands-on")
                    .put("minutes", 1));
        }
        ArrayNode supplies = (ArrayNode) json.at("/prep/supplies");
        for (int n = supplies.size(); n < 60; n++) {
            supplies.addObject().put("id", "thing-" + n).put("name", "Thing " + n).put("perSeat", 1).put("packSize", 1);
        }
        plan = PlanFile.read(json).ifSound().orElseThrow();
        form = EditForms.untouched(plan, UnitChoice.METRIC);
    }

    /** What is asked after each rest of the fingers. */
    @Benchmark
    public PlanReading check() {
        return PlanFile.read(EditReading.read("mine", form, UnitChoice.METRIC).plan());
    }

    /** The fields of the page, once. */
    @Benchmark
    public List<EditPage.Section> page() {
        return new EditSections(plan, UnitChoice.METRIC).all();
    }
}
