package eddyreach.proof;

import eddyreach.closedform.CoilOverPlate;
import eddyreach.closedform.LayeredPlate;
import eddyreach.closedform.Loops;
import eddyreach.closedform.RectangularCoil;
import eddyreach.closedform.Reflector;
import eddyreach.closedform.ThinSheet;
import java.util.List;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.complex.Complex;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;

/** Laws that hold whatever the numbers are. */
final class LawChecks {

    private static final double ENDLESS = Double.POSITIVE_INFINITY;

    /** A wave of the length that dominates in front of an M18 switch, 1/m. */
    private static final double K = 200;

    private LawChecks() {}

    static List<Check> all() {
        CheckList list = new CheckList("Laws");
        thinSheet(list);
        limits(list);
        surfaceLoss(list);
        return list.list();
    }

    private static void thinSheet(CheckList list) {
        list.from(
                        Provenance.LAW,
                        "thin sheet (Maxwell; Smythe): largest loss at thickness k delta², here aluminium of 37.7 MS/m,"
                                + " 300 kHz, k = 200/m")
                .value(
                        "thickness of most loss by exact layers, µm",
                        "4.479",
                        0.02,
                        "the sheet differs from the layer by the order of k t and (t/delta)², both near 1e-3",
                        LawChecks::thicknessOfMostLoss)
                .value("loss part there, thin sheet", "0.50", LawChecks::mostLoss)
                .value(
                        "dR of a loop over foil, doubled frequency",
                        "4.0000",
                        () -> foil(4e-3).getReal() / foil(2e-3).getReal());
    }

    private static double thicknessOfMostLoss() {
        double omega = 2 * Math.PI * 300e3;
        return 1e6
                * new BrentOptimizer(1e-8, 1e-12)
                        .optimize(
                                new MaxEval(200),
                                GoalType.MAXIMIZE,
                                new UnivariateObjectiveFunction(t -> -LayeredPlate.single(37.7e6, 1, t)
                                        .reflection(omega, K)
                                        .getImaginary()),
                                new SearchInterval(1e-6, 20e-6))
                        .getPoint();
    }

    private static double mostLoss() {
        double omega = 2 * Math.PI * 300e3;
        return -new ThinSheet(37.7e6 * thicknessOfMostLoss() * 1e-6)
                .reflection(omega, K)
                .getImaginary();
    }

    private static Complex foil(double omega) {
        return Loops.impedanceChange(0.01, 0.002, LayeredPlate.single(58e6, 1, 35e-6), omega);
    }

    private static void limits(CheckList list) {
        String skin = "the skin depths of 2 and 4 µm against the lift-off of 2 mm";
        list.from(Provenance.LAW, "mirror limit: at high frequency all good conductors give the same dL")
                .range("copper over perfect conductor, 1 GHz", 0.998, 1, skin, () -> mirror(58e6))
                .range("brass over perfect conductor, 1 GHz", 0.998, 1, skin, () -> mirror(15.5e6))
                .from(Provenance.LAW, "scale law: all lengths x 10 and frequency / 100 give dZ x 0.1")
                .value("dZ of the larger over the smaller", "0.10000", 1e-13, "rounding of doubles", LawChecks::scale)
                .from(Provenance.LAW, "steel attracts the field at low frequency and expels it at high frequency")
                .atLeast(0, "dL at 10 kHz, mu_r 150, µH", "the sign is what counts", () -> overSteel(10e3))
                .atMost(0, "dL at 10 MHz, mu_r 150, µH", "the sign is what counts", () -> overSteel(10e6))
                .from(
                        Provenance.TRADE,
                        "the sign changes near 70 to 150 kHz for a flat coil of the size of an M18 switch")
                .range(
                        "coil r 3.2/5.7 mm, 5 mm over steel, kHz",
                        70,
                        150,
                        "the place goes with the permeability and falls with the distance, from 260 kHz at 1 mm",
                        LawChecks::signChange);
    }

    private static double mirror(double sigma) {
        double omega = 2 * Math.PI * 1e9;
        Complex metal = over(LayeredPlate.single(sigma, 1, ENDLESS), omega);
        Complex ideal = over(Reflector.perfectConductor(), omega);
        return metal.getImaginary() / ideal.getImaginary();
    }

    private static Complex over(Reflector body, double omega) {
        return CoilOverPlate.impedanceChange(PlateChecks.SENSOR, 2e-3, body, omega);
    }

    private static double scale() {
        RectangularCoil large = new RectangularCoil(25e-3, 55e-3, 20e-3, 100);
        double omega = 2 * Math.PI * 200e3;
        Complex small = over(LayeredPlate.single(15e6, 3, 1e-3), omega);
        Complex big = CoilOverPlate.impedanceChange(large, 20e-3, LayeredPlate.single(15e6, 3, 10e-3), omega / 100);
        return big.divide(small).abs();
    }

    /** Change of the inductance of a coil like that of the shipped M18 flush switch, without core, uH. */
    private static double overSteel(double frequency) {
        RectangularCoil coil = new RectangularCoil(3.2e-3, 5.7e-3, 2.6e-3, 80);
        double omega = 2 * Math.PI * frequency;
        Complex change = CoilOverPlate.impedanceChange(coil, 5e-3, LayeredPlate.single(6e6, 150, ENDLESS), omega);
        return 1e6 * change.getImaginary() / omega;
    }

    /** Frequency in kHz. */
    private static double signChange() {
        return new BrentSolver(1e-3).solve(100, f -> overSteel(1e3 * f), 10, 10_000);
    }

    private static void surfaceLoss(CheckList list) {
        String reason = "the limit holds for k delta mu far below 1: for the steel 1 % is left";
        list.from(
                        Provenance.LAW,
                        "loss per area of thick metal goes with sqrt(pi f mu/sigma); 1 GHz, over copper 58 MS/m")
                .value("aluminium of 36 MS/m", "1.27", 0.02, reason, () -> lossOverCopper(36e6, 1))
                .value("aluminium of 28 MS/m", "1.44", 0.02, reason, () -> lossOverCopper(28e6, 1))
                .value("brass of 15 MS/m", "1.97", 0.02, reason, () -> lossOverCopper(15e6, 1))
                .value("steel of 5.8 MS/m, mu_r 100", "31.6", 0.5, reason, () -> lossOverCopper(5.8e6, 100));
    }

    private static double lossOverCopper(double sigma, double mu) {
        return loss(sigma, mu) / loss(58e6, 1);
    }

    private static double loss(double sigma, double mu) {
        return -LayeredPlate.single(sigma, mu, ENDLESS)
                .reflection(2 * Math.PI * 1e9, K)
                .getImaginary();
    }
}
