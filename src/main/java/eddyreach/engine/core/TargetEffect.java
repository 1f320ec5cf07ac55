package eddyreach.engine.core;

import eddyreach.linalg.MemoryException;
import eddyreach.numerics.SelfCheckException;
import org.apache.commons.math3.complex.Complex;

/** What a target does to the coil, ohm, at an angular frequency, rad/s, and a distance, m. */
@FunctionalInterface
public interface TargetEffect {

    /**
     * Change of the coil's impedance, ohm.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     */
    Complex change(double omega, double distance);

    /**
     * What the azimuthal orders left out may add to the change, ohm, at a distance, m; 0 on the axis.
     *
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     */
    default double truncation(double distance) {
        return 0;
    }
}
