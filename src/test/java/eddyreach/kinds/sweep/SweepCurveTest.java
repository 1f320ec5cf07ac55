package eddyreach.kinds.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.engine.core.SwitchDistance;
import eddyreach.engine.core.SwitchDistance.Outcome;
import eddyreach.materials.FactorBand;
import eddyreach.materials.Material;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is read off curves, on curves of a few points. */
class SweepCurveTest {

    private static final Material ZINC = new Material("zinc", "zinc", 16e6, 4e-3, 1, 0, "made up");
    private static final double NONE = Double.NaN;

    private static SwitchDistance on(double on) {
        return Double.isNaN(on)
                ? new SwitchDistance(Outcome.NEVER_ON, NONE, NONE, NONE, NONE)
                : new SwitchDistance(Outcome.SWITCHES, on, 1.1 * on, 0.01 * on, 0.01 * on);
    }

    /** Values 1, 2, 3 and so on. */
    private static SweepCurve curve(double... on) {
        List<SweepPoint> points = new ArrayList<>();
        for (int i = 0; i < on.length; i++) {
            points.add(new SweepPoint(i + 1, on(on[i])));
        }
        return new SweepCurve("c", "a curve", points);
    }

    private static Optional<Double> value(Optional<SweepPoint> point) {
        return point.map(SweepPoint::value);
    }

    @Test
    void theHighestPoint() {
        assertThat(value(curve(3, 5, 4).highest())).contains(2.0);
        assertThat(value(curve(NONE, 2, NONE).highest())).contains(2.0);
        assertThat(curve(NONE, NONE).highest()).isEmpty();
        assertThat(curve(3, 5, 4).last().on()).isEqualTo(4);
    }

    @Test
    void fromWhereOnATargetIsSeen() {
        assertThat(value(curve(NONE, NONE, 2, 3).firstSeen())).contains(3.0);
        assertThat(value(curve(NONE, NONE, 2, 3).lastUnseen())).contains(2.0);
        assertThat(value(curve(1, NONE, 2, 3).firstSeen())).as("the gap counts").contains(3.0);
        assertThat(value(curve(1, 2).firstSeen())).contains(1.0);
        assertThat(curve(1, 2).lastUnseen()).isEmpty();
        assertThat(curve(1, NONE).firstSeen()).isEmpty();
        assertThat(curve(1, NONE).lastUnseen()).isEmpty();
    }

    @Test
    void fromWhereOnTheDistanceIsLevel() {
        assertThat(value(curve(5, 9, 9.95, 10.09, 10).levelFrom(0.01))).contains(3.0);
        assertThat(value(curve(5, 9.9, 10).levelFrom(0.01)))
                .as("just a hundredth")
                .contains(2.0);
        assertThat(value(curve(5, 9.8, 10).levelFrom(0.01))).contains(3.0);
        assertThat(curve(5, NONE).levelFrom(0.01)).isEmpty();
    }

    @Test
    void aDipIsClearlyBelowTheLast() {
        assertThat(value(curve(12, 9, 8, 10).dipAfter(1, 0.01))).contains(3.0);
        assertThat(curve(12, 9.91, 10).dipAfter(1, 0.01)).isEmpty();
        assertThat(curve(8, 12, 10).dipAfter(1, 0.01)).as("before the value").isEmpty();
    }

    @Test
    void nothingBeyondWhatWasSearched() {
        SweepPoint beyond = new SweepPoint(2, new SwitchDistance(Outcome.BEYOND_RANGE, NONE, NONE, NONE, NONE));
        assertThat(curve(1, NONE).complete()).isTrue();
        assertThat(new SweepCurve("c", "c", List.of(new SweepPoint(1, on(1)), beyond)).complete())
                .isFalse();
        assertThat(beyond.seen()).isTrue();
    }

    private static SizeResult.Item size(SweepCurve curve) {
        return new SizeResult.Item(ZINC, curve, on(5), 1, List.of());
    }

    @Test
    void sizesBeyondWhichNothingChanges() {
        assertThat(value(size(curve(5, 9.95, 10)).level())).contains(2.0);
        assertThat(size(curve(5, 9, 10)).level()).as("it still changes").isEmpty();
        assertThat(value(size(curve(5, 10.2, 10)).peak())).contains(2.0);
        assertThat(size(curve(5, 10.05, 10)).peak()).isEmpty();
        assertThat(size(curve(5, 9, 10)).peak()).as("the last is the largest").isEmpty();
    }

    private static LayersResult.Item layers(SweepCurve curve) {
        return new LayersResult.Item(ZINC, curve, on(5), List.of(), 1e-5, 1e-4);
    }

    @Test
    void whatACoatingRaisesAndLowers() {
        assertThat(value(layers(curve(10, 10.2, 9)).raised(10))).contains(2.0);
        assertThat(layers(curve(10, 10.05, 9)).raised(10)).isEmpty();
        assertThat(value(layers(curve(10, 10.2, 9.95, 9.5, 9)).lowered(10))).contains(4.0);
        assertThat(value(layers(curve(9, 10.2, NONE)).lowered(10)))
                .as("below the largest it does not count; lost is lower")
                .contains(3.0);
        assertThat(layers(curve(10, 10.2, 9.95)).lowered(10)).isEmpty();
        assertThat(value(layers(curve(NONE, NONE)).lowered(10))).contains(1.0);
        assertThat(layers(curve(1, 2)).everywhereOn()).isTrue();
        assertThat(layers(curve(1, NONE)).everywhereOn()).isFalse();
    }

    private static ThicknessResult.Metal metal(SweepCurve curve) {
        return new ThicknessResult.Metal(ZINC, curve, 1e-4, 1e-5, 100, curve.highest(), true, List.of());
    }

    @Test
    void thickMetalIsLevelBeyondItsLargestDistance() {
        assertThat(value(metal(curve(5, 12, 10.05, 10)).level())).contains(3.0);
        assertThat(metal(curve(5, 12, 10.5, 10)).level()).isEmpty();
        assertThat(metal(curve(10, 10, 10)).level()).as("level from the start").isEmpty();
        assertThat(value(metal(curve(12, 9, 10)).dip())).contains(2.0);
        assertThat(metal(curve(12, 11, 10)).dip()).isEmpty();
        assertThat(metal(curve(NONE, NONE)).dip()).isEmpty();
        assertThat(metal(curve(NONE, NONE)).level()).isEmpty();
    }

    @Test
    void whatIsUsualForSmallTargets() {
        assertThat(SizeDerating.usual(0.5)).contains(new FactorBand(0.70, 0.88, SizeDerating.SOURCE));
        FactorBand between = SizeDerating.usual(0.625).orElseThrow();
        assertThat(between.low()).isCloseTo(0.80, within(1e-12));
        assertThat(between.high()).isCloseTo(0.925, within(1e-12));
        assertThat(SizeDerating.usual(0.2)).isPresent();
        assertThat(SizeDerating.usual(0.19)).isEmpty();
        assertThat(SizeDerating.usual(1).orElseThrow().low()).isEqualTo(1);
        assertThat(SizeDerating.usual(1.01)).isEmpty();
        assertThat(SizeDerating.ratios()).containsExactly(0.2, 0.25, 0.33, 0.5, 0.75, 1);
    }

    @Test
    void extremesOfAMap() {
        ConductivityResult map = new ConductivityResult(
                null,
                null,
                null,
                new double[] {1e6, 1e7, 5e7},
                new double[] {1, 100},
                List.of(List.of(on(2), on(3), on(NONE)), List.of(on(5), on(4), on(1))),
                List.of(),
                100,
                List.of());
        assertThat(map.extremes()).isEqualTo(new ConductivityResult.Extremes(5, 6, 1, 5, 1e6, 100, 0.05));
        assertThat(map.covers(dot(1, 1e6))).isTrue();
        assertThat(map.covers(dot(100, 5e7))).isTrue();
        assertThat(map.covers(dot(1, 0.9e6))).isFalse();
        assertThat(map.covers(dot(1, 5.1e7))).isFalse();
        assertThat(map.covers(dot(101, 1e7))).isFalse();
    }

    private static ConductivityResult.Dot dot(double mu, double sigma) {
        return new ConductivityResult.Dot(new Material("m", "m", sigma, 0, mu, 0, "made up"), sigma, 1e-4, on(1));
    }
}
