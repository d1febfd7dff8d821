package boilwright.numerics;

/**
 * The solution within the latest accepted step. Owned and reused by the integrator: valid until its next step or
 * restart.
 */
public interface StepInterpolant {
    /** Start of the step, s. */
    double start();

    /** End of the step, s. */
    double end();

    /**
     * The whole state at a time within the step; exact copies of the two end states at the ends.
     *
     * @param t time, s, from {@link #start()} to {@link #end()}
     * @param y receives the state
     */
    void stateAt(double t, double[] y);
}
