package eddyreach.report.draw;

/** Keeps labels in a column apart. */
public final class LabelColumn {

    private LabelColumn() {}

    /**
     * Positions near the wanted ones, in the same order, at least a gap apart.
     *
     * @param wanted ascending positions
     * @param gap least distance between neighbours; made smaller when the space does not suffice
     * @param min lowest position
     * @param max highest position
     */
    public static double[] apart(double[] wanted, double gap, double min, double max) {
        int n = wanted.length;
        double step = n > 1 ? Math.min(gap, (max - min) / (n - 1)) : gap;
        double[] y = wanted.clone();
        for (int i = 0; i < n; i++) {
            y[i] = Math.max(y[i], i == 0 ? min : y[i - 1] + step);
        }
        for (int i = n - 1; i >= 0; i--) {
            y[i] = Math.min(y[i], i == n - 1 ? max : y[i + 1] - step);
        }
        return y;
    }
}
