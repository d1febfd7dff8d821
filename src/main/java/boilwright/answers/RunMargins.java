package boilwright.answers;

import boilwright.thermal.EventKind;
import boilwright.thermal.RunResult;
import boilwright.thermal.SeriesQuantity;
import boilwright.water.CircuitSolver;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/** What a warm-up or cool-down comes near to on its way. */
final class RunMargins {
    private RunMargins() {}

    /** Margins along any run, in no order. */
    static List<Margin> of(Asked asked, RunResult run) {
        List<Margin> margins = new ArrayList<>();
        margins.add(Margins.oilBulk(asked.rig(), asked.fluid(), highest(run, SeriesQuantity.LIQUID_TEMPERATURE))
                .make());
        boolean flows = CircuitSolver.operatingPoint(asked.rig()).volumeFlowM3PerS() > 0
                && !asked.rig().cooling().elements().isEmpty();
        OptionalDouble out = flows ? OptionalDouble.of(highest(run, SeriesQuantity.WATER_OUT)) : OptionalDouble.empty();
        margins.add(CoolingMargins.waterOut(asked.rig(), out).make());
        return margins;
    }

    /** The same along a warm-up, at whose end the jets should be full. */
    static List<Margin> ofWarmup(Asked asked, RunResult run) {
        List<Margin> margins = of(asked, run);
        long full = run.events().stream()
                .filter(e -> e.kind() == EventKind.JET_FULL && e.timeS().isPresent())
                .count();
        margins.add(MarginMaker.of(MarginId.JETS)
                .value(full)
                .atLeast(asked.rig().stages().size())
                .tightBelow(1)
                .basis(AnswerText.BASIS_JETS.say())
                .cure(AnswerText.CURE_JETS)
                .make());
        return margins;
    }

    /** Highest value of a column of a run's time line. */
    static double highest(RunResult run, SeriesQuantity quantity) {
        return Arrays.stream(run.series().column(quantity).values()).max().orElseThrow();
    }
}
