package benchpace.prep.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.files.prep.PrepJson;
import benchpace.plan.Candle;
import benchpace.plan.Plan;
import benchpace.plan.kit.Appliance;
import benchpace.plan.kit.Circuit;
import benchpace.plan.kit.Kit;
import benchpace.plan.kit.LoadConvention;
import benchpace.plan.kit.Loads;
import benchpace.plan.kit.Melter;
import benchpace.plan.kit.Supply;
import benchpace.prep.Part;
import benchpace.prep.TestKits;
import benchpace.prep.circuit.Verdict;
import benchpace.prep.wax.Load;
import benchpace.words.prep.PrepText;
import benchpace.words.prep.PrepWords;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;

/** Whatever a plan says or leaves out, there is a sheet, and all that is absent is accounted for. */
class AnyKitProperties {

    @Property(tries = 200) void what_is_absent_is_named_and_the_rest_stands(
            @ForAll @LongRange long seed, @ForAll @IntRange(min = 1, max = 60) int seats) {
        Random random = new Random(seed);
        Plan plan = TestKits.plan(kit(random), candles(random));

        PrepSheet sheet = PrepSheet.of(plan, seats, Map.of());

        List<String> ofMelters = sheet.problems(Part.MELTER).stream().map(p -> p.id()).toList();
        sheet.melters().stream().filter(m -> m.switchOnMinutesBefore().isEmpty())
                .forEach(m -> assertThat(ofMelters).contains(m.melter().id()));
        assertThat(sheet.circuits()).allSatisfy(line -> {
            assertThat(line.verdict().isPresent()).isEqualTo(!line.reasons().isEmpty());
            assertThat(line.verdict().isPresent() || !sheet.problems().isEmpty()).isTrue();
            line.advice().forEach(a -> assertThat(a.verdict()).isNotEqualTo(Verdict.OVER));
        });
        sheet.candles().stream().filter(c -> c.scented() && c.load() == Load.UNKNOWN)
                .forEach(c -> assertThat(sheet.problems(Part.LOAD)).isNotEmpty());
        sheet.candles().stream().filter(c -> c.load() == Load.OVER).forEach(c -> assertThat(sheet.problems(Part.LOAD))
                .anyMatch(p -> p.id().equals(c.candle().id())));
        assertAmounts(PrepJson.write(sheet, PrepWords.problems(sheet)));
        assertThat(PrepText.of(plan, sheet)).doesNotContain("NaN", "Infinity", "Optional", "null");
    }

    /** No amount is below nothing; a cold room may be. */
    private static void assertAmounts(JsonNode json) {
        json.fields().forEachRemaining(field -> {
            if (field.getValue().isNumber()) {
                assertThat(field.getValue().asDouble()).as(field.getKey()).isFinite()
                        .isGreaterThanOrEqualTo(field.getKey().endsWith("Celsius") ? -10 : 0);
            }
        });
        json.forEach(AnyKitProperties::assertAmounts);
    }

    private static Candle[] candles(Random random) {
        return IntStream.range(0, random.nextInt(3)).mapToObj(i -> TestKits.candle("candle-" + i,
                random.nextBoolean() ? TestKits.soy() : TestKits.paraffin(), 1 + random.nextInt(3000),
                random.nextBoolean() ? 0 : random.nextDouble() * 0.25, 30 + random.nextInt(100)))
                .toArray(Candle[]::new);
    }

    private static Kit kit(Random random) {
        List<Melter> melters = new ArrayList<>();
        List<Circuit> circuits = new ArrayList<>();
        List<Appliance> appliances = new ArrayList<>();
        List<Supply> supplies = new ArrayList<>();
        for (int i = random.nextInt(3); i > 0; i--) {
            melters.add(new Melter("pot-" + i, "Pot " + i, random.nextBoolean() ? "soy" : "paraffin",
                    maybe(random, 1000, 20_000), random.nextInt(900), maybe(random, 1, 3000), maybe(random, 0.01, 0.9),
                    Melter.ScentedIn.values()[random.nextInt(2)]));
        }
        for (int i = random.nextInt(4); i > 0; i--) {
            circuits.add(new Circuit("wall-" + i, "Wall " + i, maybe(random, 100, 240), maybe(random, 5, 30),
                    random.nextInt(5) == 0 ? Optional.empty()
                            : Optional.of(Circuit.Rule.values()[random.nextInt(4)])));
        }
        for (int i = random.nextInt(5); i > 0; i--) {
            Optional<String> circuit = circuits.isEmpty() || random.nextInt(6) == 0 ? Optional.empty()
                    : Optional.of(circuits.get(random.nextInt(circuits.size())).id());
            Optional<String> melter = melters.isEmpty() || random.nextBoolean() ? Optional.empty()
                    : Optional.of(melters.get(random.nextInt(melters.size())).id());
            appliances.add(new Appliance("plug-" + i, "Plug " + i, melter.isPresent() ? OptionalDouble.empty()
                    : maybe(random, 1, 3000), melter, circuit, 1 + random.nextInt(400)));
        }
        for (String id : List.of("wick", "soy", "fragrance", "jug")) {
            supplies.add(new Supply(id, "Thing " + id, random.nextInt(3), random.nextInt(2), random.nextInt(60),
                    1 + random.nextInt(500), random.nextInt(900), random.nextBoolean(), maybe(random, 0, 40),
                    random.nextBoolean() ? "" : "Box"));
        }
        Loads loads = new Loads(random.nextBoolean() ? Optional.of(LoadConvention.OF_WAX) : Optional.empty(),
                maybe(random, 1, 12), maybe(random, 1, 12), maybe(random, 40, 120));
        return new Kit(maybe(random, -10, 55), random.nextInt(30), random.nextInt(90), OptionalInt.empty(), loads,
                melters, appliances, circuits, supplies);
    }

    private static OptionalDouble maybe(Random random, double from, double span) {
        return random.nextInt(4) == 0 ? OptionalDouble.empty() : OptionalDouble.of(from + span * random.nextDouble());
    }
}
