package benchpace.board.time;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Whatever becomes of the computer's clock. */
class SteadyClockProperties {
    private static final Instant EVENING = Instant.parse("2027-03-04T18:30:00Z");
    /** Of the time that passes, so much may be made up for. */
    private static final double SLOWLY = 1.0 / SteadyClock.SLOWLY;

    /** @param jump of the computer's clock, ms @param passed then, ms @param asleep and then so long, ms */
    record Turn(long jump, long passed, long asleep) { }

    @Provide Arbitrary<List<Turn>> histories() {
        Arbitrary<Long> nudges = Arbitraries.longs().between(-2_500, 2_500);
        Arbitrary<Long> jumps = Arbitraries.longs().between(-4_000_000_000_000L, 4_000_000_000_000L);
        Arbitrary<Long> jump = Arbitraries.frequencyOf(net.jqwik.api.Tuple.of(3, Arbitraries.just(0L)),
                net.jqwik.api.Tuple.of(3, nudges), net.jqwik.api.Tuple.of(2, jumps));
        Arbitrary<Long> passed = Arbitraries.longs().between(0, 600_000);
        Arbitrary<Long> asleep = Arbitraries.frequencyOf(net.jqwik.api.Tuple.of(5, Arbitraries.just(0L)),
                net.jqwik.api.Tuple.of(1, Arbitraries.longs().between(1_000, 40_000_000)));
        return Combinators.combine(jump, passed, asleep).as(Turn::new).list().ofMaxSize(60);
    }

    @Property(tries = 500) void the_boards_time_goes_as_time_passes_and_never_back(
            @ForAll("histories") List<Turn> history) {
        SettableClocks computer = new SettableClocks(EVENING, true);
        SteadyClock board = computer.start();
        Instant before = board.instant();
        for (Turn turn : history) {
            computer.jump(Duration.ofMillis(turn.jump)).pass(Duration.ofMillis(turn.passed))
                    .sleep(Duration.ofMillis(turn.asleep));
            Instant after = board.instant();
            long lived = turn.passed + turn.asleep;
            assertThat(after).isAfterOrEqualTo(before);
            assertThat((double) Duration.between(before, after).toMillis())
                    .isBetween(lived * (1 - SLOWLY) - 1, lived * (1 + SLOWLY) + 1);
            before = after;
        }
    }

    /** Every seventh turn the program is started anew, by whatever the computer's clock shows then. */
    @Property(tries = 300) void a_classs_time_goes_as_time_passes_and_never_back_over_restarts_either(
            @ForAll("histories") List<Turn> history) {
        SettableClocks computer = new SettableClocks(EVENING, true);
        ClassTime time = new ClassTime(computer.start(), EVENING);
        Instant before = time.now();
        for (int i = 0; i < history.size(); i++) {
            Turn turn = history.get(i);
            computer.jump(Duration.ofMillis(turn.jump)).pass(Duration.ofMillis(turn.passed));
            if (i % 7 == 6) {
                time = new ClassTime(computer.start(), before);
                assertThat(time.now()).isAfterOrEqualTo(before);
            } else {
                assertThat((double) Duration.between(before, time.now()).toMillis())
                        .isBetween(turn.passed * (1 - SLOWLY) - 2, turn.passed * (1 + SLOWLY) + 2);
            }
            before = time.now();
            time.wrote(before);
        }
    }
}
