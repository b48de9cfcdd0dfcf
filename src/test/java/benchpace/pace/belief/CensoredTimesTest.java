package benchpace.pace.belief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchpace.pace.ClassTrack;
import benchpace.pace.PaceStep;
import benchpace.pace.SeatTrack;
import benchpace.pace.WorkKind;
import benchpace.pace.engine.Evaluation;
import benchpace.pace.engine.ReplayScore;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/**
 * Times that are not over yet. Worked example: weeks of remission of 21 patients under 6-mercaptopurine (Freireich et
 * al. 1963), as in Cox &amp; Oakes, <i>Analysis of Survival Data</i> (1984), ch. 1 and 4, and Kleinbaum &amp; Klein,
 * <i>Survival Analysis</i>, ch. 2.
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class CensoredTimesTest {
    private static final double[] ENDED = {6, 6, 6, 7, 10, 13, 16, 22, 23};
    private static final double[] GOING_ON = {6, 9, 10, 11, 17, 19, 20, 25, 32, 32, 34, 35};

    private static List<ReplayScore.Observed> remissions() {
        List<ReplayScore.Observed> all = new ArrayList<>();
        for (double week : ENDED) {
            all.add(new ReplayScore.Observed(week, true));
        }
        for (double week : GOING_ON) {
            all.add(new ReplayScore.Observed(week, false));
        }
        return all;
    }

    @Test
    void the_product_limit_estimate_is_the_printed_one() {
        double[][] printed = {{6, 0.857}, {7, 0.807}, {10, 0.753}, {13, 0.690}, {16, 0.627}, {22, 0.538}, {23, 0.448}};
        for (double[] row : printed) {
            assertThat(ReplayScore.kaplanMeier(remissions(), row[0])).isCloseTo(row[1], within(6e-4));
        }
        assertThat(ReplayScore.median(remissions())).isEqualTo(23);
    }

    /** Exponential law: 9 ends in 359 weeks, a rate of 0.025 a week (Cox &amp; Oakes). */
    @Test
    void the_exponential_rate_is_ends_over_time_at_risk() {
        double atRisk = remissions().stream().mapToDouble(ReplayScore.Observed::time).sum();
        assertThat(atRisk).isEqualTo(359);
        assertThat(ENDED.length / atRisk).isCloseTo(0.025, within(1e-4));
    }

    /**
     * One seat still at its step: what it teaches about the step's time, against Bayes' rule integrated numerically
     * (normal prior times floor + (1 - floor) P(time &gt; seen)).
     */
    @Test
    void an_unfinished_step_moves_the_belief_as_numerical_integration_says() {
        PacePriors priors = PacePriors.standard();
        PaceStep pour = new PaceStep("pour", 3, false, WorkKind.POUR);
        ClassTrack track = new ClassTrack(List.of(pour), List.of(0.0), 60, List.of(SeatTrack.present(1)));
        double now = 9;
        Evaluation seen = new Evaluation(track, now, priors);
        double variance = priors.times().classVariance() + priors.times().stepVariance()
                + priors.times().guestVariance();
        double noise = Math.sqrt(priors.noiseVariance(pour));
        double log = Math.log((now - priors.taps().censoringLatenessMinutes()) / 3);
        NormalDistribution normal = new NormalDistribution();
        double floor = priors.taps().censoringFloor();
        double total = 0;
        double first = 0;
        for (double eta = -5; eta < 5; eta += 0.001) {
            double prior = Math.exp(-0.5 * eta * eta / variance);
            double likelihood = floor + (1 - floor) * normal.cumulativeProbability((eta - log) / noise);
            total += prior * likelihood;
            first += prior * likelihood * eta;
        }
        double[] theta = seen.tempo.theta();
        double shift = theta[0] + theta[1] + seen.tempo.guestMean(0, theta);
        assertThat(shift).isCloseTo(first / total, within(1e-4));
    }
}
