package boilwright.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.rig.Column;
import boilwright.rig.Material;
import boilwright.thermal.ColumnBench;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A vapour front that climbs a cold tube, against the exact solution.
 *
 * <p>Source: derived, from the energy balance of a flat front (the idea is that of the flat-front theory of gas-loaded
 * heat pipes: B. D. Marcus, NASA CR-2018, 1972, from memory). All of a constant heat P condenses at the front and behind
 * it; the wall has the heat capacity c' and the loss g' per metre and, behind the front, the excess temperature dT:
 * c' dT dL/dt = P - g' dT L, so L = Linf (1 - exp(-t/tau)) with Linf = P/(g' dT) and tau = c'/g'. Tube: borosilicate, 40 mm
 * outside, 1.8 mm wall (2230 kg/m3, 830 J/(kg K)), loss 10 W/(m2 K), dT 200 K, P 150 W, 220 kJ/kg.
 *
 * <p>What is driven is the program's own column: geometry, march of the vapour (each cell gets what is left), condensation
 * and cell heat balance, 200 cells, axial conduction included. The fluid gives up latent heat only and its film has no
 * resistance, as the solution supposes. Constant heat comes from holding oil temperature and foreline pressure: the flow at
 * the foot is then at its cap, whatever the column does above.
 */
@Tag("validation")
class VapourFrontTest {
    private static final double EXCESS_K = 200;
    private static final double ROOM_K = 293.15;
    private static final double[] TIME_S = {60, 120, 300, 600, 1200};
    private static final double[] FRONT_M = {0.10257, 0.18752, 0.36437, 0.50629, 0.58309};
    private static final double[] LOSS_FREE_M = {0.11255, 0.22510, 0.56276};

    private static ColumnBench tube(double lossW, boolean axialConduction) {
        return new ColumnBench(
                new ConstantFluid(ROOM_K + EXCESS_K, 220e3, 1e-3).tabulated(),
                new Column.Segment(0.65, 0.0364, 0.0018, Material.BOROSILICATE, 0),
                lossW,
                ConstantFluid.BOILING_PA,
                ROOM_K,
                200,
                axialConduction);
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void theFrontClimbsAndStops(boolean axialConduction) {
        ColumnBench tube = tube(10, axialConduction);
        tube.holdPower(150);
        for (int i = 0; i < TIME_S.length; i++) {
            tube.runTo(TIME_S[i]);
            assertThat(tube.frontM(EXCESS_K) / FRONT_M[i])
                    .as("front after %s s", TIME_S[i])
                    .isCloseTo(1, within(0.01));
            assertThat(tube.heatedLengthM(EXCESS_K) / FRONT_M[i])
                    .as("heated length after %s s", TIME_S[i])
                    .isCloseTo(1, within(0.01));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 10})
    void itIsSharp(double lossW) {
        ColumnBench tube = tube(lossW, false);
        tube.holdPower(150);
        tube.runTo(300);
        double front = tube.frontM(EXCESS_K);
        double[] heights = tube.heightsM();
        double[] cells = tube.cellsK();
        double cell = heights[1] - heights[0];
        for (int j = 0; j < cells.length; j++) {
            if (heights[j] < front - 2 * cell) {
                assertThat(cells[j]).isCloseTo(ROOM_K + EXCESS_K, within(0.005 * EXCESS_K));
            } else if (heights[j] > front + 2 * cell) {
                assertThat(cells[j]).isCloseTo(ROOM_K, within(0.005 * EXCESS_K));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void withoutLossItClimbsEvenly(boolean axialConduction) {
        ColumnBench tube = tube(0, axialConduction);
        tube.holdPower(150);
        for (int i = 0; i < LOSS_FREE_M.length; i++) {
            tube.runTo(TIME_S[i]);
            assertThat(tube.frontM(EXCESS_K) / LOSS_FREE_M[i])
                    .as("front after %s s", TIME_S[i])
                    .isCloseTo(1, within(0.01));
        }
        // once through half a metre, latent heat alone: 0.1817 kg
        assertThat(tube.condensateKg() * 0.5 / tube.heatedLengthM(EXCESS_K) / 0.1817)
                .isCloseTo(1, within(0.005));
    }
}
