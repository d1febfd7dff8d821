package boilwright.invariants;

import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleSupplier;

/** Turns numbers from 0 to 1 into the choices and sizes of a random rig, one after another. */
final class Draw {
    private final DoubleSupplier shares;

    private Draw(DoubleSupplier shares) {
        this.shares = shares;
    }

    /** The numbers of a row, which somebody else draws and makes smaller. */
    static Draw from(double[] row) {
        int[] next = new int[1];
        return new Draw(() -> row[next[0]++]);
    }

    /** The numbers of one rig of a seeded series: the same for the same two numbers, whatever was drawn before. */
    static Draw from(long seed, int index) {
        SplittableRandom first = new SplittableRandom(seed);
        SplittableRandom own = new SplittableRandom(first.nextLong() + index);
        return new Draw(own::nextDouble);
    }

    /** Evenly between two ends. */
    double between(double low, double high) {
        return Math.min(high, low + (high - low) * share());
    }

    /** Between two positive ends, every ratio alike. */
    double ratio(double low, double high) {
        return Math.min(high, low * Math.pow(high / low, share()));
    }

    /** One of some things. */
    <T> T of(List<T> things) {
        return things.get((int) Math.min(things.size() - 1.0, Math.floor(share() * things.size())));
    }

    /** True that often; never when the number drawn is 0, to which jqwik shrinks. */
    boolean chance(double probability) {
        return share() > 1 - probability;
    }

    private double share() {
        return shares.getAsDouble();
    }
}
