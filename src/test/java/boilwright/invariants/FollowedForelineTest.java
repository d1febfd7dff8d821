package boilwright.invariants;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.fluid.FluidLibrary;
import boilwright.fluid.TabulatedFluid;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import boilwright.thermal.RunResult;
import boilwright.thermal.RunSimulator;
import boilwright.thermal.SeriesQuantity;
import boilwright.vacuum.BackingSide;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;

/** Random rigs over a backing pump whose pressure follows the gas of the oil. */
class FollowedForelineTest {
    /** A few times what the integration allows itself in the foreline's pressure, Pa. */
    private static final double INTEGRATION_PA = 0.02;

    private static final List<String> FLUIDS = List.of("704-type", "705-type", "medium-hydrocarbon");

    @Provide
    Arbitrary<Rig> rigs() {
        return RandomRigs.overABackingPump(FLUIDS);
    }

    /** Heat closes as with a given pressure; oil gives its air off, the foreline rises over it and comes back to rest. */
    @Property(tries = 8, seed = "5201", shrinking = ShrinkingMode.OFF)
    void warmUpClosesAndTheForelineComesBackToRest(@ForAll("rigs") Rig rig) {
        TabulatedFluid fluid = TabulatedFluid.of(FluidLibrary.builtIn().find(rig.fluidId()));
        RunResult run = RunSimulator.warmup(rig, fluid, ParameterValues.of(rig), new CancelToken(), ProgressSink.NONE);
        assertThat(run.balance().closureRelative()).isLessThan(1e-3);
        double[] foreline = run.series().column(SeriesQuantity.FORELINE).values();
        double[] dissolved = run.series().column(SeriesQuantity.DISSOLVED_GAS).values();
        double rest = BackingSide.of(rig).restingPa();
        for (double pressure : foreline) {
            assertThat(pressure).isGreaterThan(rest - INTEGRATION_PA);
        }
        int last = foreline.length - 1;
        if (dissolved[last] < 0.01) {
            assertThat(foreline[last] / rest).isCloseTo(1, within(0.1));
        }
    }
}
