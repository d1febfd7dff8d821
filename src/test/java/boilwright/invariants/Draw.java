package boilwright.invariants;

import java.util.List;

/** Turns a row of numbers from 0 to 1 into the choices and sizes of a random rig, one after another. */
final class Draw {
    private final double[] shares;
    private int next;

    Draw(double[] shares) {
        this.shares = shares;
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
        return shares[next++];
    }
}
