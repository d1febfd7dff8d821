package boilwright.numerics;

/**
 * Solution of a full set of linear equations by elimination with row exchange (G. H. Golub, C. F. Van Loan, "Matrix
 * Computations", 3rd ed. 1996, algorithm 3.4.1). Written here because it runs once for every trial step and must not
 * allocate; the library's version copies the matrix and each solution.
 */
public final class DenseLu {
    private final int n;
    private final int[] exchange;
    private double[][] factors;

    public DenseLu(int n) {
        this.n = n;
        exchange = new int[n];
    }

    /**
     * Takes a matrix apart in place; its rows are exchanged and overwritten.
     *
     * @return false when it is singular or holds values that are not finite
     */
    public boolean factor(double[][] matrix) {
        factors = matrix;
        for (int k = 0; k < n; k++) {
            int pivot = k;
            for (int i = k + 1; i < n; i++) {
                if (Math.abs(matrix[i][k]) > Math.abs(matrix[pivot][k])) {
                    pivot = i;
                }
            }
            exchange[k] = pivot;
            double[] row = matrix[pivot];
            matrix[pivot] = matrix[k];
            matrix[k] = row;
            double diagonal = row[k];
            if (diagonal == 0 || !Double.isFinite(diagonal)) {
                return false;
            }
            for (int i = k + 1; i < n; i++) {
                double[] other = matrix[i];
                if (other[k] == 0) {
                    continue;
                }
                double multiplier = other[k] / diagonal;
                other[k] = multiplier;
                for (int j = k + 1; j < n; j++) {
                    other[j] -= multiplier * row[j];
                }
            }
        }
        return true;
    }

    /** Replaces a right-hand side by the solution. */
    public void solve(double[] b) {
        // Whole rows were exchanged, multipliers included: all exchanges come before the elimination.
        for (int k = 0; k < n; k++) {
            double held = b[exchange[k]];
            b[exchange[k]] = b[k];
            b[k] = held;
        }
        for (int i = 0; i < n; i++) {
            b[i] -= product(factors[i], b, 0, i);
        }
        for (int i = n - 1; i >= 0; i--) {
            b[i] = (b[i] - product(factors[i], b, i + 1, n)) / factors[i][i];
        }
    }

    /** Scalar product in four sums, which need not wait for each other. */
    private static double product(double[] row, double[] b, int from, int to) {
        double first = 0;
        double second = 0;
        double third = 0;
        double fourth = 0;
        int j = from;
        for (; j < to - 3; j += 4) {
            first += row[j] * b[j];
            second += row[j + 1] * b[j + 1];
            third += row[j + 2] * b[j + 2];
            fourth += row[j + 3] * b[j + 3];
        }
        for (; j < to; j++) {
            first += row[j] * b[j];
        }
        return (first + second) + (third + fourth);
    }
}
