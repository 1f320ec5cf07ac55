package eddyreach.field.orders;

import eddyreach.field.axial.FieldAccuracy;
import eddyreach.field.axial.Layout;
import eddyreach.geometry.Part;
import eddyreach.geometry.Section;
import eddyreach.linalg.FrontalPlan;
import eddyreach.mesh.Axis;
import eddyreach.mesh.TensorMesh;
import java.util.Arrays;
import java.util.concurrent.atomic.AtomicReferenceArray;

/**
 * What the azimuthal orders 1, 2, ... of a field problem share beside its {@link Layout}: their unknowns on the same mesh, their forms
 * and the order of elimination. The pattern depends on the order by the number of its loads alone.
 */
final class OrderLayout {

    final Layout base;
    final OrderForms forms;
    final int unknowns;

    /** Unknowns of each cell without loads: the potential, q_r, q_z. */
    private final int[][] elements;

    /** Local functions {@code axial * (pr + 1) + radial} of q_r, empty in cells that do not conduct; pr radial functions. */
    final int[][] localR;

    /** Local functions of q_z in the same form, with pr + 1 radial and pz axial functions. */
    final int[][] localZ;

    /**
     * True when the parts see the whole potential u + x and the incoming one is taken off only outside them: the unknown is then
     * x + theta u, theta being 1 on a box around all parts and falling to 0 beside it. Elements need then not resolve u inside a part
     * where u + x is nearly constant, whose error would count mu_r fold. In weak scatterers x itself is small and remains the unknown.
     */
    final boolean lifted;

    /** Cells that carry loads: the parts, or the cells beside the box around a lifted potential. */
    final boolean[] loaded;

    /** Elements along r within the box around a lifted potential. */
    final boolean[] boxR;

    /** Elements along z within it. */
    final boolean[] boxZ;

    private final OrderWaves axial;
    private final OrderUnknowns numbers;
    private final AtomicReferenceArray<Pattern> patterns;
    private final Taper taperR;
    private final boolean[] useR;

    /**
     * The problem with a number of loads.
     *
     * @param elements unknowns of each cell, its loads last
     * @param plan order of elimination
     */
    record Pattern(int[][] elements, FrontalPlan plan) {}

    /**
     * @param base the problem for order 0, with waves
     * @param omega largest angular frequency, rad/s
     * @param celsius temperature of the parts
     */
    OrderLayout(Layout base, double omega, double celsius) {
        this.base = base;
        TensorMesh mesh = base.mesh;
        if (!mesh.slant().none()) {
            throw new IllegalArgumentException("a cone: orders from 1 on need upright mesh lines");
        }
        Axis r = mesh.r();
        Axis z = mesh.z();
        forms = new OrderForms(r, z);
        lifted = base.parts.stream().anyMatch(p -> p.material().permeability().abs() > FieldAccuracy.STRONG_SCATTERER);
        taperR = lifted ? besideR() : Taper.NONE;
        Taper taperZ = lifted ? besideZ() : Taper.NONE;
        boolean[] conducting = new boolean[mesh.cells()];
        loaded = new boolean[mesh.cells()];
        useR = new boolean[r.elements()];
        boolean[] useZ = new boolean[z.elements()];
        boxR = new boolean[r.elements()];
        boxZ = new boolean[z.elements()];
        for (int er = 0; lifted && er < boxR.length; er++) {
            boxR[er] = taperR.full(r.middle(er));
        }
        for (int ez = 0; lifted && ez < boxZ.length; ez++) {
            boxZ[ez] = taperZ.full(z.middle(ez));
        }
        for (int c = 0; c < conducting.length; c++) {
            int er = c % r.elements();
            int ez = c / r.elements();
            conducting[c] = base.part[c] >= 0 && conducts(base.parts.get(base.part[c]), omega, celsius);
            boolean covered = lifted ? taperR.covers(r.middle(er)) && taperZ.covers(z.middle(ez)) : base.part[c] >= 0;
            loaded[c] = covered && !(boxR[er] && boxZ[ez]);
            useR[er] |= covered;
            useZ[ez] |= covered;
        }
        numbers = new OrderUnknowns(mesh, conducting);
        unknowns = numbers.unknowns();
        elements = new int[mesh.cells()][];
        localR = new int[mesh.cells()][];
        localZ = new int[mesh.cells()][];
        for (int c = 0; c < elements.length; c++) {
            number(c, conducting[c]);
        }
        axial = OrderWaves.axial(base.basis, base.direction, z, taperZ, useZ);
        patterns = new AtomicReferenceArray<>(base.waveCount() + 1);
    }

    /** The problem with so many loads. */
    Pattern pattern(int loads) {
        if (patterns.get(loads) == null) {
            int[][] all = new int[elements.length][];
            for (int c = 0; c < all.length; c++) {
                int n = elements[c].length;
                all[c] = loaded[c] ? Arrays.copyOf(elements[c], n + loads) : elements[c];
                for (int i = 0; loaded[c] && i < loads; i++) {
                    all[c][n + i] = unknowns + i;
                }
            }
            patterns.compareAndSet(
                    loads, null, new Pattern(all, new FrontalPlan(base.mesh.dissection(loads, numbers), all)));
        }
        return patterns.get(loads);
    }

    private static boolean conducts(Part part, double omega, double celsius) {
        Section s = part.section();
        double ratio = Math.hypot(s.r1(), s.z1() - s.z0()) / part.material().skinDepth(omega, celsius);
        return ratio * ratio
                > FieldAccuracy.CONDUCTOR
                        * part.material().permeability().subtract(1).abs();
    }

    private void number(int cell, boolean conducting) {
        Axis r = base.mesh.r();
        Axis z = base.mesh.z();
        int er = cell % r.elements();
        int ez = cell / r.elements();
        int pr = r.degree(er);
        int pz = z.degree(ez);
        int[] local = base.local(cell);
        int[] u = new int[local.length + 2 * (pr + 1) * (pz + 1)];
        int n = 0;
        for (int l : local) {
            u[n++] = base.mesh.unknown(r.function(er, l % (pr + 1)), z.function(ez, l / (pr + 1)));
        }
        int first = n;
        int[] list = new int[(pr + 1) * (pz + 1)];
        for (int b = 0; conducting && b <= pz; b++) {
            for (int a = 0; a < pr; a++) {
                int k = numbers.radial(r.vertex(er) + a, z.function(ez, b));
                if (k >= 0) {
                    list[n - first] = b * (pr + 1) + a;
                    u[n++] = k;
                }
            }
        }
        localR[cell] = Arrays.copyOf(list, n - first);
        first = n;
        for (int b = 0; conducting && b < pz; b++) {
            for (int a = 0; a <= pr; a++) {
                int k = numbers.axial(r.function(er, a), z.vertex(ez) + b);
                if (k >= 0) {
                    list[n - first] = b * (pr + 1) + a;
                    u[n++] = k;
                }
            }
        }
        localZ[cell] = Arrays.copyOf(list, n - first);
        elements[cell] = Arrays.copyOf(u, n);
    }

    /** The waves of one order as loads. */
    OrderLoads loads(int order) {
        return new OrderLoads(OrderWaves.radial(base.basis, order, base.mesh.r(), taperR, useR), axial);
    }

    private Taper besideR() {
        double r1 = base.parts.stream().mapToDouble(p -> p.section().r1()).max().orElseThrow();
        return new Taper(Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, r1, beside(base.mesh.r(), r1, 1));
    }

    private Taper besideZ() {
        double z0 = base.parts.stream().mapToDouble(p -> p.section().z0()).min().orElseThrow();
        double z1 = base.parts.stream().mapToDouble(p -> p.section().z1()).max().orElseThrow();
        Axis z = base.mesh.z();
        return new Taper(beside(z, z0, -1), z0, z1, beside(z, z1, 1));
    }

    /** The other end of the element beside x: over a wider taper, waves that grow away from the parts would count too much. */
    private double beside(Axis axis, double x, int side) {
        double best = side * Double.POSITIVE_INFINITY;
        for (int e = 0; e <= axis.elements(); e++) {
            double end = axis.end(e);
            if (side * (end - x) > FieldAccuracy.SAME_PLACE * base.scale && side * (end - best) < 0) {
                best = end;
            }
        }
        return best;
    }
}
