package boilwright.answers;

import boilwright.errors.Sentences;
import java.util.Optional;

/**
 * The gauge at one stage of what may be put right.
 *
 * @param step which stage
 * @param gaugePa pressure at the gauge then, Pa
 * @param meetsTarget whether that meets the rig's target; empty where it has none
 */
public record VacuumStage(Step step, double gaugePa, Optional<Boolean> meetsTarget) {
    /** What is put right. */
    public enum Step {
        /** Nothing: the rig as it is. */
        NOW(VacuumText.STAGE_NOW),
        /** The best single change of chamber, line and backing pump, the jets as they are. */
        BEST_CHANGE(VacuumText.STAGE_BEST_CHANGE),
        /** Every jet full, the gas side as it is. */
        JETS_FULL(VacuumText.STAGE_JETS_FULL),
        /** Both. */
        BOTH(VacuumText.STAGE_BOTH);

        private final VacuumText title;

        Step(VacuumText title) {
            this.title = title;
        }

        /** How files spell it. */
        public String id() {
            return Sentences.bundleKey(this);
        }

        /** Name that people read. */
        public String title() {
            return title.say();
        }
    }
}
