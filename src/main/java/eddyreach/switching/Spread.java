package eddyreach.switching;

import eddyreach.oscillator.UnworkableException;
import java.util.Arrays;
import org.apache.commons.math3.distribution.NormalDistribution;

/** Distribution of a number over the units of a series, from a sample. */
public final class Spread {

    private static final int LEAST = 100;

    /** Half the interval of 95 % in standard deviations. */
    private static final double HALF = new NormalDistribution(null, 0, 1).inverseCumulativeProbability(0.975);

    private final double[] sorted;

    /**
     * @param values one number for each unit, at least 100, in any order; copied
     * @throws UnworkableException when there are fewer
     * @throws IllegalArgumentException when one is no number
     */
    public Spread(double[] values) {
        UnworkableException.require("number of units", values.length, "", LEAST, Double.POSITIVE_INFINITY);
        sorted = values.clone();
        Arrays.sort(sorted);
        if (Double.isNaN(sorted[sorted.length - 1])) {
            throw new IllegalArgumentException("a value of the series is no number");
        }
    }

    /**
     * A quantile and where it lies with a confidence of 95 %.
     *
     * @param value the quantile
     * @param low lower end of its interval
     * @param high upper end of its interval; an end beyond the sample is that of the sample
     */
    public record Quantile(double value, double low, double high) {}

    /** Number of units. */
    public int size() {
        return sorted.length;
    }

    /**
     * The value below which a share of the units lies: linear between the order statistics, of which number i of n from 0 is the quantile i/(n - 1). Its
     * interval takes the order statistics that the binomial distribution, taken as normal, leaves within 95 %.
     *
     * @param share share of the units, between 0 and 1
     */
    public Quantile quantile(double share) {
        UnworkableException.require("share of the units", share, "", 0, 1);
        int n = sorted.length;
        double half = HALF * Math.sqrt(n * share * (1 - share));
        return new Quantile(at(share * (n - 1)), at(Math.floor(share * n - half) - 1), at(Math.ceil(share * n + half)));
    }

    private double at(double position) {
        double p = Math.max(0, Math.min(sorted.length - 1, position));
        int i = (int) Math.min(sorted.length - 2, Math.floor(p));
        double between = p - i;
        return between == 0 ? sorted[i] : sorted[i] * (1 - between) + sorted[i + 1] * between;
    }

    /** Share of the units that lies between two values, both included. */
    public double within(double low, double high) {
        return (double) Arrays.stream(sorted).filter(x -> x >= low && x <= high).count() / sorted.length;
    }

    /** Mean of the units. */
    public double mean() {
        return Arrays.stream(sorted).average().orElseThrow();
    }

    /** Standard deviation. */
    public double deviation() {
        double mean = mean();
        return Math.sqrt(Arrays.stream(sorted).map(x -> (x - mean) * (x - mean)).sum() / (sorted.length - 1));
    }

    /**
     * First-order share of an input in the variance, {@code Var(E[y given x])/Var(y)} (I. M. Sobol, Math. Comput. Simul. 55 (2001) 271): what the variance would lose if
     * the input were fixed. From the same sample, with no further evaluation: the units are sorted by the input into bins of equal number, and the variance between
     * the bins is freed of what the scatter within them adds (one-way analysis of variance). Independent inputs; a relation that changes within a bin counts only by its mean there.
     *
     * @param input value of the input for each unit
     * @param output value of the output for each unit, of the same length
     * @param bins number of bins, at least 2, each with at least 2 units
     * @return the share; its error is about sqrt(2 bins)/n (1 - share) + 2 sqrt(share/n), and it may be as little below 0
     */
    public static double share(double[] input, double[] output, int bins) {
        int n = output.length;
        if (input.length != n) {
            throw new IllegalArgumentException(input.length + " values of the input for " + n + " of the output");
        }
        UnworkableException.require("number of bins", bins, "", 2, n / 2);
        Integer[] order = new Integer[n];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, (a, b) -> Double.compare(input[a], input[b]));
        double mean = Arrays.stream(output).average().orElseThrow();
        double between = 0;
        double total = 0;
        for (int b = 0; b < bins; b++) {
            int from = (int) ((long) n * b / bins);
            int to = (int) ((long) n * (b + 1) / bins);
            double sum = 0;
            for (int i = from; i < to; i++) {
                double y = output[order[i]] - mean;
                sum += y;
                total += y * y;
            }
            between += sum * sum / (to - from);
        }
        double scatter = (total - between) / (n - bins);
        return total == 0 ? 0 : (between - (bins - 1) * scatter) / (total + scatter);
    }
}
