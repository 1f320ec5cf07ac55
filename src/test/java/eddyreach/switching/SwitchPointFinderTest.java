package eddyreach.switching;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

class SwitchPointFinderTest {

    private static final double FREE = 50e-6;
    private static final double RANGE = 20e-3;
    private static final double DECAY = 2e-3;

    private static double standard(double g) {
        return FREE + 400e-6 * Math.exp(-g / DECAY);
    }

    private static final Trim TRIM = Trim.atFactory(SwitchPointFinderTest::standard, FREE, 5e-3, 0.1);
    private static final SwitchPointFinder FINDER = new SwitchPointFinder(TRIM, RANGE, 200);

    @Test
    void standardTargetSwitchesAtTheTrim() {
        SwitchPoints.Switches s = (SwitchPoints.Switches) FINDER.find(SwitchPointFinderTest::standard, FREE);
        assertThat(s.onDistance()).isCloseTo(5e-3, within(1e-12));
        assertThat(s.offDistance()).isCloseTo(5.5e-3, within(1e-12));
        assertThat(s.differentialTravel()).isCloseTo(0.5e-3, within(1e-12));
        assertThat(s.lostNearer()).isEmpty();
        double slope = -400e-6 / DECAY * Math.exp(-2.5);
        Crossing on = s.on().orElseThrow();
        assertThat(on.slope()).isCloseTo(slope, within(1e-7 * Math.abs(slope)));
        assertThat(on.turnsOn()).isTrue();
        assertThat(s.off().orElseThrow().turnsOn()).isFalse();
    }

    /** An error of G shifts the distance by dG over the slope: against the shifted curve itself. */
    @Test
    void slopeTurnsAnErrorOfConductanceIntoOneOfDistance() {
        double error = 1e-9;
        SwitchPoints.Switches plain = (SwitchPoints.Switches) FINDER.find(SwitchPointFinderTest::standard, FREE);
        SwitchPoints.Switches raised = (SwitchPoints.Switches) FINDER.find(g -> standard(g) + error, FREE + error);
        double shift = raised.onDistance() - plain.onDistance();
        assertThat(plain.on().orElseThrow().distanceError(error)).isCloseTo(shift, within(1e-4 * shift));
        assertThat(new Crossing(1e-3, true, 0).distanceError(error)).isInfinite();
        assertThatIllegalArgumentException().isThrownBy(() -> new Crossing(1e-3, true, 1).distanceError(-1));
    }

    @Test
    void weakTargetNeverSwitches() {
        assertThat(FINDER.find(g -> FREE + 10e-6 * Math.exp(-g / DECAY), FREE))
                .isEqualTo(new SwitchPoints.NeverSwitches(FREE + 10e-6, 0));
    }

    @Test
    void dampingMountLatches() {
        double between = (TRIM.on() + TRIM.off()) / 2 - FREE;
        SwitchPoints latched = FINDER.find(g -> standard(g) + between, FREE + between);
        assertThat(latched).isInstanceOf(SwitchPoints.NeverReleases.class);
        assertThat(((SwitchPoints.NeverReleases) latched).onWithoutTarget()).isFalse();
        assertThat(latched.on()).isPresent();
        assertThat(latched.off()).isEmpty();
        double above = TRIM.on() - FREE + 1e-6;
        SwitchPoints always = FINDER.find(g -> standard(g) + above, FREE + above);
        assertThat(((SwitchPoints.NeverReleases) always).onWithoutTarget()).isTrue();
        assertThat(always.approach()).isEmpty();
        assertThat(FINDER.find(g -> FREE + between, FREE + between)).isInstanceOf(SwitchPoints.NeverSwitches.class);
    }

    /** A shielding target undoes the damping of a mount: off when it comes, on when it has gone. */
    @Test
    void shieldingTargetTurnsALatchedSwitchOff() {
        double free = TRIM.on() + 5e-6;
        SwitchPoints points = FINDER.find(g -> free - 40e-6 * Math.exp(-g / DECAY), free);
        assertThat(((SwitchPoints.NeverReleases) points).onWithoutTarget()).isTrue();
        assertThat(points.approach()).hasSize(1);
        assertThat(points.approach().get(0).turnsOn()).isFalse();
        assertThat(points.departure().get(0).turnsOn()).isTrue();
    }

    @Test
    void shortRangeIsSaid() {
        SwitchPoints noOn = new SwitchPointFinder(TRIM, 4e-3, 50).find(SwitchPointFinderTest::standard, FREE);
        assertThat(noOn).isInstanceOf(SwitchPoints.OutOfRange.class);
        assertThat(noOn.on()).isEmpty();
        SwitchPoints noOff = new SwitchPointFinder(TRIM, 5.2e-3, 50).find(SwitchPointFinderTest::standard, FREE);
        assertThat(noOff).isInstanceOf(SwitchPoints.OutOfRange.class);
        assertThat(noOff.on().orElseThrow().distance()).isCloseTo(5e-3, within(1e-12));
        assertThat(noOff.off()).isEmpty();
    }

    /** Output drops near the face: G = on threshold times a parabola with known roots. */
    @Test
    void dropNearTheFaceIsReported() {
        double top = 1.2 * TRIM.on();
        double centre = 4e-3;
        double width = 3e-3;
        DoubleUnaryOperator hump = g -> FREE + (top - FREE) * Math.exp(-Math.pow((g - centre) / width, 2));
        SwitchPoints.Switches s = (SwitchPoints.Switches) FINDER.find(hump, FREE);
        double on = width * Math.sqrt(Math.log((top - FREE) / (TRIM.on() - FREE)));
        double off = width * Math.sqrt(Math.log((top - FREE) / (TRIM.off() - FREE)));
        assertThat(s.lostNearer()).contains(s.approach().get(1));
        assertThat(s.approach()).extracting(Crossing::turnsOn).containsExactly(true, false);
        assertThat(s.departure()).extracting(Crossing::turnsOn).containsExactly(true, false);
        assertThat(s.onDistance()).isCloseTo(centre + on, within(1e-11));
        assertThat(s.approach().get(1).distance()).isCloseTo(centre - off, within(1e-11));
        assertThat(s.departure().get(0).distance()).isCloseTo(centre - on, within(1e-11));
        assertThat(s.offDistance()).isCloseTo(centre + off, within(1e-11));
    }

    /** Peaks that reach a threshold only between two samples are seen. */
    @Test
    void peakBetweenSamplesIsFound() {
        SwitchPointFinder coarse = new SwitchPointFinder(TRIM, RANGE, 20);
        double centre = 4.5e-3;
        double width = 3e-3;
        DoubleUnaryOperator hump =
                g -> FREE + (1.0001 * TRIM.on() - FREE) * Math.exp(-Math.pow((g - centre) / width, 2));
        assertThat(hump.applyAsDouble(4e-3)).isLessThan(TRIM.on());
        assertThat(coarse.find(hump, FREE)).isInstanceOf(SwitchPoints.Switches.class);
        DoubleUnaryOperator dip = g -> standard(g) > TRIM.off() && g < 5e-3
                ? 1.3 * TRIM.on()
                        - (1.3 * TRIM.on() - 0.9999 * TRIM.off()) * Math.exp(-Math.pow((g - 2.5e-3) / 1e-3, 2))
                : standard(g);
        assertThat(dip.applyAsDouble(2e-3)).isGreaterThan(TRIM.off());
        assertThat(coarse.find(dip, FREE).approach())
                .extracting(Crossing::turnsOn)
                .containsExactly(true, false, true);
    }

    /** A peak inside the first interval, lower at both of its ends. */
    @Test
    void peakNextToContactIsFound() {
        SwitchPointFinder coarse = new SwitchPointFinder(TRIM, RANGE, 20);
        DoubleUnaryOperator hump =
                g -> FREE + (1.0001 * TRIM.on() - FREE) * Math.exp(-Math.pow((g - 0.45e-3) / 3e-3, 2));
        assertThat(hump.applyAsDouble(0)).isLessThan(TRIM.on());
        assertThat(coarse.find(hump, FREE).approach())
                .extracting(Crossing::turnsOn)
                .containsExactly(true);
    }

    /** On means at the on threshold or above, off means below the off threshold: at the very thresholds too. */
    @Test
    void theThresholdsThemselvesBelongToOn() {
        SwitchPointFinder finder = new SwitchPointFinder(TRIM, RANGE, 10);
        DoubleUnaryOperator reachesOn = g -> g == 0 ? TRIM.on() : FREE;
        assertThat(finder.find(reachesOn, FREE).approach()).hasSize(1);
        // the mount alone at the on threshold
        assertThat(((SwitchPoints.NeverReleases) finder.find(g -> TRIM.on(), TRIM.on())).onWithoutTarget())
                .isTrue();
        // once on, the off threshold itself still holds it
        SwitchPoints held = finder.find(g -> TRIM.off() + (TRIM.on() - TRIM.off()) * (RANGE - g) / RANGE, TRIM.off());
        assertThat(held).isInstanceOf(SwitchPoints.NeverReleases.class);
        assertThat(((SwitchPoints.NeverReleases) held).onWithoutTarget()).isFalse();
        // at the far end the curve is at the off threshold and the switch is on without a target: it starts on
        SwitchPoints on = finder.find(g -> TRIM.off(), TRIM.on());
        assertThat(on.approach()).isEmpty();
        assertThat(on).isInstanceOf(SwitchPoints.NeverReleases.class);
        // between the thresholds at the far end and off without a target: it does not start on
        assertThat(finder.find(g -> TRIM.off(), FREE)).isInstanceOf(SwitchPoints.NeverSwitches.class);
    }

    /** A bump of a hundredth of the interval that touches the threshold at its top only. */
    @Test
    void topOfACurveIsFoundToRounding() {
        SwitchPointFinder coarse = new SwitchPointFinder(TRIM, RANGE, 20);
        double centre = 4.4e-3;
        DoubleUnaryOperator hump =
                g -> FREE + (TRIM.on() * (1 + 1e-12) - FREE) * Math.exp(-Math.pow((g - centre) / 3e-3, 2));
        SwitchPoints points = coarse.find(hump, FREE);
        assertThat(points.approach().get(0).distance()).isCloseTo(centre, within(1e-8));
    }

    @Test
    void tenIntervalsAreEnoughAndNineAreNot() {
        assertThat(new SwitchPointFinder(TRIM, RANGE, 10).intervals()).isEqualTo(10);
        assertThatIllegalArgumentException().isThrownBy(() -> new SwitchPointFinder(TRIM, RANGE, 9));
    }

    /** A shielding target that turns a latched switch off first and on again nearer, and one that only turns it off. */
    @Test
    void lostNearerCountsFromTheFirstDetection() {
        Crossing off = new Crossing(6e-3, false, 1);
        Crossing on = new Crossing(4e-3, true, -1);
        Crossing again = new Crossing(1e-3, false, 1);
        assertThat(new SwitchPoints.OutOfRange(RANGE, List.of(off, on), List.of()).lostNearer())
                .isEmpty();
        assertThat(new SwitchPoints.OutOfRange(RANGE, List.of(off, on, again), List.of()).lostNearer())
                .contains(again);
    }

    @Test
    void randomMonotoneCurvesGiveTheClosedForm() {
        Random random = new Random(11);
        int switched = 0;
        for (int i = 0; i < 200; i++) {
            double free = 30e-6 + 30e-6 * random.nextDouble();
            double strength = 2e-6 * Math.pow(400, random.nextDouble());
            double decay = 1e-3 + 1.5e-3 * random.nextDouble();
            SwitchPoints points = FINDER.find(g -> free + strength * Math.exp(-g / decay), free);
            if (free + strength < TRIM.on()) {
                assertThat(points).isInstanceOf(SwitchPoints.NeverSwitches.class);
            } else {
                SwitchPoints.Switches s = (SwitchPoints.Switches) points;
                assertThat(s.onDistance()).isCloseTo(decay * Math.log(strength / (TRIM.on() - free)), within(1e-11));
                assertThat(s.offDistance()).isCloseTo(decay * Math.log(strength / (TRIM.off() - free)), within(1e-11));
                assertThat(s.differentialTravel()).isPositive();
                assertThat(s.lostNearer()).isEmpty();
                switched++;
            }
        }
        assertThat(switched).isBetween(50, 190);
    }

    /** Wavy curves: the changes found are those of the same comparison stepped through a very fine path. */
    @Test
    void randomWavyCurvesAgreeWithAFineWalk() {
        Random random = new Random(12);
        int dropped = 0;
        for (int i = 0; i < 60; i++) {
            double strength = 100e-6 * (0.5 + random.nextDouble());
            double wave = 0.9 * random.nextDouble();
            double period = 2e-3 * (1 + random.nextDouble());
            double phase = 2 * Math.PI * random.nextDouble();
            DoubleUnaryOperator curve = g ->
                    FREE + strength * Math.exp(-g / 4e-3) * (1 + wave * Math.sin(2 * Math.PI * g / period + phase));
            SwitchPoints points = FINDER.find(curve, FREE);
            int fine = 40_000;
            List<Crossing> in = new ArrayList<>();
            boolean on = false;
            for (int k = fine; k >= 0; k--) {
                on = step(curve, RANGE * k / fine, on, in);
            }
            List<Crossing> out = new ArrayList<>();
            for (int k = 0; k <= fine; k++) {
                on = step(curve, RANGE * k / fine, on, out);
            }
            assertSame(points.approach(), in, RANGE / fine);
            assertSame(points.departure(), out, RANGE / fine);
            if (points.lostNearer().isPresent()) {
                dropped++;
            }
        }
        assertThat(dropped).isGreaterThan(5);
    }

    private static boolean step(DoubleUnaryOperator curve, double g, boolean on, List<Crossing> changes) {
        double value = curve.applyAsDouble(g);
        boolean next = on ? value >= TRIM.off() : value >= TRIM.on();
        if (next != on) {
            changes.add(new Crossing(g, next, 0));
        }
        return next;
    }

    private static void assertSame(List<Crossing> found, List<Crossing> stepped, double width) {
        assertThat(found).hasSameSizeAs(stepped);
        for (int i = 0; i < found.size(); i++) {
            assertThat(found.get(i).turnsOn()).isEqualTo(stepped.get(i).turnsOn());
            assertThat(found.get(i).distance()).isCloseTo(stepped.get(i).distance(), within(width));
        }
    }

    @Test
    void rejectsNonsense() {
        assertThatIllegalArgumentException().isThrownBy(() -> new SwitchPointFinder(TRIM, 0, 100));
        assertThatIllegalArgumentException().isThrownBy(() -> new SwitchPointFinder(TRIM, RANGE, 3));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FINDER.find(g -> Double.NaN, FREE))
                .withMessageStartingWith("conductance at distance " + RANGE + " m");
        assertThatIllegalArgumentException().isThrownBy(() -> FINDER.find(SwitchPointFinderTest::standard, -1));
    }
}
