package eddyreach.kinds.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.engine.core.Progress;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.model.read.Library;
import eddyreach.model.read.ValueRange;
import eddyreach.model.values.Target;
import eddyreach.studies.StudyReader;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntFunction;
import org.junit.jupiter.api.Test;

class SmoothCurveTest {

    private static SwitchDistance at(double on) {
        return new SwitchDistance(SwitchDistance.Outcome.SWITCHES, on, on + 1e-4, 3e-6, 4e-6);
    }

    private static final SwitchDistance NEVER =
            new SwitchDistance(SwitchDistance.Outcome.NEVER_ON, Double.NaN, Double.NaN, Double.NaN, Double.NaN);

    private static SmoothCurve.Node node(SwitchDistance distance) {
        return new SmoothCurve.Node(distance, 2);
    }

    /** Computes what is wanted until nothing is; returns how many points that took. */
    private static int complete(SmoothCurve curve, IntFunction<SmoothCurve.Node> computed) {
        int count = 0;
        for (List<Integer> wanted = curve.wanted(); !wanted.isEmpty(); wanted = curve.wanted()) {
            for (int i : wanted) {
                curve.put(i, computed.apply(i));
                count++;
            }
        }
        return count;
    }

    @Test
    void aSmoothCurveIsFilledWithBarsAboveThoseOfItsNeighbours() {
        SmoothCurve curve = new SmoothCurve(61, 4e-6);
        DoubleUnaryOperator exact = i -> 5e-3 / Math.cosh((i - 30) / 20.0);
        assertThat(complete(curve, i -> node(at(exact.applyAsDouble(i))))).isLessThan(30);
        for (double i = 0; i <= 60; i += 0.25) {
            SwitchDistance filled = curve.at(i).orElseThrow();
            assertThat(filled.on()).isCloseTo(exact.applyAsDouble(i), within(filled.onError()));
            assertThat(filled.off()).isCloseTo(exact.applyAsDouble(i) + 1e-4, within(filled.offError()));
            assertThat(filled.onError()).isBetween(3e-6, 7e-6);
        }
    }

    /** A narrow dip between points far apart, on which two polynomials may agree by chance. */
    @Test
    void aNarrowDipIsFound() {
        DoubleUnaryOperator exact = i -> 2e-3 - 1e-3 * Math.exp(-Math.pow((i - 37) / 4, 2)) + 2e-5 * i;
        SmoothCurve curve = new SmoothCurve(61, 4e-6);
        complete(curve, i -> node(at(exact.applyAsDouble(i))));
        for (int i = 0; i <= 60; i++) {
            SwitchDistance filled = curve.at(i).orElseThrow();
            assertThat(filled.on()).as("at " + i).isCloseTo(exact.applyAsDouble(i), within(filled.onError()));
        }
    }

    @Test
    void whereTheCurveEndsOrKinksItIsComputed() {
        SmoothCurve curve = new SmoothCurve(61, 1e-5);
        Set<Integer> computed = new TreeSet<>();
        complete(curve, i -> {
            computed.add(i);
            return i < 20
                    ? new SmoothCurve.Node(NEVER, 0.05 * i)
                    : new SmoothCurve.Node(at(1e-3 * Math.abs(i - 43.3)), 0.05 * i);
        });
        assertThat(computed).as("the last never on and the first on").contains(19, 20);
        assertThat(computed).as("kink").contains(42, 43, 44);
        assertThat(computed).as("never on").doesNotContain(1, 2, 3, 5, 6, 7);
        assertThat(computed).as("straight").doesNotContain(27, 31);
        assertThat(curve.at(3)).contains(NEVER);
    }

    /** Between two that are never on something may be: the damping tells. */
    @Test
    void nothingIsTakenAsNeverOnWhereTheDampingComesNear() {
        SmoothCurve curve = new SmoothCurve(61, 1e-5);
        Set<Integer> computed = new TreeSet<>();
        DoubleUnaryOperator height = i -> 1.02 / Math.cosh((i - 28) / 8.0);
        complete(curve, i -> {
            computed.add(i);
            double h = height.applyAsDouble(i);
            return new SmoothCurve.Node(h < 1 ? NEVER : at(1e-3), h);
        });
        for (int i = 0; i <= 60; i++) {
            assertThat(curve.at(i).orElseThrow().outcome() == SwitchDistance.Outcome.NEVER_ON)
                    .as("at " + i)
                    .isEqualTo(height.applyAsDouble(i) < 1);
        }
        assertThat(computed.size()).isLessThan(40);
    }

    /** Of a bounded sheet: every value inside its bar of the one that is computed there. */
    @Test
    void aBoundedSheetsCurveHoldsItsBars() {
        Library library = new Library(Path.of(""));
        SweepInput.Thickness shipped =
                (SweepInput.Thickness) StudyReader.read(library.studyFile("m18-foil-thickness"), library);
        ValueRange span = new ValueRange(50e-9, 5e-3, 61);
        SweepInput.Thickness study = new SweepInput.Thickness(
                shipped.header(),
                List.of(library.materials().get("aluminium")),
                new Target.Outline.Square(18e-3),
                span,
                shipped.reach());
        Target first = study.target(study.materials().get(0), 1e-3);
        Sweep sweep = new Sweep(study, study.reach(), List.of(first), Progress.NONE);
        Sweep.Curves curves = sweep.curves(study.materials(), span.logarithmic(), study::target, "smooth");
        List<SweepPoint> curve = curves.points().get(0);
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
