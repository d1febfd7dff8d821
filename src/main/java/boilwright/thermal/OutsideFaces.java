package boilwright.thermal;

import boilwright.rig.TypicalValues;

/** What a hand can touch outside, and how hot it is. */
final class OutsideFaces {

    private final PumpModel model;
    private final StateLayout at;

    OutsideFaces(PumpModel model) {
        this.model = model;
        at = model.layout;
    }

    /** Hottest outside face that can be touched, K. */
    double touchK(double[] y) {
        double hottest = Math.max(model.boiler.touchK(y[at.boilerWall]), model.source.touchK(y, at.source));
        for (int w = 0; w < model.wallGeometry.count; w++) {
            if (model.wallGeometry.outerAreaM2[w] > 0) {
                hottest = Math.max(hottest, wallTouchK(w, y));
            }
        }
        return hottest;
    }

    /** How far the hottest of all that can be reached, the oil included, is above {@link TypicalValues#TOUCH_K}, K. */
    double touchExcessK(double[] y) {
        return Math.max(touchK(y), y[at.oil]) - TypicalValues.TOUCH_K;
    }

    /** The same for the first so many walls of the body alone, of which the zones at the stages are the first, K. */
    double bodyTouchExcessK(double[] y, int count) {
        double worst = Double.NEGATIVE_INFINITY;
        for (int w = 0; w < count; w++) {
            if (model.wallGeometry.outerAreaM2[w] > 0) {
                worst = Math.max(worst, wallTouchK(w, y) - TypicalValues.TOUCH_K);
            }
        }
        return worst;
    }

    private double wallTouchK(int w, double[] y) {
        int node = model.nodeOfWall(w);
        boolean covered = node >= 0 && model.water.isJacket(node) && y[at.fill + node] > 0.5;
        return covered ? y[at.water + node] : y[at.walls + w];
    }
}
