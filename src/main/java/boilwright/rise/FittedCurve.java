package boilwright.rise;

/** A curve whose parameters can be fitted: its value and how that changes with each parameter. */
public interface FittedCurve {
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
    default FittedCurve holding(int index, double held) {
        return new HeldCurve(this, index, held);
    }
}
