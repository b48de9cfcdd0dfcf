package benchpace.prep.evening;

import benchpace.cure.room.TrajectoryCache;
import benchpace.plan.Opening;
import benchpace.plan.Plan;
import benchpace.plan.PlanId;
import benchpace.plan.Stations;
import benchpace.plan.Step;
import benchpace.plan.StepId;
import benchpace.plan.StepKind;
import benchpace.plan.TableShape;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * Whether stated chances hold: many invented plans, each with its odds and with some classes that really happened
 * ({@link MadeUpClass}) against promises of any length. {@code main} prints the table.
 */
public final class EveningCalibration {
    static final int[] SEATS = {4, 6, 8, 12, 24, 40};
    /** Bounds of what is stated, in hundredths. */
    private static final int[] BINS = {0, 5, 10, 20, 30, 40, 50, 60, 70, 80, 90, 95, 101};
    private static final int CLASSES_A_PLAN = 24;

    private EveningCalibration() { }

    /** A chance that was stated, and whether the class was on time. */
    record Case(int seats, double stated, boolean onTime) { }

    /**
     * All cases of one range of stated chances.
     *
     * @param stated their mean
     * @param onTime share that was on time
     */
    record Bin(int from, int below, int cases, double stated, double onTime) {
        /** How far off it is, in standard errors of the cases. */
        double errors() {
            double sd = Math.sqrt(stated * (1 - stated) / cases);
            return sd == 0 ? 0 : (onTime - stated) / sd;
        }

        String line() {
            return String.format(Locale.ROOT, "%3d to %3d: %6d cases, stated %5.1f, on time %5.1f  (%+.1f errors)",
                    from, Math.min(100, below), cases, 100 * stated, 100 * onTime, errors());
        }
    }

    static List<Case> cases(MadeUpClass law, int plans, int evenings, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Case> cases = new ArrayList<>();
        for (int j = 0; j < plans; j++) {
            Plan plan = plan(random);
            Setting setting = Setting.of(plan, SEATS[j % SEATS.length]);
            Evenings stated = Evenings.of(setting, random.nextLong(), evenings, new TrajectoryCache(),
                    Evenings.Progress.UNTOLD);
            Quantiles done = stated.timetable().done();
            for (int c = 0; c < CLASSES_A_PLAN; c++) {
                double promised = done.p10() * 0.85 + random.nextDouble() * (done.p90() * 1.15 - done.p10() * 0.85);
                cases.add(new Case(setting.seats(), stated.doneBy(promised).share(),
                        law.done(setting, random) <= promised));
            }
        }
        return cases;
    }

    /** A class of four to ten steps, with stations here and there. */
    private static Plan plan(SplittableRandom random) {
        List<Step> steps = new ArrayList<>();
        add(steps, StepKind.TALK, Opening.LED, 2 + random.nextInt(6), random);
        for (int k = 1 + random.nextInt(4); k > 0; k--) {
            add(steps, StepKind.HANDS_ON, opening(random), 2 + random.nextInt(9), random);
        }
        add(steps, StepKind.POUR, Opening.LED, 2 + random.nextInt(5), random);
        if (random.nextBoolean()) {
            add(steps, StepKind.HANDS_ON, Opening.FREE, 2 + random.nextInt(10), random);
        }
        add(steps, StepKind.CURE, Opening.FREE, 30 + random.nextInt(40), random);
        add(steps, StepKind.FINISH, opening(random), 2 + random.nextInt(6), random);
        if (random.nextBoolean()) {
            add(steps, StepKind.TALK, Opening.LED, 2 + random.nextInt(4), random);
        }
        return new Plan(new PlanId("invented"), "Invented", "", "", 6, TableShape.HORSESHOE, steps, List.of());
    }

    private static Opening opening(SplittableRandom random) {
        return random.nextBoolean() ? Opening.LED : Opening.FREE;
    }

    private static void add(List<Step> steps, StepKind kind, Opening opening, int minutes, SplittableRandom random) {
        Optional<Stations> stations = kind.needsTap() && random.nextInt(4) == 0
                ? Optional.of(new Stations(2 + random.nextInt(4), "scales", Duration.ofSeconds(minutes * 30L)))
                : Optional.empty();
        steps.add(new Step(new StepId("step-" + steps.size()), "Step " + steps.size(), kind, opening,
                Duration.ofMinutes(minutes), Duration.ofMinutes(3), "", "", "", Optional.empty(), stations));
    }

    /** Those of the ranges that have cases. */
    static List<Bin> bins(List<Case> cases) {
        List<Bin> bins = new ArrayList<>();
        for (int j = 0; j + 1 < BINS.length; j++) {
            double from = BINS[j] / 100.0;
            double below = BINS[j + 1] / 100.0;
            List<Case> here = cases.stream().filter(c -> c.stated() >= from && c.stated() < below).toList();
            if (!here.isEmpty()) {
                bins.add(new Bin(BINS[j], BINS[j + 1], here.size(),
                        here.stream().mapToDouble(Case::stated).average().orElseThrow(),
                        here.stream().filter(Case::onTime).count() / (double) here.size()));
            }
        }
        return bins;
    }

    /** @param args how many plans of each law; 600 if not given */
    public static void main(String[] args) {
        int plans = args.length > 0 ? Integer.parseInt(args[0]) : 600;
        for (MadeUpClass law : List.of(MadeUpClass.AS_BELIEVED, MadeUpClass.WIDER, MadeUpClass.TIGHTER)) {
            List<Case> cases = cases(law, plans, Evenings.USUAL, 1);
            System.out.println(law);
            bins(cases).forEach(bin -> System.out.println("  all tables, " + bin.line()));
            for (int seats : SEATS) {
                List<Case> here = cases.stream().filter(c -> c.seats() == seats).toList();
                bins(here).forEach(bin -> System.out.println("  " + seats + " seats, " + bin.line()));
            }
        }
    }
}
