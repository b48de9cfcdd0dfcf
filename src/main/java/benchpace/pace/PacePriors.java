package benchpace.pace;

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
public record PacePriors(Times times, Taps taps, Stalls stalls, Openings openings, Cure cure, Rule rule,
                         Map<String, StepPrior> steps) {

    public PacePriors {
        steps = Map.copyOf(steps);
    }

    /** What is believed when no past class is known. */
    public static PacePriors standard() {
        return new PacePriors(Times.STANDARD, Taps.STANDARD, Stalls.STANDARD, Openings.STANDARD, Cure.STANDARD,
                Rule.STANDARD, Map.of());
    }

    /** The same with what past classes taught about their steps. */
    public PacePriors withSteps(Map<String, StepPrior> learned) {
        return new PacePriors(times, taps, stalls, openings, cure, rule, learned);
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
     */
    public record Taps(double promptShare, double promptPriorTaps, double promptWindowTaps,
                       double sweptToLate, double promptDelayMinutes, double sweepMiss, double missScale,
                       double missFade, double forgottenOdds, double forgottenPriorTaps,
                       double hintOdds, double censoringLatenessMinutes, double censoringFloor) {
        static final Taps STANDARD = new Taps(0.47, 6, 2, 1.1, 0.25, 0.13, 0.8, 0.07, 0.08, 20, 20, 1.5, 0.15);

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
     * @param minutes lengths it may have if nobody comes
     * @param weights their probabilities. Recorded: quarter under 8.5 min, half under 12.3, nine tenths under 18.5
     * @param claimOdds how much likelier a helper's "I've got it" makes a stall. Recorded: all 12 claims were at
     *        stalled seats, with three or four in a hundred seats stalled at any time
     */
    public record Stalls(double odds, List<Double> minutes, List<Double> weights, double claimOdds) {
        static final Stalls STANDARD = new Stalls(0.02, List.of(5.5, 8.0, 11.0, 14.0, 19.0, 26.0),
                List.of(0.13, 0.2, 0.22, 0.22, 0.15, 0.08), 200);

        public Stalls {
            minutes = List.copyOf(minutes);
            weights = List.copyOf(weights);
            if (minutes.size() != weights.size()) {
                throw new IllegalArgumentException("each length of stall needs its weight");
            }
        }

        /** Mean rest of a stall looked at by chance: E[L^2] / 2 E[L], the inspection paradox (Feller II, I.4). */
        double meanRestMinutes() {
            double first = 0;
            double second = 0;
            for (int j = 0; j < minutes.size(); j++) {
                first += weights.get(j) * minutes.get(j);
                second += weights.get(j) * minutes.get(j) * minutes.get(j);
            }
            return second / (2 * first);
        }
    }

    /**
     * Led steps open when most of the table is truly done, ticked or not.
     *
     * @param shares probabilities of waiting for 80, 85, 90, 95 or 100 in a hundred (recorded: 83-100)
     * @param delayMinutes usual wait after that: 0.8 (recorded: 0.4-1.9)
     * @param blind chance that an opening, or its absence, has nothing to do with who is done; from judgement
     */
    public record Openings(List<Double> shares, double delayMinutes, double blind) {
        static final Openings STANDARD = new Openings(List.of(0.2, 0.2, 0.25, 0.1, 0.25), 0.8, 0.04);

        public Openings {
            shares = List.copyOf(shares);
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
    }

    /**
     * What it takes to raise a flag. The probabilities are calibrated: of seats given 0.15 to 0.2, 15 to 20 in a
     * hundred were stalled, at every step and whatever the habits of tapping. So a threshold only buys one thing with
     * another. The question at 0.14, 0.17 and 0.2 makes 4.0, 3.0 and 2.5 flags a recorded class; on 1,200 simulated
     * classes each of these steps costs half a minute until a stall is noticed. "Behind" at 0.22 instead of 0.235 saves
     * half a minute and makes one false alarm more in fifteen six-seat classes. {@code RecordedClassesTest} holds what
     * was chosen.
     *
     * @param behindStalled probability of a stall that raises "behind", two evaluations running
     * @param behindOff below this it is taken back
     * @param slippingStalled probability of a stall that raises the question
     * @param slippingOff below this it is taken back
     * @param crowdSeats at larger tables "behind" asks for more: there are more seats to be wrong about, but not more
     *        people to walk, so the odds asked for grow with the square root of the seats beyond this number
     */
    public record Rule(double behindStalled, double behindOff, double slippingStalled, double slippingOff,
                       int crowdSeats) {
        /** So many minutes over what its step takes here a seat is asked about, even if only its tick is missing. */
        static final double ASK_AFTER_MINUTES = 15;
        /**
         * So many minutes after "sorted" a seat is left in peace: time to show that it was. Common practice, no source.
         */
        static final double SORTED_MINUTES = 5;
        /** So many times what its step takes here a seat is slow although somebody was there; from judgement. */
        static final double SLOW_FACTOR = 1.5;
        static final Rule STANDARD = new Rule(0.235, 0.17, 0.17, 0.12, 12);

        public Rule {
            if (!(slippingOff <= slippingStalled && behindOff <= behindStalled && slippingStalled <= behindStalled)) {
                throw new IllegalArgumentException("thresholds out of order");
            }
        }

        /** The same rule for a table of so many seats. */
        Rule at(int seats) {
            double factor = Math.sqrt(Math.max(1, (double) seats / crowdSeats));
            return new Rule(raised(behindStalled, factor), raised(behindOff, factor), slippingStalled, slippingOff,
                    crowdSeats);
        }

        private static double raised(double probability, double factor) {
            double odds = factor * probability / (1 - probability);
            return odds / (1 + odds);
        }
    }

    double noiseVariance(PaceStep step) {
        double learned = stepPrior(step).noiseVariance();
        if (!Double.isNaN(learned)) {
            return learned;
        }
        double tap = times.tapNoiseMinutes() / step.planMinutes();
        return times.noiseSdLog() * times.noiseSdLog() + Math.min(0.2, tap * tap);
    }

    StepPrior stepPrior(PaceStep step) {
        StepPrior learned = steps.get(step.id());
        return learned != null ? learned : new StepPrior(0, times.stepVariance(), Double.NaN);
    }
}
