package boilwright.dashboard.water;

import boilwright.answers.WaterAnswer;
import boilwright.dashboard.work.RigAnswer;
import boilwright.water.CurvePair;

/**
 * What the page shows of one rig.
 *
 * @param checked the check that it belongs to
 * @param water the answer about its water
 * @param curves what supply and circuit do against flow
 */
record WaterFound(RigAnswer checked, WaterAnswer water, CurvePair curves) {}
