package benchpace.files.pattern;

import benchpace.plan.Activity;
import benchpace.plan.ActivityKind;
import benchpace.plan.Candle;
import benchpace.plan.Plan;
import benchpace.plan.PlanId;
import benchpace.plan.Stations;
import benchpace.plan.Step;
import benchpace.plan.StepKind;
import benchpace.plan.TableShape;
import benchpace.plan.Wax;
import benchpace.plan.kit.Appliance;
import benchpace.plan.kit.Circuit;
import benchpace.plan.kit.Kit;
import benchpace.plan.kit.Loads;
import benchpace.plan.kit.Melter;
import benchpace.plan.kit.Supply;
import benchpace.plan.pattern.Answers;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Pattern;

/** Fits a pattern plan to the answers. Steps of patterns are known by their ids. */
final class Fitting {
    /** How much of the pattern is kept. */
    enum Form {
        FULL(Set.of("leave")),
        BRISK(Set.of("leave", "vessel", "centre")),
        COLLECTED_LATER(Set.of("vessel", "centre", "trim", "wrap", "close"));

        private final Set<String> leftOut;

        Form(Set<String> leftOut) {
            this.leftOut = leftOut;
        }
    }

    private static final Pattern ID = Pattern.compile("[a-z0-9][a-z0-9-]{0,39}");
    private static final String SCENT = "fragrance";
    private static final Set<String> SCENTED = Set.of(SCENT, "mix");
    /** A brisk talk or finish: a minute less, and no less than two. */
    private static final Duration LEAST_BRISK = Duration.ofMinutes(2);
    /** How long before the class a melter is on, until the sheet knows better; common practice, no source. */
    private static final int MELTING_MINUTES = 120;
    private static final int LONG_TABLE_SEATS = 10;
    private static final int TWO_TABLES_SEATS = 20;

    private Fitting() { }

    // ---- steps

    /** The steps of that form, the wait among them as long as the pattern has it. */
    static List<Step> steps(Answers answers, Form form) {
        boolean scented = answers.candle().fragranceFraction() > 0;
        return Patterns.of(answers.pouring()).steps().stream()
                .filter(step -> !form.leftOut.contains(step.id().value()))
                .filter(step -> scented || !SCENTED.contains(step.id().value()))
                .map(step -> form == Form.FULL ? step : brisk(step))
                .map(step -> served(step, answers)).toList();
    }

    private static Step brisk(Step step) {
        Duration less = step.planned().minusMinutes(1);
        boolean shortened = step.kind() != StepKind.POUR && step.kind() != StepKind.CURE
                && step.stations().isEmpty() && less.compareTo(LEAST_BRISK) >= 0;
        return shortened ? step.lasting(less) : step;
    }

    /** With as many stations as were answered; with none if all fit at once. */
    private static Step served(Step step, Answers answers) {
        int places = answers.atOnce();
        Optional<Stations> stations = step.stations().filter(s -> places < answers.seats())
                .map(s -> new Stations(places, places + " " + s.what() + (places == 1 ? "" : "s"), s.each()));
        return step.served(stations);
    }

    static List<Step> withWait(List<Step> steps, int minutes) {
        return steps.stream().map(step -> step.kind() == StepKind.CURE
                ? step.lasting(Duration.ofMinutes(minutes)) : step).toList();
    }

    static List<Step> withoutWait(List<Step> steps) {
        return steps.stream().filter(step -> step.kind() != StepKind.CURE).toList();
    }

    // ---- the rest

    static Plan plan(PlanId id, String name, Answers answers, List<Step> steps) {
        Plan pattern = Patterns.of(answers.pouring());
        Duration wait = steps.stream().filter(step -> step.kind() == StepKind.CURE).map(Step::planned).findFirst()
                .orElse(Duration.ZERO);
        boolean takenHome = steps.stream().noneMatch(step -> step.id().value().equals("leave"));
        List<Activity> activities = pattern.activities().stream()
                .filter(activity -> activity.longest().compareTo(wait) < 0)
                .filter(activity -> takenHome || activity.kind() != ActivityKind.WRAPPING)
                .map(activity -> forAll(activity, answers.seats())).toList();
        return new Plan(id, name, pattern.about(), "", answers.seats(), table(answers.seats()), steps, activities,
                List.of(answers.candle()), kit(pattern.kit(), answers));
    }

    private static TableShape table(int seats) {
        if (seats <= LONG_TABLE_SEATS) {
            return TableShape.LONG_TABLE;
        }
        return seats <= TWO_TABLES_SEATS ? TableShape.TWO_TABLES : TableShape.ROWS;
    }

    /** What the whole class does at once has room for all; of the rest half the class at least. */
    private static Activity forAll(Activity activity, int seats) {
        int places = activity.isClassBreak() ? seats : Math.min(seats, Math.max(activity.places(), (seats + 1) / 2));
        return new Activity(activity.id(), activity.name(), activity.kind(), activity.audience(), activity.typical(),
                activity.longest(), places, activity.needs(), activity.interruptible(), activity.where(),
                activity.ledBy(), activity.cue(), activity.caution());
    }

    /** Figures of pot, circuits and makers are absent until somebody reads them off: the sheet asks for them. */
    private static Kit kit(Kit pattern, Answers answers) {
        Candle candle = answers.candle();
        boolean hired = answers.venue() == Answers.Venue.HIRED_VENUE;
        boolean scented = candle.fragranceFraction() > 0;
        String name = pattern.melters().get(0).name();
        List<Melter> pots = named(candle.wax()) ? List.of(new Melter("pot", name, candle.wax().id(),
                OptionalDouble.empty(), 0, OptionalDouble.empty(), OptionalDouble.empty(), Melter.ScentedIn.JUG))
                : List.of();
        List<Circuit> circuits = List.of(pattern.circuits().get(hired ? 1 : 0));
        Appliance plug = new Appliance("pot-plug", name, OptionalDouble.empty(),
                pots.stream().map(Melter::id).findFirst(), Optional.of(circuits.get(0).id()),
                answers.minutes() + MELTING_MINUTES);
        List<Supply> supplies = pattern.supplies().stream()
                .filter(supply -> scented || !supply.id().equals(SCENT))
                .map(supply -> packed(supply, candle, hired, ownId(candle.wax(), pattern))).toList();
        Loads loads = scented ? new Loads(Optional.of(candle.convention()), OptionalDouble.empty(),
                OptionalDouble.empty(), OptionalDouble.empty()) : Loads.NONE;
        return new Kit(OptionalDouble.of(candle.roomCelsius()), pattern.spillPercent(), pattern.readyMarginMinutes(),
                OptionalInt.of(answers.minutes()), loads, pots, List.of(plug), circuits, supplies);
    }

    /** Whether its id is one that melters and supplies may have: a wax of somebody's own may be called anything. */
    private static boolean named(Wax wax) {
        return ID.matcher(wax.id()).matches();
    }

    /** What the wax is called among the supplies. */
    private static String ownId(Wax wax, Kit pattern) {
        return named(wax) && pattern.supplies().stream().noneMatch(supply -> supply.id().equals(wax.id()))
                ? wax.id() : "wax";
    }

    /** The pattern's "vessel" and "wax" are those of the candle; boxes are for the road only. */
    private static Supply packed(Supply supply, Candle candle, boolean hired, String wax) {
        String id = supply.id().equals("wax") ? wax : supply.id();
        String name = switch (supply.id()) {
            case "wax" -> candle.wax().name().length() > 50 ? supply.name() : candle.wax().name();
            case "vessel" -> candle.vessel().name().length() > 60 ? supply.name() : candle.vessel().name();
            default -> supply.name();
        };
        return new Supply(id, name, supply.perSeat(), supply.perClass(), supply.sparePercent(), supply.packSize(),
                supply.inStock(), supply.reusable(), supply.pricePerPack(), hired ? supply.box() : "");
    }
}
