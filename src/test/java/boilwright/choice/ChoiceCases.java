package boilwright.choice;

import boilwright.answers.CheckAnswer;
import boilwright.answers.Margin;
import boilwright.answers.MarginId;
import boilwright.answers.RestAnswer;
import boilwright.answers.Stored;
import boilwright.fluid.FluidLibrary;
import boilwright.rig.Rig;
import boilwright.rig.file.RigReader;
import java.util.List;
import java.util.Set;

/** Questions of this package and the check, whole or at rest, that their answers are held against. */
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

    /** What the check of a rig says of it at rest, without the wait for its warm-up. */
    static RestAnswer rest(Rig rig) {
        return RestAnswer.of(Stored.asked(rig));
    }

    static double heatRatio(CheckAnswer check) {
        return margin(check.margins(), MarginId.HEAT).ratio().orElseThrow();
    }

    static double heatRatio(RestAnswer rest) {
        return margin(rest.margins(), MarginId.HEAT).ratio().orElseThrow();
    }

    static Margin margin(CheckAnswer check, MarginId id) {
        return margin(check.margins(), id);
    }

    private static Margin margin(List<Margin> margins, MarginId id) {
        return margins.stream().filter(m -> m.id() == id).findFirst().orElseThrow();
    }

    /** Share of its full flow that the jet which needs the most has at rest. */
    static double governingFraction(RestAnswer rest) {
        return rest.steady().stages().stream()
                .filter(s -> s.name().equals(rest.needed().governingStage()))
                .findFirst()
                .orElseThrow()
                .fullFlowFraction();
    }
}
