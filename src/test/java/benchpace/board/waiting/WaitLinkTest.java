package benchpace.board.waiting;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.cooling.PlanCureClock;
import benchpace.live.LiveClass;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** What guests have been told once the wait is planned at a moment: it binds the plannings after it. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class WaitLinkTest {
    private static WaitLink planned(WaitEvening evening, double minute) {
        LiveClass live = evening.live();
        Instant at = WaitEvening.at(minute);
        return WaitLink.idle(at, live.seq() - 1).next(new WaitProblems(live,
                new PlanCureClock().clocksOf("thursday", live, at), at), at, live.seq(), false);
    }

    @Test void guests_are_told_a_quarter_of_an_hour_ahead_and_no_earlier() {
        WaitEvening evening = new WaitEvening(8).pour(40, 1, 2, 3, 4).pour(42, 5, 6).pour(44, 7, 8);
        List<Duration> ahead = new ArrayList<>();
        for (int minute = 45; minute < 90; minute++) {
            Instant now = WaitEvening.at(minute);
            planned(evening, minute).told().forEach(t -> ahead.add(Duration.between(now, t.from())));
        }
        assertThat(ahead.stream().max(Duration::compareTo)).hasValueSatisfying(most ->
                assertThat(most).isBetween(Duration.ofMinutes(14), Duration.ofMinutes(15)));
    }
}
