package benchpace.board.pacing;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.board.cooling.CureClock;
import benchpace.board.cooling.PlanCureClock;
import benchpace.live.LiveClass;
import benchpace.live.Seat;
import benchpace.live.Standing;
import benchpace.live.Wishes;
import benchpace.live.Wishes.Evening;
import java.time.Instant;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What holds of the judgement whatever is wished for in whatever order. */
class PosteriorPaceWatchProperties {
    private final CureClock cure = new PlanCureClock();

    @Provide
    Arbitrary<Evening> evenings() {
        return Wishes.evenings();
    }

    private Pace look(PaceWatch watch, LiveClass live, Instant now) {
        return watch.watch("any", live, cure.clocks(live, now), now);
    }

    @Property(tries = 12, edgeCases = EdgeCasesMode.NONE)
    void a_board_that_watched_every_event_and_one_started_afterwards_say_the_same(@ForAll("evenings") Evening evening) {
        PaceWatch watching = new PosteriorPaceWatch();
        LiveClass live = evening.begun();
        for (Wishes.Wish wish : evening.wishes()) {
            live = Wishes.put(live, wish);
            look(watching, live, live.lastRecordedAt());
        }
        Instant later = live.lastRecordedAt().plusSeconds(100);

        assertThat(look(watching, live, later)).isEqualTo(look(new PosteriorPaceWatch(), live, later));
    }

    @Property(tries = 12, edgeCases = EdgeCasesMode.NONE)
    void only_seats_that_are_at_work_are_flagged_and_home_time_is_in_order(@ForAll("evenings") Evening evening) {
        LiveClass live = evening.begun();
        for (Wishes.Wish wish : evening.wishes()) {
            live = Wishes.put(live, wish);
        }
        LiveClass last = live;
        Pace pace = look(new PosteriorPaceWatch(), live, live.lastRecordedAt().plusSeconds(600));

        assertThat(pace.flags().keySet()).allSatisfy(number -> {
            Seat seat = last.seat(number).orElseThrow();
            assertThat(last.progress().standing(seat).phase()).isEqualTo(Standing.Phase.WORKING);
        });
        assertThat(pace.mostUrgent()).containsExactlyInAnyOrderElementsOf(pace.flags().keySet());
        assertThat(pace.home().p10()).isBeforeOrEqualTo(pace.home().p50());
        assertThat(pace.home().p50()).isBeforeOrEqualTo(pace.home().p90());
    }
}
