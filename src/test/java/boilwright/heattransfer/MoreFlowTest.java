package boilwright.heattransfer;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

/** More flow never transfers less heat and never loses less pressure, across every change of regime. */
class MoreFlowTest {
    private static final double STEP = 1.004;
    private static final double LEAST = 0.1;
    private static final double MOST = 2e5;
    // rounding of the last digits, nothing more
    private static final double ROUNDING = 1 - 1e-12;

    private interface OfReynolds {
        double value(double reynolds);
    }

    private static void neverFalls(OfReynolds of) {
        double before = of.value(0);
        for (double reynolds = LEAST; reynolds < MOST; reynolds *= STEP) {
            double now = of.value(reynolds);
            assertThat(now).as("Re %s", reynolds).isFinite().isGreaterThanOrEqualTo(before * ROUNDING);
            before = now;
        }
    }

    /** No jump where a formula gives way to another. */
    private static void neverJumps(OfReynolds of, double... where) {
        for (double reynolds : where) {
            double change = of.value(reynolds * (1 + 1e-9)) / of.value(reynolds * (1 - 1e-9)) - 1;
            assertThat(change).as("Re %s", reynolds).isBetween(-1e-7, 1e-7);
        }
    }

    @Property(seed = "7102", shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
    void heatTransferInGaps(
            @ForAll AnnulusWall wall,
            @ForAll @Scale(5) @DoubleRange(min = 0.1, max = 0.999) double ratio,
            @ForAll @Scale(5) @DoubleRange(min = 0.7, max = 300) double prandtl,
            @ForAll @Scale(5) @DoubleRange(min = 0, max = 0.5) double dOverL,
            @ForAll @Scale(5) @DoubleRange(min = 0, max = 60) double floor) {
        neverFalls(re -> AnnulusFlow.nusselt(wall, ratio, re, prandtl, dOverL, floor));
        neverJumps(re -> AnnulusFlow.nusselt(wall, ratio, re, prandtl, dOverL, floor), 2300, 4000);
    }

    @Property(seed = "7103", shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
    void heatTransferInCoils(
            @ForAll @Scale(5) @DoubleRange(min = 0.7, max = 300) double prandtl,
            @ForAll @Scale(5) @DoubleRange(min = 0, max = 0.2) double curvature,
            @ForAll @Scale(5) @DoubleRange(min = 0, max = 0.2) double dOverL,
            @ForAll @Scale(5) @DoubleRange(min = 0, max = 60) double floor) {
        neverFalls(re -> CoilFlow.nusselt(re, prandtl, curvature, dOverL, floor));
        neverJumps(
                re -> CoilFlow.nusselt(re, prandtl, curvature, dOverL, floor),
                SchmidtCoil.criticalReynolds(curvature),
                2.2e4);
    }

    @Property(seed = "7104", shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
    void pressureLossInTubesGapsAndCoils(
            @ForAll @Scale(5) @DoubleRange(min = 0, max = 0.02) double roughness,
            @ForAll @Scale(5) @DoubleRange(min = 0.1, max = 0.999) double ratio,
            @ForAll @Scale(5) @DoubleRange(min = 0.001, max = 0.15) double curvature) {
        // pressure goes with f Re times velocity: already f Re itself must not fall
        neverFalls(re -> ChurchillFriction.timesReynolds(re, roughness));
        neverFalls(re -> AnnulusFriction.timesReynolds(re, ratio, roughness));
        neverFalls(re -> MishraGupta.timesReynolds(re, curvature, roughness));
        neverJumps(re -> MishraGupta.timesReynolds(re, curvature, roughness), 1, 1 / Math.sqrt(curvature));
    }

    @Property(seed = "7105", shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
    void airAcrossBodiesAndThroughFins(@ForAll @Scale(5) @DoubleRange(min = 0.65, max = 0.75) double prandtl) {
        neverFalls(re -> ChurchillBernstein.nusselt(re, prandtl));
        neverFalls(re -> PlateFinChannel.nusselt(re, prandtl));
    }

    @Property(seed = "7106", shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
    void moreFlowTakesMoreHeatAndLeavesColder(
            @ForAll @Scale(5) @DoubleRange(min = 0.1, max = 5000) double conductance,
            @ForAll @Scale(5) @DoubleRange(min = 280, max = 370) double wallK) {
        double inletK = 275;
        double heat = 0;
        double outlet = wallK;
        for (double rate = 0.01; rate < 1e4; rate *= 1.2) {
            double now = EffectivenessNtu.heat(conductance, rate, wallK, inletK);
            double out = EffectivenessNtu.outlet(conductance, rate, wallK, inletK);
            assertThat(now).isGreaterThanOrEqualTo(heat * ROUNDING);
            assertThat(now).isLessThanOrEqualTo(conductance * (wallK - inletK) * (1 + 1e-12));
            assertThat(out).isBetween(inletK, outlet * (1 + 1e-15));
            heat = now;
            outlet = out;
        }
    }
}
