package boilwright.numerics;

import boilwright.errors.ComputationException;

/**
 * A method that advances a set of differential equations by one accepted step at a time, forward in time. An instance
 * is private to one run at a time and reuses its working arrays; {@link OdeDriver} is its usual caller.
 */
public interface OdeIntegrator {
    /** Names the equations, the tolerances and the bounds of the step (s) for the steps that follow. */
    void attach(TrialSystem system, Tolerances tolerances, double smallestStep, double largestStep);

    /**
     * Starts, or starts again, from a state. Derivatives may have jumped; nothing is taken over from earlier steps but
     * what only affects speed in a repeatable way.
     *
     * @param t time, s
     * @param y state; copied
     * @param limit a time, s, later than t, beyond which no derivative is asked for
     * @throws ComputationException when the derivative at this state fails
     */
    void restart(double t, double[] y, double limit);

    /**
     * One accepted step, as long as the tolerances permit.
     *
     * @param limit a time, s, that the step does not pass; it is met exactly when it is near
     * @return the solution within the step
     * @throws ComputationException when even the smallest step is not accepted
     */
    StepInterpolant step(double limit);
}
