package boilwright.answers;

import boilwright.answers.Margin.Side;
import boilwright.answers.Margin.Status;
import java.util.OptionalDouble;

/** Makes one margin after another; decides ratio and status in one place. */
final class MarginMaker {
    private final MarginId id;
    private Side side = Side.AT_MOST;
    private OptionalDouble value = OptionalDouble.empty();
    private OptionalDouble limit = OptionalDouble.empty();
    private double tightBelow = 1.1;
    private double zero;
    private Moment moment = Moment.REST;
    private OptionalDouble atS = OptionalDouble.empty();
    private String basis = "";
    private String cure = "";

    private MarginMaker(MarginId id) {
        this.id = id;
    }

    static MarginMaker of(MarginId id) {
        return new MarginMaker(id);
    }

    MarginMaker value(double found) {
        value = OptionalDouble.of(found);
        return this;
    }

    MarginMaker atMost(double most) {
        side = Side.AT_MOST;
        limit = OptionalDouble.of(most);
        return this;
    }

    MarginMaker atLeast(double least) {
        side = Side.AT_LEAST;
        limit = OptionalDouble.of(least);
        return this;
    }

    /** Side alone, when no limit is known. */
    MarginMaker side(Side which) {
        side = which;
        return this;
    }

    /** Ratio below which it counts as tight. */
    MarginMaker tightBelow(double ratio) {
        tightBelow = ratio;
        return this;
    }

    /** Where the quantity is measured from: the room, for temperatures. */
    MarginMaker from(double origin) {
        zero = origin;
        return this;
    }

    /** Along a run, at a time of it, s. */
    MarginMaker at(Moment when, double seconds) {
        moment = when;
        atS = OptionalDouble.of(seconds);
        return this;
    }

    /** Limit, beyond which it fails; empty when none is known. */
    OptionalDouble limit() {
        return limit;
    }

    MarginMaker basis(String sentence) {
        basis = sentence;
        return this;
    }

    MarginMaker cure(AnswerText sentence) {
        cure = sentence.say();
        return this;
    }

    MarginMaker cure(String sentence) {
        cure = sentence;
        return this;
    }

    Margin make() {
        OptionalDouble ratio = ratio();
        Status status = status(ratio);
        boolean wanting = status == Status.FAILS || status == Status.TIGHT;
        return new Margin(id, side, value, limit, ratio, status, tightBelow, moment, atS, basis, wanting ? cure : "");
    }

    private Status status(OptionalDouble ratio) {
        if (ratio.isEmpty()) {
            return Status.UNKNOWN;
        }
        double r = ratio.getAsDouble();
        return r < 1 ? Status.FAILS : r < tightBelow ? Status.TIGHT : Status.HOLDS;
    }

    /** 1 at the limit, below 1 beyond it; capped where the value is nearly nothing. */
    private OptionalDouble ratio() {
        if (value.isEmpty() || limit.isEmpty()) {
            return OptionalDouble.empty();
        }
        double v = value.getAsDouble() - zero;
        double l = limit.getAsDouble() - zero;
        double good = side == Side.AT_LEAST ? v : l;
        double bad = side == Side.AT_LEAST ? l : v;
        if (bad <= 0) {
            // nothing on the wrong side of the origin: as far from the limit as is worth saying
            return OptionalDouble.of(good >= bad ? Margins.FAR : 0);
        }
        return OptionalDouble.of(Math.max(0, Math.min(Margins.FAR, good / bad)));
    }
}
