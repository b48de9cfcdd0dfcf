package benchpace.report.whatif;

import benchpace.pace.ClassTrack;
import benchpace.plan.Plan;
import benchpace.plan.PlanVariants;
import benchpace.plan.Step;
import benchpace.plan.StepKind;
import benchpace.report.Medians;
import benchpace.report.StepSummary;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/** The changes that apply to a class, with what it shows of each. */
final class Changes {
    private static final int MOST_STEPS = 3;
    private static final int EARLIER_MINUTES = 10;
    /** What is left of a talk that is cut. */
    private static final double LEAST_TALK_MINUTES = 1;

    private final Past past;
    private final Plan plan;
    private final ClassTrack track;
    private final Reenactment asWas;
    private final Reenactment.Played played;

    /** @param asWas the class as it was ticked */
    Changes(Past past, Reenactment asWas) {
        this.past = past;
        this.plan = past.plan();
        this.track = past.track();
        this.asWas = asWas;
        this.played = asWas.played(new Otherwise(track.seats().size(), track.pourStep() + 1));
    }

    List<Change> all() {
        List<Change> all = new ArrayList<>();
        all.add(new Change.MoreHelp(past.flags().size()));
        steps(k -> PlanVariants.mayBeFree(plan, step(k)) && asWas.opens(k) && done(k) > 0).stream()
                .map(k -> new Change.Free(k, waitedForOpening(k))).forEach(all::add);
        steps(k -> PlanVariants.mayBeLed(plan, step(k)) && done(k) > 1).stream().map(Change.Led::new)
                .forEach(all::add);
        PlanVariants.wicks(plan).map(s -> plan.indexOf(s.id())).filter(k -> canGo(k)).flatMap(this::beforehand)
                .ifPresent(all::add);
        smaller().ifPresent(all::add);
        steps(k -> step(k).stations().isPresent() && step(k).stations().get().atOnce() < done(k)).stream()
                .map(k -> new Change.MoreStations(k, step(k).stations().orElseThrow().atOnce() + 1, longestWait(k)))
                .forEach(all::add);
        earlier().ifPresent(all::add);
        return all;
    }

    private Step step(int k) {
        return plan.steps().get(k);
    }

    /** The longest of those up to the pour for which something holds, a few, in the order of the plan. */
    private List<Integer> steps(IntPredicate which) {
        return IntStream.rangeClosed(0, track.pourStep()).filter(which).boxed()
                .sorted(Comparator.comparing((Integer k) -> step(k).planned()).reversed()).limit(MOST_STEPS).sorted()
                .toList();
    }

    private int done(int k) {
        return (int) IntStream.range(0, track.seats().size()).filter(i -> asWas.does(i, k)).count();
    }

    /** A plan needs a step that seats do, and the class one that was done. */
    private boolean canGo(int k) {
        return done(k) > 0 && step(k).kind() == StepKind.HANDS_ON
                && plan.steps().stream().filter(Step::needsTap).count() > 1;
    }

    private Optional<Change> beforehand(int k) {
        return took(k).map(t -> new Change.Beforehand(k, t.medianMinutes(), t.mostMinutes(),
                past.candles().size()));
    }

    private Optional<StepSummary> took(int k) {
        return past.took().stream().filter(t -> t.step() == k).findFirst();
    }

    private double waitedForOpening(int k) {
        return Medians.of(IntStream.range(0, track.seats().size()).filter(i -> asWas.does(i, k))
                .mapToDouble(i -> Math.max(0, played.opened()[k] - readyFor(i, k))).toArray());
    }

    private double readyFor(int i, int k) {
        double came = track.seats().get(i).arrivedMinutes();
        return k == 0 ? came : played.done()[i][k - 1];
    }

    private double longestWait(int k) {
        return IntStream.range(0, track.seats().size()).mapToDouble(i -> asWas.waitedForTurn(i, k)).max().orElse(0);
    }

    private Optional<Change> smaller() {
        return past.smaller().map(s -> {
            var last = past.candles().values().stream()
                    .max(Comparator.comparing(c -> c.readyMinutes())).orElseThrow();
            return new Change.SmallerVessels(s.fillShare(), last.readyMinutes() - last.pouredMinutes());
        });
    }

    /** The step that took longest, up to ten minutes earlier, as far as talks and openings before it give way. */
    private Optional<Change> earlier() {
        return past.took().stream().max(Comparator.comparing(StepSummary::medianMinutes)).flatMap(slowest -> {
            var talks = new TreeMap<Integer, Double>();
            var openings = new TreeMap<Integer, Double>();
            double can = cut(slowest.step(), EARLIER_MINUTES, talks, openings);
            double whole = Math.floor(can + 1e-9);
            if (whole < 1) {
                return Optional.empty();
            }
            talks.clear();
            openings.clear();
            cut(slowest.step(), whole, talks, openings);
            return Optional.of(new Change.Earlier(slowest.step(), whole, slowest.medianMinutes(), talks, openings));
        });
    }

    /** Takes minutes from talks and openings up to a step, the nearest first; how many there were to take. */
    private double cut(int step, double minutes, TreeMap<Integer, Double> talks, TreeMap<Integer, Double> openings) {
        double usual = past.engine().priors().openings().delayMinutes();
        double left = minutes;
        for (int k = step; k >= 0 && left > 0; k--) {
            boolean talk = step(k).kind() == StepKind.TALK;
            boolean opened = asWas.opens(k) && !talk;
            double has = talk ? Math.max(0, talked(k) - LEAST_TALK_MINUTES)
                    : opened ? Math.max(0, asWas.lag(k) - usual) : 0;
            double take = Math.min(left, has);
            if (take > 0) {
                (talk ? talks : openings).put(k, take);
                left -= take;
            }
        }
        return minutes - left;
    }

    /** How long a talk was for those who heard most of it. */
    private double talked(int k) {
        return IntStream.range(0, track.seats().size()).mapToDouble(i -> asWas.work(i, k)).max().orElse(0);
    }
}
