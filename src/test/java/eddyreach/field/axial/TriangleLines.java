package eddyreach.field.axial;

import eddyreach.geometry.Part;
import eddyreach.geometry.Section;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.DoubleStream;

/**
 * The lines of {@link ConformingTriangles}: at all ends of parts, finer beside them; within the cone's radii and heights in pairs that meet on
 * the cone.
 */
final class TriangleLines {

    private static final double MM = 1e-3;

    /** Distance of the outer boundary, m. */
    private static final double FAR = 150 * MM;

    /** Size at the end of a part, m, less where the skin is thinner. */
    private static final double END = 0.1 * MM;

    private static final double SKIN = 0.6;
    private static final double LARGEST = 1.2 * MM;
    private static final double OUTERMOST = 60 * MM;
    private static final double ALONG = 0.012;

    private final double[] r;
    private final double[] z;

    TriangleLines(List<Part> parts, CoilRegion coil, double fineness) {
        Section cone = parts.stream()
                .map(Part::section)
                .filter(s -> s.flare() > 0)
                .findFirst()
                .orElseThrow();
        TreeMap<Double, Double> radii = new TreeMap<>(Map.of(0.0, LARGEST));
        TreeMap<Double, Double> heights = new TreeMap<>();
        for (Part p : parts) {
            double skin = p.material().skinDepth(ReferenceSwitch.OMEGA, 20);
            mark(p.section(), fineness * Math.min(END, SKIN * skin), radii, heights);
        }
        mark(coil.section(), fineness * END, radii, heights);
        double front = cone.innerAt(cone.z1());
        double height = cone.z1() - cone.z0();
        TreeMap<Double, Double> along = new TreeMap<>();
        double skin = radii.get(cone.r0());
        along.put(0.0, skin / cone.flare());
        along.put(1.0, skin / cone.flare());
        radii.subMap(cone.r0(), false, front, false)
                .forEach((x, h) -> along.merge((x - cone.r0()) / cone.flare(), h / cone.flare(), Math::min));
        heights.subMap(cone.z0(), false, cone.z1(), false)
                .forEach((x, h) -> along.merge((x - cone.z0()) / height, h / height, Math::min));
        double growth = 1 + 0.5 * fineness;
        List<Double> t = new ArrayList<>();
        fill(along, growth, fineness * ALONG, t);
        List<Double> x = new ArrayList<>();
        List<Double> y = new ArrayList<>();
        fill(radii.headMap(cone.r0(), true), growth, fineness * LARGEST, x);
        fill(radii.tailMap(front, true), growth, fineness * LARGEST, x);
        x.addAll(outwards(radii.lastKey(), radii.lastEntry().getValue(), growth, 1));
        fill(heights.headMap(cone.z0(), true), growth, fineness * LARGEST, y);
        fill(heights.tailMap(cone.z1(), true), growth, fineness * LARGEST, y);
        y.addAll(outwards(heights.lastKey(), heights.lastEntry().getValue(), growth, 1));
        y.addAll(outwards(heights.firstKey(), heights.firstEntry().getValue(), growth, -1));
        for (double share : t) {
            x.add(cone.r0() + share * cone.flare());
            y.add(cone.z0() + share * height);
        }
        r = distinct(x);
        z = distinct(y);
    }

    double[] r() {
        return r;
    }

    double[] z() {
        return z;
    }

    private static void mark(Section s, double size, TreeMap<Double, Double> radii, TreeMap<Double, Double> heights) {
        for (double x : new double[] {s.r0(), s.innerAt(s.z1()), s.r1()}) {
            add(radii, x, size);
        }
        add(heights, s.z0(), size);
        add(heights, s.z1(), size);
    }

    private static void add(TreeMap<Double, Double> marks, double x, double size) {
        Map<Double, Double> near = marks.subMap(x - 1e-9, x + 1e-9);
        if (near.isEmpty()) {
            marks.put(x, size);
        } else {
            near.replaceAll((k, old) -> Math.min(old, size));
        }
    }

    private static void fill(Map<Double, Double> marks, double growth, double cap, List<Double> out) {
        Map.Entry<Double, Double> last = null;
        for (Map.Entry<Double, Double> mark : marks.entrySet()) {
            if (last != null) {
                fill(last.getKey(), mark.getKey(), last.getValue(), mark.getValue(), growth, cap, out);
            }
            out.add(mark.getKey());
            last = mark;
        }
    }

    private static void fill(
            double from, double to, double first, double last, double growth, double cap, List<Double> out) {
        double a = from;
        double b = to;
        double up = first;
        double down = last;
        while (b - a > 1.5 * Math.min(up, down)) {
            if (up <= down) {
                a += up;
                out.add(a);
                up = Math.min(cap, up * growth);
            } else {
                b -= down;
                out.add(b);
                down = Math.min(cap, down * growth);
            }
        }
    }

    private static List<Double> outwards(double from, double size, double growth, int side) {
        List<Double> steps = new ArrayList<>();
        fill(0, FAR, size, OUTERMOST, growth, OUTERMOST, steps);
        steps.add(FAR);
        return steps.stream().map(d -> from + side * d).toList();
    }

    private static double[] distinct(List<Double> all) {
        TreeSet<Double> kept = new TreeSet<>();
        Collections.sort(all);
        for (double x : all) {
            if (kept.isEmpty() || x - kept.last() > 1e-9) {
                kept.add(x);
            }
        }
        return kept.stream().flatMapToDouble(DoubleStream::of).toArray();
    }
}
