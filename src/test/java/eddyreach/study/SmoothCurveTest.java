package eddyreach.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.model.Library;
import eddyreach.model.Span;
import eddyreach.model.StudyReader;
import eddyreach.model.SweepInput;
import eddyreach.model.Target;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class SmoothCurveTest {

    private static SwitchDistance at(double on) {
        return new SwitchDistance(SwitchDistance.Outcome.SWITCHES, on, on + 1e-4, 3e-6, 4e-6);
    }

    private static final SwitchDistance NEVER =
            new SwitchDistance(SwitchDistance.Outcome.NEVER_ON, Double.NaN, Double.NaN, Double.NaN, Double.NaN);

    @Test
    void aSmoothCurveIsFilledWithBarsAboveThoseOfItsNeighbours() {
        SwitchDistance[] curve = new SwitchDistance[31];
        for (int i = 0; i < curve.length; i += 3) {
            curve[i] = at(5e-3 / Math.cosh((i - 15) / 10.0));
        }
        SwitchDistance[] all = SmoothCurve.filled(curve, 4e-5);
        for (int i = 0; i < all.length; i++) {
            double exact = 5e-3 / Math.cosh((i - 15) / 10.0);
            assertThat(all[i].on()).isCloseTo(exact, within(all[i].onError()));
            assertThat(all[i].off()).isCloseTo(exact + 1e-4, within(all[i].offError()));
            assertThat(all[i].onError()).isGreaterThanOrEqualTo(3e-6);
        }
    }

    @Test
    void whereTheCurveEndsOrKinksTheGapStays() {
        SwitchDistance[] curve = new SwitchDistance[40];
        for (int i = 0; i < curve.length; i += 3) {
            curve[i] = i < 9 ? NEVER : at(1e-3 * Math.abs(i - 30.5));
        }
        SwitchDistance[] all = SmoothCurve.filled(curve, 1e-5);
        assertThat(all[1]).isEqualTo(NEVER);
        assertThat(all[8]).as("beside a target that is never on").isNull();
        assertThat(all[10]).isNull();
        assertThat(all[19]).as("straight").isNotNull();
        assertThat(all[31]).as("kink").isNull();
    }

    /** Of a bounded sheet: every value inside its bar of the one that is computed there. */
    @Test
    void aBoundedSheetsCurveHoldsItsBars() {
        Library library = new Library(Path.of(""));
        SweepInput.Thickness shipped =
                (SweepInput.Thickness) StudyReader.read(library.studyFile("m18-foil-thickness"), library);
        Span span = new Span(50e-9, 5e-3, 61);
        SweepInput.Thickness study = new SweepInput.Thickness(
                shipped.header(),
                List.of(library.materials().get("aluminium")),
                new Target.Outline.Square(18e-3),
                span,
                shipped.reach());
        Target first = study.target(study.materials().get(0), 1e-3);
        Sweep sweep = new Sweep(study, study.reach(), List.of(first), Progress.NONE);
        List<SweepPoint> curve = sweep.smooth(study.materials(), span.logarithmic(), study::target, "smooth")
                .get(0);
        double[] values = span.logarithmic();
        List<SweepPoint> computed =
                sweep.grid(study.materials(), values, study::target, "computed").get(0);
        for (int i = 0; i < values.length; i++) {
            SwitchDistance filled = curve.get(i).distance();
            SwitchDistance exact = computed.get(i).distance();
            assertThat(filled.outcome()).isEqualTo(exact.outcome());
            if (exact.outcome() == SwitchDistance.Outcome.SWITCHES) {
                // what filling may add is a small part of the bar
                assertThat(filled.on()).as("at " + values[i]).isCloseTo(exact.on(), within(0.5 * filled.onError()));
                assertThat(filled.off()).isCloseTo(exact.off(), within(0.5 * filled.offError()));
                assertThat(filled.onError()).isGreaterThan(0.9 * exact.onError());
            }
        }
    }
}
