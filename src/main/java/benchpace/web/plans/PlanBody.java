package benchpace.web.plans;

import benchpace.files.Finding;
import benchpace.files.plan.PlanFile;
import benchpace.files.plan.PlanReading;
import benchpace.plan.Plan;
import benchpace.web.request.Bodies;
import benchpace.web.request.Problem;
import benchpace.web.request.Refused;
import io.javalin.http.Context;
import java.io.IOException;
import java.util.List;

/** A request whose body is a plan, as its file would be: everything wrong with it is told, at its place. */
final class PlanBody {
    private PlanBody() { }

    static PlanReading read(Context ctx) {
        try {
            return PlanFile.read(Bodies.whole(ctx));
        } catch (IOException e) {
            throw new Refused(Problem.badRequest("The body did not arrive whole."));
        }
    }

    /** @throws Refused with every problem */
    static Plan sound(Context ctx) {
        PlanReading reading = read(ctx);
        return reading.ifSound().orElseThrow(() -> new Refused(Problem.unsound(reading.problems())));
    }

    /** @throws Refused also if it has another id than the plan that the address names */
    static Plan soundOf(Context ctx, String id) {
        Plan plan = sound(ctx);
        if (!plan.id().value().equals(id)) {
            throw new Refused(Problem.unsound(List.of(new Finding("/id", "must be \"" + id + "\", the plan of this "
                    + "address; as a new plan it can have an id of its own"))));
        }
        return plan;
    }
}
