package boilwright.rise;

import java.util.Arrays;
import java.util.Optional;
import org.apache.commons.math3.exception.ConvergenceException;
import org.apache.commons.math3.exception.TooManyEvaluationsException;
import org.apache.commons.math3.exception.TooManyIterationsException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer.Optimum;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularMatrixException;
import org.apache.commons.math3.util.Pair;

/**
 * A curve fitted to points by least squares of the residuals over their expected scatter, by the method of Levenberg and
 * Marquardt (the library's port of MINPACK's lmder; J. J. More, Lecture Notes in Mathematics 630 (1978) 105-116).
 */
public final class LeastSquaresFit {
    private static final double TOLERANCE = 1e-12;
    private static final double SINGULAR = 1e-30;
    private static final int MOST_EVALUATIONS = 2000;

    private final double[] parameters;
    private final double residualSquares;
    private final RealMatrix jacobian;

    private LeastSquaresFit(double[] parameters, double residualSquares, RealMatrix jacobian) {
        this.parameters = parameters;
        this.residualSquares = residualSquares;
        this.jacobian = jacobian;
    }

    /**
     * Fits a curve, with parameters kept between bounds.
     *
     * @param curve the curve
     * @param points at least as many as the curve has parameters
     * @param start where to begin, within the bounds
     * @param low least value of each parameter; may be negative infinity
     * @param high greatest value of each parameter; may be infinity
     * @return the fit; empty when the search comes to no end from this start
     */
    public static Optional<LeastSquaresFit> of(
            Curve curve, Points points, double[] start, double[] low, double[] high) {
        double[] target = new double[points.count()];
        for (int i = 0; i < target.length; i++) {
            target[i] = points.y(i) / points.scatter(i);
        }
        LeastSquaresBuilder problem = new LeastSquaresBuilder()
                .model(at -> scaled(curve, points, at.toArray()))
                .target(target)
                .start(start)
                .maxEvaluations(MOST_EVALUATIONS)
                .maxIterations(MOST_EVALUATIONS)
                .parameterValidator(at -> within(at, low, high));
        try {
            Optimum optimum = new LevenbergMarquardtOptimizer()
                    .withCostRelativeTolerance(TOLERANCE)
                    .withParameterRelativeTolerance(TOLERANCE)
                    .optimize(problem.build());
            double squares = optimum.getResiduals().dotProduct(optimum.getResiduals());
            return Double.isFinite(squares)
                    ? Optional.of(new LeastSquaresFit(optimum.getPoint().toArray(), squares, optimum.getJacobian()))
                    : Optional.empty();
        } catch (TooManyEvaluationsException | TooManyIterationsException | ConvergenceException e) {
            return Optional.empty(); // other starts are tried; whoever asked decides what it means when none ends
        }
    }

    /** Fits a curve whose parameters may have any value. */
    public static Optional<LeastSquaresFit> of(Curve curve, Points points, double[] start) {
        double[] low = new double[start.length];
        double[] high = new double[start.length];
        Arrays.fill(low, Double.NEGATIVE_INFINITY);
        Arrays.fill(high, Double.POSITIVE_INFINITY);
        return of(curve, points, start, low, high);
    }

    /** A curve with given parameters, as if the search had ended there. */
    static LeastSquaresFit at(Curve curve, Points points, double[] parameters) {
        double squares = 0;
        for (double residual : points.residuals(curve, parameters)) {
            squares += residual * residual;
        }
        return new LeastSquaresFit(
                parameters.clone(), squares, scaled(curve, points, parameters).getSecond());
    }

    /** The parameters of the curve. */
    public double[] parameters() {
        return parameters.clone();
    }

    /** Sum of the squared residuals, each over its expected scatter. */
    public double residualSquares() {
        return residualSquares;
    }

    /**
     * The standard deviation of a weighted sum of the parameters, from the curvature at the best point.
     *
     * @param weights one for each parameter
     * @param variance of a residual over its expected scatter, such as the residual squares over the degrees of freedom
     * @return empty when the points do not determine the parameters
     */
    public Optional<Double> deviation(double[] weights, double variance) {
        try {
            RealMatrix scale = scale();
            RealMatrix scaled = jacobian.multiply(scale);
            RealMatrix inverse = new QRDecomposition(scaled.transpose().multiply(scaled), SINGULAR)
                    .getSolver()
                    .getInverse();
            RealVector w = scale.operate(new ArrayRealVector(weights, false));
            double squared = inverse.operate(w).dotProduct(w) * variance;
            return squared >= 0 && Double.isFinite(squared) ? Optional.of(Math.sqrt(squared)) : Optional.empty();
        } catch (SingularMatrixException e) {
            return Optional.empty();
        }
    }

    /** The standard deviation of one parameter. */
    public Optional<Double> deviation(int parameter, double variance) {
        double[] weights = new double[parameters.length];
        weights[parameter] = 1;
        return deviation(weights, variance);
    }

    /** Brings every column to length one: parameters differ by many powers of ten. */
    private RealMatrix scale() {
        int count = parameters.length;
        RealMatrix scale = new Array2DRowRealMatrix(count, count);
        for (int i = 0; i < count; i++) {
            double norm = jacobian.getColumnVector(i).getNorm();
            scale.setEntry(i, i, norm > 0 ? 1 / norm : 1);
        }
        return scale;
    }

    private static Pair<RealVector, RealMatrix> scaled(Curve curve, Points points, double[] at) {
        double[] values = new double[points.count()];
        double[][] slopes = new double[points.count()][at.length];
        for (int i = 0; i < values.length; i++) {
            double scatter = points.scatter(i);
            values[i] = curve.value(points.x(i), at) / scatter;
            curve.gradient(points.x(i), at, slopes[i]);
            for (int j = 0; j < at.length; j++) {
                slopes[i][j] /= scatter;
            }
        }
        return new Pair<>(new ArrayRealVector(values, false), new Array2DRowRealMatrix(slopes, false));
    }

    private static RealVector within(RealVector at, double[] low, double[] high) {
        double[] kept = at.toArray();
        for (int i = 0; i < kept.length; i++) {
            kept[i] = Math.max(low[i], Math.min(high[i], kept[i]));
        }
        return new ArrayRealVector(kept, false);
    }

    /** A curve whose parameters can be fitted: its value and how that changes with each parameter. */
    public interface Curve {
        /** How many parameters it has. */
        int parameterCount();

        /**
         * The value at a point.
         *
         * @param x the point
         * @param parameters as many as the curve has
         */
        double value(double x, double[] parameters);

        /**
         * The derivatives of the value by each parameter.
         *
         * @param x the point
         * @param parameters as many as the curve has
         * @param into takes the derivatives, in the order of the parameters
         */
        void gradient(double x, double[] parameters, double[] into);

        /**
         * The same curve with one parameter held; the others keep their order.
         *
         * @param index which parameter
         * @param held its value
         */
        default Curve holding(int index, double held) {
            return new HeldCurve(this, index, held);
        }
    }

    /** Points to fit a curve to, each with the scatter that it is expected to have relative to the others. */
    public static final class Points {
        private final double[] x;
        private final double[] y;
        private final double[] scatter;

        /**
         * Points.
         *
         * @param x where they are, finite
         * @param y their values, finite, as many
         * @param scatter expected scatter of each value in the unit of the values, &gt; 0, as many; a common factor does not
         *     matter to a fit
         */
        public Points(double[] x, double[] y, double[] scatter) {
            if (x.length != y.length || x.length != scatter.length) {
                throw new IllegalArgumentException("every point has a place, a value and a scatter");
            }
            this.x = x.clone();
            this.y = y.clone();
            this.scatter = scatter.clone();
        }

        /** How many points there are. */
        public int count() {
            return x.length;
        }

        double x(int i) {
            return x[i];
        }

        double y(int i) {
            return y[i];
        }

        double scatter(int i) {
            return scatter[i];
        }

        /** What a curve leaves over at each point, in units of its expected scatter. */
        double[] residuals(LeastSquaresFit.Curve curve, double[] parameters) {
            double[] residuals = new double[x.length];
            for (int i = 0; i < x.length; i++) {
                residuals[i] = (y[i] - curve.value(x[i], parameters)) / scatter[i];
            }
            return residuals;
        }
    }

    /** A curve with one parameter held. */
    static final class HeldCurve implements Curve {
        private final Curve whole;
        private final int index;
        private final double held;

        HeldCurve(Curve whole, int index, double held) {
            this.whole = whole;
            this.index = index;
            this.held = held;
        }

        /** An array without the place of the held parameter. */
        static double[] without(double[] all, int index) {
            double[] rest = new double[all.length - 1];
            System.arraycopy(all, 0, rest, 0, index);
            System.arraycopy(all, index + 1, rest, index, rest.length - index);
            return rest;
        }

        /** An array with the held value put into its place. */
        static double[] with(double[] rest, int index, double held) {
            double[] all = new double[rest.length + 1];
            System.arraycopy(rest, 0, all, 0, index);
            all[index] = held;
            System.arraycopy(rest, index, all, index + 1, rest.length - index);
            return all;
        }

        @Override
        public int parameterCount() {
            return whole.parameterCount() - 1;
        }

        @Override
        public double value(double x, double[] parameters) {
            return whole.value(x, with(parameters, index, held));
        }

        @Override
        public void gradient(double x, double[] parameters, double[] into) {
            double[] all = new double[whole.parameterCount()];
            whole.gradient(x, with(parameters, index, held), all);
            System.arraycopy(without(all, index), 0, into, 0, into.length);
        }
    }
}
