package boilwright.numerics;

import boilwright.errors.ComputationException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;

/**
 * A set of ordinary differential equations dy/dt = f(t, y). Time is in seconds; each component has the unit its owner
 * gives it. The methods must depend on their arguments only, plus on modes that change nowhere but in event callbacks.
 */
public interface OdeSystem {
    /** How many components the state has, at least one. */
    int size();

    /**
     * The derivative. Called very often: it should allocate nothing. At a stop point the value asked for is the one
     * just before it while integration comes from below, and the one at it after the restart.
     *
     * @param t time, s
     * @param y state; not to be changed or kept
     * @param dydt receives the derivative
     * @throws ComputationException when the state has no derivative; a trial step that meets this is
     *     tried again with a smaller step
     */
    void derivative(double t, double[] y, double[] dydt);

    /**
     * Whether a state can exist at all. Trial states for which this is false are given up and tried again with a
     * smaller step; they are never moved into range.
     */
    default boolean isAdmissible(double t, double[] y) {
        return true;
    }

    /** Whether the derivative does not depend on time but through the state; spares one derivative for each step. */
    default boolean isAutonomous() {
        return false;
    }

    /** What a component is called in a message. */
    default String componentName(int component) {
        return "component " + component;
    }

    /**
     * The matrix of partial derivatives, J[i][j] = d(dydt_i)/dy_j. Here: one-sided differences with a displacement of
     * 1e-7 of the component's size (at least 1e-10), upward, or downward where upward is not admissible. The
     * displacement is wide enough for derivatives that hold inner roots good to 1e-11.
     *
     * @param t time, s
     * @param y state; displaced for a while and put back
     * @param dydt the derivative at (t, y)
     * @param jacobian receives the matrix, rows first
     * @throws ComputationException when neither displacement of some component leaves a state that can exist
     */
    default void jacobian(double t, double[] y, double[] dydt, double[][] jacobian) {
        int n = size();
        for (int j = 0; j < n; j++) {
            double[] row = jacobian[j];
            double held = y[j];
            double wanted = 1e-7 * Math.max(Math.abs(held), 1e-3);
            double displacement = displaced(t, y, j, wanted, row);
            if (displacement == 0) {
                displacement = displaced(t, y, j, -wanted, row);
            }
            if (displacement == 0) {
                throw new ComputationException(Message.of(MessageKey.START_STATE_NOT_POSSIBLE, Double.toString(t)));
            }
            for (int i = 0; i < n; i++) {
                row[i] = (row[i] - dydt[i]) / displacement;
            }
        }
        // Row j now holds column j: turning it in place spares a work array.
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < i; j++) {
                double upper = jacobian[j][i];
                jacobian[j][i] = jacobian[i][j];
                jacobian[i][j] = upper;
            }
        }
    }

    /** The derivative with one component displaced. Returns the displacement made, or 0 where that can't exist. */
    private double displaced(double t, double[] y, int component, double wanted, double[] dydt) {
        double held = y[component];
        y[component] = held + wanted;
        // The displacement that arithmetic really made, not the one asked for.
        double made = y[component] - held;
        try {
            if (!isAdmissible(t, y)) {
                return 0;
            }
            derivative(t, y, dydt);
            return made;
        } catch (ComputationException outOfRange) {
            return 0;
        } finally {
            y[component] = held;
        }
    }
}
