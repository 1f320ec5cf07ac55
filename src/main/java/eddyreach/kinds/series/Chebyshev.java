package eddyreach.kinds.series;

import java.util.function.DoubleUnaryOperator;

/**
 * A smooth function over an interval as a Chebyshev series.
 *
 * @param low lower end of the interval
 * @param high upper end
 * @param count number of coefficients
 */
record Chebyshev(double low, double high, int count) {

    /** The coefficients of a function, with room for more numbers behind them. */
    double[] coefficients(DoubleUnaryOperator f, int room) {
        double[] y = new double[count];
        for (int i = 0; i < count; i++) {
            double x = Math.cos(Math.PI * (i + 0.5) / count);
            y[i] = f.applyAsDouble((low + high + (high - low) * x) / 2);
        }
        double[] c = new double[count + room];
        for (int k = 0; k < count; k++) {
            double sum = 0;
            for (int i = 0; i < count; i++) {
                sum += y[i] * Math.cos(Math.PI * k * (i + 0.5) / count);
            }
            c[k] = (k == 0 ? 1 : 2) * sum / count;
        }
        return c;
    }

    /** The series at a place inside the interval. */
    double value(double[] coefficients, double at) {
        double x = (2 * at - low - high) / (high - low);
        double b1 = 0;
        double b2 = 0;
        for (int k = count - 1; k > 0; k--) {
            double b = 2 * x * b1 - b2 + coefficients[k];
            b2 = b1;
            b1 = b;
        }
        return x * b1 - b2 + coefficients[0];
    }
}
