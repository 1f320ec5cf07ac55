package eddyreach.engine.mounted;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eddyreach.engine.core.SolvedSwitch;
import eddyreach.field.axial.DirectSolve;
import eddyreach.field.axial.ReferenceSwitch;
import eddyreach.field.axial.Resolution;
import eddyreach.geometry.Part;
import eddyreach.geometry.Role;
import eddyreach.geometry.Section;
import eddyreach.model.read.Library;
import eddyreach.model.values.SwitchModel;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.complex.Complex;
import org.junit.jupiter.api.Test;

class DippedTargetTest {

    private static final double MM = 1e-3;

    /** A sum of two decays that turn, as a coil's change by a target is one of many. */
    @Test
    void aSumOfDecaysThroughAFewValues() {
        double to = 5 * MM;
        double soft = 1.4 * MM;
        double before = 1;
        for (int n : new int[] {3, 6, 12}) {
            Complex[] values = new Complex[n + 1];
            for (int i = 0; i <= n; i++) {
                values[i] = decays(DistanceFit.node(0, to, soft, i, n));
            }
            DistanceFit fit = new DistanceFit(0, to, soft, values);
            double worst = 0;
            for (int i = 0; i <= 50; i++) {
                Complex exact = decays(i * to / 50);
                worst = Math.max(worst, fit.at(i * to / 50).subtract(exact).abs() / exact.abs());
            }
            assertThat(worst).as("%d intervals", n).isLessThan(fit.error()).isLessThan(before / 10);
            before = worst;
        }
        assertThat(before).isLessThan(1e-6);
    }

    private static Complex decays(double g) {
        return new Complex(2, -7)
                .multiply(Math.exp(-g / MM))
                .add(new Complex(-0.3, -1).multiply(Math.exp(-0.4 * g / MM)));
    }

    @Test
    void aDiscInsideACountersinkBetweenTheDistancesThatAreSolved() {
        SwitchModel model = new Library(Path.of("")).switchModel("p14-reference");
        Resolution coarse = Resolution.ROUGH;
        List<Part> mount = List.of(new Part(
                "wall", Role.MOUNT, new Section(11 * MM, 30 * MM, 0, 4 * MM, 6 * MM), ReferenceSwitch.ALUMINIUM));
        SolvedSwitch solved = new SolvedSwitch(model, coarse, List.of(), bytes -> {}).in(mount, bytes -> {});
        List<Part> disc =
                List.of(new Part("disc", Role.TARGET, new Section(0, 6 * MM, 0, 1 * MM), ReferenceSwitch.COPPER));
        DippedTarget dipped = new DippedTarget(solved, List.of(), disc, Optional.empty(), 0, 4 * MM);
        double omega = solved.band().low();
        for (double g : new double[] {0.3 * MM, 1.7 * MM}) {
            Complex direct = new DirectSolve(
                            solved.parts(),
                            solved.coil(omega),
                            disc.stream().map(p -> p.shifted(g)).toList(),
                            omega,
                            solved.celsius(),
                            coarse.body(),
                            solved.scale())
                    .change();
            Complex found = dipped.change(omega, g);
            // another mesh takes a share too
            assertThat(found.subtract(direct).abs())
                    .as("%s against %s", found, direct)
                    .isLessThan(dipped.error(omega, g) + 2e-3 * direct.abs());
            assertThat(dipped.error(omega, g)).isLessThan(8e-3 * direct.abs());
        }
        assertThat(dipped.change(omega, 4 * MM)
                        .subtract(direct(solved, disc, omega))
                        .abs())
                .as("at the plane")
                .isCloseTo(0, within(1e-9));
    }

    private static Complex direct(SolvedSwitch solved, List<Part> disc, double omega) {
        return new DirectSolve(
                        solved.parts(),
                        solved.coil(omega),
                        disc.stream().map(p -> p.shifted(4 * MM)).toList(),
                        omega,
                        solved.celsius(),
                        solved.resolution().body(),
                        solved.scale())
                .change();
    }
}
