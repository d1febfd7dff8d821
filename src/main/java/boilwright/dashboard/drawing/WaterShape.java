package boilwright.dashboard.drawing;

import boilwright.rig.ElementKind;

/**
 * One stretch of water on the body or cap, m.
 *
 * @param kind what carries it
 * @param element its place among the cooling elements, from 0
 * @param stage stage whose zone it covers, from 0; -1 for a cap coil
 * @param bottomM lower end of the stretch
 * @param topM its upper end
 * @param thicknessM water gap of a jacket, bore of a tube
 * @param shellM outer shell of a jacket
 * @param turns turns of a coil in this stretch; 0 for a jacket
 * @param downward whether the water goes down through it
 */
record WaterShape(
        ElementKind kind,
        int element,
        int stage,
        double bottomM,
        double topM,
        double thicknessM,
        double shellM,
        int turns,
        boolean downward) {}
