package benchpace.pace.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchpace.pace.ClassTrack;
import benchpace.pace.PaceStep;
import benchpace.pace.SeatTrack;
import benchpace.pace.WorkKind;
import benchpace.pace.belief.PacePriors;
import benchpace.pace.belief.StallLengths;
import benchpace.pace.belief.StandardNormal;
import benchpace.pace.engine.Evaluation;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/**
 * Expected maximum of n standard normals, against the printed table of normal order statistics (Harter 1961,
 * <i>Biometrika</i> 48, 151-165; Teichroew 1956).
 */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ExpectedMaximumTest {
    private static final double[] PRINTED = {0.5642, 0.8463, 1.0294, 1.1630, 1.2672, 1.3522, 1.4236, 1.4850, 1.5388};
    private static final int DRAWS = 20_000;

    @Test
    void the_normal_law_gives_the_printed_values() {
        for (int n = 2; n <= 10; n++) {
            double sum = 0;
            double h = 0.001;
            for (double z = -8; z < 8; z += h) {
                sum += z * n * StandardNormal.density(z) * Math.pow(StandardNormal.cdf(z), n - 1) * h;
            }
            assertThat(sum).isCloseTo(PRINTED[n - 2], within(1e-4));
        }
    }

    /** Seats that differ by noise alone: the log of the last pour is the maximum of n normals. */
    @Test
    void the_last_pour_of_n_equal_seats_is_as_late_as_the_printed_values_say() {
        PacePriors.Times times = new PacePriors.Times(1e-9, 1e-9, 1e-9, 0.4, 0, 4, 2);
        PacePriors.Stalls none = new PacePriors.Stalls(0, new StallLengths(List.of(10.0), List.of(1.0), 10, 3), 20, 1);
        PacePriors standard = PacePriors.standard();
        PacePriors noise = new PacePriors(times, standard.taps(), none, standard.openings(), standard.cure(),
                standard.rule(), standard.steps());
        for (int n : new int[] {2, 5, 10}) {
            List<SeatTrack> seats = new ArrayList<>();
            IntStream.rangeClosed(1, n).forEach(seat -> seats.add(SeatTrack.present(seat)));
            ClassTrack track = new ClassTrack(List.of(new PaceStep("pour", 5, false, WorkKind.POUR)), List.of(0.0), 60,
                    seats);
            Evaluation start = new Evaluation(track, 0, noise);
            PourDraws draws = new PourDraws(new Posterior(track, start.seats, start.odds, start.tempo, start.openings,
                    noise, 0), DRAWS, 1);
            double sum = 0;
            for (int b = 0; b < DRAWS; b++) {
                double last = 0;
                for (double pour : draws.pours(b)) {
                    last = Math.max(last, pour);
                }
                sum += (Math.log(last) - Math.log(5)) / 0.4 / DRAWS;
            }
            assertThat(sum).isCloseTo(PRINTED[n - 2], within(0.02));
        }
    }
}
