package eddyreach.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class UnitsTest {

    /** Base units written out by hand from the SI Brochure (9th edition, tables 2 and 4), independent of the table. */
    private static final Map<String, Dimension> COHERENT = Map.ofEntries(
            Map.entry("m", new Dimension(1, 0, 0, 0, 0, 0, 0)),
            Map.entry("s", new Dimension(0, 0, 1, 0, 0, 0, 0)),
            Map.entry("A", new Dimension(0, 0, 0, 1, 0, 0, 0)),
            Map.entry("K", new Dimension(0, 0, 0, 0, 1, 0, 0)),
            Map.entry("Hz", new Dimension(0, 0, -1, 0, 0, 0, 0)),
            Map.entry("V", new Dimension(2, 1, -3, -1, 0, 0, 0)),
            Map.entry("W", new Dimension(2, 1, -3, 0, 0, 0, 0)),
            Map.entry("J", new Dimension(2, 1, -2, 0, 0, 0, 0)),
            Map.entry("ohm", new Dimension(2, 1, -3, -2, 0, 0, 0)),
            Map.entry("S", new Dimension(-2, -1, 3, 2, 0, 0, 0)),
            Map.entry("H", new Dimension(2, 1, -2, -2, 0, 0, 0)),
            Map.entry("F", new Dimension(-2, -1, 4, 2, 0, 0, 0)),
            Map.entry("Wb", new Dimension(2, 1, -2, -1, 0, 0, 0)),
            Map.entry("T", new Dimension(0, 1, -2, -1, 0, 0, 0)));

    private static final Map<String, Double> PREFIX =
            Map.of("T", 1e12, "G", 1e9, "M", 1e6, "k", 1e3, "", 1.0, "m", 1e-3, "u", 1e-6, "n", 1e-9, "p", 1e-12);

    @Test
    void everyUnitOfTheTableHasItsFactorAndDimension() {
        Map<String, PhysicalValue> wanted = new TreeMap<>();
        COHERENT.forEach((symbol, dimension) ->
                PREFIX.forEach((prefix, factor) -> wanted.put(prefix + symbol, new PhysicalValue(factor, dimension))));
        wanted.put("cm", new PhysicalValue(0.01, Dimension.LENGTH));
        wanted.put("in", new PhysicalValue(0.0254, Dimension.LENGTH));
        wanted.put("mil", new PhysicalValue(25.4e-6, Dimension.LENGTH));
        wanted.put("%", new PhysicalValue(0.01, Dimension.NONE));
        wanted.put("ppm", new PhysicalValue(1e-6, Dimension.NONE));
        wanted.put("degC", new PhysicalValue(274.15, Dimension.TEMPERATURE));
        wanted.put("%IACS", new PhysicalValue(0.58e6, Dimension.CONDUCTIVITY));
        Map<String, PhysicalValue> got = new TreeMap<>();
        for (String symbol : UnitTable.all().keySet()) {
            got.put(symbol, Units.parseAny("1 " + symbol));
        }
        assertThat(got).isEqualTo(wanted);
    }

    @Test
    void derivedDimensionsFollowFromTheirDefinitions() {
        assertThat(Dimension.LENGTH.power(2)).isEqualTo(Dimension.AREA);
        assertThat(Dimension.VOLTAGE.times(Dimension.CURRENT)).isEqualTo(Dimension.POWER);
        assertThat(Dimension.POWER.times(Dimension.TIME)).isEqualTo(Dimension.ENERGY);
        assertThat(Dimension.VOLTAGE.times(Dimension.CURRENT.power(-1))).isEqualTo(Dimension.RESISTANCE);
        assertThat(Dimension.RESISTANCE.power(-1)).isEqualTo(Dimension.CONDUCTANCE);
        assertThat(Dimension.VOLTAGE.times(Dimension.TIME)).isEqualTo(Dimension.FLUX);
        assertThat(Dimension.FLUX.times(Dimension.CURRENT.power(-1))).isEqualTo(Dimension.INDUCTANCE);
        assertThat(Dimension.FLUX.times(Dimension.AREA.power(-1))).isEqualTo(Dimension.FLUX_DENSITY);
        assertThat(Dimension.CONDUCTANCE.times(Dimension.TIME)).isEqualTo(Dimension.CAPACITANCE);
        assertThat(Dimension.CONDUCTANCE.times(Dimension.LENGTH.power(-1))).isEqualTo(Dimension.CONDUCTIVITY);
        assertThat(Dimension.CONDUCTIVITY.power(-1)).isEqualTo(Dimension.RESISTIVITY);
        assertThat(Dimension.CURRENT.times(Dimension.AREA.power(-1))).isEqualTo(Dimension.CURRENT_DENSITY);
        assertThat(Dimension.CURRENT.times(Dimension.LENGTH.power(-1))).isEqualTo(Dimension.FIELD_STRENGTH);
        assertThat(Dimension.LENGTH.times(Dimension.FREQUENCY)).isEqualTo(Dimension.VELOCITY);
        assertThat(Dimension.TEMPERATURE.power(-1)).isEqualTo(Dimension.PER_TEMPERATURE);
        assertThat(new Dimension(2, 1, 0, 0, 0, 0, 0).noun()).isEqualTo("a quantity in kg m2");
    }

    @Test
    void everyExampleInAMessageIsReadable() {
        for (Dimension d : List.of(
                Dimension.NONE,
                Dimension.LENGTH,
                Dimension.AREA,
                Dimension.TIME,
                Dimension.FREQUENCY,
                Dimension.VELOCITY,
                Dimension.CURRENT,
                Dimension.VOLTAGE,
                Dimension.POWER,
                Dimension.ENERGY,
                Dimension.RESISTANCE,
                Dimension.CONDUCTANCE,
                Dimension.INDUCTANCE,
                Dimension.CAPACITANCE,
                Dimension.FLUX,
                Dimension.FLUX_DENSITY,
                Dimension.FIELD_STRENGTH,
                Dimension.CURRENT_DENSITY,
                Dimension.CONDUCTIVITY,
                Dimension.RESISTIVITY,
                Dimension.TEMPERATURE,
                Dimension.PER_TEMPERATURE)) {
            assertThat(Units.parse(d.example(), d)).isPositive();
        }
    }

    @ParameterizedTest
    @CsvSource({
        "0.6 mm, LENGTH, 0.6e-3",
        "5.5mm, LENGTH, 5.5e-3",
        "+18 mm, LENGTH, 18e-3",
        "-0.5 mm, LENGTH, -0.5e-3",
        "1e-2 m, LENGTH, 1e-2",
        "10 um, LENGTH, 10e-6",
        "10 \u00b5m, LENGTH, 10e-6",
        "10 \u03bcm, LENGTH, 10e-6",
        "10\u00a0um, LENGTH, 10e-6",
        "1 mm\u00b2, AREA, 1e-6",
        "1 mm2, AREA, 1e-6",
        "1 mm^2, AREA, 1e-6",
        "2.5 m2, AREA, 2.5",
        "5.96e7 S/m, CONDUCTIVITY, 5.96e7",
        "58 MS/m, CONDUCTIVITY, 58e6",
        "58 MS m-1, CONDUCTIVITY, 58e6",
        "58 MS\u00b7m\u207b\u00b9, CONDUCTIVITY, 58e6",
        "100 %IACS, CONDUCTIVITY, 58.0e6",
        "1.68e-8 ohm m, RESISTIVITY, 1.68e-8",
        "1.68e-8 ohm*m, RESISTIVITY, 1.68e-8",
        "1.68e-8 \u03a9 m, RESISTIVITY, 1.68e-8",
        "1.68e-8 \u2126 m, RESISTIVITY, 1.68e-8",
        "1.68 uohm cm, RESISTIVITY, 1.68e-8",
        "72 \u00b5\u03a9 cm, RESISTIVITY, 72e-8",
        "0.017 ohm mm2/m, RESISTIVITY, 0.017e-6",
        "0.393 %/K, PER_TEMPERATURE, 0.00393",
        "3930 ppm/K, PER_TEMPERATURE, 0.00393",
        "0.00393 1/K, PER_TEMPERATURE, 0.00393",
        "0.00393 /K, PER_TEMPERATURE, 0.00393",
        "0.00393 K-1, PER_TEMPERATURE, 0.00393",
        "0 degC, TEMPERATURE, 273.15",
        "23 \u00b0C, TEMPERATURE, 296.15",
        "-40 degC, TEMPERATURE, 233.15",
        "300 K, TEMPERATURE, 300",
        "200 kHz, FREQUENCY, 200e3",
        "1e6 1/s, FREQUENCY, 1e6",
        "2 V/(A m), RESISTANCE_PER_LENGTH, 2",
        "3 A/mm2, CURRENT_DENSITY, 3e6",
        "100 A/m, FIELD_STRENGTH, 100",
        "2 mS, CONDUCTANCE, 2e-3",
        "0.5 V s, FLUX, 0.5",
        "5 %, NONE, 0.05",
        "0.05, NONE, 0.05",
        "150, NONE, 150"
    })
    void readsToSi(String text, String dimension, double si) {
        Dimension expected = switch (dimension) {
            case "LENGTH" -> Dimension.LENGTH;
            case "AREA" -> Dimension.AREA;
            case "CONDUCTIVITY" -> Dimension.CONDUCTIVITY;
            case "RESISTIVITY" -> Dimension.RESISTIVITY;
            case "PER_TEMPERATURE" -> Dimension.PER_TEMPERATURE;
            case "TEMPERATURE" -> Dimension.TEMPERATURE;
            case "FREQUENCY" -> Dimension.FREQUENCY;
            case "CURRENT_DENSITY" -> Dimension.CURRENT_DENSITY;
            case "FIELD_STRENGTH" -> Dimension.FIELD_STRENGTH;
            case "CONDUCTANCE" -> Dimension.CONDUCTANCE;
            case "FLUX" -> Dimension.FLUX;
            case "RESISTANCE_PER_LENGTH" -> new Dimension(1, 1, -3, -2, 0, 0, 0);
            default -> Dimension.NONE;
        };
        // exact: number and factor are multiplied in decimal and rounded once
        assertThat(Units.parse(text, expected)).isEqualTo(si);
    }

    @Test
    void aConductivityMayBeGivenAsAResistivity() {
        assertThat(Units.parseConductivity("61 %IACS")).isEqualTo(0.61 * 58e6);
        assertThat(Units.parseConductivity("0 S/m")).isZero();
        assertThat(Units.parseConductivity("1.68e-8 ohm m")).isCloseTo(5.952380952e7, within(1.0));
        assertThatThrownBy(() -> Units.parseConductivity("0 ohm m"))
                .hasMessage("0 ohm m: a resistivity must be above zero");
        assertThatThrownBy(() -> Units.parseConductivity("3 mm"))
                .hasMessage("got a length (3 mm), needs a conductivity such as 58 MS/m or a resistivity such as"
                        + " 1.7e-8 ohm m");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "5,5 mm | 5,5 mm: decimal comma, write 5.5 mm",
                "1,000 mm | 1,000 mm: comma in a number, write 1000 mm or 1.000 mm",
                "1 000 mm | 1 000 mm: digits must not be grouped, write 1000 mm",
                "1_000 mm | 1_000 mm: digits must not be grouped, write 1000 mm",
                "5 | 5: no unit, needs a length such as 0.6 mm",
                "'' | empty, needs a length such as 0.6 mm",
                "mm | mm: does not start with a number, needs a length such as 0.6 mm",
                "thin | thin: does not start with a number, needs a length such as 0.6 mm",
                "\u0665 mm | \u0665 mm: does not start with a number, needs a length such as 0.6 mm",
                "NaN mm | NaN mm: not a finite number",
                ".nan | .nan: not a finite number",
                "-inf mm | -inf mm: not a finite number",
                "Infinity | Infinity: not a finite number",
                "0x10 mm | 0x10 mm: hexadecimal numbers are not accepted, write a decimal number",
                ".5 mm | .5 mm: a digit is needed before the decimal point, write 0.5 mm",
                "5. mm | 5. mm: a digit is needed after the decimal point",
                "1.5.2 mm | 1.5.2 mm: two decimal points in one number",
                "5..10 mm | 5..10 mm: one value is needed, not a range or a tolerance",
                "5-10 mm | 5-10 mm: one value is needed, not a range or a tolerance",
                "5 \u00b1 1 mm | 5 \u00b1 1 mm: one value is needed, not a range or a tolerance",
                "\u22125 mm | \u22125 mm: this dash is no minus sign, write -5 mm",
                "1e999 mm | 1e999 mm: outside the range of numbers",
                "1e-999 mm | 1e-999 mm: outside the range of numbers",
                "1e99999999999 mm | 1e99999999999 mm: outside the range of numbers",
                "9e307 Tm | 9e307 Tm: outside the range of numbers",
                "5 mm 3 | 5 mm 3: \"3\" is not part of a unit",
                "5 5 mm | 5 5 mm: a unit is needed after the number",
                "5 MM | 5 MM: unknown unit \"MM\", did you mean Mm or mm?",
                "5 inch | 5 inch: unknown unit \"inch\", needs a length such as 0.6 mm",
                "5 mm! | 5 mm!: \"!\" is not part of a unit",
                "5 m/s/s | 5 m/s/s: more than one \"/\", write one divisor in parentheses",
                "5 V/A m | 5 V/A m: what belongs to the divisor is unclear, write it in parentheses",
                "5 V/(A m | 5 V/(A m: a closing parenthesis is missing",
                "5 m/ | 5 m/: a unit symbol is missing",
                "5 m^ | 5 m^: an exponent from 1 to 9 is needed",
                "5 m0 | 5 m0: an exponent from 1 to 9 is needed",
                "5 m/degC | 5 m/degC: degC stands only alone, use K for differences and coefficients",
                "5 m %IACS | 5 m %IACS: %IACS stands only alone",
                "-300 degC | -300 degC: below absolute zero",
                "200 kHz | got a frequency (200 kHz), needs a length such as 0.6 mm",
                "5 % | got a plain number (5 %), needs a length such as 0.6 mm",
                "5 mm2 | got an area (5 mm2), needs a length such as 0.6 mm",
                "5 A2 | got a quantity in A2 (5 A2), needs a length such as 0.6 mm"
            })
    void saysWhatIsWrong(String text, String message) {
        assertThatThrownBy(() -> Units.parse(text, Dimension.LENGTH))
                .isInstanceOf(QuantityFormatException.class)
                .hasMessage(message);
    }

    @Test
    void theExpectedDimensionPicksTheSuggestion() {
        assertThatThrownBy(() -> Units.parse("0.6 mm", Dimension.FREQUENCY))
                .hasMessage("got a length (0.6 mm), needs a frequency such as 200 kHz");
        assertThatThrownBy(() -> Units.parse("200 khz", Dimension.FREQUENCY))
                .hasMessage("200 khz: unknown unit \"khz\", did you mean kHz?");
        assertThatThrownBy(() -> Units.parse("x".repeat(500), Dimension.LENGTH))
                .hasMessage("x".repeat(40) + "...: longer than any quantity, needs a length such as 0.6 mm");
    }

    @ParameterizedTest
    @ValueSource(strings = {"de-DE", "ar-EG", "hi-IN-u-nu-deva", "tr-TR"})
    void theLocaleDoesNotMatter(String tag) {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag(tag));
            assertThat(Units.parse("5.5 mm", Dimension.LENGTH)).isEqualTo(5.5e-3);
            assertThat(Numbers.fixed(-1234.5, 2)).isEqualTo("-1234.50");
            assertThat(Quantity.INDUCTANCE.text(196.2e-6, 4)).isEqualTo("196.2 uH");
            assertThatThrownBy(() -> Units.parse("5 MHZ", Dimension.FREQUENCY))
                    .hasMessage("5 MHZ: unknown unit \"MHZ\", did you mean MHz or mHz?");
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void nearestFindsTheSlipAndNothingElse() {
        List<String> known = List.of("frequency", "mounting", "turns");
        assertThat(Texts.nearest("frequncy", known)).contains("frequency");
        assertThat(Texts.nearest("Frequency", known)).contains("frequency");
        assertThat(Texts.nearest("trun", known)).isEmpty();
        assertThat(Texts.nearest("tunrs", known)).contains("turns");
        assertThat(Texts.nearest("colour", known)).isEmpty();
        assertThat(Texts.excerpt("a\nb")).isEqualTo("a b");
    }
}
