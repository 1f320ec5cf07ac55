package eddyreach.kinds.offaxis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.engine.core.SwitchDistance;
import eddyreach.engine.core.SwitchDistance.Outcome;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Bars beside the axis that also hold a shift of the offset, by hand. */
class OffAxisBarsTest {

    private static final SwitchDistance NEVER =
            new SwitchDistance(Outcome.NEVER_ON, Double.NaN, Double.NaN, Double.NaN, Double.NaN);

    private static SwitchDistance on(double on) {
        return new SwitchDistance(Outcome.SWITCHES, on, on + 1, 0.01, 0.02);
    }

    private static ZoneTarget zone(SwitchDistance... distances) {
        double[] offset = new double[distances.length];
        for (int i = 0; i < offset.length; i++) {
            offset[i] = 2 * i;
        }
        return new ZoneTarget(
                null,
                offset,
                List.of(distances),
                new double[0],
                new double[0][],
                new ZoneEdge(5, 0.1),
                ZoneEdge.NONE,
                List.of());
    }

    @Test
    void aShiftOfTheOffsetIsWorthWhatTheDistanceChangesOverIt() {
        ZoneTarget shifted = zone(on(5), on(4), on(2), NEVER).withOutline(1);
        double[] on = shifted.distances().stream()
                .mapToDouble(SwitchDistance::onError)
                .toArray();
        // half way to the next offset: 5 to 4.5; 4 to 4.5 or to 3; 2 to 3 or, as nothing is seen there, to 1
        assertThat(on[0]).isCloseTo(0.01 + 0.5, within(1e-12));
        assertThat(on[1]).isCloseTo(0.01 + 1, within(1e-12));
        assertThat(on[2]).isCloseTo(0.01 + 1, within(1e-12));
        assertThat(on[3]).isNaN();
        double[] off = shifted.distances().stream()
                .mapToDouble(SwitchDistance::offError)
                .toArray();
        assertThat(off[0]).isCloseTo(0.02 + 0.5, within(1e-12));
        assertThat(off[2]).as("6, 3, 0").isCloseTo(0.02 + 1.5, within(1e-12));
        assertThat(shifted.onEdge()).isEqualTo(new ZoneEdge(5, 1.1));
        assertThat(shifted.offEdge().found()).isFalse();
        assertThat(shifted.onEdge().found()).isTrue();
        assertThat(shifted.distances()).extracting(SwitchDistance::on).containsExactly(5.0, 4.0, 2.0, Double.NaN);
    }

    /** A quarter of the way to the next offset: 5 to 4.75; 4 to 3.5; 2 to 1.5, or inwards to 2.5. */
    @Test
    void aSmallShiftIsWorthItsShare() {
        ZoneTarget shifted = zone(on(5), on(4), on(2), NEVER).withOutline(0.5);
        assertThat(shifted.distances().get(0).onError()).isCloseTo(0.01 + 0.25, within(1e-12));
        assertThat(shifted.distances().get(1).onError()).isCloseTo(0.01 + 0.5, within(1e-12));
        assertThat(shifted.distances().get(2).onError()).isCloseTo(0.01 + 0.5, within(1e-12));
        assertThat(zone(on(5), on(4), on(4), on(4))
                        .withOutline(0.5)
                        .distances()
                        .get(3)
                        .onError())
                .as("level at the end")
                .isCloseTo(0.01, within(1e-12));
    }

    @Test
    void aRoundTargetKeepsItsBars() {
        ZoneTarget round = zone(on(5), on(4), NEVER);
        assertThat(round.withOutline(0)).isSameAs(round);
        assertThat(round.error()).isEqualTo(0.02);
        assertThat(zone(NEVER, NEVER).error()).isNaN();
    }

    @Test
    void aPassAddsUpTheWayThatIsOn() {
        PassTarget pass = new PassTarget(
                null,
                new double[0],
                new double[0],
                new boolean[0],
                List.of(
                        new PassTarget.Change(-9, 0.1, true),
                        new PassTarget.Change(-2, 0.3, false),
                        new PassTarget.Change(3, 0.2, true),
                        new PassTarget.Change(8, 0.1, false)),
                List.of());
        assertThat(pass.onLength()).isEqualTo(12);
        assertThat(pass.error()).isEqualTo(0.3);
        PassTarget wide = pass.withOutline(0.5);
        assertThat(wide.changes()).extracting(PassTarget.Change::error).containsExactly(0.6, 0.8, 0.7, 0.6);
        assertThat(wide.changes()).extracting(PassTarget.Change::turnsOn).containsExactly(true, false, true, false);
        assertThat(wide.onLength()).isEqualTo(12);
        PassTarget never = new PassTarget(null, new double[0], new double[0], new boolean[0], List.of(), List.of());
        assertThat(never.error()).isNaN();
        assertThat(never.onLength()).isZero();
    }
}
