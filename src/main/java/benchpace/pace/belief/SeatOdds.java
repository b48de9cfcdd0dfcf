package benchpace.pace.belief;

import benchpace.pace.SeatProgress;
import benchpace.pace.SeatTrack;
import java.util.List;

/**
 * The three explanations of a step that is not ticked, as probabilities that add up to 1.
 *
 * @param working still at it, in the normal way
 * @param stalled stuck, or held up by something that is not the step's work
 * @param forgotten done, but not ticked
 * @param unswept the part of {@code forgotten} done after the last sweep, which no sweep could have found
 * @param settled the part of {@code forgotten} done before the moment the instructor last looked round to open a step
 */
public record SeatOdds(double working, double stalled, double forgotten, double unswept, double settled) {
    private static final double REST_SD_LOG = 0.35;
    /** Three points and weights for a mean under a standard normal law (Abramowitz &amp; Stegun 25.4.46). */
    public static final double[] HERMITE = {-Math.sqrt(3), 0, Math.sqrt(3)};
    public static final double[] HERMITE_WEIGHTS = {1 / 6.0, 2 / 3.0, 1 / 6.0};
    /** A seat that is not judged. */
    public static final SeatOdds NOT_JUDGED = new SeatOdds(1, 0, 0, 0, 0);

    /** Bayes' rule, given something with these likelihoods when the step is not done and when it is. */
    public SeatOdds given(double undone, double done) {
        double fresh = forgotten - settled;
        double sum = undone * (working + stalled + fresh) + done * settled;
        double late = (undone * fresh + done * settled) / sum;
        return new SeatOdds(undone * working / sum, undone * stalled / sum, late,
                Math.min(late, unswept * undone / sum), done * settled / sum);
    }

    /** Bayes' rule, given that nobody noticed, which has this likelihood if it is done. */
    public SeatOdds unnoticed(double done) {
        double sum = working + stalled + done * forgotten;
        return new SeatOdds(working / sum, stalled / sum, done * forgotten / sum, done * unswept / sum,
                done * settled / sum);
    }

    /**
     * What is known of the step after the present one.
     *
     * @param open whether it could be started
     * @param belief its time; only looked at when it is open
     * @param lookMinutes moment the instructor last judged by eye whether enough seats were done
     * @param restMinutes usual time of the free steps between this one and the one looked for; 0 when there is none
     * @param laterMinutes when the open steps after the next one would usually be done, each in minutes from the end of
     *        the present one, ascending
     * @param behindMinutes when those who wait for the seat's station would usually be through with the present step,
     *        each in minutes from the end of it here, ascending; empty where nobody does
     */
    public record Next(boolean open, ClassTempo.Belief belief, double lookMinutes,
                double restMinutes, List<Double> laterMinutes, List<Double> behindMinutes) { }

    /** Weighs the three for one seat: time spent, sweeps that passed it by, answers and hints. */
    public static final class Weighing {
        private final ClassTempo.Belief belief;
        private final Next next;
        private final PacePriors priors;
        private final double forgottenShare;
        private final double worked;
        private final double[] passes;
        private final double[] misses;
        private final double answered;
        private final double look;
        private final boolean hinted;
        private final boolean claimed;
        private double promptShare;
        private double sinceSweep;
        private double beforeLook;

        public Weighing(SeatTrack seat, SeatProgress progress, ClassTempo.Belief belief, Next next, TapHabits habits,
                 double previousLateness, double now, PacePriors priors) {
            this.belief = belief;
            this.next = next;
            this.priors = priors;
            this.forgottenShare = habits.forgottenShare();
            this.worked = progress.workedMinutes() + previousLateness;
            double start = progress.startMinutes();
            double[] sweeps = habits.sweepMinutes();
            int first = 0;
            while (first < sweeps.length && sweeps[first] <= start) {
                first++;
            }
            this.passes = new double[sweeps.length - first];
            this.misses = new double[sweeps.length - first];
            for (int j = first; j < sweeps.length; j++) {
                misses[j - first] = habits.sweepMiss(j);
                passes[j - first] = sinceStart(seat, start, sweeps[j]) + previousLateness;
            }
            double said = seat.lastStillAtIt(progress.step());
            this.answered = said < start ? 0 : sinceStart(seat, start, said) + previousLateness;
            this.look = next.lookMinutes() <= start ? 0
                    : sinceStart(seat, start, next.lookMinutes()) + previousLateness;
            this.claimed = seat.isClaimed(start, now);
            this.hinted = seat.lastHint(progress.step()) >= Math.max(start, said);
        }

        private static double sinceStart(SeatTrack seat, double start, double at) {
            return at - start - seat.pausedWithin(start, at);
        }

        /** @param promptTicks share of finished steps that are ticked at once */
        public SeatOdds odds(double promptTicks) {
            this.promptShare = promptTicks;
            double p = priors.stalls().odds();
            double working = (1 - p) * survival(worked);
            double done = (1 - p) * unticked(0);
            double unswept = (1 - p) * sinceSweep;
            double settled = (1 - p) * beforeLook;
            double stalled = 0;
            StallLengths law = priors.stalls().lengths();
            for (int j = 0; j < law.count(); j++) {
                double weight = p * law.weight(j);
                stalled += weight * survival(worked - law.minutes(j));
                done += weight * unticked(law.minutes(j));
                settled += weight * beforeLook;
            }
            // a stall out of the tail is not over, or only just: what is done after one does not count
            stalled += p * law.tailWeight() * tail(law);
            double hint = hinted ? priors.taps().hintOdds() : 1;
            stalled *= claimed ? priors.stalls().claimOdds() : 1;
            double sum = working + stalled + hint * done;
            return new SeatOdds(working / sum, stalled / sum, hint * done / sum, hint * unswept / sum,
                    hint * settled / sum);
        }

        /**
         * P(done before now, {@code stall} minutes lost on the way, and yet not ticked): the time of being done is
         * cut at the sweeps, the last look round and the usual moment a tick takes, and each piece weighed by the
         * chance that all ticks since went past it.
         */
        private double unticked(double stall) {
            double from = Math.max(answered, stall);
            double prompt = worked - priors.taps().promptDelayMinutes();
            double forgot = forgottenShare;
            double missed = 1;
            double overlooked = 1;
            double sum = 0;
            sinceSweep = 0;
            beforeLook = 0;
            double upper = worked;
            int pass = passes.length - 1;
            while (upper > from) {
                while (pass >= 0 && passes[pass] >= upper) {
                    missed *= misses[pass];
                    overlooked *= 0.5 + 0.5 * misses[pass];
                    pass--;
                }
                double lower = Math.max(from, pass >= 0 ? passes[pass] : 0);
                lower = upper > prompt ? Math.max(lower, prompt) : lower;
                lower = upper > look ? Math.max(lower, look) : lower;
                double notTicked = missed * (upper > prompt ? 1 : 1 - promptShare);
                double piece = (survival(lower - stall) - survival(upper - stall))
                        * (forgot * overlooked + (1 - forgot) * notTicked) * silentSince(0.5 * (lower + upper));
                sum += piece;
                if (missed == 1 && upper <= prompt) {
                    sinceSweep += piece;
                }
                if (upper <= look) {
                    beforeLook += piece * through(look - 0.5 * (lower + upper));
                }
                upper = lower;
            }
            return sum;
        }

        /**
         * P(none of the next steps is ticked either, nor this one at the seats that wait for its station), had it been
         * done {@code at} minutes after its start.
         */
        private double silentSince(double at) {
            double since = worked - at - priors.taps().promptDelayMinutes();
            if (since <= 0) {
                return 1;
            }
            double silent = 1;
            if (next.open()) {
                double z = (next.belief().meanLog() - Math.log(since)) / next.belief().sdLog();
                silent = silent(silent * (1 - promptShare * (1 - StandardNormal.cdf(z))), since, next.laterMinutes());
            }
            return silent(silent, since, next.behindMinutes());
        }

        private double silent(double sofar, double since, List<Double> due) {
            double silent = sofar;
            for (double minutes : due) {
                silent *= 1 - promptShare * StandardNormal.cdf(Math.log(since / minutes) / REST_SD_LOG);
            }
            return silent;
        }

        /** P(the free steps in between are done too within so many minutes). */
        private double through(double minutes) {
            if (next.restMinutes() <= 0) {
                return 1;
            }
            return minutes <= 0 ? 0 : StandardNormal.cdf(Math.log(minutes / next.restMinutes()) / REST_SD_LOG);
        }

        /** P(work plus a stall out of the tail is not over), by Gauss-Hermite's three points over the work. */
        private double tail(StallLengths law) {
            double sum = 0;
            for (int j = 0; j < HERMITE.length; j++) {
                double work = Math.exp(belief.meanLog() + HERMITE[j] * belief.sdLog());
                sum += HERMITE_WEIGHTS[j] * law.tailSurvival(worked - work);
            }
            return sum;
        }

        private double survival(double minutes) {
            if (minutes <= 0) {
                return 1;
            }
            return StandardNormal.cdf((belief.meanLog() - Math.log(minutes)) / belief.sdLog());
        }
    }
}
