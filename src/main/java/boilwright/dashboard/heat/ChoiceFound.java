package boilwright.dashboard.heat;

import boilwright.choice.CompareAnswer;
import boilwright.choice.SizeAnswer;
import boilwright.dashboard.work.RigAnswer;

/**
 * What is shown of one rig.
 *
 * @param checked the check that it belongs to
 * @param compared heat sources side by side
 * @param sized how much of the present one is enough
 */
record ChoiceFound(RigAnswer checked, CompareAnswer compared, SizeAnswer sized) {}
