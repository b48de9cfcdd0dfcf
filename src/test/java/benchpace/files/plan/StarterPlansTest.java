package benchpace.files.plan;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.cure.CuringCandle;
import benchpace.cure.TableCase;
import benchpace.cure.room.CureOutlook;
import benchpace.cure.room.RoomFit;
import benchpace.cure.room.RoomPosterior;
import benchpace.cure.room.TrajectoryCache;
import benchpace.plan.Activity;
import benchpace.plan.Candle;
import benchpace.plan.Plan;
import benchpace.plan.Step;
import benchpace.plan.StepKind;
import benchpace.plan.kit.Circuit;
import benchpace.plan.kit.Supply;
import benchpace.prep.circuit.CircuitLine;
import benchpace.prep.circuit.Verdict;
import benchpace.prep.melter.MelterLine;
import benchpace.prep.sheet.PrepSheet;
import benchpace.prep.wax.Load;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The plans that come with the program: each could be taught as it stands, and its sheet adds up. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class StarterPlansTest {
    /** Its sockets are not ours: their figures are asked for. */
    private static final String AT_A_HIRED_VENUE = "travelling-class";

    private static List<Plan> all() {
        return StarterPlans.all();
    }

    @Test void every_plan_in_the_folder_is_offered_and_reads_back_equal() throws IOException, URISyntaxException {
        Path folder = Path.of(StarterPlans.class.getResource("/demo-data/plans/evening-pour.json").toURI()).getParent();
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files.map(f -> f.getFileName().toString()))
                    .containsExactlyInAnyOrderElementsOf(StarterPlans.IDS.stream().map(id -> id + ".json").toList());
        }
        assertThat(all()).extracting(plan -> plan.id().value()).isEqualTo(StarterPlans.IDS);
        assertThat(all()).allSatisfy(plan ->
                assertThat(PlanFile.read(PlanFile.write(plan)).ifSound()).contains(plan));
    }

    @Test void each_of_their_steps_names_its_picture_and_no_two_of_a_plan_show_the_same() {
        assertThat(all()).allSatisfy(plan -> {
            assertThat(plan.steps()).allMatch(step -> step.picture().isPresent());
            assertThat(plan.steps()).extracting(Step::drawn).doesNotHaveDuplicates();
        });
    }

    @Test void they_are_for_tables_of_every_size() {
        assertThat(all()).extracting(Plan::usualSeats).contains(6, 8, 10, 12, 24, 40);
        assertThat(StarterPlans.candles()).extracting(Candle::name).doesNotHaveDuplicates().hasSizeGreaterThan(8);
    }

    /** The sheet gives the unit, which may be the ounce. */
    @ParameterizedTest
    @MethodSource("all")
    void no_supply_has_a_unit_in_its_name(Plan plan) {
        assertThat(plan.kit().supplies()).isNotEmpty()
                .noneMatch(supply -> supply.name().matches(".*\\b(grams|ounces)\\b.*"));
    }

    @ParameterizedTest
    @MethodSource("all")
    void it_takes_the_time_it_promises_turns_included(Plan plan) {
        assertThat(plan.onPaper(plan.usualSeats()))
                .isLessThanOrEqualTo(Duration.ofMinutes(plan.kit().promisedMinutes().orElseThrow()));
    }

    /** Honest: in a room that has taught nothing at least half of its candles of each kind should be ready. */
    @ParameterizedTest
    @MethodSource("all")
    void its_candles_are_ready_within_the_wait_that_it_plans(Plan plan) {
        assertThat(plan.candles()).hasSizeBetween(2, 3).allSatisfy(c -> {
            TableCase table = TableCase.of(c.vessel(), c.wax(), c.fillGrams(), c.fragranceFraction(),
                    c.roomCelsius(), c.pourCelsius(), c.tableTop(), 1);
            CureOutlook outlook = CureOutlook.of(new CuringCandle(c.id(), table.coolingCase(), false),
                    RoomPosterior.of(RoomFit.untaught()), new TrajectoryCache());

            assertThat(outlook.ready().p50()).as(c.name())
                    .isLessThan(plan.cure().orElseThrow().planned().toMinutes());
        });
    }

    /** Whichever candle all of them choose. */
    @ParameterizedTest
    @MethodSource("all")
    void its_wax_fits_its_melters_in_one_fill_and_its_fragrance_is_allowed(Plan plan) {
        for (Candle candle : plan.candles()) {
            PrepSheet sheet = PrepSheet.of(plan, plan.usualSeats(), Map.of(candle.id(), plan.usualSeats()));

            assertThat(sheet.candles()).allMatch(line -> line.load() == Load.ALLOWED);
            assertThat(sheet.melters().stream().filter(MelterLine::used)).as(candle.name()).singleElement()
                    .satisfies(melter -> {
                        assertThat(melter.fills()).hasValue(1);
                        assertThat(melter.switchOnMinutesBefore().orElseThrow()).isBetween(45.0, 180.0);
                    });
            assertThat(sheet.cost().perClass().orElseThrow()).isPositive();
        }
    }

    @ParameterizedTest
    @MethodSource("all")
    void its_circuits_carry_what_it_plugs_in_or_are_asked_for(Plan plan) {
        PrepSheet sheet = PrepSheet.of(plan, plan.usualSeats(), Map.of());
        if (plan.id().value().equals(AT_A_HIRED_VENUE)) {
            assertThat(plan.kit().circuits()).hasSizeGreaterThan(1).allSatisfy(circuit -> {
                assertThat(circuit.name()).contains("ask");
                assertThat(circuit.volts()).isEmpty();
                assertThat(circuit.amps()).isEmpty();
                assertThat(circuit.rule()).isEmpty();
            });
        } else {
            assertThat(sheet.problems()).isEmpty();
            assertThat(sheet.circuits()).isNotEmpty().extracting(CircuitLine::verdict)
                    .allMatch(verdict -> verdict.filter(Verdict.FITS::equals).isPresent());
            assertThat(plan.kit().circuits()).extracting(Circuit::rule).doesNotContain(java.util.Optional.empty());
        }
    }

    @ParameterizedTest
    @MethodSource("all")
    void every_step_has_something_to_say_and_to_read_and_what_can_hurt_has_a_caution(Plan plan) {
        List<StepKind> hot = List.of(StepKind.POUR, StepKind.CURE);

        assertThat(plan.steps()).allSatisfy(step -> {
            assertThat(step.say()).as(step.name()).isNotBlank();
            assertThat(step.wall()).as(step.name()).isNotBlank();
        });
        assertThat(plan.steps()).filteredOn(s -> hot.contains(s.kind())
                        || s.id().value().matches("mix|fragrance|blend|trim|close|before-wax|colour"))
                .extracting(Step::caution).doesNotContain("");
        assertThat(plan.activities()).extracting(Activity::longest)
                .allMatch(longest -> longest.compareTo(plan.cure().orElseThrow().planned()) < 0);
    }

    /**
     * Poured one by one at 4.17 minutes a seat forty guests take 167 minutes: six places at least are needed to be done
     * within half an hour. Common practice and arithmetic, no source.
     */
    @Test void forty_pour_within_half_an_hour_because_many_places_serve_them() {
        Plan forty = StarterPlans.plan("class-of-forty");
        Step pour = forty.pour().orElseThrow();

        assertThat(forty.usualSeats()).isEqualTo(40);
        assertThat(pour.stations().orElseThrow().atOnce()).isGreaterThanOrEqualTo(6);
        assertThat(pour.onPaper(40)).isLessThanOrEqualTo(Duration.ofMinutes(30));
    }

    @Test void children_see_no_flame_no_blade_and_no_hot_jug() {
        Plan party = StarterPlans.plan("childrens-party");

        assertThat(party.candles()).allMatch(candle -> candle.pourCelsius() <= 55);
        assertThat(party.pour().orElseThrow().stations().orElseThrow().what()).contains("helper");
        assertThat(party.kit().supplies()).filteredOn(supply -> supply.perSeat() > 0).extracting(Supply::name)
                .noneMatch(name -> name.matches("(?i).*(trimmer|scissors|knife|match|jug of).*"));
        assertThat(party.activities()).extracting(Activity::caution)
                .noneMatch(caution -> caution.matches("(?i).*(craft knives|glue gun).*"));
    }

    @Test void what_travels_has_a_box_and_a_bowl_has_two_wicks() {
        assertThat(StarterPlans.plan(AT_A_HIRED_VENUE).kit().supplies()).extracting(Supply::box).doesNotContain("");
        assertThat(StarterPlans.plan("two-wick-bowl").kit().supplies())
                .filteredOn(supply -> supply.id().equals("wick")).singleElement()
                .extracting(Supply::perSeat).isEqualTo(2.0);
    }
}
