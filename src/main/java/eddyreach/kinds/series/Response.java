package eddyreach.kinds.series;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * A vector as a quadratic function of several coordinates: each alone exact at two points beside the centre, and those that matter most also in pairs.
 *
 * <pre>  y(u) = y0 + sum_i (b_i u_i + c_i u_i^2) + sum_ik e_ik u_i u_k</pre>
 */
final class Response {

    private final double[] centre;
    private final List<Alone> alone = new ArrayList<>();
    private final List<Pair> pairs = new ArrayList<>();

    /**
     * A coordinate.
     *
     * @param index its place in the arrays
     * @param first a point beside the centre at which it is computed
     * @param second another one, which is also that of the pairs
     */
    record Axis(int index, double first, double second) {}

    private record Alone(int index, double[] slope, double[] bend) {}

    private record Pair(int first, int second, double[] slope) {}

    private Response(double[] centre) {
        this.centre = centre;
    }

    /**
     * Fits one.
     *
     * @param size number of coordinates
     * @param axes those that count
     * @param solve the vector at given coordinates; called from several threads
     * @param weight how much a change of the vector matters
     * @param crossed number of coordinates whose pairs are computed
     */
    static Response fit(
            int size,
            List<Axis> axes,
            Function<double[], double[]> solve,
            ToDoubleFunction<double[]> weight,
            int crossed) {
        List<double[]> points = new ArrayList<>(List.of(new double[size]));
        for (Axis a : axes) {
            points.add(at(size, a.index, a.first));
            points.add(at(size, a.index, a.second));
        }
        double[][] y = solved(points, solve);
        Response r = new Response(y[0]);
        for (int i = 0; i < axes.size(); i++) {
            r.alone.add(alone(axes.get(i), y[0], y[1 + 2 * i], y[2 + 2 * i]));
        }
        List<Axis> most = IntStream.range(0, axes.size())
                .boxed()
                .sorted(Comparator.comparing((Integer i) -> -weight.applyAsDouble(minus(y[2 + 2 * i], y[0]))))
                .limit(crossed)
                .map(axes::get)
                .toList();
        r.cross(size, most, solve);
        return r;
    }

    private void cross(int size, List<Axis> most, Function<double[], double[]> solve) {
        List<double[]> points = new ArrayList<>();
        List<Axis[]> axes = new ArrayList<>();
        for (int i = 0; i < most.size(); i++) {
            for (int k = i + 1; k < most.size(); k++) {
                double[] u = at(size, most.get(i).index, most.get(i).second);
                u[most.get(k).index] = most.get(k).second;
                points.add(u);
                axes.add(new Axis[] {most.get(i), most.get(k)});
            }
        }
        double[][] y = solved(points, solve);
        for (int p = 0; p < y.length; p++) {
            double[] without = new double[centre.length];
            value(points.get(p), without);
            double product = axes.get(p)[0].second * axes.get(p)[1].second;
            double[] slope = minus(y[p], without);
            for (int j = 0; j < slope.length; j++) {
                slope[j] /= product;
            }
            pairs.add(new Pair(axes.get(p)[0].index, axes.get(p)[1].index, slope));
        }
    }

    private static double[][] solved(List<double[]> points, Function<double[], double[]> solve) {
        double[][] y = new double[points.size()][];
        IntStream.range(0, y.length).parallel().forEach(i -> y[i] = solve.apply(points.get(i)));
        return y;
    }

    private static double[] at(int size, int index, double value) {
        double[] u = new double[size];
        u[index] = value;
        return u;
    }

    private static double[] minus(double[] a, double[] b) {
        double[] d = new double[a.length];
        for (int j = 0; j < d.length; j++) {
            d[j] = a[j] - b[j];
        }
        return d;
    }

    /** The parabola through the centre and two points. */
    private static Alone alone(Axis axis, double[] y0, double[] y1, double[] y2) {
        double p = axis.first;
        double q = axis.second;
        double[] slope = new double[y0.length];
        double[] bend = new double[y0.length];
        for (int j = 0; j < y0.length; j++) {
            double s1 = (y1[j] - y0[j]) / p;
            double s2 = (y2[j] - y0[j]) / q;
            bend[j] = (s2 - s1) / (q - p);
            slope[j] = s1 - bend[j] * p;
        }
        return new Alone(axis.index, slope, bend);
    }

    /** Length of the vector. */
    int length() {
        return centre.length;
    }

    /**
     * The vector at some coordinates.
     *
     * @param u coordinates
     * @param y is filled
     */
    void value(double[] u, double[] y) {
        System.arraycopy(centre, 0, y, 0, centre.length);
        for (Alone a : alone) {
            double x = u[a.index];
            add(y, x, a.slope);
            add(y, x * x, a.bend);
        }
        for (Pair p : pairs) {
            add(y, u[p.first] * u[p.second], p.slope);
        }
    }

    private static void add(double[] y, double factor, double[] vector) {
        if (factor != 0) {
            for (int j = 0; j < y.length; j++) {
                y[j] += factor * vector[j];
            }
        }
    }
}
