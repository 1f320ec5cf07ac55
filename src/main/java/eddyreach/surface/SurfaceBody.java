package eddyreach.surface;

import eddyreach.field.axial.WaveBasis;
import eddyreach.linalg.DenseSymmetric;
import eddyreach.linalg.MemoryException;
import eddyreach.materials.Material;
import eddyreach.numerics.SelfCheckException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.apache.commons.math3.complex.Complex;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.CholeskyDecomposition_F64;

/**
 * Parts of any outline, ready for any metal and frequency: everything that hangs on the shape alone is computed here.
 *
 * <p>Outside the metal H = -grad psi. Scattered fields obey -dpsi/dn = P psi on the surface, with the symmetric positive definite
 *
 * <pre>P = W + (M/2 - D)^T S^-1 (M/2 - D)</pre>
 *
 * (Costabel, Boundary Elements IX, 1987), and the metal demands dpsi/dn = -div(lambda grad psi), in weak form K psi. With the
 * charge {@code sigma = S^-1 b} that would cancel the arriving potential on the surface (b its integrals with the charges' shape functions) and f = M^T sigma,
 *
 * <pre>
 *   (P + K) psi = f        Q_ij = oint (psi_i dpsi_j/dn - psi_j dpsi_i/dn) = sigma_i^T S sigma_j - f_i^T (P + K)^-1 f_j
 *   T = Q / (4 pi),        dZ = j w mu0 Q of the coil's own potential
 * </pre>
 *
 * No net current runs round a part, so that parts with holes are refused. Both terms are stationary, so that Q errs by the squares of the errors of sigma and psi. Symmetry (reciprocity) is exact; passivity
 * holds but for 1e-3 of the largest loss, in waves shorter than the skin depth at rims.
 */
public final class SurfaceBody {

    /** Waves on the surface smaller than this share of the largest are left out: 1e-5 of dZ. */
    private static final double SPAN = 3e-4;

    /** Thinnest body on the mesh, in sizes of the panels at edges. */
    private static final double THIN = 0.5;

    /** Parts nearer to each other than this share of their extent count as touching. */
    private static final double APART = 1e-6;

    private final List<Prism> bodies;
    private final Fineness fineness;
    private final WaveBasis basis;
    private final int orders;
    private final double nearest;
    private final SurfaceMesh mesh;
    private final Assembly assembly;
    private final List<Part> parts = new ArrayList<>();

    /** The fields of one symmetry class, or several classes that share their loads. */
    private record Part(double[][] span, List<System> systems) {}

    /** One class: its free nodes, P, f and sigma^T S sigma. */
    private record System(int parity, int[] free, DMatrixRMaj outer, double[][] load, DMatrixRMaj charge) {}

    /**
     * @param bodies the parts, none below z = 0, in the frame of their common vertical axis x = y = 0
     * @param fineness size of the panels
     * @param basis waves in the gap
     * @param orders highest azimuthal order about that axis
     * @param nearest smallest distance from which waves come, m: of those that die out over it less is kept
     * @throws SelfCheckException if a computation fails its own checks
     * @throws MemoryException if a field problem may not fit into the heap
     */
    public SurfaceBody(List<Prism> bodies, Fineness fineness, WaveBasis basis, int orders, double nearest) {
        this.bodies = List.copyOf(bodies);
        this.fineness = fineness;
        this.nearest = nearest;
        this.basis = basis;
        this.orders = orders;
        for (Prism b : bodies) {
            if (!b.section().holes().isEmpty()) {
                throw new IllegalArgumentException(
                        "a hole lets a net current run round it, which one potential outside the metal cannot carry: give the part without its holes");
            }
            if (b.lowest() < -1e-9) {
                throw new IllegalArgumentException(
                        "a part reaches " + -1e3 * b.lowest() + " mm below its nearest plane z = 0");
            }
        }
        mesh = new SurfaceMesh(bodies.stream().map(this::onMesh).toList(), fineness);
        refuseOverlap();
        assembly = new Assembly(mesh);
        solve();
    }

    /** Parts must lie apart: the air just outside each of their panels belongs to none. */
    private void refuseOverlap() {
        for (int a = 0; a < mesh.panels.size() && bodies.size() > 1; a++) {
            Panel p = mesh.panels.get(a);
            double[] out = new double[3];
            for (int c = 0; c < 3; c++) {
                out[c] = p.centre[c] + APART * mesh.size * p.normal[c];
            }
            for (int b = 0; b < bodies.size(); b++) {
                if (b != mesh.body.get(a) && onMesh(bodies.get(b)).contains(out)) {
                    throw new IllegalArgumentException(String.format(
                            Locale.ROOT,
                            "parts %d and %d overlap or touch at (%.4g, %.4g, %.4g) mm",
                            Math.min(b, mesh.body.get(a)) + 1,
                            Math.max(b, mesh.body.get(a)) + 1,
                            1e3 * out[0],
                            1e3 * out[1],
                            1e3 * out[2]));
                }
            }
        }
    }

    private void solve() {
        double[][][] loads = new WaveLoads(mesh, basis, orders, nearest).integrals();
        int[] classes = assembly.classes();
        for (int across : Assembly.subsets((mesh.mirror[0] ? 1 : 0) | (mesh.mirror[1] ? 2 : 0))) {
            double[][] span = span(loads, across);
            if (span.length == 0) {
                continue;
            }
            List<System> systems = new ArrayList<>();
            for (int c = 0; c < classes.length; c++) {
                if ((classes[c] & 3) == across) {
                    systems.add(system(c, classes[c], span, loads[classes[c] >> 2]));
                }
            }
            parts.add(new Part(span, systems));
        }
    }

    private double[][] span(double[][][] loads, int across) {
        int k = basis.size();
        int n = 3 * mesh.panels.size();
        int seen = (mesh.mirror[0] ? 1 : 0) | (mesh.mirror[1] ? 2 : 0);
        int[] families = IntStream.range(0, WaveLoads.families(orders))
                .filter(f -> (WaveLoads.parity(f) & seen) == across)
                .toArray();
        double[][] samples = new double[loads.length * n][families.length * k];
        for (int h = 0; h < loads.length; h++) {
            for (int a = 0; a < n; a++) {
                for (int f = 0; f < families.length; f++) {
                    for (int i = 0; i < k; i++) {
                        samples[h * n + a][f * k + i] = loads[h][a][families[f] * k + i] / mesh.panels.get(a / 3).area;
                    }
                }
            }
        }
        double[][] span = WaveSpan.of(samples, SPAN);
        double[][] out = new double[span.length][WaveLoads.families(orders) * k];
        for (int p = 0; p < span.length; p++) {
            for (int f = 0; f < families.length; f++) {
                java.lang.System.arraycopy(span[p], f * k, out[p], families[f] * k, k);
            }
        }
        return out;
    }

    private System system(int c, int parity, double[][] span, double[][] loads) {
        DMatrixRMaj s = assembly.single(c).copy();
        CholeskyDecomposition_F64<DMatrixRMaj> chol = DecompositionFactory_DDRM.chol(s.numRows, true);
        if (!chol.decompose(s)) {
            throw new SelfCheckException(
                    "the panels' charges do not repel each other: the panels are too unlike in size");
        }
        DMatrixRMaj factor = chol.getT(null);
        int[] free = assembly.free(c);
        DMatrixRMaj outside = assembly.outside(c, free);
        DMatrixRMaj mass = assembly.mass(free);
        DMatrixRMaj b = new DMatrixRMaj(s.numRows, span.length);
        CommonOps_DDRM.multTransB(new DMatrixRMaj(loads), new DMatrixRMaj(span), b);
        forward(factor, outside);
        forward(factor, mass);
        forward(factor, b);
        DMatrixRMaj outer = assembly.curl(c, free);
        CommonOps_DDRM.multAddTransA(outside, outside, outer);
        DMatrixRMaj load = new DMatrixRMaj(free.length, span.length);
        CommonOps_DDRM.multTransA(mass, b, load);
        DMatrixRMaj charge = new DMatrixRMaj(span.length, span.length);
        CommonOps_DDRM.multInner(b, charge);
        return new System(parity, free, outer, rows(load), charge);
    }

    /** Multiplies by the inverse of a lower triangle. */
    private static void forward(DMatrixRMaj lower, DMatrixRMaj b) {
        int n = lower.numRows;
        int m = b.numCols;
        double[] l = lower.data;
        double[] x = b.data;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < i; j++) {
                double f = l[i * n + j];
                for (int c = 0; c < m; c++) {
                    x[i * m + c] = Math.fma(-f, x[j * m + c], x[i * m + c]);
                }
            }
            double d = 1 / l[i * n + i];
            for (int c = 0; c < m; c++) {
                x[i * m + c] *= d;
            }
        }
    }

    private static double[][] rows(DMatrixRMaj m) {
        double[][] out = new double[m.numRows][m.numCols];
        for (int i = 0; i < m.numRows; i++) {
            java.lang.System.arraycopy(m.data, i * m.numCols, out[i], 0, m.numCols);
        }
        return out;
    }

    /** Number of panels, images included. */
    public int panels() {
        return mesh.all;
    }

    /**
     * The reflection by the parts, all of one metal.
     *
     * @param omega angular frequency, rad/s
     * @param metal the metal
     * @param celsius its temperature
     * @throws SelfCheckException if a computation fails its own checks
     */
    public CoupledReflection at(double omega, Material metal, double celsius) {
        SurfaceCondition.Metal condition = new SurfaceCondition.Metal(metal, celsius, omega);
        List<CoupledReflection.Block> blocks = new ArrayList<>();
        for (Part p : parts) {
            int r = p.span().length;
            double[][] re = new double[r][r];
            double[][] im = new double[r][r];
            for (System s : p.systems()) {
                add(s, condition, re, im);
            }
            blocks.add(new CoupledReflection.Block(p.span(), re, im));
        }
        return new CoupledReflection(basis, orders, nearest, blocks);
    }

    /** Adds the reflection of one class. Unknowns are the potential behind the straight field, psi less its part of b, then psi itself. */
    private void add(System s, SurfaceCondition.Metal metal, double[][] re, double[][] im) {
        int n = s.free().length;
        int r = re.length;
        double[][] ar = new double[2 * n][2 * n];
        double[][] ai = new double[2 * n][2 * n];
        double[][] load = new double[2 * n][r];
        for (int i = 0; i < n; i++) {
            java.lang.System.arraycopy(s.outer().data, i * n, ar[n + i], n, n);
            load[n + i] = s.load()[i];
        }
        int[] place = assembly.places(s.free());
        for (int a = 0; a < mesh.panels.size(); a++) {
            SurfaceCondition c = condition(a, s.parity(), metal);
            Complex across = Complex.ONE.divide(c.y0());
            Complex straight = Complex.ONE.divide(c.y1());
            Complex sideways = straight.multiply(c.y2());
            Panel p = mesh.panels.get(a);
            int[] corner = mesh.corners.get(a);
            for (int i = 0; i < 6; i++) {
                for (int j = 0; j < 6; j++) {
                    int row = place[corner[i]];
                    int column = place[corner[j]];
                    if (row >= 0 && column >= 0) {
                        double k = p.stiffness(i, j);
                        double m = p.mean(i, j);
                        double mr = straight.getReal() * m + sideways.getReal() * k;
                        double mi = straight.getImaginary() * m + sideways.getImaginary() * k;
                        ar[row][column] += across.getReal() * k + mr;
                        ai[row][column] += across.getImaginary() * k + mi;
                        ar[n + row][column] -= mr;
                        ai[n + row][column] -= mi;
                        ar[n + row][n + column] += mr;
                        ai[n + row][n + column] += mi;
                    }
                }
            }
        }
        double[][][] product = DenseSymmetric.inverseProduct(ar, ai, load);
        double scale = assembly.classes().length / (4 * Math.PI);
        for (int i = 0; i < r; i++) {
            for (int j = 0; j < r; j++) {
                re[i][j] += scale * (s.charge().get(i, j) - product[0][i][j]);
                im[i][j] -= scale * product[1][i][j];
            }
        }
    }

    /** Thickness of a body on the mesh: very thin sheets are given air on both sides, since integrals between faces that close need many points. */
    private double whole(Prism body) {
        return body.lying() ? body.length() : Math.max(body.length(), THIN * fineness.edge());
    }

    private Prism onMesh(Prism b) {
        double air = (whole(b) - b.length()) / 2;
        return new Prism(b.section(), whole(b), b.lying(), b.turn(), b.x(), b.y(), b.z() - air);
    }

    private SurfaceCondition condition(int panel, int parity, SurfaceCondition.Metal metal) {
        Prism body = bodies.get(mesh.body.get(panel));
        if (body.lying() || !mesh.mirror[2]) {
            return metal.thick();
        }
        boolean alike = (parity & 4) == 0;
        return mesh.face.get(panel)
                ? metal.face(body.length(), whole(body), alike)
                : metal.rim(body.length(), whole(body), alike);
    }
}
