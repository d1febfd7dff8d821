package boilwright.dashboard.water;

import boilwright.answers.WaterAnswer;
import boilwright.water.CurvePair;

/**
 * What the page shows of one rig.
 *
 * @param water the answer about its water
 * @param curves what supply and circuit do against flow
 */
record WaterFound(WaterAnswer water, CurvePair curves) {}
