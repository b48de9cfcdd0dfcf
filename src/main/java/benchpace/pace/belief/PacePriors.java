package benchpace.pace.belief;

import benchpace.pace.ClassTrack;
import benchpace.pace.PaceStep;
import benchpace.pace.StepPrior;
import java.util.List;
import java.util.Map;

/**
 * Every number the judgements rest on before a class begins, each with where it comes from. "Recorded classes" are the
 * 30 open logs with known truth that the tests replay; where a figure was read off them it was rounded, and checked on
 * several hundred simulated classes of other habits (see {@code ClassSimulator} in the tests), not tuned to one class.
 *
 * @param times how long steps take
 * @param taps how taps come
 * @param stalls how seats get stuck
 * @param openings how led steps are opened
 * @param cure how cures differ from the plan's
 * @param rule what it takes to raise a flag
 * @param steps what past classes taught, by step id; steps not in it are believed to take what the plan says
 */
public record PacePriors(Times times, Taps taps, Stalls stalls, Openings openings, Cure cure, AlarmBudget rule,
                         Map<String, StepPrior> steps) {

    public PacePriors {
        steps = Map.copyOf(steps);
    }

    /** What is believed when no past class is known. */
    public static PacePriors standard() {
        return new PacePriors(Times.STANDARD, Taps.STANDARD, Stalls.STANDARD, Openings.STANDARD, Cure.STANDARD,
                AlarmBudget.STANDARD, Map.of());
    }

    /** The same with what past classes taught about their steps. */
    public PacePriors withSteps(Map<String, StepPrior> learned) {
        return new PacePriors(times, taps, stalls, openings, cure, rule, learned);
    }

    /** The same with other beliefs about stalls. */
    public PacePriors withStalls(Stalls others) {
        return new PacePriors(times, taps, others, openings, cure, rule, steps);
    }

    /** The same with other beliefs about times. */
    public PacePriors withTimes(Times others) {
        return new PacePriors(others, taps, stalls, openings, cure, rule, steps);
    }

    /**
     * Log minutes at a step are log plan + class + step + guest + noise, each normal.
     *
     * @param classVariance of the class effect: 0.3 squared. Recorded classes: 0.18 squared between classes, widened
     *        because other plans are wrong by 12-15 per cent throughout
     * @param stepVariance of a step's own departure from plan: 0.21 squared (recorded classes: 0.16-0.24)
     * @param guestVariance of the guest effect: 0.22 squared (recorded classes: 0.22-0.24)
     * @param noiseSdLog of one time around all that: 0.3 (recorded classes: 0.26 without skipped steps; a little more
     *        costs nothing there and forgives times that are not lognormal)
     * @param tapNoiseMinutes what lateness still blurs after it is averaged over, weighing most on short steps
     * @param arrivalMinutes mean further wait for a guest not yet there: 4 (recorded classes: 3-18 min after the start)
     * @param pauseMinutes mean rest of a pause: 2.5 (recorded classes: pauses of 2-7 min)
     */
    public record Times(double classVariance, double stepVariance, double guestVariance, double noiseSdLog,
                        double tapNoiseMinutes, double arrivalMinutes, double pauseMinutes) {
        static final Times STANDARD = new Times(0.09, 0.045, 0.05, 0.3, 0.3, 4, 2.5);
    }

    /**
     * Taps come at once, in sweeps, or not at all.
     *
     * @param promptShare finished steps ticked within half a minute: 0.47 (recorded classes: 0.36-0.61)
     * @param promptPriorTaps how many taps that opinion is worth against the class's own
     * @param promptWindowTaps the same for the stretch since the last sweep, where habits change fastest
     * @param sweptToLate late taps for each tap in a sweep: 1.1 (recorded: half of all taps swept, 0.45 prompt)
     * @param promptDelayMinutes how long a prompt tap takes: a quarter of a minute
     * @param sweepMiss done seats that even a sweep over the whole table leaves out: 0.13
     * @param missScale how much more small "sweeps" miss, being often two lone taps by chance
     * @param missFade share of the table over which that fades. Recorded misses: 0.71 for 2 taps at 24 seats, 0.41 at
     *        12, 0.18 at 6; 0.24 for 5 and more at 24
     * @param forgottenOdds steps nobody will tick before the next one: 0.08 (recorded: 9 in 100 never ticked)
     * @param forgottenPriorTaps how many taps that opinion is worth against the class's own
     * @param hintOdds how much likelier a guest's "we are done" makes being done; from judgement, no data
     * @param censoringLatenessMinutes usual lateness assumed for steps not ticked when the tempo is estimated
     * @param censoringFloor chance that a step not ticked says nothing about the tempo (stalled, forgotten)
     * @param missedAfterMinutes how long after its time a tick that the whole table waits for is first missed: 5, and
     *        as long again on average until somebody taps it; from judgement
     */
    public record Taps(double promptShare, double promptPriorTaps, double promptWindowTaps,
                       double sweptToLate, double promptDelayMinutes, double sweepMiss, double missScale,
                       double missFade, double forgottenOdds, double forgottenPriorTaps,
                       double hintOdds, double censoringLatenessMinutes, double censoringFloor,
                       double missedAfterMinutes) {
        static final Taps STANDARD = new Taps(0.47, 6, 2, 1.1, 0.25, 0.13, 0.8, 0.07, 0.08, 20, 20, 1.5, 0.15, 5);

        /** P(a tick that all wait for is not made | the seat is done, and so far over its time). */
        public double unmissed(double overMinutes) {
            return Math.exp(-Math.max(0, overMinutes - missedAfterMinutes) / missedAfterMinutes);
        }

        /** P(a seat that is done is left out of a sweep of so many taps at a table of so many seats). */
        double miss(int size, int seats) {
            return sweepMiss + missScale * Math.exp(-(size - 1.0) / seats / missFade);
        }
    }

    /** Possible delays of a tap, minutes; the laws below give each a probability. */
    static final double[] LATENESS_MINUTES = {0.05, 0.2, 0.5, 1, 1.5, 2.2, 3.2, 4.5, 6.5, 9};
    /** Taps made alone. Recorded quantiles: half under 0.15 min, three quarters under 0.36, nine tenths under 1.3. */
    static final double[] LONE_LATENESS = {0.38, 0.30, 0.13, 0.07, 0.035, 0.03, 0.025, 0.015, 0.01, 0.005};
    /** Taps within a sweep. Recorded: a quarter under 0.6 min, half under 1.4, nine tenths under 5. */
    static final double[] SWEPT_LATENESS = {0.09, 0.11, 0.14, 0.13, 0.12, 0.13, 0.11, 0.085, 0.055, 0.03};

    /**
     * Stalls.
     *
     * @param odds chance of one at a step: 0.02 (recorded classes: 0.019)
     * @param lengths how long they are if nobody comes. Recorded: quarter under 8.5 min, half under 12.3, nine tenths
     *        under 18.5, none over 26. Three in a hundred are believed to be longer than half an hour all the same,
     *        with a tail of shape 3: after 34 minutes another 17 are to be expected. From judgement: records of thirty
     *        classes cannot tell, and believing in none made a seat that never moved again look done
     * @param seenMinutes when somebody comes by chance, on average, after the first two minutes: 20. Recorded: 33 of 72
     *        stalls were cut short, which left 9.3 min of 12.9 on average. Counts for stalls still to come; what a
     *        present one costs is said for the case that nobody comes
     * @param claimOdds how much likelier a helper's "I've got it" makes a stall. Recorded: all 12 claims were at
     *        stalled seats, with three or four in a hundred seats stalled at any time
     */
    public record Stalls(double odds, StallLengths lengths, double seenMinutes, double claimOdds) {
        private static final double FIRST_MINUTES = 2;
        static final Stalls STANDARD = new Stalls(0.02, new StallLengths(List.of(5.5, 8.0, 11.0, 14.0, 19.0, 26.0),
                List.of(0.13, 0.2, 0.22, 0.22, 0.15, 0.05), 30, 3), 20, 200);

        /** By when somebody has come to {@code u} of the stalls, minutes after they began. */
        public double seenAfter(double u) {
            return FIRST_MINUTES - seenMinutes * Math.log(1 - u);
        }
    }

    /**
     * Led steps open when most of the table is truly done, ticked or not.
     *
     * @param shares probabilities of waiting for 80, 85, 90, 95 or 100 in a hundred (recorded: 83-100)
     * @param delayMinutes usual wait after that: 0.8 (recorded: 0.4-1.9)
     * @param blind chance that an opening, or its absence, has nothing to do with who is done; from judgement
     * @param blindMinutes how long a step stays closed for such another reason, on average: 10; from judgement
     */
    public record Openings(List<Double> shares, double delayMinutes, double blind, double blindMinutes) {
        static final Openings STANDARD = new Openings(List.of(0.2, 0.2, 0.25, 0.1, 0.25), 0.8, 0.04, 10);

        public Openings {
            shares = List.copyOf(shares);
        }

        /** The chance that a step closed for {@code minutes} since the last seat was done has another reason. */
        public double blindAfter(double minutes) {
            return blind * Math.exp(-Math.max(0, minutes) / blindMinutes);
        }
    }

    /**
     * Log cure time over the plan's is class + candle.
     *
     * @param classMean recorded last candles were ready 57-75 min after a 60 min plan's last pour, 61 in the middle
     * @param classSd spread between classes (room, wax, vessel)
     * @param seatSd spread between candles of one class
     */
    public record Cure(double classMean, double classSd, double seatSd) {
        static final Cure STANDARD = new Cure(0.005, 0.06, 0.03);

        /**
         * How long a candle takes.
         *
         * @param planMinutes what the plan gives it
         * @param classZ      where the class lies among classes, in standard deviations
         * @param seatZ       where the candle lies among those of its class
         */
        public double minutes(double planMinutes, double classZ, double seatZ) {
            return minutesOfLog(Math.log(planMinutes), classZ, seatZ);
        }

        /** The same for many candles of one plan. @param logPlan log of what the plan gives it, in minutes */
        public double minutesOfLog(double logPlan, double classZ, double seatZ) {
            return Math.exp(logPlan + classMean + classSd * classZ + seatSd * seatZ);
        }
    }

    /**
     * What it takes to raise a flag at one table; {@link AlarmBudget} makes it. The probabilities are calibrated: of
     * seats given 0.15 to 0.2, 15 to 20 in a hundred were stalled, at every step and whatever the habits of tapping.
     * So a threshold only buys one thing with another. {@code RecordedClassesTest}, {@code VenuesTest} and
     * {@code AlarmBudgetTest} hold what was chosen.
     *
     * <p>A red flag follows the question, which stays two minutes so that there is time to answer, unless the case is
     * certain: a helper went there; a stall is likelier than all else together; or everybody waits for this seat alone
     * and it is a quarter of an hour over its time.
     *
     * @param behindStalled probability of a stall that raises "behind", two evaluations running and after the question
     * @param behindOff below this it is taken back
     * @param certainStalled probability of a stall that raises "behind" without the question before
     * @param slippingStalled probability of a stall that raises the question
     * @param slippingOff below this it is taken back
     */
    public record Rule(double behindStalled, double behindOff, double certainStalled, double slippingStalled,
                       double slippingOff) {
        /** So many minutes over what its step takes here a seat is asked about, even if only its tick is missing. */
        public static final double ASK_AFTER_MINUTES = 15;
        /**
         * So many minutes after "sorted" a seat is left in peace: time to show that it was. Common practice, no source.
         */
        public static final double SORTED_MINUTES = 5;
        /** So many times what its step takes here a seat is slow although somebody was there; from judgement. */
        public static final double SLOW_FACTOR = 1.5;

        public Rule {
            if (!(slippingOff <= slippingStalled && behindOff <= behindStalled && slippingStalled <= behindStalled
                    && behindStalled <= certainStalled)) {
                throw new IllegalArgumentException("thresholds out of order");
            }
        }
    }

    /**
     * How widely times are believed to be spread before the class begins, over what is believed without past classes:
     * the mean standard deviation of log minutes over the steps up to the pour. 1 when nothing was learned.
     */
    public double spread(ClassTrack track) {
        double learned = 0;
        double plain = 0;
        for (int k = 0; k <= track.pourStep(); k++) {
            PaceStep step = track.steps().get(k);
            if (step.kind().isWorked()) {
                double common = times.classVariance() + times.guestVariance();
                learned += Math.sqrt(common + stepPrior(step).variance() + noiseVariance(step));
                plain += Math.sqrt(common + times.stepVariance() + generalNoiseVariance(step));
            }
        }
        return plain == 0 ? 1 : learned / plain;
    }

    /**
     * Variance of one guest's log time at the step. What past classes taught may widen it, never narrow it: residuals
     * of a fitted model are smaller than the errors of the next class, and the model itself is only nearly right.
     */
    public double noiseVariance(PaceStep step) {
        double learned = stepPrior(step).noiseVariance();
        double general = generalNoiseVariance(step);
        return Double.isNaN(learned) ? general : Math.max(general, learned);
    }

    private double generalNoiseVariance(PaceStep step) {
        double tap = times.tapNoiseMinutes() / step.planMinutes();
        return times.noiseSdLog() * times.noiseSdLog() + Math.min(0.2, tap * tap);
    }

    /** What is believed of a step's usual time. */
    public StepPrior stepPrior(PaceStep step) {
        StepPrior learned = steps.get(step.id());
        return learned != null ? learned : new StepPrior(0, times.stepVariance(), Double.NaN);
    }
}
