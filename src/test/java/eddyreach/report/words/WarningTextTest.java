package eddyreach.report.words;

import static org.assertj.core.api.Assertions.assertThat;

import eddyreach.engine.core.Warning;
import eddyreach.engine.core.Warning.Measure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class WarningTextTest {

    /** Every kind has words of its own, which a full stop or its subject can be put around. */
    @ParameterizedTest
    @EnumSource(Warning.Kind.class)
    void everyKindHasWords(Warning.Kind kind) {
        Warning w = Warning.of(kind, "part").about("copper");
        for (Measure m : Measure.values()) {
            w = m == Measure.COUNT ? w : w.with(m, 0.5);
        }
        assertThat(WarningText.of(w))
                .isNotBlank()
                .doesNotEndWith(".")
                .doesNotStartWith("part")
                .doesNotContain("null");
        assertThat(WarningText.withSubject(w)).isEqualTo("part: " + WarningText.of(w));
    }

    @Test
    void numbersHaveTheirUnits() {
        Warning error = Warning.of(Warning.Kind.ERROR_ABOVE_REQUEST, "copper")
                .with(Measure.ERROR, 31.4e-6)
                .with(Measure.ASKED, 1e-9);
        assertThat(WarningText.of(error))
                .isEqualTo("numerical error 0.031 mm at the finest mesh, asked for 0.000001 mm");
        assertThat(WarningText.of(error.with(Measure.COUNT, 3).with(Measure.TOTAL, 12)))
                .isEqualTo("numerical error of 3 of 12 distances is above the 0.000001 mm asked for, up to 0.031 mm");
        assertThat(WarningText.of(Warning.of(Warning.Kind.STRAIGHT_EDGE, "wall").with(Measure.DISTANCE, 12e-3)))
                .startsWith("the straight edge 12 mm from the axis is an estimate");
    }

    /** One computed length reads the same wherever it stands. */
    @Test
    void computedLengthsHaveTwoDigits() {
        assertThat(Labels.computed(0.1996e-3)).isEqualTo("0.20 mm");
        assertThat(Labels.computed(99.6e-6)).isEqualTo("0.10 mm");
        assertThat(Labels.computed(38.2e-6)).isEqualTo("38 µm");
        assertThat(Labels.computed(2.04e-6)).isEqualTo("2.0 µm");
        assertThat(Labels.computed(99.6e-9)).isEqualTo("0.10 µm");
        assertThat(Labels.computed(61e-9)).isEqualTo("61 nm");
        assertThat(Labels.computed(0.0123)).isEqualTo("12 mm");
        assertThat(Labels.computed(0.1234)).isEqualTo("120 mm");
    }
}
