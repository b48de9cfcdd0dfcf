package benchpace.board.pacing;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.live.ClassEvent;
import benchpace.live.LiveClass;
import benchpace.live.Recorded;
import benchpace.live.Setup;
import benchpace.live.Wishes;
import benchpace.live.Wishes.Evening;
import benchpace.plan.Plan;
import benchpace.plan.Stations;
import benchpace.plan.TestPlans;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.statistics.Statistics;

/** Whoever is said to wait for a turn does so by the record: a short way to "nobody" hides nobody. */
class TurnsAtProperties {
    private static final Stations ONE = new Stations(1, "one of it", Duration.ofMinutes(3));

    @Provide
    Arbitrary<Evening> evenings() {
        return Wishes.evenings();
    }

    @Provide
    Arbitrary<List<String>> stepsWithStations() {
        return Arbitraries.subsetOf("wicks", "blend", "pour", "trim", "wrap").map(List::copyOf);
    }

    @Property(tries = 600, edgeCases = EdgeCasesMode.NONE)
    void where_nobody_can_have_come_to_a_station_nobody_has(@ForAll("evenings") Evening evening,
            @ForAll("stepsWithStations") List<String> stations, @ForAll @IntRange(max = 40) int later) {
        LiveClass live = served(evening, stations);
        Instant now = live.lastRecordedAt().plus(Duration.ofMinutes(later));

        List<TurnsAt> told = TurnsAt.of(live, now);

        assertThat(told).isEqualTo(live.closedAt().isPresent() ? List.of() : TurnsAt.replayed(live, now));
        Statistics.label("somebody has come").collect(!told.isEmpty());
    }

    /** The evening as it went, after a plan some of whose steps serve one seat at a time. */
    private static LiveClass served(Evening evening, List<String> stations) {
        LiveClass live = evening.begun();
        for (Wishes.Wish wish : evening.wishes()) {
            live = Wishes.put(live, wish);
        }
        Plan plan = live.plan();
        for (String step : stations) {
            plan = TestPlans.served(plan, step, ONE);
        }
        List<Recorded> log = new ArrayList<>(live.log());
        log.set(0, begun(log.get(0), plan));
        return LiveClass.of(log);
    }

    private static Recorded begun(Recorded first, Plan plan) {
        Setup setup = ((ClassEvent.ClassCreated) first.event()).setup();
        return new Recorded(first.seq(), first.commandId(), first.by(), first.at(), first.recordedAt(),
                new ClassEvent.ClassCreated(new Setup(plan, setup.name(), setup.startsAt(), setup.promisedEnd(),
                        setup.numbering(), setup.seats())));
    }
}
