package benchpace.board.waiting;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.cooling.PlanCureClock;
import benchpace.breaks.Announced;
import benchpace.breaks.BrokenAnnouncement;
import benchpace.breaks.WaitPlan;
import benchpace.live.LiveClass;
import benchpace.plan.Activity;
import benchpace.plan.ActivityKind;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
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

    private static boolean together(Announced told) {
        Activity activity = WaitEvening.PLAN.activity(told.activity()).orElseThrow();
        return activity.audience() == Activity.Audience.WHOLE_CLASS && activity.kind() != ActivityKind.WRAPPING;
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

    /** Four seats that have mixed; the candles of all or of all but one are poured. */
    private static WaitEvening mixed(int... poured) {
        WaitEvening evening = new WaitEvening(4);
        for (int seat = 1; seat <= 4; seat++) {
            evening.finish(36, "mix", seat);
        }
        return evening.pour(40, poured);
    }

    @Test void nobody_is_told_of_an_activity_before_the_candle_is_poured() {
        assertThat(everythingTold(mixed(1, 2, 3))).isNotEmpty().extracting(t -> t.seat().value())
                .isSubsetOf(1, 2, 3);
    }

    @Test void a_break_of_the_whole_class_is_told_once_every_candle_is_poured() {
        assertThat(everythingTold(mixed(1, 2, 3, 4))).anyMatch(WaitLinkTest::together);
        assertThat(everythingTold(mixed(1, 2, 3))).isNotEmpty().noneMatch(WaitLinkTest::together);
    }

    @Test void what_has_moved_and_is_back_where_it_was_told_first_is_no_change() {
        WaitEvening evening = mixed(1, 2, 3, 4);
        WaitLink fresh = planned(evening, 45);
        Announced first = fresh.told().get(0);
        Instant later = first.from().plus(Duration.ofHours(3)); // when the candle is long set, so it cannot stay there
        BrokenAnnouncement.Moved away = new BrokenAnnouncement.Moved(first, later,
                BrokenAnnouncement.Reason.NOT_FREE_IN_TIME);
        assertThat(after(evening, fresh, away.nowFrom(), List.of())).extracting(WaitLink.Change::what)
                .extracting(c -> ((BrokenAnnouncement.Moved) c).nowFrom()).containsExactly(first.from());

        assertThat(after(evening, fresh, away.nowFrom(), List.of(new WaitLink.Change(fresh.at(), away)))).isEmpty();
    }

    /** What has changed for the seat that was told of one thing at an instant, planned anew. */
    private static List<WaitLink.Change> after(WaitEvening evening, WaitLink fresh, Instant told,
                                               List<WaitLink.Change> before) {
        Announced first = fresh.told().get(0);
        LiveClass live = evening.live();
        return new WaitLink(fresh.at(), fresh.seq(), false, fresh.problem(), WaitPlan.NONE, fresh.poured(),
                List.of(new Announced(first.seat(), first.activity(), told)), before, Map.of(), Optional.empty())
                .next(new WaitProblems(live, new PlanCureClock().clocksOf("thursday", live, fresh.at()), fresh.at()),
                        fresh.at(), live.seq(), true).changes();
    }

    private static Stream<Announced> everythingTold(WaitEvening evening) {
        return IntStream.range(41, 56).boxed().flatMap(m -> planned(evening, m).told().stream());
    }
}
