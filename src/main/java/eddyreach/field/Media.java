package eddyreach.field;

import eddyreach.geometry.Part;
import eddyreach.geometry.Section;
import eddyreach.materials.Material;
import eddyreach.mesh.TensorMesh;
import java.util.List;
import org.apache.commons.math3.complex.Complex;

/**
 * What fills each cell of a mesh: relative reluctivity 1/mu_r and w mu0 sigma.
 *
 * @param part index of the part in each cell, -1 for air
 * @param nuRe real part of 1/mu_r per cell
 * @param nuIm imaginary part of 1/mu_r per cell, positive for a lossy medium
 * @param loss w mu0 sigma per cell, 1/m2
 */
record Media(int[] part, double[] nuRe, double[] nuIm, double[] loss) {

    /**
     * @param mesh the mesh, whose cells do not cross part faces
     * @param parts the parts; a later one wins where two share a cell
     * @param omega angular frequency, rad/s
     * @param celsius temperature
     */
    static Media of(TensorMesh mesh, List<Part> parts, double omega, double celsius) {
        int cells = mesh.cells();
        int nr = mesh.r().elements();
        int[] part = new int[cells];
        double[] nuRe = new double[cells];
        double[] nuIm = new double[cells];
        double[] loss = new double[cells];
        for (int c = 0; c < cells; c++) {
            double r = mesh.r().middle(c % nr);
            double z = mesh.z().middle(c / nr);
            part[c] = -1;
            nuRe[c] = 1;
            for (int p = 0; p < parts.size(); p++) {
                Section s = parts.get(p).section();
                if (s.contains(r, z)) {
                    part[c] = p;
                }
            }
            if (part[c] >= 0) {
                Material m = parts.get(part[c]).material();
                Complex nu = m.permeability().reciprocal();
                nuRe[c] = nu.getReal();
                nuIm[c] = nu.getImaginary();
                loss[c] = omega * Material.MU0 * m.conductivity(celsius);
            }
        }
        return new Media(part, nuRe, nuIm, loss);
    }

    /** True when the cell differs from air. */
    boolean active(int cell) {
        return nuRe[cell] != 1 || nuIm[cell] != 0 || loss[cell] != 0;
    }

    /** Media between two frequencies on the same mesh: this one at t = 0, the other at t = 1. */
    Media mix(Media other, double t) {
        int n = part.length;
        double[] re = new double[n];
        double[] im = new double[n];
        double[] eddy = new double[n];
        for (int c = 0; c < n; c++) {
            re[c] = nuRe[c] + t * (other.nuRe[c] - nuRe[c]);
            im[c] = nuIm[c] + t * (other.nuIm[c] - nuIm[c]);
            eddy[c] = loss[c] + t * (other.loss[c] - loss[c]);
        }
        return new Media(part, re, im, eddy);
    }
}
