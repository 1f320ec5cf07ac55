package eddyreach.proof;

import eddyreach.oscillator.ActiveElement;
import eddyreach.oscillator.ClippedStage;
import eddyreach.oscillator.Envelope;
import eddyreach.oscillator.HardLimiter;
import eddyreach.oscillator.Tank;
import eddyreach.switching.StandardQuantities;
import java.util.List;

/** Describing functions, amplitude and envelope, and the distances of the standard. */
final class OscillatorChecks {

    private static final double G = 100e-6;
    private static final double MILLI = 1e3;

    private OscillatorChecks() {}

    static List<Check> all() {
        return new CheckList("Oscillator and switch")
                .from(
                        Provenance.PRINTED,
                        "A. Gelb and W. E. Vander Velde, Multiple-Input Describing Functions (1968): saturation")
                .value("describing function at D/A 0.5", "0.6090", () -> new ClippedStage(1, 0.5).conductance(1))
                .value("describing function at D/A 0.25", "0.3150", () -> new ClippedStage(1, 0.25).conductance(1))
                .from(Provenance.FORMULA, "relay 4M/(pi A), Gelb and Vander Velde (1968)")
                .value("tank of 100 µS, limiter of 0.5 mA, V", "6.366198", () -> new HardLimiter(0.5e-3).amplitude(G))
                .value("time constant 2C/G with 1 nF, µs", "20.0", () -> 1e6 * new Tank(1e-9).timeConstant(G))
                .from(Provenance.FORMULA, "cubic element: B. van der Pol, Phil. Mag. 43 (1922) 700")
                .value(
                        "200 µS and 10 µS/V² against 100 µS, V",
                        "3.651484",
                        () -> new Envelope(new Cubic(200e-6, 1e-5), new Tank(1e-9)).after(1, t -> G, 1e-3))
                .from(Provenance.MEMORY, "IEC 60947-5-2")
                .value(
                        "side of the target, sn 5, d 18 mm, mm",
                        "18",
                        () -> MILLI * standard(5, 18).targetSide())
                .value(
                        "side of the target, sn 8, d 18 mm, mm",
                        "24",
                        () -> MILLI * standard(8, 18).targetSide())
                .value(
                        "side of the target, sn 15, d 30 mm, mm",
                        "45",
                        () -> MILLI * standard(15, 30).targetSide())
                .value(
                        "assured distance, sn 8 mm, mm",
                        "6.48",
                        () -> MILLI * standard(8, 18).assured())
                .value(
                        "sure release, sn 8 mm, mm",
                        "11.44",
                        () -> MILLI * standard(8, 18).sureRelease())
                .list();
    }

    private static StandardQuantities standard(double rated, double face) {
        return new StandardQuantities(rated / MILLI, face / MILLI);
    }

    /**
     * Element i = g1 v - g3 v^3, which no switch uses: the envelope must settle with an element it has not been made for.
     *
     * @param g1 slope at the origin, S
     * @param g3 cubic term, S/V2
     */
    private record Cubic(double g1, double g3) implements ActiveElement {

        @Override
        public String name() {
            return "cubic";
        }

        @Override
        public List<Parameter> parameters() {
            return List.of(new Parameter("g1", g1, "S"), new Parameter("g3", g3, "S/V2"));
        }

        @Override
        public double conductance(double amplitude) {
            return g1 - 0.75 * g3 * amplitude * amplitude;
        }

        @Override
        public double smallSignalConductance() {
            return g1;
        }

        @Override
        public double amplitude(double tankConductance) {
            return tankConductance >= g1 ? 0 : Math.sqrt(4 * (g1 - tankConductance) / (3 * g3));
        }
    }
}
