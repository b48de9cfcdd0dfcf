package benchpace.cure.solver;

import static org.assertj.core.api.Assertions.assertThat;

import benchpace.cure.CoolingCase;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

/** What must hold for every candle: heat is neither made nor lost, and worse cooling never sets it sooner. */
class CoolingProperties {
    /** Half of what the numbers are good for: a change smaller than the grid's own error shows nothing. */
    private static final double GRID_SLACK = 0.003;
    private static final int ROOM = 10;
    private static final int POUR = 11;

    @Provide
    Arbitrary<CoolingCase> candles() {
        Arbitrary<double[]> shape = Combinators.combine(between(35, 110), between(40, 500))
                .as((d, m) -> new double[] {d, m});
        Arbitrary<double[]> wax = Combinators.combine(between(30, 60), between(0.05, 12), between(5, 30),
                between(90_000, 200_000), between(0.15, 0.28), between(0.12, 0.9))
                .as((solidus, range, above, latent, ks, kl) -> new double[] {solidus, range, above, latent, ks, kl});
        Arbitrary<double[]> table = Combinators.combine(between(10, 28), between(5, 14), between(2, 10), between(5, 14),
                Arbitraries.of(0.0, 300.0, 1123.0, 8400.0, 12144.0))
                .as((room, side, base, top, capacity) -> new double[] {room, side, base, top, capacity});
        return Combinators.combine(shape, wax, table).as((s, w, t) -> CoolingCase.of(s[0], s[1], 900, 2200, 2250, w[3],
                w[0], w[0] + w[1], w[4], w[5], t[0], w[0] + w[1] + w[2], t[1], t[2], t[3], t[4], t[4]));
    }

    private static Arbitrary<Double> between(double low, double high) {
        return Arbitraries.doubles().between(low, high);
    }

    @Property(tries = 60)
    void heat_lost_equals_heat_given_up(@ForAll("candles") CoolingCase c) {
        assertThat(CureSolver.solve(c).milestones().energyErrorFraction()).isLessThan(1e-6);
    }

    @Property(tries = 60)
    void the_milestones_come_in_order(@ForAll("candles") CoolingCase c) {
        CureMilestones found = CureSolver.solve(c).milestones();
        double firm = or24Hours(found.firmMinutes());
        assertThat(or24Hours(found.halfMinutes())).isLessThanOrEqualTo(firm);
        assertThat(firm).isLessThanOrEqualTo(or24Hours(found.setMinutes()) + 0.5);
    }

    /** Without a vessel's own heat nothing warms again. A cold heavy pot sets a thin shell that melts once more. */
    @Property(tries = 60)
    void in_a_vessel_without_weight_the_solid_fraction_never_falls(@ForAll("candles") CoolingCase c) {
        double[] n = c.numbers();
        n[15] = 0;
        n[16] = 0;
        CureCurves curves = CureSolver.solve(CoolingCase.of(n)).curves();
        double before = 0;
        for (double minute = 0; minute < curves.lastMinutes(); minute += 2) {
            double now = curves.solidFractionAt(minute);
            assertThat(now).isBetween(before - 1e-6, 1.0);
            before = now;
        }
    }

    @Property(tries = 40)
    void a_hotter_room_is_never_sooner(@ForAll("candles") CoolingCase c,
            @ForAll @DoubleRange(min = 0.5, max = 2) double by) {
        neverSooner(c, changed(c, ROOM, by));
    }

    @Property(tries = 40)
    void a_hotter_pour_is_never_sooner(@ForAll("candles") CoolingCase c,
            @ForAll @DoubleRange(min = 1, max = 15) double by) {
        neverSooner(c, changed(c, POUR, by));
    }

    @Property(tries = 40)
    void a_wider_vessel_filled_as_high_is_never_sooner(@ForAll("candles") CoolingCase c,
            @ForAll @DoubleRange(min = 1.03, max = 1.5) double times) {
        double[] n = c.numbers();
        n[0] *= times;
        n[1] *= times * times;
        neverSooner(c, CoolingCase.of(n));
    }

    @Property(tries = 40)
    void more_wax_in_the_same_vessel_is_never_sooner(@ForAll("candles") CoolingCase c,
            @ForAll @DoubleRange(min = 1.05, max = 1.6) double times) {
        double[] n = c.numbers();
        n[1] *= times;
        neverSooner(c, CoolingCase.of(n));
    }

    @Property(tries = 40)
    void more_loss_is_never_later(@ForAll("candles") CoolingCase c,
            @ForAll @DoubleRange(min = 1.05, max = 2) double times) {
        neverSooner(c.withLossTimes(times), c);
    }

    private static CoolingCase changed(CoolingCase c, int field, double by) {
        double[] n = c.numbers();
        n[field] += by;
        return CoolingCase.of(n);
    }

    private static void neverSooner(CoolingCase quicker, CoolingCase slower) {
        CureMilestones quick = CureSolver.solve(quicker).milestones();
        CureMilestones slow = CureSolver.solve(slower).milestones();
        later(quick.halfMinutes(), slow.halfMinutes());
        later(quick.firmMinutes(), slow.firmMinutes());
        later(quick.setMinutes(), slow.setMinutes());
    }

    private static void later(OptionalDouble quick, OptionalDouble slow) {
        double q = or24Hours(quick);
        assertThat(or24Hours(slow)).isGreaterThanOrEqualTo(q - Math.max(GRID_SLACK * q, 0.3));
    }

    private static double or24Hours(OptionalDouble minutes) {
        return minutes.orElse(CureMilestones.HORIZON_MINUTES);
    }
}
