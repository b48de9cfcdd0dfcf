package benchpace.files.roster;

import benchpace.files.plan.StarterPlans;
import benchpace.plan.Plan;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The class of an invented place that comes with the program: its plan and its roster, from {@code demo-data}. */
public final class Demo {
    private Demo() { }

    /** The demo class's plan and two more of its kind, for other tables: the first of the starter plans. */
    public static List<Plan> plans() {
        return StarterPlans.IDS.subList(0, 3).stream().map(StarterPlans::plan).toList();
    }

    /** The evening class that the board opens with. */
    public static Plan eveningPlan() {
        return StarterPlans.plan("evening-pour");
    }

    /** Its eight seats, some without a name. */
    public static Roster eveningRoster() {
        try (InputStream in = open("rosters/evening.csv")) {
            return Roster.read(new String(in.readAllBytes(), StandardCharsets.UTF_8));
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
