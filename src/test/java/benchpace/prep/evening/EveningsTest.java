package benchpace.prep.evening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import benchpace.cure.CuringCandle;
import benchpace.cure.TableCase;
import benchpace.cure.room.CureOutlook;
import benchpace.cure.room.RoomFit;
import benchpace.cure.room.RoomPosterior;
import benchpace.cure.room.TrajectoryCache;
import benchpace.pace.ClassTrack;
import benchpace.pace.PaceStep;
import benchpace.pace.SeatProgress;
import benchpace.pace.SeatTrack;
import benchpace.pace.StepPrior;
import benchpace.pace.belief.ClassTempo;
import benchpace.pace.belief.OpeningHabit;
import benchpace.pace.belief.PacePriors;
import benchpace.pace.belief.TapHabits;
import benchpace.pace.forecast.FinishForecast;
import benchpace.pace.forecast.Forecast;
import benchpace.pace.forecast.Posterior;
import benchpace.plan.Candle;
import benchpace.plan.Opening;
import benchpace.plan.Plan;
import benchpace.plan.PlanId;
import benchpace.plan.Stations;
import benchpace.plan.Step;
import benchpace.plan.StepId;
import benchpace.plan.StepKind;
import benchpace.plan.TableShape;
import benchpace.plan.TestPlans;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class EveningsTest {
    private static final int MANY = 20_000;
    private static final TrajectoryCache CACHE = new TrajectoryCache();
    private static final Setting SETTING = Setting.of(TestPlans.evening(), 6);

    private static Timetable timetable(Setting setting) {
        return Evenings.of(setting, 1, Evenings.USUAL, CACHE, Evenings.Progress.UNTOLD).timetable();
    }

    private static Plan withoutCandles(Step... steps) {
        return new Plan(new PlanId("plain"), "Plain", "", "", 6, TableShape.HORSESHOE, List.of(steps), List.of());
    }

    /** Nobody differs from anybody, nothing stalls, no step opens late. */
    private static Beliefs likeClockwork(Plan plan) {
        PacePriors p = PacePriors.standard();
        Map<String, StepPrior> sure = new HashMap<>();
        plan.steps().forEach(s -> sure.put(s.id().value(), new StepPrior(0, 1e-12, Double.NaN)));
        return new Beliefs(new PacePriors(new PacePriors.Times(0, 0, 0, 0, 0, 4, 2.5), p.taps(),
                new PacePriors.Stalls(0, p.stalls().lengths(), 20, 200),
                new PacePriors.Openings(p.openings().shares(), 0, 0, 10), new PacePriors.Cure(0, 0, 0), p.rule(), sure),
                RoomFit.untaught());
    }

    private static Step served(String id, StepKind kind, Duration planned, int atOnce, Duration each) {
        return new Step(new StepId(id), id, kind, Opening.LED, planned, Duration.ofMinutes(3), "", "", "",
                Optional.empty(), Optional.of(new Stations(atOnce, "melter tap", each)));
    }

    // ---- the same model

    @Test void the_same_seed_gives_the_same_timetable() {
        assertThat(timetable(SETTING)).isEqualTo(timetable(SETTING));
        assertThat(Evenings.of(SETTING, 2).timetable()).isNotEqualTo(timetable(SETTING));
    }

    /** The live board's forecast of a class in its first minute, and these evenings, are one model. */
    @Test void the_last_candle_is_the_one_that_the_live_board_forecasts_at_the_start() {
        Plan plan = withoutCandles(TestPlans.step("welcome", StepKind.TALK, Opening.LED, 5),
                TestPlans.step("wicks", StepKind.HANDS_ON, Opening.LED, 6),
                served("blend", StepKind.HANDS_ON, Duration.ofMinutes(8), 2, Duration.ofMinutes(3)),
                TestPlans.step("pour", StepKind.POUR, Opening.LED, 10),
                TestPlans.step("cure", StepKind.CURE, Opening.FREE, 60));
        for (int seats : new int[] {1, 6, 24}) {
            List<PaceStep> steps = plan.steps().stream().map(PaceStep::of).toList();
            ClassTrack track = new ClassTrack(steps, steps.stream().map(s -> s.led() ? SeatTrack.NOT_YET : 0).toList(),
                    60, IntStream.rangeClosed(1, seats).mapToObj(SeatTrack::present).toList());
            Forecast live = forecast(track);

            Quantiles candle = Evenings.of(Setting.of(plan, seats), 1, MANY, CACHE, Evenings.Progress.UNTOLD)
                    .timetable().lastCandle().orElseThrow();

            assertThat(candle.p10()).isCloseTo(live.p10(), within(0.6));
            assertThat(candle.p50()).isCloseTo(live.p50(), within(0.6));
            assertThat(candle.p90()).isCloseTo(live.p90(), within(1.2));
        }
    }

    /** As the board makes it at the start, but of many draws. */
    private static Forecast forecast(ClassTrack track) {
        PacePriors priors = PacePriors.standard();
        List<SeatProgress> seats = track.seats().stream().map(s -> SeatProgress.of(track, s, 0)).toList();
        ClassTempo tempo = new ClassTempo(track, seats, TapHabits.of(track, priors), priors);
        Posterior posterior = new Posterior(track, seats, List.of(), tempo,
                OpeningHabit.of(track, seats, 0, priors), priors, 0);
        return new FinishForecast(posterior).forecast(MANY, 1, 1);
    }

    /** A seat alone that pours at once: what is left is the cure, as the cure page gives its range. */
    @Test void a_candle_takes_as_long_as_the_cure_model_says() {
        Plan plan = TestPlans.of(TestPlans.step("pour", StepKind.POUR, Opening.FREE, 1));
        Setting setting = Setting.of(plan, 1).withBeliefs(likeClockwork(plan));
        Candle c = plan.candles().get(0);
        CuringCandle curing = new CuringCandle("c", TableCase.of(c.vessel(), c.wax(), c.fillGrams(),
                c.fragranceFraction(), c.roomCelsius(), c.pourCelsius(), c.tableTop(), 1).coolingCase(), false);
        CureOutlook told = CureOutlook.of(curing, RoomPosterior.of(RoomFit.untaught()), CACHE);

        Timetable timetable = Evenings.of(setting, 1, MANY, CACHE, Evenings.Progress.UNTOLD).timetable();
        Quantiles candle = timetable.lastCandle().orElseThrow();

        assertThat(timetable.cure()).isEqualTo(CureBasis.COMPUTED);
        assertThat(candle.p10() - 1).isCloseTo(told.ready().p10(), within(0.02 * told.ready().p10()));
        assertThat(candle.p50() - 1).isCloseTo(told.ready().p50(), within(0.02 * told.ready().p50()));
        assertThat(candle.p90() - 1).isCloseTo(told.ready().p90(), within(0.02 * told.ready().p90()));
    }

    // ---- what done means

    @Test void like_clockwork_a_class_takes_its_planned_sum() {
        Plan plan = withoutCandles(TestPlans.evening().steps().toArray(new Step[0]));

        Timetable timetable = timetable(Setting.of(plan, 6).withBeliefs(likeClockwork(plan)));

        assertThat(timetable.done().p50()).isCloseTo(100, within(1e-3));
        assertThat(timetable.steps().stream().map(s -> Math.round(s.ends().p50())).toList())
                .containsExactly(5L, 11L, 19L, 29L, 89L, 95L, 100L);
        assertThat(timetable.cure()).isEqualTo(CureBasis.PLANNED);
    }

    @Test void the_talk_at_the_end_counts() {
        List<Step> steps = new ArrayList<>(TestPlans.evening().steps());
        steps.add(TestPlans.step("farewell", StepKind.TALK, Opening.FREE, 7));
        Quantiles with = timetable(Setting.of(TestPlans.of(steps.toArray(new Step[0])), 6)).done();

        assertThat(with.p50()).isCloseTo(timetable(SETTING).done().p50() + 7, within(1e-9));
    }

    @Test void a_plan_without_a_cure_does_not_wait_for_its_candles() {
        Timetable timetable = timetable(Setting.of(TestPlans.of(
                TestPlans.step("pour", StepKind.POUR, Opening.LED, 10),
                TestPlans.step("tidy", StepKind.HANDS_ON, Opening.FREE, 5)), 6));

        assertThat(timetable.done().p90()).isLessThan(timetable.lastCandle().orElseThrow().p10());
    }

    @Test void work_after_the_pour_runs_while_the_candle_sets() {
        Plan plan = withoutCandles(TestPlans.step("pour", StepKind.POUR, Opening.LED, 10),
                TestPlans.step("label", StepKind.HANDS_ON, Opening.FREE, 20),
                TestPlans.step("cure", StepKind.CURE, Opening.FREE, 60));

        assertThat(timetable(Setting.of(plan, 3).withBeliefs(likeClockwork(plan))).done().p50())
                .isCloseTo(70, within(1e-3));
    }

    @Test void nothing_is_said_of_a_candle_where_nothing_is_poured() {
        Timetable timetable = timetable(Setting.of(TestPlans.of(
                TestPlans.step("fold", StepKind.HANDS_ON, Opening.LED, 10)), 6));

        assertThat(timetable.lastCandle()).isEmpty();
        assertThat(timetable.cure()).isEqualTo(CureBasis.NONE);
    }

    @Test void a_candle_that_cannot_be_computed_leaves_the_plans_figure() {
        Plan sound = TestPlans.evening();
        Candle c = sound.candles().get(0);
        Candle overfull = new Candle(c.id(), c.name(), c.vessel(), c.wax(), 5000, c.fragranceFraction(),
                c.roomCelsius(), c.pourCelsius(), c.tableTop());
        Plan plan = new Plan(sound.id(), sound.name(), "", "", 6, sound.table(), sound.steps(), List.of(),
                List.of(overfull));

        assertThat(timetable(Setting.of(plan, 6)).cure()).isEqualTo(CureBasis.PLANNED);
    }

    // ---- turns; common practice and arithmetic, no source

    @Test void forty_seats_poured_one_by_one_take_three_hours() {
        for (double each : new double[] {25 / 6.0, 5}) {
            Duration planned = Duration.ofMillis(Math.round(each * 60_000));
            Plan plan = withoutCandles(served("pour", StepKind.POUR, planned, 1, planned));

            StepEnd pour = timetable(Setting.of(plan, 40).withBeliefs(likeClockwork(plan))).steps().get(0);

            assertThat(pour.ends().p50()).isCloseTo(40 * each, within(0.01));
            assertThat(pour.longestWait().orElseThrow().p50()).isCloseTo(39 * each, within(0.01));
        }
    }

    @Test void seven_stations_serve_forty_seats_in_half_an_hour() {
        Duration planned = Duration.ofMinutes(5);
        Plan plan = withoutCandles(served("pour", StepKind.POUR, planned, 7, planned));

        assertThat(timetable(Setting.of(plan, 40).withBeliefs(likeClockwork(plan))).done().p50())
                .isCloseTo(30, within(1e-3));
    }

    @Test void a_turn_is_part_of_the_steps_own_time() {
        Plan plan = withoutCandles(served("weigh", StepKind.HANDS_ON, Duration.ofMinutes(6), 1, Duration.ofMinutes(1)));

        assertThat(timetable(Setting.of(plan, 1).withBeliefs(likeClockwork(plan))).done().p50())
                .isCloseTo(6, within(1e-3));
        assertThat(timetable(Setting.of(plan, 4).withBeliefs(likeClockwork(plan))).done().p50())
                .isCloseTo(9, within(1e-3));
    }

    // ---- what was learned

    @Test void a_step_that_is_known_to_take_longer_takes_longer() {
        Beliefs taught = Beliefs.of(Map.of("blend", new StepPrior(Math.log(2), 0.02, Double.NaN)),
                RoomFit.untaught());

        assertThat(timetable(SETTING.withBeliefs(taught)).done().p50())
                .isGreaterThan(timetable(SETTING).done().p50() + 6);
    }

    @Test void a_room_that_cools_faster_is_done_sooner() {
        Beliefs taught = Beliefs.of(Map.of(), new RoomFit(Math.log(1.5), 0.1, 0.5, 0.05, 12));

        assertThat(timetable(SETTING.withBeliefs(taught)).done().p50())
                .isLessThan(timetable(SETTING).done().p50() - 10);
    }

    // ---- asking

    @Test void progress_is_told_up_to_the_last_evening() {
        List<Integer> told = new ArrayList<>();

        Evenings.of(SETTING, 1, 120, CACHE, (done, of) -> {
            assertThat(of).isEqualTo(120);
            told.add(done);
        });

        assertThat(told).containsExactly(50, 100, 120);
    }

    @Test void the_others_make_the_plans_first_candle() {
        assertThat(Setting.of(TestPlans.evening(), 4, Map.of(TestPlans.CANDLE, 1)).candles())
                .containsExactlyInAnyOrder(TestPlans.CANDLE, "glass", "glass", "glass");
    }

    @Test void settings_that_cannot_be_are_refused() {
        Plan plan = TestPlans.evening();
        assertThatThrownBy(() -> Setting.of(plan, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Setting.of(plan, 2, Map.of("glass", 3))).hasMessageContaining("3 candles");
        assertThatThrownBy(() -> new Setting(plan, 1, List.of("none"), 60, Beliefs.UNTAUGHT))
                .hasMessageContaining("no candle \"none\"");
        assertThatThrownBy(() -> SETTING.withPromisedMinutes(Double.NaN)).hasMessageContaining("NaN");
        assertThatThrownBy(() -> Evenings.of(SETTING, 1, 0, CACHE, Evenings.Progress.UNTOLD))
                .hasMessageContaining("0 evenings");
    }
}
