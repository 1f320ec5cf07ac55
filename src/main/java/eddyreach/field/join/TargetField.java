package eddyreach.field.join;

import eddyreach.linalg.MemoryException;
import eddyreach.numerics.SelfCheckException;

/** The target's side of the gap, about its own axis. */
public non-sealed interface TargetField extends PlacedTarget {

    /**
     * The reflection at an angular frequency, rad/s, for fields without azimuthal variation: order 0 of {@link #at(int, double)}.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     */
    Reflection at(double omega);

    /** The same, where it can in the arrays of a reflection of this target that has served. */
    default Reflection at(double omega, Reflection served) {
        return at(omega);
    }

    /**
     * The reflection of waves of an azimuthal order, for targets beside the axis.
     *
     * <p>Order 0 is stated for the vector potential, as {@link #at(double)}: a wave A_phi = J1(kr) exp(-kz) returns as the sum of
     * T J1(k'r) exp(k'z). Order m of 1 or more is stated for the scalar potential, H = -grad psi: a wave
     * psi = exp(jm phi) J_m(kr) exp(-kz) returns as the sum of T exp(jm phi) J_m(k'r) exp(k'z). The two differ in sign, since
     * psi = A/mu0 for a wave in exp(-kz) and psi = -A/mu0 for one in exp(kz): an endless plate has Gamma in order 0 and -Gamma in
     * every other.
     *
     * @param order azimuthal order m, 0 or more; exp(-jm phi) reflects like exp(jm phi)
     * @param omega angular frequency, rad/s
     * @throws UnsupportedOperationException if the target is only known on the axis
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     */
    default Reflection at(int order, double omega) {
        Reflection axial = at(omega);
        if (order == 0) {
            return axial;
        }
        if (axial instanceof Reflection.Diagonal plate) {
            double[] re = new double[plate.re().length];
            double[] im = new double[re.length];
            for (int i = 0; i < re.length; i++) {
                re[i] = -plate.re()[i];
                im[i] = -plate.im()[i];
            }
            return new Reflection.Diagonal(re, im);
        }
        throw new UnsupportedOperationException("this target's reflection is only known on the axis");
    }
}
