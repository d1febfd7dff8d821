package boilwright.thermal;

import boilwright.rig.Material;
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

    /** How far the worst outside face is above what a hand bears, K: 60 C for metal, 70 C for glass. */
    double touchExcessK(double[] y) {
        double worst = model.boiler.touchK(y[at.boilerWall])
                - touchLimitK(model.rig.boiler().material());
        worst = Math.max(worst, model.source.touchK(y, at.source) - TypicalValues.TOUCH_METAL_K);
        return Math.max(worst, bodyTouchExcessK(y, model.wallGeometry.count));
    }

    /** The same for the first so many walls of the body, of which the zones at the stages are the first, K. */
    double bodyTouchExcessK(double[] y, int count) {
        double worst = Double.NEGATIVE_INFINITY;
        for (int w = 0; w < count; w++) {
            if (model.wallGeometry.outerAreaM2[w] > 0) {
                worst = Math.max(
                        worst, wallTouchK(w, y) - touchLimitK(model.rig.body().material()));
            }
        }
        return worst;
    }

    /** Short contact that a hand bears on this material, K. */
    static double touchLimitK(Material material) {
        return material.isGlass() ? TypicalValues.TOUCH_GLASS_K : TypicalValues.TOUCH_METAL_K;
    }

    private double wallTouchK(int w, double[] y) {
        int node = model.nodeOfWall(w);
        boolean covered = node >= 0 && model.water.isJacket(node) && y[at.fill + node] > 0.5;
        return covered ? y[at.water + node] : y[at.walls + w];
    }
}
