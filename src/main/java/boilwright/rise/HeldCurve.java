package boilwright.rise;

/** A curve with one parameter held. */
final class HeldCurve implements FittedCurve {
    private final FittedCurve whole;
    private final int index;
    private final double held;

    HeldCurve(FittedCurve whole, int index, double held) {
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
