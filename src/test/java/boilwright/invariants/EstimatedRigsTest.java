package boilwright.invariants;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.estimate.Knowns;
import boilwright.estimate.OutsideMeasurements;
import boilwright.estimate.OutsideMeasurements.Known;
import boilwright.estimate.RigEstimate;
import boilwright.estimate.RigEstimator;
import boilwright.fluid.FluidLibrary;
import boilwright.fluid.TabulatedFluid;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import boilwright.rig.SourceKind;
import boilwright.rig.file.RigReader;
import boilwright.rig.file.RigWriter;
import boilwright.thermal.NeededState;
import boilwright.thermal.SteadySolver;
import boilwright.thermal.SteadyState;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;

/** Whatever pump is measured from outside: the estimated rig is a good file, and the model answers. */
class EstimatedRigsTest {
    private static final FluidLibrary FLUIDS = FluidLibrary.builtIn();

    @Property(seed = "3102", shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
    void estimatedRigsPassTheReaderAndAnswer(@ForAll("measurements") OutsideMeasurements measured) throws IOException {
        RigEstimate estimate = RigEstimator.estimate(measured, FLUIDS.find(measured.fluidId()), Set.of());
        Rig rig = estimate.rig();
        Path file = Files.createTempFile("estimated", ".json");
        try {
            Files.writeString(file, RigWriter.write(rig));
            assertThat(RigReader.read(file, FLUIDS.ids(), Set.of())).isEqualTo(rig);
        } finally {
            Files.delete(file);
        }
        assertThat(rig.guesses()).hasSameSizeAs(estimate.guesses());
        SteadySolver solver =
                new SteadySolver(rig, TabulatedFluid.of(FLUIDS.find(rig.fluidId())), ParameterValues.of(rig));
        SteadyState steady = solver.steady();
        assertThat(steady.closureRelative()).isLessThanOrEqualTo(SteadySolver.CLOSURE_LIMIT);
        assertThat(steady.boilerPressurePa()).isPositive();
        NeededState needed = solver.needed();
        assertThat(needed.heatNeededW()).isPositive().isFinite();
    }

    /** What somebody finds out from outside about a rig that somebody could have built. */
    @Provide
    Arbitrary<OutsideMeasurements> measurements() {
        return Combinators.combine(
                        RandomRigs.rigs(RandomRigs.FLUIDS, List.of(SourceKind.values())),
                        Arbitraries.doubles().between(0.5, 1.2).optional(0.4))
                .as(EstimatedRigsTest::measured);
    }

    private static OutsideMeasurements measured(Rig rig, Optional<Double> works) {
        double power = rig.heatSource().ratedPowerW();
        return new OutsideMeasurements(
                "",
                rig.body().material(),
                rig.body().innerDiameterM(),
                rig.stages().size(),
                rig.column().heightM(),
                rig.column().segments().get(0).innerDiameterM(),
                rig.boiler().innerDiameterM(),
                rig.body().wallThicknessM(),
                rig.chargeM3(),
                rig.fluidId(),
                rig.heatSource().kind(),
                power,
                works.map(share -> Knowns.withWorksAt(Known.NOTHING, share * power))
                        .orElse(Known.NOTHING));
    }
}
