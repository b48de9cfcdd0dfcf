package benchpace.web.pairing;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.web.pairing.Caller.Circle;
import benchpace.web.screen.shell.Role;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** However many there are, wherever they come from and whenever they try. Figures as in NIST SP 800-63B, 5.2.2. */
class ThrottleProperties {
    private static final Instant EVENING = Instant.parse("2027-03-04T18:30:00Z");
    private static final Duration HOUR = Duration.ofHours(1);

    /** So many tries in a row from each of so many addresses after so long a wait. */
    record Wave(Duration after, int addresses, int each) { }

    @Provide Arbitrary<List<Wave>> attack() {
        Arbitrary<Duration> pauses = Arbitraries.frequencyOf(
                net.jqwik.api.Tuple.of(3, Arbitraries.longs().between(0, 90).map(Duration::ofSeconds)),
                net.jqwik.api.Tuple.of(2, Arbitraries.longs().between(1, 130).map(Duration::ofMinutes)));
        return Combinators.combine(pauses, Arbitraries.integers().between(1, 40), Arbitraries.integers().between(1, 30))
                .as(Wave::new).list().ofMaxSize(40);
    }

    /** Strangers at work on one board. */
    private static final class Siege {
        final Throttle throttle = new Throttle();
        /** When a PIN was compared. */
        final List<Instant> compared = new ArrayList<>();

        Instant run(List<Wave> waves, Consumer<Instant> afterEach) {
            Instant now = EVENING;
            for (Wave wave : waves) {
                now = now.plus(wave.after);
                for (int i = 0; i < wave.addresses * wave.each; i++) {
                    attempt("from-" + i % wave.addresses, now);
                    afterEach.accept(now);
                }
            }
            return now;
        }

        void attempt(String address, Instant now) {
            throttle.attempt(new Caller(Circle.STRANGERS, address, address), now, () -> {
                compared.add(now);
                return Optional.empty();
            });
        }

        long inTheHourBefore(Instant now) {
            return compared.stream().filter(at -> at.plus(HOUR).isAfter(now)).count();
        }
    }

    @Property(tries = 150) void strangers_together_get_a_hundred_tries_and_fifty_more_an_hour(
            @ForAll("attack") List<Wave> waves) {
        Siege siege = new Siege();

        Instant end = siege.run(waves, now -> { });

        long hours = Duration.between(EVENING, end).toHours();
        assertThat((long) siege.compared.size()).isLessThanOrEqualTo(Throttle.MOST + (hours + 1) * Throttle.MOST / 2);
    }

    /** 5 at once, then after 30 s, 1, 2, 4, 8, 16 and 32 min: 6 or 7 more before the hour is over. */
    @Property(tries = 150) void one_address_gets_twelve_tries_in_any_hour(@ForAll("attack") List<Wave> waves) {
        Siege siege = new Siege();

        siege.run(waves.stream().map(wave -> new Wave(wave.after, 1, wave.each)).toList(), now ->
                assertThat(siege.inTheHourBefore(now)).isLessThanOrEqualTo(Throttle.FREE + 7));
    }

    @Property(tries = 100) void whatever_strangers_do_the_console_and_paired_devices_pair_at_once(
            @ForAll("attack") List<Wave> waves, @ForAll Circle circle) {
        Siege siege = new Siege();
        Caller known = new Caller(circle == Circle.STRANGERS ? Circle.CONSOLE : circle, "known", "from-1");

        siege.run(waves, now -> assertThat(siege.throttle.attempt(known, now, () -> Optional.of(Role.HELPER)).role())
                .contains(Role.HELPER));
    }

    @Property(tries = 100) void as_many_are_told_as_were_compared_in_the_last_hour(@ForAll("attack") List<Wave> waves) {
        Siege siege = new Siege();

        Instant end = siege.run(waves, now -> { });

        assertThat((long) siege.throttle.guesses(end).wrong()).isEqualTo(siege.inTheHourBefore(end));
    }
}
