package benchpace.plan;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class PlanIdTest {
    @ParameterizedTest
    @CsvSource({"Thursday tea lights,thursday-tea-lights", "'  Élan: 2 wicks! ',elan-2-wicks", "'***',plan", "'',plan",
        "Свеча,plan", "'a- -b',a-b",
        "A very long name for a quite ordinary evening class,a-very-long-name-for-a-quite-ordinary-ev",
        "Twelve letters and more than forty in-- all,twelve-letters-and-more-than-forty-in-al"})
    void a_name_makes_an_id_that_stands_in_an_address(String name, String id) {
        assertThat(PlanId.of(name).value()).isEqualTo(id);
    }
}
