package benchpace.bench;

import benchpace.plan.Candle;
import benchpace.plan.Plan;
import benchpace.plan.kit.Appliance;
import benchpace.plan.kit.Circuit;
import benchpace.plan.kit.Kit;
import benchpace.plan.kit.Melter;
import benchpace.plan.kit.Supply;
import benchpace.prep.TestKits;
import benchpace.prep.sheet.PrepSheet;
import benchpace.words.prep.PrepText;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** A prep sheet without its odds: of an evening as it is, and of the largest plan that is taken. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class PrepBenchmark {
    private final Plan evening = TestKits.plan();
    private final Plan largest = filled();

    /** Every list as long as it may be; each circuit too full, so that advice is looked for. */
    private static Plan filled() {
        List<Melter> melters = new ArrayList<>();
        List<Appliance> appliances = new ArrayList<>();
        List<Circuit> circuits = new ArrayList<>();
        List<Candle> candles = new ArrayList<>();
        List<Supply> supplies = new ArrayList<>();
        for (int i = 0; i < Kit.MOST; i++) {
            melters.add(new Melter("pot-" + i, "Pot " + i, "soy", OptionalDouble.of(2000), 100,
                    OptionalDouble.of(2500 + i), OptionalDouble.of(0.7), Melter.ScentedIn.JUG));
            appliances.add(TestKits.melterOn("on-" + i, "pot-" + i, "wall-" + i, 240));
            circuits.add(new Circuit("wall-" + i, "Wall " + i, OptionalDouble.of(120), OptionalDouble.of(15),
                    Optional.of(Circuit.Rule.NORTH_AMERICA)));
            candles.add(TestKits.candle("candle-" + i, TestKits.soy(), 200 + i, 0.05, 62));
        }
        for (int i = 0; i < Kit.MOST_SUPPLIES; i++) {
            supplies.add(new Supply("supply-" + i, "Supply " + i, 1, 1, 10, 12, 3, i % 2 == 0, OptionalDouble.of(4),
                    "Box " + i % 7));
        }
        return TestKits.plan(new Kit(OptionalDouble.of(21), 5, 60, OptionalInt.of(120), TestKits.LOADS, melters,
                appliances, circuits, supplies), candles.toArray(new Candle[0]));
    }

    @Benchmark
    public PrepSheet evening() {
        return PrepSheet.of(evening, 8, Map.of());
    }

    @Benchmark
    public PrepSheet largest() {
        return PrepSheet.of(largest, 60, Map.of("candle-3", 20));
    }

    /** The sheet and all of its sentences. */
    @Benchmark
    public String inWords() {
        return PrepText.of(evening, PrepSheet.of(evening, 8, Map.of()));
    }
}
