package benchpace.files.roster;

import benchpace.files.plan.PlanFile;
import benchpace.files.plan.PlanReading;
import benchpace.plan.Plan;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The plans and the roster of an invented place that come with the program, from its {@code demo-data} folder. */
public final class Demo {
    /** The plans' ids, the demo class's own first. */
    static final List<String> PLANS = List.of("evening-pour", "table-of-six", "big-table");

    private Demo() { }

    /** All of them, in the order of {@link #PLANS}. */
    public static List<Plan> plans() {
        return PLANS.stream().map(Demo::plan).toList();
    }

    /** The evening class that the board opens with. */
    public static Plan eveningPlan() {
        return plan(PLANS.get(0));
    }

    /** Its eight seats, some without a name. */
    public static Roster eveningRoster() {
        try (InputStream in = open("rosters/evening.csv")) {
            return Roster.read(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new IllegalStateException("the program cannot read its own demo data", e);
        }
    }

    private static Plan plan(String id) {
        try (InputStream in = open("plans/" + id + ".json")) {
            PlanReading reading = PlanFile.read(in);
            return reading.ifSound().orElseThrow(() ->
                    new IllegalStateException("the program's own plan " + id + ": " + reading.problems()));
        } catch (IOException e) {
            throw new IllegalStateException("the program cannot read its own demo data", e);
        }
    }

    private static InputStream open(String name) {
        InputStream in = Demo.class.getResourceAsStream("/demo-data/" + name);
        if (in == null) {
            throw new IllegalStateException("the program lacks its file demo-data/" + name);
        }
        return in;
    }
}
