package eddyreach.linalg;

/** Products with the inverse of a dense complex symmetric matrix whose real part is positive definite, without pivoting. */
public final class DenseSymmetric {

    private DenseSymmetric() {}

    /**
     * B^T A^-1 B by elimination of A in the bordered matrix [A B; B^T 0].
     *
     * @param re real part of A, {@code [row][column]}, of which the lower triangle is read
     * @param im imaginary part of A
     * @param b the columns B, {@code [row][column]}
     * @return real and imaginary part, {@code [part][row][column]}
     * @throws SingularMatrixException if a pivot vanishes
     */
    public static double[][][] inverseProduct(double[][] re, double[][] im, double[][] b) {
        int n = re.length;
        int r = b[0].length;
        Front front = new Front(n + r);
        front.clear(n + r);
        for (int j = 0; j < n; j++) {
            for (int i = j; i < n; i++) {
                front.re[j][front.at(i)] = re[i][j];
                front.im[j][front.at(i)] = im[i][j];
            }
            for (int p = 0; p < r; p++) {
                front.re[j][front.at(n + p)] = b[j][p];
            }
        }
        front.eliminate(n);
        double[][][] out = new double[2][r][r];
        for (int q = 0; q < r; q++) {
            for (int p = q; p < r; p++) {
                out[0][p][q] = -front.re[n + q][front.at(n + p)];
                out[1][p][q] = -front.im[n + q][front.at(n + p)];
                out[0][q][p] = out[0][p][q];
                out[1][q][p] = out[1][p][q];
            }
        }
        return out;
    }
}
