package benchpace.web.plans;

import benchpace.board.PlanUse;
import benchpace.board.plans.BookPlan;
import benchpace.files.Json;
import benchpace.files.plan.PlanFolder;
import benchpace.plan.Plan;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.Optional;

/** What is told of a plan beside the plan itself. */
final class PlanJson {
    private static final int SHORT = 12;

    private PlanJson() { }

    /** One of the list. */
    static ObjectNode of(BookPlan listed, PlanUse use) {
        Plan plan = listed.plan();
        return of(listed).put("about", plan.about()).put("place", plan.place())
                .put("minutes", plan.onPaper(plan.usualSeats()).toMillis() / 60_000.0).put("steps", plan.steps().size())
                .put("lastRanAt", text(use.lastRan())).put("nextAt", text(use.next()));
    }

    /** What became of it. */
    static ObjectNode of(BookPlan plan) {
        return Json.object().put("id", plan.id()).put("name", plan.plan().name())
                .put("seats", plan.plan().usualSeats()).put("starter", plan.starter())
                .put("version", plan.version()).put("savedAt", text(plan.savedAt()));
    }

    private static String text(Optional<Instant> at) {
        return at.map(Instant::toString).orElse(null);
    }

    /** Names what the plan says, without quotation marks: the number of its version. */
    static String tag(BookPlan plan) {
        return plan.starter() ? "starter-" + PlanFolder.sha256(plan.plan()).substring(0, SHORT)
                : tag(plan.version());
    }

    static String tag(int version) {
        return Integer.toString(version);
    }
}
