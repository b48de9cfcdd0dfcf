package benchpace.files.plan;

import benchpace.files.Fields;
import benchpace.files.Finding;
import benchpace.plan.Activity;
import benchpace.plan.Candle;
import benchpace.plan.Opening;
import benchpace.plan.Plan;
import benchpace.plan.PlanId;
import benchpace.plan.SeatNumber;
import benchpace.plan.Step;
import benchpace.plan.StepId;
import benchpace.plan.StepKind;
import benchpace.plan.TableShape;
import benchpace.plan.kit.Kit;
import com.fasterxml.jackson.databind.JsonNode;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/**
 * Reads a plan by hand from the tree. To add a part: give it a field of the draft, sound from the start, and one line
 * in {@link #read}.
 */
public final class PlanReader extends Draft<Plan> {
    /** Stands for "some step was done by hand" while a plan is not complete; no file can name it by accident. */
    private static final Step SOME_STEP = new Step(new StepId("0-some-step-no-plan-file-would-name-it-0"),
            "some step", StepKind.HANDS_ON, Opening.FREE, Duration.ofMinutes(1), Duration.ZERO, "", "", "");

    private PlanId id = new PlanId("plan");
    private String name = "this plan";
    private String about = "";
    private String place = "";
    private int usualSeats = 1;
    private TableShape table = TableShape.LONG_TABLE;
    private List<Step> steps = List.of(SOME_STEP);
    private List<Activity> activities = List.of();
    private List<Candle> candles = List.of();
    private Kit kit = Kit.NONE;

    private PlanReader(Fields fields) {
        super(fields);
    }

    public static Optional<Plan> read(JsonNode node, String pointer, Consumer<Finding> problems) {
        Fields fields = new Fields(node, pointer, problems);
        if (!fields.sound()) {
            return Optional.empty();
        }
        PlanReader plan = new PlanReader(fields);
        plan.put("id", fields.named("id", PlanId::new), plan.id, v -> plan.id = v);
        plan.put("name", fields.text("name"), plan.name, v -> plan.name = v);
        plan.put("about", fields.text("about", ""), "", v -> plan.about = v);
        plan.put("place", fields.text("place", ""), "", v -> plan.place = v);
        plan.put("seats", fields.whole("seats", 1, SeatNumber.MOST).map(Long::intValue), 1, v -> plan.usualSeats = v);
        plan.put("table", fields.choice("table", TableShape.class), plan.table, v -> plan.table = v);
        plan.put("steps", plan.steps(fields), plan.steps, v -> plan.steps = v);
        plan.put("activities", Optional.of(Entries.read(fields, "activities", Plan.MOST_ACTIVITIES, "activity",
                ActivityDraft::read, activity -> activity.id().value()).sound()), plan.activities,
                v -> plan.activities = v);
        plan.put("candles", Optional.of(Entries.read(fields, "candles", Plan.MOST_CANDLES, "candle",
                CandleDraft::read, Candle::id).sound()), plan.candles, v -> plan.candles = v);
        if (fields.has("prep")) {
            plan.put("prep", fields.inner("prep").flatMap(KitDraft::read), plan.kit, v -> plan.kit = v);
        }
        return plan.finished();
    }

    @Override public Plan get() {
        return new Plan(id, name, about, place, usualSeats, table, steps, activities, candles, kit);
    }

    /** The steps, if each is sound where it stands. */
    private Optional<List<Step>> steps(Fields fields) {
        List<Step> read = new ArrayList<>();
        List<Step> pourAndCure = new ArrayList<>();
        Set<StepId> ids = new HashSet<>();
        int entries = fields.eachObject("steps", 1, Plan.MOST_STEPS, object -> StepDraft.read(object)
                .filter(step -> fits(step, object, pourAndCure, ids))
                .ifPresent(read::add));
        return entries > 0 && read.size() == entries ? Optional.of(read) : Optional.empty();
    }

    /** Whether the step may stand after what was poured and cured before it; told of at the step itself. */
    private boolean fits(Step step, Fields object, List<Step> pourAndCure, Set<StepId> ids) {
        if (!ids.add(step.id())) {
            object.tell("id", "\"" + step.id() + "\" is the id of an earlier step already");
            return false;
        }
        List<Step> before = steps;
        List<Step> trial = new ArrayList<>(List.of(SOME_STEP));
        trial.addAll(pourAndCure);
        trial.add(step);
        steps = trial;
        try {
            get();
        } catch (IllegalArgumentException refused) {
            object.tell("kind", refused.getMessage());
            return false;
        } finally {
            steps = before;
        }
        if (step.kind() == StepKind.POUR || step.kind() == StepKind.CURE) {
            pourAndCure.add(step);
        }
        return true;
    }
}
