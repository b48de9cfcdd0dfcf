package benchpace.live;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.live.Wishes.Evening;
import benchpace.plan.Step;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Whatever happened in a class, it can be told without anybody's name. */
class NamelessProperties {

    @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
    void a_class_stands_as_it_stood_and_is_nameless_already_when_done_twice(@ForAll("evenings") Evening evening) {
        LiveClass live = evening.begun();
        for (Wishes.Wish wish : evening.wishes()) {
            live = Wishes.put(live, wish);
        }
        for (boolean everybody : new boolean[] {true, false}) {
            List<Recorded> nameless = nameless(everybody).all(live.log());
            assertThat(stands(LiveClass.of(nameless), everybody)).isEqualTo(stands(live, everybody));
            assertThat(nameless(everybody).all(nameless)).isEqualTo(nameless);
        }
    }

    @Provide
    Arbitrary<Evening> evenings() {
        return Wishes.evenings();
    }

    private static Nameless nameless(boolean everybody) {
        return everybody ? Nameless.ofEverybody() : Nameless.ofGuests();
    }

    /** All that pace, cure and wait go by, with steps, activities and candles by their place in the plan. */
    private static List<Object> stands(LiveClass live, boolean named) {
        List<Object> told = new ArrayList<>(List.of(live.seq(), live.closedAt(), live.reach().firm(),
                live.roomReadings(), live.pourReadings(), live.notes().size(), live.furthestOpened()));
        live.plan().steps().forEach(step -> told.add(live.openedAt(step.id())));
        live.plan().activities().forEach(activity -> told.add(live.activity(activity.id())));
        live.seats().forEach(seat -> told.add(stands(seat, live)));
        live.seats().stream().filter(seat -> named).forEach(seat ->
                told.add(List.of(seat.name().isEmpty(), seat.party().isEmpty())));
        return told;
    }

    private static List<Object> stands(Seat seat, LiveClass live) {
        Standing standing = live.progress().standing(seat);
        List<Instant> finished = live.plan().steps().stream().flatMap(step ->
                Optional.ofNullable(seat.finishes().get(step.id())).map(Seat.Finish::at).stream()).toList();
        return List.of(seat.number(), seat.presence(), standing.phase(), standing.since(),
                standing.step().map(Step::id).map(live.plan()::indexOf), live.progress().pouredAt(seat), finished,
                seat.sharesWith(), seat.pausedSince(), seat.readings(), seat.skinSeenAt(), seat.judgedSetAt(),
                seat.claim().isPresent(), seat.notes().size(), seat.presenceSince(),
                seat.candle().map(id -> live.plan().candles().indexOf(live.plan().candle(id).orElseThrow())),
                seat.stints().stream().map(stint -> List.of(stint.from(), stint.until())).toList());
    }
}
