package boilwright.spread;

import org.apache.commons.math3.stat.interval.ConfidenceInterval;
import org.apache.commons.math3.stat.interval.WilsonScoreInterval;

/**
 * How often something was the case, with the error that comes from the number of samples alone: the score interval of Wilson (J. Am.
 * Stat. Assoc. 22 (1927) 209) at 95 %. It is that of independent samples; those of a Sobol sequence are mostly nearer.
 *
 * @param cases in how many samples it was the case
 * @param samples in how many it could be told
 */
public record Chance(long cases, long samples) {
    private static final double CONFIDENCE = 0.95;

    /** Whether it could be told in any sample. */
    public boolean isKnown() {
        return samples > 0;
    }

    /** Share of the samples, 0 to 1; 0 when it could not be told in any. */
    public double share() {
        return isKnown() ? (double) cases / samples : 0;
    }

    /** Low end of what the share would be in very many samples. */
    public double low() {
        return isKnown() && cases > 0 ? Math.max(0, interval().getLowerBound()) : 0;
    }

    /** High end of it. */
    public double high() {
        return isKnown() && cases < samples ? Math.min(1, interval().getUpperBound()) : 1;
    }

    private ConfidenceInterval interval() {
        return new WilsonScoreInterval().createInterval(Math.toIntExact(samples), Math.toIntExact(cases), CONFIDENCE);
    }
}
