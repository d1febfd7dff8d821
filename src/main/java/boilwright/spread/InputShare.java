package boilwright.spread;

/**
 * How much of the spread of one result comes from one input alone.
 *
 * @param inputId the input
 * @param share first-order index, 0 to 1
 */
public record InputShare(String inputId, double share) {}
