package boilwright.numerics;

/**
 * What an integration cost.
 *
 * @param steps accepted steps
 * @param rejected trial steps given up: error too large, or a state that can't exist
 * @param derivatives calls of the derivative, without those inside {@link OdeSystem#jacobian}
 * @param jacobians matrices of partial derivatives
 * @param restarts starts and restarts: the first, each stop point, each event that asked for it
 * @param events events reported
 * @param roughRadii estimates of the spectral radius that had not settled to 1 % (explicit method)
 */
public record OdeStatistics(
        long steps, long rejected, long derivatives, long jacobians, long restarts, long events, long roughRadii) {

    /** The running counts behind {@link OdeStatistics}. */
    static final class Counters {
        long steps;
        long rejected;
        long derivatives;
        long jacobians;
        long restarts;
        long events;
        long roughRadii;

        OdeStatistics snapshot() {
            return new OdeStatistics(steps, rejected, derivatives, jacobians, restarts, events, roughRadii);
        }
    }
}
