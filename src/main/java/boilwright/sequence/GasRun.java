package boilwright.sequence;

import boilwright.answers.VacuumAnswer;
import java.util.Optional;
import java.util.function.Supplier;

/** The gas side of a run, computed when it is first asked for: a stop needs none. */
final class GasRun {
    private final Supplier<Optional<VacuumAnswer>> question;
    private Optional<VacuumAnswer> answer;

    GasRun(Supplier<Optional<VacuumAnswer>> question) {
        this.question = question;
    }

    /**
     * The answer; empty when the rig describes no chamber.
     *
     * @throws boilwright.errors.ComputationException when its gas does not add up
     */
    Optional<VacuumAnswer> answer() {
        if (answer == null) {
            answer = question.get();
        }
        return answer;
    }
}
