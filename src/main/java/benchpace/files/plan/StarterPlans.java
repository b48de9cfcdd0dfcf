package benchpace.files.plan;

import benchpace.plan.Candle;
import benchpace.plan.Plan;
import java.io.IOException;
import java.io.InputStream;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The plans that come with the program, for different sizes, vessels and lengths, held nowhere in particular: a class
 * that is set up from one is held at the studio. They stand in the folder {@code demo-data/plans}; who wants one of
 * their own copies it.
 */
public final class StarterPlans {
    /** Their ids, the demo class's own first, in the order in which they are offered. */
    public static final List<String> IDS = List.of("evening-pour", "table-of-six", "big-table", "small-tins",
            "two-wick-bowl", "pillar-mould", "class-of-forty", "childrens-party", "travelling-class");

    private StarterPlans() { }

    /** All of them, in the order of {@link #IDS}. */
    public static List<Plan> all() {
        return IDS.stream().map(StarterPlans::plan).toList();
    }

    /** The candles that they make, each once, in their order: what somebody may choose from who begins a new plan. */
    public static List<Candle> candles() {
        Map<String, Candle> candles = new LinkedHashMap<>();
        all().stream().flatMap(plan -> plan.candles().stream())
                .forEach(candle -> candles.putIfAbsent(candle.name(), candle));
        return List.copyOf(candles.values());
    }

    /** @param id one of {@link #IDS} */
    public static Plan plan(String id) {
        try (InputStream in = StarterPlans.class.getResourceAsStream("/demo-data/plans/" + id + ".json")) {
            if (in == null) {
                throw new IllegalStateException("the program lacks its file demo-data/plans/" + id + ".json");
            }
            PlanReading reading = PlanFile.read(in);
            return reading.ifSound().orElseThrow(() ->
                    new IllegalStateException("the program's own plan " + id + ": " + reading.problems()));
        } catch (IOException e) {
            throw new IllegalStateException("the program cannot read its own demo data", e);
        }
    }
}
