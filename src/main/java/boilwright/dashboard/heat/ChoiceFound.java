package boilwright.dashboard.heat;

import boilwright.choice.CompareAnswer;
import boilwright.choice.SizeAnswer;

/**
 * What is shown of one rig.
 *
 * @param compared heat sources side by side
 * @param sized how much of the present one is enough
 */
record ChoiceFound(CompareAnswer compared, SizeAnswer sized) {}
