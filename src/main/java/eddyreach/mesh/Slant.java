package eddyreach.mesh;

import eddyreach.geometry.Section;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * How the upright lines of a tensor mesh lean, so that one of them follows a cone. A line has a name, the radius that it would have on a
 * mesh without a lean, and a radius at each height.
 *
 * <p>A few lines are led: at given heights their radii are given, and straight in between. The others keep their place between two of
 * these. So every cell becomes a trapezoid with level ends, and the map of a cell from names to radii is bilinear. Inside the first and
 * outside the last of the led lines, nothing leans.
 */
public final class Slant {

    /** Nothing leans. */
    public static final Slant NONE = new Slant(new double[0], new double[0], new double[0][]);

    /** Least distance between two led lines, in radii of the cone: where a cone ends at the switch's body, a wedge of air ends there. */
    private static final double NARROWEST = 1e-3;

    /** How far inside the lower end of the cone a part must end to keep its lines upright at all heights, over the flare. */
    private static final double CLEAR = 0.1;

    /** Lengths below this many radii of the cone count as rounding. */
    private static final double SAME = 1e-9;

    private static final double ROUNDING = 1e-12;

    private final double[] z;
    private final double[] name;
    private final double[][] radius;

    private Slant(double[] z, double[] name, double[][] radius) {
        this.z = z;
        this.name = name;
        this.radius = radius;
    }

    /**
     * The lean that follows the cone among some sections, and stands upright where anything else ends within its height.
     *
     * @param sections sections of parts, of which at most one flares
     * @throws IllegalArgumentException if more than one flares
     */
    public static Slant along(List<Section> sections) {
        List<Section> cones = sections.stream().filter(s -> s.flare() > 0).toList();
        if (cones.isEmpty()) {
            return NONE;
        }
        if (cones.size() > 1) {
            throw new IllegalArgumentException(cones.size() + " cones: a mesh follows one");
        }
        Section cone = cones.get(0);
        double eps = SAME * cone.r0();
        List<Section> within = sections.stream()
                .filter(s -> s.flare() == 0 && s.z1() > cone.z0() + eps && s.z0() < cone.z1() - eps)
                .toList();
        TreeSet<Double> ends = new TreeSet<>();
        for (Section s : within) {
            ends.add(s.r0());
            ends.add(s.r1());
        }
        double[] led = ends.stream()
                .mapToDouble(Double::doubleValue)
                .filter(r -> r > cone.r0() + eps)
                .toArray();
        // what lies well inside the cone stands upright above and below as well
        sections.stream()
                .flatMap(s -> Stream.of(s.r0(), s.r1()))
                .filter(r -> r <= cone.r0() - CLEAR * cone.flare())
                .forEach(ends::add);
        double base = ends.headSet(cone.r0() + eps).isEmpty()
                ? 0
                : ends.headSet(cone.r0() + eps).last();
        TreeSet<Double> heights = new TreeSet<>(List.of(cone.z0(), cone.z1()));
        for (Section s : within) {
            if (s.r1() > cone.r0() + eps) {
                heights.add(Math.max(cone.z0(), s.z0()));
                heights.add(Math.min(cone.z1(), s.z1()));
            }
        }
        int m = led.length;
        double[] z = heights.stream().mapToDouble(Double::doubleValue).toArray();
        double[] name = new double[m + 3];
        double[][] radius = new double[z.length][];
        for (int i = 0; i < z.length; i++) {
            radius[i] = row(cone, base, led, within, z[i]);
        }
        name[0] = base;
        System.arraycopy(led, 0, name, 1, m);
        double narrow = Math.max(name[m], radius[0][m + 1]);
        name[m + 1] = (narrow + Math.max(narrow, radius[z.length - 1][m + 1])) / 2;
        name[m + 2] = cone.r1();
        return new Slant(z, name, radius);
    }

    /** Radii of the led lines at a height: as they are named up to the outermost one that must be, the others between that and the cone. */
    private static double[] row(Section cone, double base, double[] led, List<Section> within, double z) {
        int m = led.length;
        double eps = SAME * cone.r0();
        int held = 0;
        for (Section s : within) {
            if (s.z0() <= z + eps && s.z1() >= z - eps) {
                for (int i = held; i < m; i++) {
                    held = led[i] == s.r0() || led[i] == s.r1() ? i + 1 : held;
                }
            }
        }
        double[] row = new double[m + 3];
        row[0] = base;
        System.arraycopy(led, 0, row, 1, held);
        double inner = row[held];
        double outer = Math.max(cone.innerAt(z), inner + NARROWEST * cone.r0());
        for (int i = held; i < m; i++) {
            row[i + 1] = Math.min(led[i], inner + (outer - inner) * (i + 1 - held) / (m + 1 - held));
        }
        row[m + 1] = outer;
        row[m + 2] = cone.r1();
        return row;
    }

    /**
     * A point of the mesh.
     *
     * @param radius its radius, m
     * @param stretch change of the radius with the name of the line
     * @param lean change of the radius with the height along the line
     */
    public record Place(double radius, double stretch, double lean) {}

    /** Where a line is at a height, m. */
    public Place at(double line, double height) {
        int c = Arrays.binarySearch(name, line);
        int column = c < 0 ? -c - 2 : Math.min(c, name.length - 2);
        if (column < 0 || column >= name.length - 1) {
            return new Place(line, 1, 0);
        }
        int b = Arrays.binarySearch(z, height);
        int i = b < 0 ? -b - 2 : b;
        double s = (line - name[column]) / (name[column + 1] - name[column]);
        double[] low = radius[Math.max(0, Math.min(z.length - 1, i))];
        double[] high = radius[Math.max(0, Math.min(z.length - 1, i + 1))];
        boolean between = i >= 0 && i < z.length - 1;
        double t = between ? (height - z[i]) / (z[i + 1] - z[i]) : 0;
        double below = low[column] + s * (low[column + 1] - low[column]);
        double above = high[column] + s * (high[column + 1] - high[column]);
        double across = (1 - t) * (low[column + 1] - low[column]) + t * (high[column + 1] - high[column]);
        return new Place(
                below + t * (above - below),
                across / (name[column + 1] - name[column]),
                between ? (above - below) / (z[i + 1] - z[i]) : 0);
    }

    /** Name of the line through a point, m. */
    public double line(double r, double height) {
        for (int c = 0; c + 1 < name.length; c++) {
            double inner = at(name[c], height).radius();
            double outer =
                    c + 2 == name.length ? name[c + 1] : at(name[c + 1], height).radius();
            if (same(r, inner)) {
                return name[c];
            }
            if (r > inner && r < outer && !same(r, outer)) {
                return name[c] + (r - inner) / (outer - inner) * (name[c + 1] - name[c]);
            }
        }
        return r;
    }

    /** Least change of a line's name with the radius, 1 where nothing leans: by this, elements are made narrower. */
    double narrowest(double line) {
        double least = 1;
        for (int c = 0; c + 1 < name.length; c++) {
            if (line >= name[c] && line <= name[c + 1]) {
                for (double[] row : radius) {
                    least = Math.min(least, (name[c + 1] - name[c]) / (row[c + 1] - row[c]));
                }
            }
        }
        return least;
    }

    /** True when nothing leans anywhere. */
    public boolean none() {
        return name.length == 0;
    }

    /** True when between two lines and two heights all lines are where their names say. */
    public boolean none(double line0, double line1, double z0, double z1) {
        return same(at(line0, z0).radius(), line0)
                && same(at(line0, z1).radius(), line0)
                && same(at(line1, z0).radius(), line1)
                && same(at(line1, z1).radius(), line1);
    }

    /** True when no line leans between two heights, wherever they are. */
    public boolean upright(double line0, double line1, double z0, double z1) {
        return same(at(line0, z0).radius(), at(line0, z1).radius())
                && same(at(line1, z0).radius(), at(line1, z1).radius());
    }

    private static boolean same(double a, double b) {
        return Math.abs(a - b) <= ROUNDING * Math.abs(b);
    }
}
