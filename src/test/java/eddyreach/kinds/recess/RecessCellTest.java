package eddyreach.kinds.recess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.engine.core.Operating;
import eddyreach.engine.core.SwitchDistance;
import eddyreach.engine.core.SwitchDistance.Outcome;
import eddyreach.engine.core.TrimmedSwitch;
import eddyreach.kinds.mount.MountCase;
import eddyreach.kinds.mount.MountCase.Verdict;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Cells of a map: whether they are safe, how they are kept between runs, and the numbers under the shades. */
class RecessCellTest {

    private static final double NONE = Double.NaN;

    private static RecessCell cell(double used, Verdict verdict, double shift) {
        return new RecessCell(
                1, 2, 3, 0, used, verdict, new SwitchDistance(Outcome.SWITCHES, 5e-3, 6e-3, 1e-5, 2e-5), shift, 1e-3);
    }

    @ParameterizedTest
    @CsvSource({
        "0.5, RELEASED, 0.1, true",
        "0.5, RELEASED, -0.1, true",
        "0.51, RELEASED, 0, false",
        "0.1, RELEASED, 0.11, false",
        "0.1, RELEASED, -0.11, false",
        "0.1, HOLDS, 0, false",
        "0.1, LATCHED, 0, false",
        "0.1, RELEASED, NaN, false"
    })
    void safeWithCareAndATenth(double used, Verdict verdict, double shift, boolean safe) {
        assertThat(cell(used, verdict, shift).safe()).isEqualTo(safe);
    }

    @Test
    void aLineKeepsACellExactly() {
        RecessCell cell = new RecessCell(
                1,
                2,
                3,
                0,
                1.0 / 3,
                Verdict.HOLDS,
                new SwitchDistance(Outcome.NEVER_OFF, Math.PI * 1e-3, NONE, 1e-5, NONE),
                -0.1,
                NONE);
        assertThat(RecessCell.of(cell.line())).contains(cell);
        assertThat(cell.line()).startsWith("1 2 3 0 0.3333333333333333 HOLDS NEVER_OFF 0.00314159");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "1 2 3 0 0.3 HOLDS NEVER_OFF 1 2 3 4 5",
                "1 2 3 0 0.3 HOLDS NEVER_OFF 1 2 3 4 5 6 7",
                "1 2 3 0 0.3 HELD NEVER_OFF 1 2 3 4 5 6",
                "one 2 3 0 0.3 HOLDS NEVER_OFF 1 2 3 4 5 6"
            })
    void whatIsNoCell(String line) {
        assertThat(RecessCell.of(line)).isEmpty();
    }

    @Test
    void anotherErrorBar() {
        SwitchDistance d = cell(0.1, Verdict.RELEASED, 0.05).withError(7e-5).distance();
        assertThat(d).isEqualTo(new SwitchDistance(Outcome.SWITCHES, 5e-3, 6e-3, 7e-5, 7e-5));
        assertThat(cell(0.1, Verdict.RELEASED, 0.05).withError(7e-5).shift()).isEqualTo(0.05);
    }

    @Test
    void whatIsMissingTakesTheMeanOfItsNeighbours() {
        double[][] filled = RecessGrid.filled(new double[][] {{1, NONE, 3}, {NONE, NONE, NONE}, {5, NONE, 7}});
        assertThat(filled[0]).containsExactly(new double[] {1, 2, 3}, within(1e-12));
        assertThat(filled[1]).containsExactly(new double[] {3, 4, 5}, within(1e-12));
        assertThat(filled[2]).containsExactly(new double[] {5, 6, 7}, within(1e-12));
        assertThat(RecessGrid.filled(new double[][] {{NONE, NONE}})[0]).containsOnly(NONE);
        assertThat(RecessGrid.filled(new double[][] {{NONE, NONE, 4}})[0]).containsExactly(4, 4, 4);
    }

    @Test
    void middlesOfEvenSteps() {
        assertThat(RecessGrid.even(new double[] {10, 15, 20}, 2, false)).containsExactly(12.5, 17.5);
        assertThat(RecessGrid.even(new double[] {10, 15, 20}, 2, true)).containsExactly(17.5, 12.5);
    }

    @Test
    void howFarAMapIs() {
        Optional<RecessCell> done = Optional.of(cell(0.1, Verdict.RELEASED, 0));
        RecessResult.Panel panel = new RecessResult.Panel(
                null, List.of(List.of(done, Optional.empty()), List.of(done, done)), Optional.<MountCase>empty());
        assertThat(panel.done()).isEqualTo(3);
        double[][] used = RecessGrid.of(panel, RecessCell::used);
        assertThat(used[0]).containsExactly(0.1, NONE);
        assertThat(used[1]).containsExactly(0.1, 0.1);
        TrimmedSwitch trimmed =
                new TrimmedSwitch(1e-9, new Operating(2, 2e-4, 2e5, 1e-4, 1), 2e-4, 1.8e-4, 1, 1.1, null);
        RecessResult result = new RecessResult(
                null,
                trimmed,
                new double[] {1, 2},
                new double[] {1, 2},
                null,
                List.of(panel, panel),
                List.of(),
                true,
                List.of());
        assertThat(result.cells()).isEqualTo(8);
        assertThat(result.done()).isEqualTo(6);
        assertThat(result.holds()).isCloseTo(0.8, within(1e-12));
    }
}
