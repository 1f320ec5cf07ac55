package eddyreach.oscillator;

/**
 * Differential pair {@code i = I0 tanh(gm v / I0)}; its describing function is
 * {@code Gm_eff(A) = (I0/(pi A)) int_0^{2 pi} tanh(gm A sin t / I0) sin t dt}.
 *
 * @param current tail current amplitude I0, A, positive
 * @param transconductance small-signal transconductance gm, S, positive
 */
public record TanhPair(double current, double transconductance) implements ActiveElement {

    public TanhPair {
        if (!(current > 0 && transconductance > 0)) {
            throw new IllegalArgumentException(
                    "current and transconductance must be above 0, got " + current + " A, " + transconductance + " S");
        }
    }

    @Override
    public String name() {
        return "tanh pair";
    }

    @Override
    public double conductance(double amplitude) {
        double x = transconductance * amplitude / current;
        if (x > 400) {
            // large-argument expansion of the integral, next term of order x^-4
            return 4 * current / (Math.PI * amplitude) * (1 - Math.PI * Math.PI / (24 * x * x));
        }
        // the trapezoidal rule converges geometrically on the periodic integrand, at a rate set by x
        int n = 24 + (int) (12 * x);
        double sum = 0;
        for (int i = 0; i < n; i++) {
            double s = Math.sin(Math.PI * (i + 0.5) / n);
            sum += Math.tanh(x * s) * s;
        }
        return 2 * current * sum / (n * amplitude);
    }

    @Override
    public double smallSignalConductance() {
        return transconductance;
    }

    @Override
    public double amplitude(double tankConductance) {
        if (tankConductance >= transconductance) {
            return 0;
        }
        double low = 0;
        double high = 4 * current / (Math.PI * tankConductance);
        while (high - low > 1e-14 * high) {
            double middle = (low + high) / 2;
            if (middle == low || middle == high) {
                break;
            }
            if (conductance(middle) > tankConductance) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }
}
