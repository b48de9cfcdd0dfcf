package benchpace.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Volume;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import systems.uom.common.Imperial;
import systems.uom.common.USCustomary;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/** An outside opinion: the reference implementation of JSR 385, Units of Measurement, and its two customary systems. */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class OutsideUnitsTest {

    private static <Q extends Quantity<Q>> double theirs(double value, Unit<Q> from, Unit<Q> to) {
        return Quantities.getQuantity(value, from).to(to).getValue().doubleValue();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.01, 1, 8, 48, 1234.5, 99_999})
    void they_mean_the_same_masses(double value) {
        Unit<Mass> gram = Units.GRAM;

        assertThat(MassUnit.OUNCE.toBase(value)).isCloseTo(theirs(value, USCustomary.OUNCE, gram), close(value));
        assertThat(MassUnit.POUND.toBase(value)).isCloseTo(theirs(value, USCustomary.POUND, gram), close(value));
        assertThat(MassUnit.OUNCE.toBase(value)).isCloseTo(theirs(value, Imperial.OUNCE, gram), close(value));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.01, 1, 8, 48, 1234.5, 99_999})
    void they_mean_the_same_two_fluid_ounces(double value) {
        Unit<Volume> litre = Units.LITRE;

        assertThat(VolumeUnit.US_FLUID_OUNCE.toBase(value))
                .isCloseTo(1000 * theirs(value, USCustomary.FLUID_OUNCE, litre), close(value));
        assertThat(VolumeUnit.IMPERIAL_FLUID_OUNCE.toBase(value))
                .isCloseTo(1000 * theirs(value, Imperial.FLUID_OUNCE, litre), close(value));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-40, 0, 32, 135, 145, 160, 212})
    void they_mean_the_same_temperatures(double fahrenheit) {
        Unit<Temperature> celsius = Units.CELSIUS;

        assertThat(TemperatureUnit.FAHRENHEIT.toBase(fahrenheit))
                .isCloseTo(theirs(fahrenheit, USCustomary.FAHRENHEIT, celsius), within(1e-9));
    }

    private static org.assertj.core.data.Offset<Double> close(double value) {
        return within(1000 * value * 1e-12);
    }
}
