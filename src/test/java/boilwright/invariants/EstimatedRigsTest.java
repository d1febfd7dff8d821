package boilwright.invariants;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.estimate.OutsideMeasurements;
import boilwright.estimate.OutsideMeasurements.Known;
import boilwright.estimate.RigEstimate;
import boilwright.estimate.RigEstimator;
import boilwright.fluid.FluidLibrary;
import boilwright.fluid.TabulatedFluid;
import boilwright.rig.Material;
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
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;

/** Whatever pump is measured from outside: the estimated rig is a good file, and the model answers. */
class EstimatedRigsTest {
    private static final FluidLibrary FLUIDS = FluidLibrary.builtIn();
    private static final List<Material> METALS = List.of(Material.STAINLESS, Material.MILD_STEEL, Material.ALUMINIUM);

    @Property(tries = 80, seed = "3102", shrinking = ShrinkingMode.BOUNDED)
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

    @Provide
    Arbitrary<OutsideMeasurements> measurements() {
        return Arbitraries.doubles()
                .between(0, 1)
                .ofScale(6)
                .array(double[].class)
                .ofSize(20)
                .map(numbers -> measured(new Draw(numbers)));
    }

    private static OutsideMeasurements measured(Draw draw) {
        SourceKind kind = draw.of(List.of(SourceKind.values()));
        double bore = draw.ratio(0.035, 0.25);
        boolean glass = kind != SourceKind.CLAMPED_HEATER && bore < 0.1 && draw.chance(0.6);
        double boiler = bore * (glass ? draw.between(1.2, 2.2) : draw.between(0.95, 1.1));
        double wall = glass ? draw.between(0.0015, 0.003) : draw.between(0.001, 0.004);
        int stages = 1 + (int) (3.999 * draw.between(0, 1));
        double column = bore * draw.between(0.35, glass ? 0.62 : 0.7);
        double power = bore / 0.0254 * draw.ratio(glass ? 100 : 250, glass ? 500 : 800);
        Known known = draw.chance(0.4) ? Known.NOTHING.withWorksAt(power * draw.between(0.5, 1.2)) : Known.NOTHING;
        return new OutsideMeasurements(
                "",
                glass ? Material.BOROSILICATE : draw.of(METALS),
                bore,
                stages,
                Math.max(0.12, bore * draw.between(1.5, 3.5)),
                column,
                boiler,
                wall,
                Math.max(1.2e-5, Math.PI / 4 * boiler * boiler * draw.between(0.006, 0.03)),
                draw.of(List.of("704-type", "705-type", "five-ring-polyphenyl-ether", "medium-hydrocarbon", "mercury")),
                kind,
                power,
                known);
    }
}
