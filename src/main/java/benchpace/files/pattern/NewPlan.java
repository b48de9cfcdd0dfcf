package benchpace.files.pattern;

import benchpace.cure.CuringCandle;
import benchpace.cure.TableCase;
import benchpace.cure.room.CureOutlook;
import benchpace.cure.room.RoomFit;
import benchpace.cure.room.RoomPosterior;
import benchpace.cure.room.TrajectoryCache;
import benchpace.plan.Candle;
import benchpace.plan.Plan;
import benchpace.plan.PlanId;
import benchpace.plan.Step;
import benchpace.plan.StepKind;
import benchpace.plan.pattern.Answers;
import benchpace.plan.pattern.Remark;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A plan made from a few answers, and what has to be said of it. The plan is sound whatever was answered; where it
 * could not be as asked, a remark says so.
 */
public record NewPlan(Plan plan, List<Remark> remarks) {
    /** A wait that is worth waiting for. */
    static final int SHORTEST_WAIT = 10;
    /** Poured warmer than this, wax is a matter for grown-ups; common practice, no source. */
    private static final double KIND_TO_CHILDREN_CELSIUS = 55;

    public NewPlan {
        remarks = List.copyOf(remarks);
    }

    /**
     * The fullest form that fits the time: all its steps; else a brisk form; else one whose candles are collected
     * later.
     *
     * @param name at most 80 characters, not blank
     * @throws IllegalArgumentException for a name that no plan may have
     */
    public static NewPlan of(PlanId id, String name, Answers answers) {
        OptionalInt ready = readyMinutes(answers.candle());
        List<Remark> remarks = new ArrayList<>();
        List<Step> steps = takenHome(answers, ready).orElseGet(() -> collectedLater(answers, ready, remarks));
        if (answers.pouring() == Answers.Pouring.HELPERS_FOR_CHILDREN
                && answers.candle().pourCelsius() > KIND_TO_CHILDREN_CELSIUS) {
            remarks.add(new Remark.HotForChildren(answers.candle().pourCelsius()));
        }
        return new NewPlan(Fitting.plan(id, name, answers, steps), remarks);
    }

    private static Optional<List<Step>> takenHome(Answers answers, OptionalInt ready) {
        for (Fitting.Form form : List.of(Fitting.Form.FULL, Fitting.Form.BRISK)) {
            List<Step> steps = Fitting.steps(answers, form);
            if (ready.isPresent() && spare(answers, steps) >= ready.getAsInt()) {
                return Optional.of(Fitting.withWait(steps, ready.getAsInt()));
            }
        }
        return Optional.empty();
    }

    private static List<Step> collectedLater(Answers answers, OptionalInt ready, List<Remark> remarks) {
        List<Step> steps = Fitting.steps(answers, Fitting.Form.COLLECTED_LATER);
        int spare = spare(answers, steps);
        boolean wait = spare >= SHORTEST_WAIT;
        remarks.add(new Remark.CollectedLater(ready.orElse(0), wait ? spare : 0));
        if (spare < 0) {
            remarks.add(new Remark.LongerThanAsked(answers.minutes(), answers.minutes() - spare));
        }
        for (int places = answers.atOnce() + 1; places <= answers.seats(); places++) {
            if (takenHome(answers.pouringAtOnce(places), ready).isPresent()) {
                remarks.add(new Remark.MorePlaces(answers.atOnce(), places));
                break;
            }
        }
        return wait ? Fitting.withWait(steps, spare) : Fitting.withoutWait(steps);
    }

    /** Whole minutes that the steps but the wait leave of the time that was asked; below 0 if they run over. */
    private static int spare(Answers answers, List<Step> steps) {
        Duration taken = steps.stream().filter(step -> step.kind() != StepKind.CURE)
                .map(step -> step.onPaper(answers.seats())).reduce(Duration.ZERO, Duration::plus);
        return (int) Math.floor((answers.minutes() * 60L - taken.toSeconds()) / 60.0);
    }

    /** When half of such candles are ready in a room that taught nothing, up to full five minutes. */
    private static OptionalInt readyMinutes(Candle candle) {
        TableCase table = TableCase.of(candle.vessel(), candle.wax(), candle.fillGrams(), candle.fragranceFraction(),
                candle.roomCelsius(), candle.pourCelsius(), candle.tableTop(), 1);
        if (table.fault().isPresent()) {
            return OptionalInt.empty();
        }
        double likely = CureOutlook.of(new CuringCandle(candle.id(), table.coolingCase(), false),
                RoomPosterior.of(RoomFit.untaught()), new TrajectoryCache()).ready().p50();
        return Double.isFinite(likely) && likely <= 420
                ? OptionalInt.of(5 * (int) Math.ceil(Math.max(1, likely) / 5)) : OptionalInt.empty();
    }
}
