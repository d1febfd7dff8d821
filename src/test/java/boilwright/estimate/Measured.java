package boilwright.estimate;

import boilwright.estimate.OutsideMeasurements.Known;
import boilwright.fluid.FluidLibrary;
import boilwright.fluid.TabulatedFluid;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import boilwright.rig.Stage;
import boilwright.rig.file.RigReader;
import boilwright.thermal.SteadySolver;
import boilwright.thermal.SteadyState;
import java.util.List;
import java.util.Set;

/** The pumps of the demo rigs, measured from outside. */
final class Measured {
    static final FluidLibrary FLUIDS = FluidLibrary.builtIn();

    private Measured() {}

    static Rig demo(String name) {
        return RigReader.readDemo(name, FLUIDS.ids(), Set.of());
    }

    /** Six measurements (bore, height and diameter of the column, diameter of the boiler, wall, charge) and what is seen. */
    static OutsideMeasurements outside(Rig rig, Known known) {
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
                rig.heatSource().ratedPowerW(),
                known);
    }

    static RigEstimate estimate(OutsideMeasurements measured) {
        return RigEstimator.estimate(measured, FLUIDS.find(measured.fluidId()), Set.of());
    }

    static List<Double> gaps(Rig rig) {
        return rig.stages().stream().map(Stage::throatGapM).toList();
    }

    static SteadyState steady(Rig rig) {
        TabulatedFluid fluid = TabulatedFluid.of(FLUIDS.find(rig.fluidId()));
        return new SteadySolver(rig, fluid, ParameterValues.of(rig)).steady();
    }
}
