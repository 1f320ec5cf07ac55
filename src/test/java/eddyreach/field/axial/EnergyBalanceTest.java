package eddyreach.field.axial;

import static org.assertj.core.api.Assertions.assertThat;

import eddyreach.field.join.GapState;
import eddyreach.field.join.SwitchField;
import eddyreach.field.targets.BodyTarget;
import eddyreach.geometry.Role;
import eddyreach.materials.Material;
import java.util.List;
import org.apache.commons.math3.complex.Complex;
import org.junit.jupiter.api.Test;

/**
 * Poynting's theorem: Re Z is the sum of the losses by part, integrated from the fields on either side of the gap. Operators and
 * fields come from one Galerkin system, so at the ends of the band the balance holds far better than the solution itself is known.
 */
class EnergyBalanceTest {

    private static final List<Material> MATERIALS = List.of(
            ReferenceSwitch.STEEL,
            ReferenceSwitch.STAINLESS,
            ReferenceSwitch.COPPER,
            ReferenceSwitch.material("ferrite", 0, 200, 30));

    @Test
    void flushSwitch() {
        balance(InventedSwitch.medium());
    }

    @Test
    void switchWithLossyWinding() {
        InventedSwitch s = InventedSwitch.large();
        assertThat(s.coil().muLoss()).isPositive();
        balance(s);
        SwitchField field = s.field(Resolution.COARSE);
        List<PartLoss> free = field.solveFree(s.omega()).losses();
        PartLoss winding = free.get(free.size() - 1);
        assertThat(winding.role()).isEqualTo(Role.WINDING);
        assertThat(winding.resistance()).isPositive();
    }

    private static void balance(InventedSwitch s) {
        SwitchField field = s.field(Resolution.COARSE);
        double worst = 0;
        for (Material m : MATERIALS) {
            BodyTarget target = s.target(m, Resolution.COARSE);
            for (double gap : s.gaps()) {
                worst = Math.max(worst, imbalance(field, target, s.omega(), gap));
                worst = Math.max(worst, imbalance(field, target, 1.07 * s.omega(), gap));
            }
        }
        assertThat(worst).isLessThan(1e-6);
    }

    /** Difference of dR and the change of the losses, relative to |dZ|; and of R and the losses, relative to R. */
    private static double imbalance(SwitchField field, BodyTarget target, double omega, double gap) {
        GapState state = field.at(omega).solve(target.at(omega), gap);
        double without = sum(field.solveFree(omega).losses());
        double inSwitch = sum(field.solve(omega, state).losses());
        double inTarget = sum(target.solve(omega, state).losses());
        Complex free = field.impedance(omega);
        double all = Math.abs(free.getReal() + state.dz().getReal() - inSwitch - inTarget)
                / (free.getReal() + state.dz().getReal());
        double change = Math.abs(state.dz().getReal() - (inSwitch + inTarget - without))
                / state.dz().abs();
        return Math.max(all, change);
    }

    private static double sum(List<PartLoss> losses) {
        double sum = 0;
        for (PartLoss p : losses) {
            assertThat(p.resistance()).as(p.name()).isNotNegative();
            sum += p.resistance();
        }
        return sum;
    }
}
