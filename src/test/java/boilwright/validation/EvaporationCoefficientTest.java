package boilwright.validation;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.rig.Parameter;
import boilwright.rig.Rig;
import boilwright.thermal.RigChange;
import boilwright.thermal.SteadyState;
import boilwright.thermal.TestRigs;
import boilwright.thermal.ThermalProbe;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * A surface that evaporates badly makes the pool hotter; it does not only pass less vapour.
 *
 * <p>Source: measured evaporation coefficients from 0.1 to 1 for one liquid: I. W. Eames, N. J. Marr, H. Sabir, Int. J. Heat
 * Mass Transfer 40 (1997) 2963; far below 1 for a still, uncleaned surface: K. C. D. Hickman, summary in Vacuum 2 (1952).
 */
@Tag("validation")
class EvaporationCoefficientTest {
    @Test
    void aTorpidSurfaceRunsHotter() {
        Rig rig = TestRigs.fourStageGlass(TestRigs.flame(1600));
        SteadyState clean = ThermalProbe.steady(rig);
        SteadyState torpid =
                ThermalProbe.steady(RigChange.parameters(rig, Map.of(Parameter.EVAPORATION_COEFFICIENT.id(), 0.1)));
        assertThat(torpid.liquidTemperatureK()).isGreaterThan(clean.liquidTemperatureK() + 5);
        // the same heat must still leave as vapour
        assertThat(torpid.vapourFlowKgPerS() / clean.vapourFlowKgPerS()).isBetween(0.85, 1.0);
    }
}
