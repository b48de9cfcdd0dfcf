package benchpace.pace.forecast;

import benchpace.pace.ClassTrack;
import benchpace.pace.SeatProgress;
import benchpace.pace.belief.ClassTempo;
import benchpace.pace.belief.OpeningHabit;
import benchpace.pace.belief.PacePriors;
import benchpace.pace.belief.SeatOdds;
import java.util.List;

/**
 * What is believed of a class at a moment: all that the rest of it is drawn from.
 *
 * @param track the class as recorded until then
 * @param seats where each seat stands, in the track's order
 * @param odds what explains the missing tick of each seat that is at a step, in the same order
 * @param tempo how fast class, steps and guests are
 * @param openings how much of the table is waited for
 * @param priors what was believed before the class
 * @param now the moment, in minutes from the class's start
 */
public record Posterior(ClassTrack track, List<SeatProgress> seats, List<SeatOdds> odds, ClassTempo tempo,
                      OpeningHabit openings, PacePriors priors, double now) {
    public Posterior {
        seats = List.copyOf(seats);
        odds = List.copyOf(odds);
    }

    /** Whether seat i stays, and so will pour. */
    boolean stays(int i) {
        return track.seats().get(i).leftMinutes() > now;
    }

    /** Whether everybody who stays has poured: then nothing that still has to be done holds the last candle. */
    boolean allPoured() {
        for (int i = 0; i < seats.size(); i++) {
            if (stays(i) && seats.get(i).standing() != SeatProgress.Standing.POURED) {
                return false;
            }
        }
        return true;
    }
}
