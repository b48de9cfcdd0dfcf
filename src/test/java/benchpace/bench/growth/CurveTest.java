package benchpace.bench.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import benchpace.bench.growth.Curve.Point;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class CurveTest {
    private static Curve of(DoubleUnaryOperator cost) {
        return new Curve("made up", DoubleStream.of(10, 50, 200, 500, 1000, 2000, 5000)
                .mapToObj(n -> new Point(n, cost.applyAsDouble(n))).toList());
    }

    @Test void a_power_is_found_whatever_it_is_multiplied_by() {
        assertThat(of(n -> 3 * n).exponent()).isCloseTo(1, within(1e-9));
        assertThat(of(n -> 0.002 * n * n).exponent()).isCloseTo(2, within(1e-9));
        assertThat(of(n -> 7).exponent()).isCloseTo(0, within(1e-9));
    }

    @Test void what_is_always_there_hides_little_of_it() {
        assertThat(of(n -> 5 + 0.01 * n * n).exponent()).isGreaterThan(1.9);
    }

    @Test void n_log_n_is_just_what_a_curve_may_have() {
        Curve curve = of(n -> 0.4 * n * Math.log(n + 1));

        assertThat(curve.exponent()).isCloseTo(curve.exponentOfNLogN(), within(1e-9)).isBetween(1.1, 1.2);
        assertThat(curve.lastOverFirst()).isCloseTo(1, within(1e-9));
    }

    @Test void the_square_is_told_to_be_worse_and_a_line_to_be_better() {
        assertThat(of(n -> n * n).exponent()).isGreaterThan(of(n -> n * n).exponentOfNLogN());
        assertThat(of(n -> n * n).lastOverFirst()).isGreaterThan(100);
        assertThat(of(n -> n).lastOverFirst()).isLessThan(1);
    }
}
