package benchpace.pace.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchpace.pace.ClassTrack;
import benchpace.pace.PaceStep;
import benchpace.pace.SeatTrack;
import benchpace.pace.WorkKind;
import benchpace.pace.belief.PacePriors;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** A talk that is still to come, or not over, keeps everybody from the step after it. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class TalkAheadTest {
    private static final double TALK = 10;
    private static final double NOT_YET = SeatTrack.NOT_YET;

    /** Welcome, then the pour; nobody has done anything. */
    private static double likely(double talkMinutes, double welcomeOpened, boolean pourLed, double now) {
        ClassTrack track = new ClassTrack(List.of(new PaceStep("welcome", talkMinutes, true, WorkKind.TALK),
                new PaceStep("pour", 6, pourLed, WorkKind.POUR)), List.of(welcomeOpened, pourLed ? NOT_YET : 0), 60,
                IntStream.rangeClosed(1, 6).mapToObj(SeatTrack::present).toList());
        return new PaceEngine(PacePriors.standard()).forecast(track, now).p50();
    }

    @Test void a_talk_not_yet_begun_counts_whole() {
        for (boolean led : new boolean[] {true, false}) {
            assertThat(likely(TALK, NOT_YET, led, 0)).isCloseTo(likely(1, NOT_YET, led, 0) + TALK - 1, within(0.01));
        }
    }

    @Test void of_a_talk_that_runs_what_is_left_counts() {
        for (boolean led : new boolean[] {true, false}) {
            assertThat(likely(TALK, 0, led, 2)).isCloseTo(likely(TALK, 0, led, 9), within(0.01));
        }
    }

    @Test void a_talk_that_is_over_counts_no_more() {
        assertThat(likely(TALK, 0, true, 20)).isCloseTo(likely(1, 0, true, 20), within(0.01));
    }
}
