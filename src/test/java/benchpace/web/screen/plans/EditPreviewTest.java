package benchpace.web.screen.plans;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.files.plan.StarterPlans;
import benchpace.plan.Plan;
import benchpace.words.PlanWords;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a plan comes to, beside its fields. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class EditPreviewTest {

    static List<Plan> all() {
        return StarterPlans.all();
    }

    @ParameterizedTest
    @MethodSource("all")
    void it_takes_as_long_beside_its_fields_as_on_the_list_of_plans(Plan plan) {
        EditPreview preview = EditPreview.of(plan, Optional.empty(), Optional.empty());

        assertThat(PlanWords.what(plan)).contains(", " + preview.total() + ", ");
        assertThat(preview.steps().get(preview.steps().size() - 1).until())
                .isEqualTo(EditPreview.clock(plan.onPaper(plan.usualSeats())));
    }
}
