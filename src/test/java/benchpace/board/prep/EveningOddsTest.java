package benchpace.board.prep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import benchpace.plan.TestPlans;
import benchpace.prep.evening.Beliefs;
import benchpace.prep.evening.Evenings;
import benchpace.prep.evening.Setting;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Evenings are simulated beside everything else, once, and a simulation that fails is a sentence less. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class EveningOddsTest {
    private static final Duration LONG = Duration.ofSeconds(60);

    private static Setting setting(int seats) {
        return Occasion.of(TestPlans.evening(), seats, Map.of()).setting(Beliefs.UNTAUGHT);
    }

    @Test void the_same_setting_is_simulated_once_whoever_asks() throws InterruptedException {
        AtomicInteger simulated = new AtomicInteger();
        try (EveningOdds odds = new EveningOdds((setting, cache, progress) -> {
            simulated.incrementAndGet();
            return Evenings.of(setting, 1, 20, cache, progress);
        })) {
            Odds first = odds.awaited(setting(3), LONG);

            assertThat(first).isInstanceOf(Odds.Told.class);
            assertThat(((Odds.Told) odds.awaited(setting(3), LONG)).timetable())
                    .isEqualTo(((Odds.Told) first).timetable());
            assertThat(simulated).hasValue(1);
        }
    }

    @Test void whoever_waits_is_told_how_far_it_is_and_no_caller_waits() {
        List<Odds> seen = new CopyOnWriteArrayList<>();
        try (EveningOdds odds = new EveningOdds((setting, cache, progress) ->
                Evenings.of(setting, 1, 200, cache, progress))) {
            assertThat(odds.known(setting(3))).isEqualTo(new Odds.UnderWay(0, Evenings.USUAL));
            assertThat(odds.of(setting(3), () -> seen.add(odds.known(setting(3)))))
                    .isInstanceOf(Odds.UnderWay.class);
            await().atMost(LONG).until(() -> seen.stream()
                    .anyMatch(o -> o instanceof Odds.Told told && told.helps().isPresent()));
        }
        assertThat(seen.get(0)).isInstanceOf(Odds.UnderWay.class);
    }

    @Test void a_simulation_that_fails_is_missing_and_the_next_one_goes_on() throws InterruptedException {
        try (EveningOdds odds = new EveningOdds((setting, cache, progress) -> {
            if (setting.seats() == 3) {
                throw new IllegalStateException("a broken model");
            }
            return Evenings.of(setting, 1, 20, cache, progress);
        })) {
            assertThat(odds.awaited(setting(3), LONG)).isInstanceOf(Odds.Missing.class);
            assertThat(odds.awaited(setting(4), LONG)).isInstanceOf(Odds.Told.class);
        }
    }
}
