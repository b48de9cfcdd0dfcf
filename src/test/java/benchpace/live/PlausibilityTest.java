package benchpace.live;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.plan.SeatNumber;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** What cannot be true of the candles is refused with the rest, in one decision. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PlausibilityTest {
    private static final Refusal WARMER_THAN_POURED = new Refusal.Absurd("celsius", 90, 20, 70);
    private static final Plausibility NOTHING = (live, wish) -> Optional.of(WARMER_THAN_POURED);

    private final TestClass c = TestClass.atThePour(2).minute(25).finish(1, "pour").minute(30);

    private Decision decide(ClassEvent wish, Plausibility plausibility) {
        return Rules.decide(c.live(), new Command("a", "test", c.now(), wish), c.now(), plausibility);
    }

    private static ClassEvent reading(int seat, double celsius) {
        return new ClassEvent.TemperatureRead(new SeatNumber(seat), celsius);
    }

    @Test void a_reading_that_the_candle_cannot_have_is_refused_by_the_rules() {
        assertThat(decide(reading(1, 90), NOTHING)).isEqualTo(new Decision.Refused(WARMER_THAN_POURED));
        assertThat(decide(reading(1, 90), Plausibility.ANYTHING)).isEqualTo(new Decision.Accepted(reading(1, 90)));
    }

    @Test void what_another_rule_refuses_is_not_asked_about() {
        List<ClassEvent> asked = new ArrayList<>();
        Plausibility noting = (live, wish) -> {
            asked.add(wish);
            return Optional.empty();
        };

        assertThat(decide(reading(2, 60), noting)).as("not poured").isInstanceOf(Decision.Refused.class);
        assertThat(decide(reading(1, 400), noting)).as("no thermometer shows that")
                .isInstanceOf(Decision.Refused.class);
        assertThat(decide(reading(1, 60), noting)).isInstanceOf(Decision.Accepted.class);
        assertThat(asked).containsExactly(reading(1, 60));
    }
}
