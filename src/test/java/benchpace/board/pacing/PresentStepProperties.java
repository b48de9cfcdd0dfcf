package benchpace.board.pacing;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.live.ClassEvent;
import benchpace.live.LiveClass;
import benchpace.live.Wishes;
import benchpace.live.Wishes.Evening;
import benchpace.live.Wishes.Wish;
import benchpace.plan.Step;
import java.time.Instant;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;

/** What holds for the heading, whatever is wished for in whatever order. */
class PresentStepProperties {

    @Provide
    Arbitrary<Evening> evenings() {
        return Wishes.evenings();
    }

    @Property(tries = 400, edgeCases = EdgeCasesMode.NONE)
    void without_an_undo_or_a_correction_the_heading_never_goes_back(@ForAll("evenings") Evening evening) {
        for (boolean firm : new boolean[] {false, true}) {
            LiveClass live = evening.begun();
            int before = heading(live, firm, live.lastRecordedAt());
            for (Wish wish : evening.wishes()) {
                LiveClass next = Wishes.put(live, wish);
                int then = heading(next, firm, next.lastRecordedAt());
                if (next.seq() > live.seq() && !corrects(wish.event())) {
                    assertThat(then).as("after %s", wish.event()).isGreaterThanOrEqualTo(before);
                    Statistics.label("the heading").collect(then > before ? "goes on" : "stays");
                }
                assertThat(heading(next, firm, next.lastRecordedAt().plusSeconds(900))).isGreaterThanOrEqualTo(then);
                live = next;
                before = then;
            }
        }
    }

    @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
    void the_heading_is_open_and_no_open_led_step_lies_beyond_it(@ForAll("evenings") Evening evening) {
        LiveClass live = evening.begun();
        for (Wish wish : evening.wishes()) {
            live = Wishes.put(live, wish);
            int index = heading(live, true, live.lastRecordedAt());
            assertThat(index).isGreaterThanOrEqualTo(live.furthestOpened());
            if (index >= 0) {
                Step step = live.plan().steps().get(index);
                assertThat(live.progress().isOpen(step)).as("%s", step.id()).isTrue();
            }
        }
    }

    @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
    void while_no_candle_may_be_firm_the_heading_is_no_step_after_the_cure(@ForAll("evenings") Evening evening) {
        LiveClass live = evening.begun();
        int cure = live.plan().indexOf(live.plan().cure().orElseThrow().id());
        for (Wish wish : evening.wishes()) {
            live = Wishes.put(live, wish);
            if (!live.reach().firm()) {
                assertThat(heading(live, false, live.lastRecordedAt())).isLessThanOrEqualTo(cure);
            }
        }
    }

    private static int heading(LiveClass live, boolean firm, Instant now) {
        return PresentStep.of(live, firm, now).index();
    }

    private static boolean corrects(ClassEvent event) {
        return event instanceof ClassEvent.Undone || event instanceof ClassEvent.TapRetimed
                || event instanceof ClassEvent.TapReseated;
    }
}
