package boilwright.rig;

import java.util.Arrays;

/** One immutable set of values for every {@link Parameter}. */
public final class ParameterValues {
    private final double[] values;

    private ParameterValues(double[] values) {
        this.values = values;
    }

    /** The nominal values, with those that the rig sets in their place. */
    public static ParameterValues of(Rig rig) {
        double[] values = new double[Parameter.values().length];
        for (Parameter parameter : Parameter.values()) {
            values[parameter.ordinal()] = rig.parameters().getOrDefault(parameter.id(), parameter.nominal());
        }
        return new ParameterValues(values);
    }

    /** The value of one parameter, SI. */
    public double get(Parameter parameter) {
        return values[parameter.ordinal()];
    }

    /** The same set with one value changed. */
    public ParameterValues with(Parameter parameter, double value) {
        double[] changed = values.clone();
        changed[parameter.ordinal()] = value;
        return new ParameterValues(changed);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof ParameterValues set && Arrays.equals(values, set.values);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(values);
    }
}
