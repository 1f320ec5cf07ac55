package eddyreach.field.axial;

import eddyreach.fem.LineForms;
import eddyreach.geometry.Part;
import eddyreach.geometry.Role;
import eddyreach.geometry.Section;
import eddyreach.linalg.FrontalPlan;
import eddyreach.materials.Material;
import eddyreach.mesh.Axis;
import eddyreach.mesh.MeshMaker;
import eddyreach.mesh.MeshMaker.Fineness;
import eddyreach.mesh.Slant;
import eddyreach.mesh.TensorMesh;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Everything about a field problem that does not depend on the frequency: the mesh, which part fills which cell, the integrals of
 * shape functions and waves, and the order of elimination. One layout serves all frequencies up to the one it was made for.
 *
 * <p>Kept unknowns, numbered after those of the mesh: one per incoming wave, one for the coil, then one for the voltage round each slit
 * body, see {@link EddySystem}.
 */
public final class Layout {

    public final TensorMesh mesh;
    public final WaveBasis basis;
    public final int direction;
    public final double scale;
    public final List<Part> parts;
    public final int[] part;
    final boolean[] inCoil;

    /** Integrals on the cells that are no rectangles; null for the others, whose integrals are products. */
    final SlantedCell[] slanted;

    final WaveTables waves;
    public final FrontalPlan plan;

    /** Unknowns of each cell, kept ones included. */
    final int[][] elements;

    /** Integrals over the radial element of each cell, where they are factors of those over the cell. */
    final RadialElement[] radial;

    public final double[][] massR;
    public final double[][] massZ;
    public final double[][] stiffZ;
    final double[][] meanZ;

    /** For each part the number of the slit body it belongs to, -1 for none. */
    final int[] slitBody;

    /** Number of slit bodies. */
    final int slitBodies;

    private final boolean hasCoil;

    /**
     * @param parts the parts; the winding joins them as the last one when its loss is to be followed
     * @param coil the winding, null for none
     * @param basis incoming waves, null for none
     * @param direction +1 for waves exp(kz) falling on a switch, -1 for waves exp(-kz) falling on a target
     * @param fine how fine the mesh is
     * @param scale radius of the core, m
     * @param omega largest angular frequency, rad/s
     * @param celsius temperature of the parts
     */
    public Layout(
            List<Part> parts,
            CoilRegion coil,
            WaveBasis basis,
            int direction,
            Fineness fine,
            double scale,
            double omega,
            double celsius) {
        this.parts = withWinding(parts, coil);
        this.basis = basis;
        this.direction = direction;
        this.scale = scale;
        hasCoil = coil != null;
        slitBody = slitBodies(this.parts);
        slitBodies = Arrays.stream(slitBody).max().orElse(-1) + 1;
        mesh = mesh(parts, coil, fine, scale, omega, celsius);
        Axis r = mesh.r();
        Axis z = mesh.z();
        part = new int[mesh.cells()];
        inCoil = new boolean[mesh.cells()];
        boolean[] useR = new boolean[r.elements()];
        boolean[] useZ = new boolean[z.elements()];
        for (int c = 0; c < part.length; c++) {
            double y = z.middle(c / r.elements());
            double x = mesh.slant().at(r.middle(c % r.elements()), y).radius();
            part[c] = owner(x, y);
            inCoil[c] = hasCoil && coil.section().contains(x, y);
            useR[c % r.elements()] |= part[c] >= 0;
            useZ[c / r.elements()] |= part[c] >= 0;
        }
        waves = basis == null ? null : new WaveTables(basis, direction, r, z, useR, useZ);
        massR = LineForms.radialMass(r);
        massZ = LineForms.mass(z);
        stiffZ = LineForms.stiffness(z);
        meanZ = LineForms.mean(z);
        radial = radial();
        slanted = new SlantedCell[mesh.cells()];
        IntStream.range(0, mesh.cells())
                .parallel()
                .filter(c -> !mesh.upright(c))
                .forEach(c -> slanted[c] = new SlantedCell(mesh, c, local(c), part[c] >= 0 ? basis : null, direction));
        elements = new int[mesh.cells()][];
        for (int c = 0; c < elements.length; c++) {
            elements[c] = unknowns(c);
        }
        plan = new FrontalPlan(mesh.dissection(waveCount() + (hasCoil ? 1 : 0) + slitBodies), elements);
    }

    /** Elements of the radial axis; above and below a cone they lie elsewhere. */
    private RadialElement[] radial() {
        Axis r = mesh.r();
        RadialElement[] all = RadialElement.all(r, waves);
        RadialElement[] of = new RadialElement[mesh.cells()];
        Map<List<Number>, RadialElement> moved = new HashMap<>();
        for (int c = 0; c < of.length; c++) {
            int e = c % r.elements();
            if (mesh.inPlace(c)) {
                of[c] = all[e];
            } else if (mesh.upright(c)) {
                double inner = mesh.radius(c, 0);
                double outer = mesh.radius(c, 1);
                of[c] = moved.computeIfAbsent(
                        List.of(e, inner, outer),
                        k -> RadialElement.between(inner, outer, r.degree(e), basis, direction));
            }
        }
        return of;
    }

    private static List<Part> withWinding(List<Part> parts, CoilRegion coil) {
        List<Part> all = new ArrayList<>();
        parts.stream().filter(p -> p.material().hasEffect()).forEach(all::add);
        if (coil != null && coil.muLoss() > 0) {
            // the loss itself depends on the frequency and is put in by Media
            all.add(new Part("winding", Role.WINDING, coil.section(), Material.AIR));
        }
        return List.copyOf(all);
    }

    /** Slit conductors that touch share one voltage round the axis. */
    private static int[] slitBodies(List<Part> parts) {
        int[] body = new int[parts.size()];
        Arrays.fill(body, -1);
        int count = 0;
        for (int p = 0; p < body.length; p++) {
            if (body[p] < 0 && isSlit(parts.get(p))) {
                spread(parts, p, count++, body);
            }
        }
        return body;
    }

    private static void spread(List<Part> parts, int from, int number, int[] body) {
        body[from] = number;
        for (int p = 0; p < body.length; p++) {
            if (body[p] < 0
                    && isSlit(parts.get(p))
                    && parts.get(p).section().touches(parts.get(from).section())) {
                spread(parts, p, number, body);
            }
        }
    }

    private static boolean isSlit(Part p) {
        return p.slit() && p.material().conductivity20() > 0;
    }

    private static TensorMesh mesh(
            List<Part> parts, CoilRegion coil, Fineness fine, double scale, double omega, double celsius) {
        Stream<Section> metal =
                parts.stream().filter(p -> p.material().hasEffect()).map(Part::section);
        Stream<Section> window = Stream.ofNullable(coil).map(CoilRegion::section);
        MeshMaker maker = new MeshMaker(
                fine, scale, Slant.along(Stream.concat(metal, window).toList()));
        parts.stream()
                .filter(p -> p.role() == Role.MOUNT)
                .map(Part::section)
                .mapToDouble(s -> s.innerAt(s.z1()))
                .max()
                .ifPresent(inner -> maker.relaxBeyond(
                        Math.max(inner, scale) + scale / 2,
                        (coil == null ? 0 : coil.section().z0()) - FieldAccuracy.FAR_BEHIND * scale));
        for (Part p : parts) {
            if (p.material().hasEffect()) {
                maker.add(p.section(), p.material().skinDepth(omega, celsius));
            }
        }
        if (coil != null) {
            maker.addSmooth(coil.section());
        }
        return maker.build();
    }

    private int owner(double x, double y) {
        for (int p = parts.size() - 1; p >= 0; p--) {
            Section s = parts.get(p).section();
            if (s.contains(x, y)) {
                return p;
            }
        }
        return -1;
    }

    /** Number of incoming waves. */
    public int waveCount() {
        return basis == null ? 0 : basis.size();
    }

    /** Number of the first slit body among the kept unknowns. */
    int firstSlit() {
        return waveCount() + (hasCoil ? 1 : 0);
    }

    /** The slit body in a cell, -1 for none. */
    int slitBody(int cell) {
        return part[cell] < 0 ? -1 : slitBody[part[cell]];
    }

    /** True when the waves are scattered in a cell. */
    boolean scatters(int cell) {
        return waves != null && part[cell] >= 0;
    }

    /** Local functions of a cell that are unknowns, as {@code axial * (pr + 1) + radial}. */
    public int[] local(int cell) {
        int er = cell % mesh.r().elements();
        int ez = cell / mesh.r().elements();
        int nr = mesh.r().degree(er) + 1;
        int nz = mesh.z().degree(ez) + 1;
        int[] local = new int[nr * nz];
        int n = 0;
        for (int b = 0; b < nz; b++) {
            for (int a = 0; a < nr; a++) {
                if (mesh.unknown(mesh.r().function(er, a), mesh.z().function(ez, b)) >= 0) {
                    local[n++] = b * nr + a;
                }
            }
        }
        return n == local.length ? local : Arrays.copyOf(local, n);
    }

    private int[] unknowns(int cell) {
        int er = cell % mesh.r().elements();
        int ez = cell / mesh.r().elements();
        int nr = mesh.r().degree(er) + 1;
        int[] local = local(cell);
        boolean slit = slitBody(cell) >= 0;
        int[] u = new int[local.length + (scatters(cell) ? waveCount() : 0) + (inCoil[cell] ? 1 : 0) + (slit ? 1 : 0)];
        int n = 0;
        for (int l : local) {
            u[n++] = mesh.unknown(mesh.r().function(er, l % nr), mesh.z().function(ez, l / nr));
        }
        if (scatters(cell)) {
            for (int i = 0; i < waveCount(); i++) {
                u[n++] = mesh.unknowns() + i;
            }
        }
        if (inCoil[cell]) {
            u[n++] = mesh.unknowns() + waveCount();
        }
        if (slit) {
            u[n] = mesh.unknowns() + firstSlit() + slitBody(cell);
        }
        return u;
    }
}
