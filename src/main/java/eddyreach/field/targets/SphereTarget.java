package eddyreach.field.targets;

import eddyreach.closedform.SphereField;
import eddyreach.closedform.SphereMultipoles;
import eddyreach.field.axial.Field;
import eddyreach.field.axial.MeshField;
import eddyreach.field.axial.PartLoss;
import eddyreach.field.axial.Solved;
import eddyreach.field.axial.WaveBasis;
import eddyreach.field.join.GapState;
import eddyreach.field.join.Reflection;
import eddyreach.field.join.TargetField;
import eddyreach.geometry.Role;
import eddyreach.materials.Material;
import java.util.List;

/** A ball on the axis: exact, without any mesh. */
public final class SphereTarget implements TargetField {

    private final String name;
    private final SphereMultipoles sphere;
    private final WaveBasis basis;

    /**
     * @param name name of the target
     * @param radius its radius, m
     * @param material what it is made of
     * @param basis waves in the gap
     * @param celsius temperature of the target
     */
    public SphereTarget(String name, double radius, Material material, WaveBasis basis, double celsius) {
        this.name = name;
        this.basis = basis;
        double sigma = material.conductivity(celsius);
        sphere = new SphereMultipoles(radius, sigma, material.permeability());
    }

    @Override
    public Reflection at(double omega) {
        return at(0, omega);
    }

    /**
     * The reflection of waves of an azimuthal order: of A_phi for order 0, of the scalar potential (H = -grad psi) for the others.
     *
     * @param order azimuthal order, not negative
     * @param omega angular frequency, rad/s
     */
    public Reflection at(int order, double omega) {
        int n = basis.size();
        double[] re = new double[n * n];
        double[] im = new double[n * n];
        double[] root = new double[n];
        for (int i = 0; i < n; i++) {
            root[i] = Math.sqrt(basis.w()[i]);
        }
        sphere.reflection(order, omega, basis.k(), root, re, im);
        if (order == 0) {
            for (int i = 0; i < re.length; i++) {
                re[i] = -re[i];
                im[i] = -im[i];
            }
        }
        return new Reflection.Full(re, im);
    }

    /**
     * Field and loss, in coordinates whose origin is the nearest point. The loss of waves c is
     * {@code -(4 pi w / mu0) c* Im(T) c}.
     *
     * @param omega angular frequency, rad/s
     * @param state the waves in the gap
     */
    public Solved solve(double omega, GapState state) {
        double[] im = ((Reflection.Full) at(omega)).im();
        int n = basis.size();
        double sum = 0;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                double product =
                        state.arrivingRe()[i] * state.arrivingRe()[j] + state.arrivingIm()[i] * state.arrivingIm()[j];
                sum += im[i * n + j] * product / Math.sqrt(basis.w()[i] * basis.w()[j]);
            }
        }
        double resistance = -4 * Math.PI * omega / Material.MU0 * sum;
        Field field =
                new BallField(sphere.field(omega, basis.k(), state.arrivingRe(), state.arrivingIm()), basis, state);
        return new Solved(field, List.of(new PartLoss(name, Role.TARGET, resistance)));
    }

    /** The arriving waves and what the ball makes of them. */
    private record BallField(SphereField ball, WaveBasis basis, GapState state) implements Field {

        @Override
        public MeshField.Samples sample(double[] r, double[] z) {
            MeshField.Samples s = new MeshField.Samples(r.length * z.length);
            MeshField.addWaves(basis, -1, state.arrivingRe(), state.arrivingIm(), r, z, s);
            int at = 0;
            for (double height : z) {
                for (int i = 0; i < r.length; i++, at++) {
                    SphereField.Point p = ball.at(r[i], height);
                    double waves = ball.contains(r[i], height) ? 0 : 1;
                    s.aRe()[at] = waves * s.aRe()[at] + p.a().getReal();
                    s.aIm()[at] = waves * s.aIm()[at] + p.a().getImaginary();
                    s.brRe()[at] = waves * s.brRe()[at] + p.br().getReal();
                    s.brIm()[at] = waves * s.brIm()[at] + p.br().getImaginary();
                    s.bzRe()[at] = waves * s.bzRe()[at] + p.bz().getReal();
                    s.bzIm()[at] = waves * s.bzIm()[at] + p.bz().getImaginary();
                }
            }
            return s;
        }
    }
}
