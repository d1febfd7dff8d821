package boilwright.rise;

/** Points to fit a curve to, each with the scatter that it is expected to have relative to the others. */
public final class WeightedPoints {
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
    public WeightedPoints(double[] x, double[] y, double[] scatter) {
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
    double[] residuals(FittedCurve curve, double[] parameters) {
        double[] residuals = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            residuals[i] = (y[i] - curve.value(x[i], parameters)) / scatter[i];
        }
        return residuals;
    }
}
