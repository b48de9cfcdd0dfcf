package benchpace.pace.belief;

import benchpace.pace.engine.LearnedSteps;
import java.util.List;

/**
 * The rule for a table of any size, set by what it may cost: so many false "behind" a class, 0.25 at six seats, 0.6 at
 * twelve, 1.2 at twenty-four. A probability alone does not hold that: how many seats that are well cross it hangs on
 * how many there are, and on how widely times are believed to be spread. So the figures were read off tables of false
 * alarms by threshold on several hundred invented classes of each size (lognormal and gamma times, plans wrong by 13
 * per cent either way, prompt taps and bunched ones; {@code PaceCalibration} in the tests), and checked on the recorded
 * ones. A table of six asks for most, one false alarm there being one of few.
 *
 * <p>Past classes narrow the spread. Three things keep that from costing false alarms: a single guest's time is never
 * believed to be less spread than taps can tell ({@link PacePriors#noiseVariance}), the odds asked for grow as the
 * spread shrinks, and what late taps add to times is taken out of what is learned ({@link LearnedSteps}). With them
 * false alarms on invented places of eight seats were 0.42 a class without past classes and 0.42 with them where there
 * was nothing to learn, 0.43 and 0.39 where steps were 20 to 40 per cent off the plan.
 *
 * @param seats sizes of table, ascending
 * @param behind probability of a stall that raises "behind" at tables of these sizes
 * @param slipping the same for the question; low enough that the two minutes it has to stay delay nobody much
 * @param certain probability of a stall that raises "behind" with no question before, at every size: a half, so that a
 *        stall is likelier than all else together. On the invented classes 0.35 instead would save a tenth of a minute
 *        and cost one false alarm more in twelve classes of twelve
 * @param spreadPower the odds asked for grow with this power of the spread without past classes over the one in force
 */
public record AlarmBudget(List<Double> seats, List<Double> behind, List<Double> slipping, double certain,
                          double spreadPower) {
    /** A flag is taken back below so much of what raised it, that it does not flicker. */
    private static final double BEHIND_OFF = 0.72;
    private static final double SLIPPING_OFF = 0.7;
    public static final AlarmBudget STANDARD = new AlarmBudget(List.of(6.0, 12.0, 24.0), List.of(0.305, 0.25, 0.26),
            List.of(0.105, 0.13, 0.155), 0.5, 1);

    public AlarmBudget {
        seats = List.copyOf(seats);
        behind = List.copyOf(behind);
        slipping = List.copyOf(slipping);
        if (seats.isEmpty() || seats.size() != behind.size() || seats.size() != slipping.size()) {
            throw new IllegalArgumentException("each size of table needs its thresholds");
        }
    }

    /**
     * The rule at a table of so many seats. Beyond the largest size known the odds asked for grow with the square root
     * of the seats: there are more to be wrong about, but not more people to walk.
     *
     * @param spread how widely times are believed to be spread over what is believed without past classes
     */
    public PacePriors.Rule at(int n, double spread) {
        double crowd = Math.sqrt(Math.max(1, n / seats.get(seats.size() - 1)));
        double asked = probability(crowd * Math.pow(spread, -spreadPower) * odds(between(behind, n)));
        double question = Math.min(asked, between(slipping, n));
        return new PacePriors.Rule(asked, BEHIND_OFF * asked, Math.max(asked, certain), question,
                SLIPPING_OFF * question);
    }

    /** Linear in the logarithm of the seats; the ends hold beyond them. */
    private double between(List<Double> values, int n) {
        if (n <= seats.get(0)) {
            return values.get(0);
        }
        for (int j = 1; j < seats.size(); j++) {
            if (n <= seats.get(j)) {
                double share = Math.log(n / seats.get(j - 1)) / Math.log(seats.get(j) / seats.get(j - 1));
                return values.get(j - 1) + share * (values.get(j) - values.get(j - 1));
            }
        }
        return values.get(values.size() - 1);
    }

    private static double odds(double probability) {
        return probability / (1 - probability);
    }

    private static double probability(double odds) {
        return odds / (1 + odds);
    }
}
