package eddyreach.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class QuantityTest {

    @ParameterizedTest
    @EnumSource(Quantity.class)
    void theFactorIsThatOfTheDisplayUnit(Quantity q) {
        double si = q.unit().isEmpty() ? 1 : Units.parse("1 " + q.unit(), q.dimension());
        assertThat(si * q.factor()).isCloseTo(1, within(1e-15));
        if (!q.printedUnit().isEmpty()) {
            assertThat(Units.parse("1 " + q.printedUnit(), q.dimension())).isEqualTo(si);
        }
    }

    @ParameterizedTest
    @EnumSource(Quantity.class)
    void textAndParserAreInverse(Quantity q) {
        Random random = new Random(7);
        for (int i = 0; i < 50; i++) {
            double si = Math.pow(10, random.nextInt(12) - 6) * (1 + 9 * random.nextDouble()) / q.factor();
            assertThat(Units.parse(q.text(si, 17), q.dimension())).isCloseTo(si, within(4e-16 * si));
        }
    }

    @Test
    void labels() {
        assertThat(Quantity.DISTANCE.axisLabel()).isEqualTo("distance from the active face s, mm");
        assertThat(Quantity.LOSS_RESISTANCE.axisLabel()).isEqualTo("series loss resistance R, \u03a9");
        assertThat(Quantity.CURRENT_DENSITY.axisLabel()).isEqualTo("current density |J|, A/mm\u00b2");
        assertThat(Quantity.PERMEABILITY.axisLabel()).isEqualTo("relative permeability mu_r");
        assertThat(Quantity.DISTANCE.format(3.456e-3, 3)).isEqualTo("3.46");
        assertThat(Quantity.DISTANCE.fixed(3.456e-3, 1)).isEqualTo("3.5");
        assertThat(Quantity.FREQUENCY.text(2e5, 3)).isEqualTo("200 kHz");
    }

    @ParameterizedTest
    @CsvSource({
        "1.005, 3, 1.01",
        "0, 3, 0",
        "-0.0, 3, 0",
        "5, 3, 5.00",
        "1234, 2, 1200",
        "999.96, 4, 1000",
        "0.00012345, 3, 0.000123",
        "0.000099996, 4, 0.0001000",
        "1.68e-8, 3, 1.68e-8",
        "123456789, 3, 1.23e8",
        "-2.5, 1, -3",
        "NaN, 3, n/a",
        "Infinity, 3, inf"
    })
    void significantDigits(double value, int digits, String text) {
        assertThat(Numbers.significant(value, digits)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({"2.675, 2, 2.68", "-0.001, 2, 0.00", "1e7, 1, 10000000.0", "3.7, 0, 4", "-Infinity, 2, -inf"})
    void decimals(double value, int decimals, String text) {
        assertThat(Numbers.fixed(value, decimals)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({
        "0.04, LENGTH, 40 mm",
        "0.0006, LENGTH, 0.6 mm",
        "0, LENGTH, 0 mm",
        "1000, FREQUENCY, 1 kHz",
        "1e7, FREQUENCY, 10 MHz",
        "5.8e7, CONDUCTIVITY, 58 MS/m",
        "0.05, NONE, 0.05",
        "-0.0005, LENGTH, -0.5 mm"
    })
    void textForMessages(double si, String dimension, String text) {
        Dimension d = switch (dimension) {
            case "LENGTH" -> Dimension.LENGTH;
            case "FREQUENCY" -> Dimension.FREQUENCY;
            case "CONDUCTIVITY" -> Dimension.CONDUCTIVITY;
            default -> Dimension.NONE;
        };
        assertThat(Units.text(si, d)).isEqualTo(text);
    }
}
