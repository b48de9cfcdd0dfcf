package benchpace.pace;

/**
 * The three explanations of a step that is not ticked, as probabilities that add up to 1.
 *
 * @param working still at it, in the normal way
 * @param stalled stuck, or held up by something that is not the step's work
 * @param forgotten done, but not ticked
 */
record SeatOdds(double working, double stalled, double forgotten) {

    /** Bayes' rule over the three, from the time spent, the sweeps that passed the seat by, answers and hints. */
    static SeatOdds of(SeatTrack seat, SeatProgress progress, ClassTempo.Belief belief, Next next, TapHabits habits,
                       double previousLateness, double now, PacePriors priors) {
        return new Weighing(seat, progress, belief, next, habits, previousLateness, now, priors).odds();
    }

    /**
     * What would have to follow a forgotten tap.
     *
     * @param open whether the next step could be started
     * @param belief time of the next step; only looked at when it is open
     */
    record Next(boolean open, ClassTempo.Belief belief) { }

    private static final class Weighing {
        private final ClassTempo.Belief belief;
        private final Next next;
        private final PacePriors priors;
        private final double worked;
        private final double[] passes;
        private final double answered;
        private final boolean hinted;
        private final double promptShare;

        Weighing(SeatTrack seat, SeatProgress progress, ClassTempo.Belief belief, Next next, TapHabits habits,
                 double previousLateness, double now, PacePriors priors) {
            this.belief = belief;
            this.next = next;
            this.priors = priors;
            this.worked = progress.workedMinutes() + previousLateness;
            this.promptShare = habits.promptShare();
            double start = progress.startMinutes();
            double[] sweeps = habits.sweepMinutes();
            int first = 0;
            while (first < sweeps.length && sweeps[first] <= start) {
                first++;
            }
            this.passes = new double[sweeps.length - first];
            for (int j = first; j < sweeps.length; j++) {
                passes[j - first] = sweeps[j] - start - seat.pausedWithin(start, sweeps[j]) + previousLateness;
            }
            double said = seat.lastStillAtIt(progress.step());
            this.answered = said < start ? 0 : said - start - seat.pausedWithin(start, said) + previousLateness;
            this.hinted = seat.lastHint(progress.step()) >= Math.max(start, said);
        }

        SeatOdds odds() {
            double working = survival(worked);
            double late = unticked(0);
            double stalled = 0;
            double stalledLate = 0;
            double[] lengths = priors.stallMinutes();
            for (int j = 0; j < lengths.length; j++) {
                double weight = priors.stallWeights()[j];
                stalled += weight * survival(worked - lengths[j]);
                stalledLate += weight * unticked(lengths[j]);
            }
            double p = priors.stallOdds();
            double hint = hinted ? priors.hintOdds() : 1;
            double w = (1 - p) * working;
            double s = p * stalled;
            double f = hint * ((1 - p) * late + p * stalledLate);
            double sum = w + s + f;
            return new SeatOdds(w / sum, s / sum, f / sum);
        }

        /** P(done before now, {@code stall} minutes lost on the way, and yet not ticked). */
        private double unticked(double stall) {
            double from = Math.max(answered, stall);
            double prompt = worked - priors.promptDelayMinutes();
            double forgot = priors.forgottenOdds();
            double missed = 1;
            double sum = 0;
            double upper = worked;
            int pass = passes.length - 1;
            while (upper > from) {
                while (pass >= 0 && passes[pass] >= upper) {
                    missed *= priors.sweepMiss();
                    pass--;
                }
                double lower = pass >= 0 ? passes[pass] : 0;
                if (upper > prompt) {
                    lower = Math.max(lower, prompt);
                }
                lower = Math.max(lower, from);
                double notTicked = missed * (upper > prompt ? 1 : 1 - promptShare);
                sum += (survival(lower - stall) - survival(upper - stall))
                        * (forgot + (1 - forgot) * notTicked) * silentSince(0.5 * (lower + upper));
                upper = lower;
            }
            return sum;
        }

        /** P(the next step is not ticked either), had this one been done {@code at} minutes after its start. */
        private double silentSince(double at) {
            if (!next.open()) {
                return 1;
            }
            double since = worked - at - priors.censoringLatenessMinutes();
            if (since <= 0) {
                return 1;
            }
            double z = (next.belief().meanLog() - Math.log(since)) / next.belief().sdLog();
            return 0.1 + 0.9 * StandardNormal.cdf(z);
        }

        private double survival(double minutes) {
            if (minutes <= 0) {
                return 1;
            }
            return StandardNormal.cdf((belief.meanLog() - Math.log(minutes)) / belief.sdLog());
        }
    }
}
