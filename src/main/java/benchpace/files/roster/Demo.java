package benchpace.files.roster;

import benchpace.files.log.RecordedClass;
import benchpace.files.plan.StarterPlans;
import benchpace.live.LiveClass;
import benchpace.live.Recorded;
import benchpace.plan.Plan;
import benchpace.plan.Studio;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/**
 * The class of an invented place that comes with the program: its plan and its roster, and an evening of it that was
 * recorded, from {@code demo-data}.
 */
public final class Demo {
    /** Who sets it up, as its first event says: the board by itself. */
    public static final String BY = "demo";
    /** Whose room it is held in. */
    public static final Studio STUDIO = new Studio("The Tallow Loft", "Quay Lane, Marrowby", Optional.empty());
    /** Where it is held. */
    public static final String PLACE = STUDIO.name() + ", " + STUDIO.place();
    private static final String RECORDED = "evenings/tallow-loft.jsonl";

    private Demo() { }

    /** Whether a class is the demo's, wherever it is held: who set it up tells. */
    public static boolean is(LiveClass live) {
        return live.log().get(0).by().equals(BY);
    }

    /** The demo class's plan and two more of its kind, for other tables: the first of the starter plans. */
    public static List<Plan> plans() {
        return StarterPlans.IDS.subList(0, 3).stream().map(StarterPlans::plan)
                .map(plan -> plan.orHeldAt(PLACE)).toList();
    }

    /** The evening class that the board opens with. */
    public static Plan eveningPlan() {
        return StarterPlans.plan("evening-pour").orHeldAt(PLACE);
    }

    /** Its eight seats, some without a name. */
    public static Roster eveningRoster() {
        try (InputStream in = open("rosters/evening.csv")) {
            return Roster.read(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new IllegalStateException("the program cannot read its own demo data", e);
        }
    }

    /** An evening of it from the first tap to the close, to be watched. */
    public static List<Recorded> recordedEvening() {
        try (Reader in = new InputStreamReader(open(RECORDED), StandardCharsets.UTF_8)) {
            return RecordedClass.read(RECORDED, in);
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
