package boilwright.numerics;

/** The running counts behind {@link OdeStatistics}. */
final class OdeCounters {
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
