package benchpace.board.view;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.Stories;
import benchpace.board.cooling.PlanCureClock;
import benchpace.board.pacing.PosteriorPaceWatch;
import benchpace.live.LiveClass;
import benchpace.live.TestClass;
import benchpace.pace.Level;
import benchpace.report.Part;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Real evenings looked back on: who went home, who never poured, who closed the class when. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class ReportMakerTest {
    private static ClassReport report(TestClass told, double minute) {
        LiveClass live = told.live();
        Instant now = TestClass.instant(minute);
        ViewMaker maker = new ViewMaker(new PlanCureClock(), new PosteriorPaceWatch(), Watched.ZONE);
        return maker.report("test", live, maker.view("test", live, now));
    }

    private static TestClass opened(TestClass c) {
        return c.minute(9).open("wicks").open("mix").open("pour");
    }

    /** Three seats; those named pour at minute 20. */
    private static TestClass poured(int... seats) {
        TestClass c = opened(TestClass.of(Stories.plan(), 3));
        for (int seat : seats) {
            c.minute(20).finish(seat, "pour");
        }
        return c;
    }

    @Test void the_last_candle_is_called_the_last_only_when_all_have_poured() {
        ClassReport some = report(poured(1), 30);
        assertThat(some.waitedFor()).containsExactly(2, 3);
        assertThat(some.held()).isPresent();
        assertThat(report(poured(1, 2, 3), 30).waitedFor()).isEmpty();
    }

    @Test void a_class_that_has_gone_home_before_its_candles_were_set_is_looked_back_on_all_the_same() {
        TestClass c = poured(1, 2, 3).minute(30).leave(1).leave(2);
        assertThat(report(c, 31).candles()).as("the class waits for seat 3 alone").containsOnlyKeys(3);
        assertThat(report(c.minute(32).leave(3), 33).candles()).containsOnlyKeys(1, 2, 3);
    }

    @Test void a_seat_named_while_it_works_did_not_come_late() {
        TestClass c = TestClass.of(Stories.plan(), 2).minute(6).arrive(2, "Ida").minute(8).finish(1, "vessel")
                .finish(2, "vessel");
        opened(c).minute(20).finish(1, "pour").finish(2, "pour");
        assertThat(report(c, 30).held().orElseThrow().links()).extracting(l -> l.part().kind())
                .doesNotContain(Part.Kind.BEGINNING);
    }

    @Test void a_class_closed_the_next_day_ends_an_hour_after_its_last_tap() {
        TestClass c = Stories.stuckAtWicks(6).minute(24 * 60).close();
        ClassReport report = report(c, 24 * 60 + 5);
        assertThat(report.flags()).hasSize(1);
        assertThat(report.flags().get(0).level()).isEqualTo(Level.BEHIND);
        assertThat(report.flags().get(0).toMinutes()).isLessThan(75);
        assertThat(report.view().lines().until()).isBefore(TestClass.instant(80));
    }

    @Test void the_plan_has_the_candles_ready_when_its_cure_ends() {
        ClassReport report = report(poured(1), 30);
        assertThat(report.plannedReady()).as("vessel 2, wicks 4, mix 5, pour 3 and an hour")
                .isEqualTo(report.view().startsAt().plus(Duration.ofMinutes(74)));
    }
}
