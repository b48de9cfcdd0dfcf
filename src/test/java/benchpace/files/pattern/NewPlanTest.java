package benchpace.files.pattern;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import benchpace.files.plan.PlanFile;
import benchpace.files.plan.StarterPlans;
import benchpace.plan.Activity;
import benchpace.plan.ActivityKind;
import benchpace.plan.Candle;
import benchpace.plan.Plan;
import benchpace.plan.PlanId;
import benchpace.plan.Step;
import benchpace.plan.StepKind;
import benchpace.plan.Wax;
import benchpace.plan.kit.Supply;
import benchpace.plan.pattern.Answers;
import benchpace.plan.pattern.Remark;
import benchpace.prep.sheet.PrepSheet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** A new plan from a few answers. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class NewPlanTest {
    private static final long SEED = Long.getLong("seed", 20270305L);
    private static final List<Candle> CANDLES = StarterPlans.candles();
    private static final Candle GLASS = StarterPlans.plan("evening-pour").candles().get(0);

    private static Answers answers(int seats, int minutes, Answers.Pouring pouring, int atOnce) {
        return new Answers(seats, GLASS, minutes, Answers.Venue.OWN_SHOP, pouring, atOnce);
    }

    private static NewPlan of(Answers answers) {
        return NewPlan.of(new PlanId("mine"), "My own class", answers);
    }

    private static List<String> steps(NewPlan made) {
        return made.plan().steps().stream().map(step -> step.id().value()).toList();
    }

    private static long collected(NewPlan made) {
        return made.remarks().stream().filter(Remark.CollectedLater.class::isInstance).count();
    }

    // ---- whatever is answered

    @Test void whatever_is_answered_the_plan_is_sound_and_keeps_to_the_time_or_says_that_it_does_not() {
        Random random = new Random(SEED);
        for (int i = 0; i < 80; i++) {
            Answers answers = any(random);
            NewPlan made = of(answers);
            Plan plan = made.plan();

            assertThat(PlanFile.read(PlanFile.write(plan)).ifSound()).as("%s", answers).contains(plan);
            long paper = plan.onPaper(answers.seats()).toSeconds();
            List<Remark> longer = made.remarks().stream().filter(Remark.LongerThanAsked.class::isInstance).toList();
            if (paper > answers.minutes() * 60L) {
                assertThat(longer).as("%s", answers)
                        .containsExactly(new Remark.LongerThanAsked(answers.minutes(), (int) Math.ceil(paper / 60.0)));
            } else {
                assertThat(longer).as("%s", answers).isEmpty();
            }
            assertThat(PrepSheet.of(plan, answers.seats(), Map.of()).seats()).isEqualTo(answers.seats());
            assertThat(plan.kit().supplies()).noneMatch(supply -> supply.name().contains("grams"));
            assertThat(plan.kit().promisedMinutes()).hasValue(answers.minutes());
            assertThat(plan.kit().melters()).allMatch(melter -> melter.watts().isEmpty());
            assertThat(plan.steps()).filteredOn(step -> step.kind() == StepKind.POUR).singleElement()
                    .extracting(Step::caution).isNotEqualTo("");
        }
    }

    private static Answers any(Random random) {
        return new Answers(1 + random.nextInt(60), CANDLES.get(random.nextInt(CANDLES.size())),
                Answers.SHORTEST + random.nextInt(random.nextBoolean() ? 120 : 451),
                Answers.Venue.values()[random.nextInt(2)], Answers.Pouring.values()[random.nextInt(3)],
                1 + random.nextInt(random.nextBoolean() ? 4 : 60));
    }

    @Test void a_candle_is_taken_home_only_if_half_of_its_kind_are_ready_by_then() {
        Random random = new Random(SEED + 1);
        for (int i = 0; i < 30; i++) {
            Answers answers = any(random);
            NewPlan made = of(answers);
            boolean home = steps(made).stream().noneMatch("leave"::equals);

            assertThat(collected(made)).as("%s", answers).isEqualTo(home ? 0 : 1);
            if (home) {
                assertThat(made.plan().cure()).as("%s", answers).isPresent();
            }
            made.remarks().stream().filter(Remark.MorePlaces.class::isInstance).map(Remark.MorePlaces.class::cast)
                    .forEach(more -> {
                        assertThat(collected(of(answers.pouringAtOnce(more.places())))).isZero();
                        assertThat(collected(of(answers.pouringAtOnce(more.places() - 1)))).isEqualTo(1);
                    });
        }
    }

    // ---- the usual ones

    @Test void six_guests_with_two_hours_do_everything_themselves_and_take_their_candle_home() {
        NewPlan made = of(answers(6, 120, Answers.Pouring.GUESTS, 2));

        assertThat(made.remarks()).isEmpty();
        assertThat(steps(made)).containsExactly("welcome", "vessel", "wicks", "fragrance", "before-wax", "mix", "pour",
                "centre", "cure", "trim", "wrap", "farewell");
        assertThat(made.plan().pour().orElseThrow().stations().orElseThrow().what()).isEqualTo("2 pouring places");
        assertThat(made.plan().activities()).extracting(Activity::kind).contains(ActivityKind.LABELS,
                ActivityKind.REFRESHMENTS, ActivityKind.WRAPPING);
    }

    @Test void nobody_waits_for_a_turn_where_all_pour_at_once() {
        assertThat(of(answers(4, 120, Answers.Pouring.GUESTS, 4)).plan().steps()).extracting(Step::stations)
                .allMatch(java.util.Optional::isEmpty);
    }

    /** One by one at 2 minutes each they would pour for 80 minutes. */
    @Test void forty_guests_at_one_pouring_place_are_told_how_many_places_would_do() {
        NewPlan made = of(answers(40, 150, Answers.Pouring.GUESTS, 1));

        assertThat(made.remarks()).hasAtLeastOneElementOfType(Remark.CollectedLater.class)
                .hasAtLeastOneElementOfType(Remark.MorePlaces.class);
    }

    @Test void in_an_hour_a_glass_is_left_on_the_shelf() {
        NewPlan made = of(answers(6, 60, Answers.Pouring.GUESTS, 6));

        assertThat(steps(made)).contains("leave").doesNotContain("trim", "wrap", "vessel");
        assertThat(made.plan().activities()).extracting(Activity::kind).doesNotContain(ActivityKind.WRAPPING);
        assertThat(made.remarks()).singleElement().isInstanceOf(Remark.CollectedLater.class);
    }

    @Test void a_candle_without_scent_has_no_scent_to_choose_or_stir_in() {
        Candle plain = new Candle(GLASS.id(), GLASS.name(), GLASS.vessel(), GLASS.wax(), GLASS.fillGrams(), 0,
                GLASS.roomCelsius(), GLASS.pourCelsius(), GLASS.tableTop());
        NewPlan made = of(new Answers(6, plain, 120, Answers.Venue.OWN_SHOP, Answers.Pouring.GUESTS, 2));

        assertThat(steps(made)).doesNotContain("fragrance", "mix");
        assertThat(made.plan().kit().supplies()).extracting(Supply::id).doesNotContain("fragrance");
    }

    @Test void children_neither_pour_nor_cut_and_hot_wax_is_remarked_on() {
        NewPlan made = of(answers(10, 120, Answers.Pouring.HELPERS_FOR_CHILDREN, 2));

        assertThat(steps(made)).doesNotContain("trim", "mix");
        assertThat(made.plan().pour().orElseThrow().stations().orElseThrow().what()).isEqualTo("2 helpers");
        assertThat(made.remarks()).containsExactly(new Remark.HotForChildren(62));
        assertThat(made.plan().activities()).extracting(Activity::name).doesNotContain("Match jar");
        assertThat(made.plan().kit().supplies()).extracting(Supply::id).doesNotContain("trimmer", "match-jar");
    }

    @Test void what_goes_to_a_hired_venue_is_boxed_and_its_sockets_are_asked_after() {
        Plan hired = of(new Answers(12, GLASS, 135, Answers.Venue.HIRED_VENUE, Answers.Pouring.HELPERS, 2)).plan();
        Plan own = of(new Answers(12, GLASS, 135, Answers.Venue.OWN_SHOP, Answers.Pouring.HELPERS, 2)).plan();

        assertThat(hired.kit().supplies()).extracting(Supply::box).doesNotContain("");
        assertThat(own.kit().supplies()).extracting(Supply::box).containsOnly("");
        assertThat(hired.kit().circuits()).singleElement().satisfies(circuit -> {
            assertThat(circuit.name()).contains("ask");
            assertThat(circuit.volts()).isEmpty();
        });
    }

    /** A wax of somebody's own may be called what it likes, even as one of the supplies is. */
    @Test void a_wax_of_ones_own_may_bear_any_id() {
        for (String id : List.of("wick", "My wax No. 7", "Ä", "pot")) {
            Wax w = GLASS.wax();
            Wax own = new Wax(id, "Own wax", w.densityKgM3(), w.specificHeatSolidJKgK(), w.specificHeatLiquidJKgK(),
                    w.latentHeatJKg(), w.solidusCelsius(), w.liquidusCelsius(), w.conductivitySolidWMK(),
                    w.conductivityLiquidWMK(), false);
            Candle candle = new Candle(GLASS.id(), GLASS.name(), GLASS.vessel(), own, GLASS.fillGrams(), 0.05,
                    GLASS.roomCelsius(), GLASS.pourCelsius(), GLASS.tableTop());
            Plan plan = of(new Answers(6, candle, 120, Answers.Venue.OWN_SHOP, Answers.Pouring.GUESTS, 2)).plan();

            assertThat(PlanFile.read(PlanFile.write(plan)).ifSound()).as(id).contains(plan);
        }
    }

    @Test void answers_out_of_range_are_refused_in_one_sentence() {
        assertThatThrownBy(() -> answers(0, 120, Answers.Pouring.GUESTS, 1))
                .hasMessage("the number of seats must be 1 to 60, not 0");
        assertThatThrownBy(() -> answers(6, 20, Answers.Pouring.GUESTS, 1))
                .hasMessage("how long the class may take, in minutes, must be 30 to 480, not 20");
        assertThatThrownBy(() -> answers(6, 120, Answers.Pouring.GUESTS, 61))
                .hasMessage("how many can pour at once must be 1 to 60, not 61");
        assertThatThrownBy(() -> NewPlan.of(new PlanId("mine"), " ", answers(6, 120, Answers.Pouring.GUESTS, 1)))
                .hasMessage("the name of the plan is missing");
    }
}
