package benchpace.cure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchpace.cure.solver.CureRun;
import benchpace.cure.solver.CureSolver;
import benchpace.files.plan.WaxFile;
import benchpace.plan.TableTop;
import benchpace.plan.Vessel;
import benchpace.plan.Wax;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

/** Vessels on a table as cooling cases: what makes them lose more, and what cannot be one. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
public class TableCaseTest {
    static final Vessel TUMBLER = new Vessel("tumbler", "Tumbler", Vessel.Material.GLASS, 75, 4, 90);
    static final Vessel TIN = new Vessel("tin", "Tin", Vessel.Material.TIN, 70, 0.3, 45);

    public static Wax wax(String id) {
        return WaxFile.builtIn().stream().map(WaxFile.SourcedWax::wax).filter(w -> w.id().equals(id)).findFirst()
                .orElseThrow();
    }

    public static TableCase soy(double room) {
        return TableCase.of(TUMBLER, wax("soy"), 200, 0.08, room, 70, TableTop.WOOD, 1);
    }

    private static double half(TableCase candle) {
        return CureSolver.solve(candle.coolingCase()).milestones().halfMinutes().orElseThrow();
    }

    private static TableCase draughty(TableCase c, double metresPerSecond) {
        return new TableCase(c.vessel(), c.wax(), c.fillGrams(), c.fragranceFraction(), c.roomCelsius(),
                c.pourCelsius(), c.tableTop(), metresPerSecond, c.lossMultiplier());
    }

    private static TableCase on(TableTop top) {
        return TableCase.of(TUMBLER, wax("soy"), 200, 0.08, 22, 65, top, 1);
    }

    /** The range an independent study of this model found for a 200 g candle in a 75 mm glass at 22 C in still air. */
    @Test
    void a_tumbler_has_its_skin_and_can_be_carried_when_an_independent_study_says() {
        CureRun run = CureSolver.solve(soy(22).coolingCase());
        assertThat(run.milestones().skinMinutes().orElseThrow()).isBetween(35.0, 65.0);
        assertThat(run.curves().minutesToSolidFraction(0.8)).isBetween(120.0, 180.0);
    }

    /** "About an hour" is common practice without a source: it fits a small tin, on stone, in moving air. */
    @Test
    void about_an_hour_fits_a_small_tin_on_stone_in_a_draught() {
        TableCase tin = new TableCase(TIN, wax("soy"), 100, 0.08, 22, 65, TableTop.STONE, 0.5, 1);
        CureRun run = CureSolver.solve(tin.coolingCase());
        double ready = Math.max(run.milestones().skinMinutes().orElseThrow(),
                run.milestones().halfMinutes().orElseThrow());
        assertThat(ready).isBetween(25.0, 75.0);
    }

    @Test
    void stone_draws_more_than_wood_and_wood_more_than_cork() {
        assertThat(half(on(TableTop.STONE))).isLessThan(half(on(TableTop.WOOD)));
        assertThat(half(on(TableTop.WOOD))).isLessThan(half(on(TableTop.CORK)));
    }

    @Test
    void a_draught_cools_and_more_of_it_cools_more() {
        double still = half(soy(22));
        double breeze = half(draughty(soy(22), 0.3));
        double fan = half(draughty(soy(22), 1));
        assertThat(breeze).isLessThan(still);
        assertThat(fan).isLessThan(breeze);
    }

    @Test
    void a_bare_tin_loses_less_than_glass_since_it_hardly_radiates() {
        double tin = new TableCase(TIN, wax("soy"), 100, 0, 22, 65, TableTop.WOOD, 0, 1).sideLoss();
        Vessel glass = new Vessel("jar", "Jar", Vessel.Material.GLASS, 70, 3, 45);
        assertThat(tin).isBetween(4.0, 9.0)
                .isLessThan(new TableCase(glass, wax("soy"), 100, 0, 22, 65, TableTop.WOOD, 0, 1).sideLoss());
    }

    @Test
    void the_loss_multiplier_scales_all_three_losses() {
        CoolingCase once = soy(22).coolingCase();
        CoolingCase twice = TableCase.of(TUMBLER, wax("soy"), 200, 0.08, 22, 70, TableTop.WOOD, 2).coolingCase();
        assertThat(twice.sideLossWM2K()).isCloseTo(2 * once.sideLossWM2K(), within(1e-12));
        assertThat(twice.baseLossWM2K()).isCloseTo(2 * once.baseLossWM2K(), within(1e-12));
        assertThat(twice.topLossWM2K()).isCloseTo(2 * once.topLossWM2K(), within(1e-12));
        assertThat(once.withLossTimes(2)).isEqualTo(twice);
    }

    @Test
    void what_cannot_be_a_candle_is_refused_with_its_field() {
        assertThat(soy(39).fault().orElseThrow().field()).isEqualTo("roomCelsius");
        assertThat(TableCase.of(TUMBLER, wax("soy"), 900, 0, 22, 65, TableTop.WOOD, 1).fault().orElseThrow().field())
                .isEqualTo("fillGrams");
        assertThat(TableCase.of(TUMBLER, wax("soy"), 200, 0, 22, 45, TableTop.WOOD, 1).fault().orElseThrow().field())
                .isEqualTo("pourCelsius");
        assertThat(soy(22).fault()).isEmpty();
    }

    @Test
    void every_built_in_wax_has_a_source_for_every_number_and_sets_in_a_tumbler() {
        assertThat(WaxFile.builtIn()).hasSizeGreaterThanOrEqualTo(5).allSatisfy(sourced -> {
            assertThat(sourced.sources()).hasSize(8).allSatisfy((field, source) -> assertThat(source).isNotBlank());
            TableCase candle = TableCase.of(TUMBLER, sourced.wax(), 200, 0.06, 22, 80, TableTop.WOOD, 1);
            assertThat(CureSolver.solve(candle.coolingCase()).milestones().setMinutes()).isPresent();
        });
    }

    @Test
    void a_fragrance_that_lowers_the_melting_range_delays_the_setting() {
        Wax softer = wax("soy").withMeltingRangeMoved(-2);
        TableCase moved = TableCase.of(TUMBLER, softer, 200, 0.08, 22, 70, TableTop.WOOD, 1);
        assertThat(half(moved)).isGreaterThan(half(soy(22)));
    }
}
