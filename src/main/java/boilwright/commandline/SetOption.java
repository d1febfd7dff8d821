package boilwright.commandline;

import boilwright.fluid.FluidLibrary;
import boilwright.rig.Rig;
import boilwright.rig.file.TypedEdits;
import java.util.LinkedHashSet;
import java.util.List;
import picocli.CommandLine.Option;

/** Fields of the rig that have another value than in its file, for this one command. */
final class SetOption {
    private static final String NAME = "--set";

    @Option(
            names = NAME,
            paramLabel = "PATH=VALUE",
            description =
                    "Give a field of the rig another value than its file, such as \"heatSource.ratedPower=750 W\""
                            + " or \"stages[0].throatGap=0.8 mm\"; repeat it for several fields. Checked like the file, which stays as it is.")
    private List<String> edits = List.of();

    /**
     * The rig with these values.
     *
     * @param accepted fields whose likely slips are meant
     * @throws boilwright.errors.InputRefusedException when one of them is not accepted
     */
    Rig applied(Rig rig, FluidLibrary library, List<String> accepted) {
        return TypedEdits.apply(rig, NAME, edits, library.workingFluids(), new LinkedHashSet<>(accepted));
    }

    /** Whether there is any. */
    boolean isGiven() {
        return !edits.isEmpty();
    }
}
