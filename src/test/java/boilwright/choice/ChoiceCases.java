package boilwright.choice;

import boilwright.answers.CheckAnswer;
import boilwright.answers.Margin;
import boilwright.answers.MarginId;
import boilwright.answers.Stored;
import boilwright.fluid.FluidLibrary;
import boilwright.rig.Rig;
import boilwright.rig.file.RigReader;
import java.util.Set;

/** Questions of this package and the whole check that their answers are held against. */
final class ChoiceCases {
    static final FluidLibrary FLUIDS = FluidLibrary.builtIn();

    private ChoiceCases() {}

    static Rig demo(String name) {
        return RigReader.readDemo(name, FLUIDS.workingFluids(), Set.of());
    }

    static SizeAnswer size(Rig rig, double margin) {
        return Stored.answer(new SizeQuestion(Stored.asked(rig), margin));
    }

    static CheckAnswer check(Rig rig) {
        return Stored.check(rig);
    }

    static double heatRatio(CheckAnswer check) {
        return margin(check, MarginId.HEAT).ratio().orElseThrow();
    }

    static Margin margin(CheckAnswer check, MarginId id) {
        return check.margins().stream().filter(m -> m.id() == id).findFirst().orElseThrow();
    }

    /** Share of its full flow that the jet which needs the most has at rest. */
    static double governingFraction(CheckAnswer check) {
        return check.steady().stages().stream()
                .filter(s -> s.name().equals(check.needed().governingStage()))
                .findFirst()
                .orElseThrow()
                .fullFlowFraction();
    }
}
