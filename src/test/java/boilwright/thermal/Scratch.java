package boilwright.thermal;

import boilwright.fluid.*;
import boilwright.rig.*;

public class Scratch {
    public static void main(String[] a) {
        var f = TabulatedFluid.of(FluidLibrary.builtIn().find("704-type"));
        for (double p : new double[] {400, 800, 1600, 2400})
            show("flame " + p, TestRigs.fourStageGlass(TestRigs.flame(p)), f);
        show("plate", TestRigs.fourStageGlass(TestRigs.poorPlate()), f);
        show("metal 2200", TestRigs.metal150(2200), f);
        show("metal 1500", TestRigs.metal150(1500), f);
    }

    static void show(String name, Rig rig, TabulatedFluid f) {
        try {
            var v = ParameterValues.of(rig);
            long t0 = System.nanoTime();
            var solver = new SteadySolver(rig, f, v);
            var s = solver.steady();
            long t1 = System.nanoTime();
            var n = solver.needed();
            long t2 = System.nanoTime();
            System.out.printf(
                    "%s: Q %.0f W oil %.1f C pv %.1f m %.3f g/s water %.0f air %.0f fore %.2g loss %.0f body %s face %.0f mach %.2f closure %.1e needed %.0f avail %.0f at %.1f C (%s) | %.1f ms %.1f ms%n",
                    name,
                    s.heatDeliveredW(),
                    s.liquidTemperatureK() - 273.15,
                    s.boilerPressurePa(),
                    s.vapourFlowKgPerS() * 1e3,
                    s.heatToWaterW(),
                    s.heatToAirW(),
                    s.heatToForelineW(),
                    s.sourceLossW(),
                    s.sourceK(),
                    s.outerFaceK() - 273.15,
                    s.columnMach(),
                    s.closureRelative(),
                    n.heatNeededW(),
                    n.heatAvailableW(),
                    n.state().liquidTemperatureK() - 273.15,
                    n.governingStage(),
                    (t1 - t0) / 1e6,
                    (t2 - t1) / 1e6);
            for (var st : s.stages())
                System.out.printf(
                        "   %s m %.3f p0 %.1f pout %.2f lit %b full %b frac %.3f share %.3f margin %.1f wall %.1f water %.1f Q %.0f %s%n",
                        st.name(),
                        st.flowKgPerS() * 1e3,
                        st.pressurePa(),
                        st.outletPressurePa(),
                        st.lit(),
                        st.full(),
                        st.fullFlowFraction(),
                        st.condensedShare(),
                        st.filmMarginK(),
                        st.wallK() - 273.15,
                        st.waterK() - 273.15,
                        st.zoneHeatW(),
                        st.darkReason());
            System.out.printf(
                    "   stress boiler %s jacket %s liquid %.2f return %.1f superheat %.1f waterOut %s touch %.0f speed %.0f L/s%n",
                    s.boilerGlassStressPa(),
                    s.jacketGlassStressPa(),
                    s.liquidFraction(),
                    s.returnK() - 273.15,
                    s.hydrostaticSuperheatK(),
                    s.waterOutK(),
                    s.hottestOutsideK() - 273.15,
                    s.speedM3PerS() * 1e3);
        } catch (RuntimeException e) {
            System.out.println(name + " " + e);
            e.printStackTrace(System.out);
        }
    }
}
