package boilwright.dashboard.vacuum;

import boilwright.answers.VacuumAnswer;
import boilwright.dashboard.work.RigAnswer;

/**
 * What the page shows of one rig.
 *
 * @param checked the check that it belongs to
 * @param vacuum the answer about its gas
 */
record VacuumFound(RigAnswer checked, VacuumAnswer vacuum) {}
