package benchpace.cure.room;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import benchpace.cure.CoolingCase;
import benchpace.cure.CuringCandle;
import benchpace.cure.TableCase;
import benchpace.cure.TableCaseTest;
import benchpace.cure.solver.CureCurves;
import benchpace.cure.solver.CureRun;
import benchpace.cure.solver.CureSolver;
import benchpace.plan.TableTop;
import benchpace.plan.Vessel;
import benchpace.plan.Wax;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class RoomRefitTest {
    private static final Wax SOY = TableCaseTest.wax("soy").withCalibrated(true);
    private final TrajectoryCache cache = new TrajectoryCache();

    private static CuringCandle candle(String id, double grams, double room, double pour) {
        Vessel tumbler = new Vessel("tumbler", "Tumbler", Vessel.Material.GLASS, 75, 4, 100);
        CoolingCase c = TableCase.of(tumbler, SOY, grams, 0.08, room, pour, TableTop.WOOD, 1).coolingCase();
        return new CuringCandle(id, c, true);
    }

    private static CuringCandle usual() {
        return candle("seat 1", 200, 22, 70);
    }

    private static double readyMinutes(CureRun run) {
        return Math.max(run.milestones().skinMinutes().orElseThrow(), run.milestones().halfMinutes().orElseThrow());
    }

    private static double median(List<Double> values) {
        List<Double> sorted = new ArrayList<>(values);
        Collections.sort(sorted);
        return (sorted.get(sorted.size() / 2) + sorted.get((sorted.size() - 1) / 2)) / 2;
    }

    private static double mean(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
    }

    @Test
    void one_reading_at_ten_to_fifteen_minutes_halves_the_ready_time_error_when_the_loss_is_thirty_per_cent_off() {
        Random random = new Random(20270304);
        List<Double> before = new ArrayList<>();
        List<Double> after = new ArrayList<>();
        for (int table = 0; table < 50; table++) {
            CuringCandle candle = candle("t" + table, 160 + 20 * (table % 5), 20 + table % 4, 66 + table % 7);
            CureRun truth = CureSolver.solve(candle.coolingCase().withLossTimes(table % 2 == 0 ? 1.3 : 0.7));
            double when = 10 + table % 6;
            double read = truth.curves().surfaceCelsiusAt(when) + 2 * random.nextGaussian();
            RoomPosterior untaught = RoomPosterior.of(RoomFit.untaught());
            RoomPosterior taught = RoomPosterior.of(RoomFit.untaught(),
                    List.of(new Evidence.SurfaceReading(candle, when, read)), cache);
            double ready = readyMinutes(truth);
            before.add(Math.abs(CureOutlook.of(candle, untaught, cache).ready().p50() - ready));
            after.add(Math.abs(CureOutlook.of(candle, taught, cache).ready().p50() - ready));
        }
        assertThat(mean(after)).isLessThan(mean(before) / 2);
        assertThat(median(after)).isLessThan(median(before) / 2);
    }

    @Test
    void an_untaught_room_expects_what_the_model_says_with_a_range_around() {
        CureOutlook outlook = CureOutlook.of(usual(), RoomPosterior.of(RoomFit.untaught()), cache);
        double model = readyMinutes(CureSolver.solve(usual().coolingCase()));
        assertThat(outlook.ready().p50()).isCloseTo(model, within(0.06 * model));
        assertThat(outlook.ready().p10()).isLessThan(0.8 * model);
        assertThat(outlook.ready().p90()).isGreaterThan(1.2 * model);
        assertThat(outlook.skin().p50()).isLessThan(outlook.ready().p50());
        assertThat(outlook.ready().p50()).isLessThan(outlook.firm().p50());
    }

    @Test
    void observations_narrow_the_range() {
        CuringCandle candle = usual();
        CureRun truth = CureSolver.solve(candle.coolingCase());
        List<Evidence> seen = new ArrayList<>();
        double width = CureOutlook.of(candle, RoomPosterior.of(RoomFit.untaught()), cache).ready().width();
        for (int i = 0; i < 3; i++) {
            CuringCandle next = candle("seat " + i, 200, 22, 70);
            seen.add(new Evidence.SurfaceReading(next, 12, truth.curves().surfaceCelsiusAt(12)));
            seen.add(new Evidence.JudgedSet(next, truth.milestones().halfMinutes().orElseThrow()));
            RoomPosterior room = RoomPosterior.of(RoomFit.untaught(), seen, cache);
            double now = CureOutlook.of(candle, room, cache).ready().width();
            assertThat(now).isLessThan(width);
            width = now;
        }
        double ready = CureOutlook.of(candle, RoomPosterior.of(RoomFit.untaught(), seen, cache), cache).ready().p50();
        assertThat(ready).isCloseTo(readyMinutes(truth), within(0.06 * readyMinutes(truth)));
    }

    @Test
    void many_readings_of_one_candle_never_make_the_room_surer_than_the_model_itself() {
        CureRun truth = CureSolver.solve(usual().coolingCase());
        List<Evidence> seen = new ArrayList<>();
        for (int i = 0; i < 30; i++) {
            seen.add(new Evidence.SurfaceReading(usual(), 10 + i, truth.curves().surfaceCelsiusAt(10 + i)));
        }
        assertThat(RoomPosterior.of(RoomFit.untaught(), seen, cache).fit().logLossSd()).isBetween(0.05, 0.10);
    }

    @Test
    void a_surface_colder_than_expected_means_more_loss_and_sooner() {
        CuringCandle candle = usual();
        double expected = CureSolver.solve(candle.coolingCase()).curves().surfaceCelsiusAt(14);
        RoomPosterior colder = RoomPosterior.of(RoomFit.untaught(),
                List.of(new Evidence.SurfaceReading(candle, 14, expected - 4)), cache);
        FitChange change = colder.fit().since(RoomFit.untaught());
        assertThat(change.lossTimes()).isGreaterThan(1.1);
        assertThat(change.uncertaintyTimes()).isLessThan(1);
        assertThat(change.observations()).isEqualTo(1);
        assertThat(CureOutlook.of(candle, colder, cache).ready().p50())
                .isLessThan(CureOutlook.of(candle, RoomPosterior.of(RoomFit.untaught()), cache).ready().p50());
    }

    @Test
    void hand_tests_teach_the_rooms_own_ready_fraction() {
        List<Evidence> seen = new ArrayList<>();
        CureCurves curves = CureSolver.solve(usual().coolingCase()).curves();
        for (int i = 0; i < 6; i++) {
            CuringCandle candle = candle("s" + i, 200, 22, 70);
            seen.add(new Evidence.SurfaceReading(candle, 12, curves.surfaceCelsiusAt(12)));
            seen.add(new Evidence.JudgedSet(candle, curves.minutesToSolidFraction(0.75)));
        }
        RoomFit fit = RoomPosterior.of(RoomFit.untaught(), seen, cache).fit();
        assertThat(fit.readyMean()).isBetween(0.64, 0.80);
        assertThat(fit.since(RoomFit.untaught()).readyBy()).isGreaterThan(0.1);
        assertThat(fit.readySd()).isLessThan(RoomFit.untaught().readySd());
    }

    @Test
    void a_skin_seen_early_means_more_loss() {
        double skin = CureSolver.solve(usual().coolingCase()).milestones().skinMinutes().orElseThrow();
        RoomFit early = RoomPosterior.of(RoomFit.untaught(),
                List.of(new Evidence.SkinFormed(usual(), 0.6 * skin)), cache).fit();
        assertThat(early.lossMedian()).isGreaterThan(1.15);
    }

    @Test
    void the_next_class_starts_from_the_rooms_fit_a_little_less_certain() {
        CuringCandle candle = usual();
        double colder = CureSolver.solve(candle.coolingCase().withLossTimes(1.4)).curves().surfaceCelsiusAt(13);
        RoomFit fit = RoomPosterior.of(RoomFit.untaught(),
                List.of(new Evidence.SurfaceReading(candle, 13, colder)), cache).fit();
        RoomFit next = fit.forNextClass();
        assertThat(next.lossMedian()).isEqualTo(fit.lossMedian());
        assertThat(next.logLossSd()).isGreaterThan(fit.logLossSd()).isLessThanOrEqualTo(0.25);
        RoomFit again = RoomPosterior.of(next).fit();
        assertThat(again.logLossMean()).isCloseTo(next.logLossMean(), within(0.01));
        assertThat(again.logLossSd()).isCloseTo(next.logLossSd(), within(0.01));
        assertThat(again.observations()).isEqualTo(1);
    }

    @Test
    void an_absurd_reading_is_refused_with_the_range_that_would_be_believed() {
        ReadingRefusal refusal = Evidence.SurfaceReading.refusal(usual(), 158).orElseThrow();
        assertThat(refusal.lowestCelsius()).isEqualTo(17);
        assertThat(refusal.highestCelsius()).isEqualTo(80);
        assertThat(Evidence.SurfaceReading.refusal(usual(), 16.9)).isPresent();
        assertThat(Evidence.SurfaceReading.refusal(usual(), Double.NaN)).isPresent();
        assertThat(Evidence.SurfaceReading.refusal(usual(), 55)).isEmpty();
        assertThatThrownBy(() -> new Evidence.SurfaceReading(usual(), 5, 158))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void between_the_solved_multipliers_times_are_as_solved() {
        LossTrajectories t = cache.of(usual().coolingCase());
        for (double times : new double[] {0.6, 0.85, 1.1, 1.45}) {
            CureRun run = CureSolver.solve(usual().coolingCase().withLossTimes(times));
            double log = Math.log(times);
            assertThat(t.skinMinutes(log) / run.milestones().skinMinutes().orElseThrow()).isCloseTo(1, within(0.03));
            assertThat(t.firmMinutes(log) / run.milestones().firmMinutes().orElseThrow()).isCloseTo(1, within(0.01));
            assertThat(t.surfaceCelsius(log, 13)).isCloseTo(run.curves().surfaceCelsiusAt(13), within(0.6));
            assertThat(t.solidFraction(log, 60)).isCloseTo(run.curves().solidFractionAt(60), within(0.02));
        }
    }

    @Test
    void a_candle_that_does_not_set_within_a_day_has_no_end_to_its_range() {
        CoolingCase tub = CoolingCase.of(300, 20_000, 900, 2100, 2200, 135_000, 38, 50, 0.19, 0.34, 22, 70, 8, 5, 8,
                8400, 8400);
        CuringCandle candle = new CuringCandle("tub", tub, false);
        CureOutlook outlook = CureOutlook.of(candle, RoomPosterior.of(RoomFit.untaught()), cache);
        assertThat(outlook.firm().p90()).isInfinite();
        assertThat(outlook.firm().width()).isInfinite();
        assertThat(outlook.skin().p50()).isFinite();
    }
}
