package benchpace.bench;

import benchpace.files.Json;
import benchpace.files.plan.PlanFile;
import benchpace.files.plan.PlanReading;
import benchpace.files.roster.Demo;
import benchpace.plan.Plan;
import benchpace.plan.PlanId;
import benchpace.plan.Step;
import benchpace.plan.StepId;
import benchpace.web.TestBoard;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
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
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/** What a keystroke in the editor costs: the evening plan and one of all the steps there may be, read and asked for. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class PlanCheckBenchmark {
    private TestBoard board;
    private JsonNode evening;
    private String eveningText;
    private String longText;

    @Setup
    public void open() throws IOException {
        board = TestBoard.open(Files.createTempDirectory("plan-check"));
        board.instructor();
        evening = PlanFile.write(Demo.eveningPlan());
        eveningText = Json.text(evening);
        longText = Json.text(PlanFile.write(longest()));
    }

    private static Plan longest() {
        Plan plan = Demo.eveningPlan();
        List<Step> steps = new ArrayList<>();
        Step free = plan.steps().stream().filter(step -> !step.led()).findFirst().orElseThrow();
        for (int n = 0; n < Plan.MOST_STEPS - plan.steps().size(); n++) {
            steps.add(new Step(new StepId("more-" + n), free.name(), free.kind(), free.opening(), free.planned(),
                    free.allowance(), "x".repeat(300), "", ""));
        }
        steps.addAll(plan.steps());
        return new Plan(new PlanId("longest"), plan.name(), plan.about(), plan.place(), plan.usualSeats(), plan.table(),
                steps, plan.activities(), plan.candles());
    }

    @TearDown
    public void close() {
        board.close();
    }

    /** The rules alone. */
    @Benchmark
    public PlanReading reading() {
        return PlanFile.read(evening);
    }

    /** The whole way of a keystroke but for the network: HTTP on this machine, with a device's rights looked up. */
    @Benchmark
    public int asked() {
        return ask(eveningText);
    }

    /** The same with as many steps as a plan may have. */
    @Benchmark
    public int askedWithEveryStepThereMayBe() {
        return ask(longText);
    }

    private int ask(String plan) {
        return board.post("/api/plans/check", plan, board.instructor()).ok().json().get("problems").size();
    }
}
