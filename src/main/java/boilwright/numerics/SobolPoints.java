package boilwright.numerics;

import org.apache.commons.math3.random.SobolSequenceGenerator;
import org.apache.commons.math3.random.Well19937c;

/**
 * Points that fill a cube of many dimensions evenly: the Sobol sequence with the direction numbers of Joe and Kuo (SIAM J. Sci.
 * Comput. 30 (2008) 2635) as Commons Math has it, moved by a random digital shift, one for each dimension (each binary
 * digit of a coordinate is turned over or not, for all points alike; L'Ecuyer and Lemieux, in Modeling Uncertainty, 2002).
 * A point depends on seed and index alone, never on how many points are asked for, in which order or on which thread; the first points of a long
 * run are those of a short one. One object serves one thread.
 */
public final class SobolPoints {
    /** Most dimensions. */
    public static final int MOST_DIMENSIONS = 1000;

    private static final int DIGITS = 52;
    private static final double TO_WHOLE = 0x1p52;
    private static final double TO_SHARE = 0x1p-52;

    private final SobolSequenceGenerator sequence;
    private final long[] turned;

    /**
     * @param dimensions how many coordinates a point has, 1 to {@value #MOST_DIMENSIONS}
     * @param seed which of the shifts
     */
    public SobolPoints(int dimensions, long seed) {
        sequence = new SobolSequenceGenerator(dimensions);
        Well19937c chance = new Well19937c(seed);
        turned = new long[dimensions];
        for (int j = 0; j < dimensions; j++) {
            turned[j] = chance.nextLong() >>> (Long.SIZE - DIGITS);
        }
    }

    /**
     * One point.
     *
     * @param index which, from 0
     * @return its coordinates, each at least 0 and below 1
     */
    public double[] point(int index) {
        double[] point = sequence.skipTo(index);
        for (int j = 0; j < point.length; j++) {
            point[j] = ((long) (point[j] * TO_WHOLE) ^ turned[j]) * TO_SHARE;
        }
        return point;
    }
}
