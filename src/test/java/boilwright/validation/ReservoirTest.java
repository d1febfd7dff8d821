package boilwright.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.fluid.DewPoint;
import boilwright.fluid.Water;
import boilwright.fluid.WaterSaturation;
import boilwright.heattransfer.StirredTank;
import com.hummeling.if97.IF97;
import com.hummeling.if97.OutOfRangeException;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Tank, ice and the heat a stream carries. Exact balances worked out apart from the program, and rules of the trade as
 * marked.
 */
@Tag("validation")
class ReservoirTest {
    private static final IF97 IAPWS = new IF97(IF97.UnitSystem.SI);

    /** 10 L (4180 J/(kg K), 1 kg/L), 800 W in, 500 W out: 0.4306 K/min, 25.8 K/h (exact). */
    @Test
    void tankWithASmallChiller() {
        double rate = StirredTank.heatingRate(800, 500, 10 * 4180.0);
        assertThat(rate * 60).isCloseTo(0.4306, within(1e-4));
        assertThat(StirredTank.temperature(290, 300, 0, 295, 41800, 3600) - 290).isCloseTo(25.8, within(0.05));
    }

    /** 5 kg of ice at 800 W last 2088 s with 334 kJ/kg (exact); the program's 333.6 kJ/kg is 0.2 percent below. */
    @Test
    void ice() {
        assertThat(StirredTank.meltingTime(5, 334e3, 800)).isCloseTo(2087.5, within(1e-9));
        assertThat(StirredTank.meltingTime(5, Water.FUSION_HEAT, 800)).isCloseTo(2088, within(5.0));
    }

    /** Common practice, no source: 1 kW into 1 L/min raises it by 14.3 K. Properties between 15 and 30 degrees Celsius. */
    @Test
    void aKilowattAndALitreAMinute() {
        double inlet = 288.15;
        double flow = 1e-3 / 60 * Water.density(inlet);
        double outlet = inlet + 14.3;
        double heat = flow * (Water.enthalpy(outlet) - Water.enthalpy(inlet));
        assertThat(heat).isCloseTo(1000, within(5.0));
    }

    /** Practice sheet for chillers: 10 US gallons a minute, 12 degrees Fahrenheit: 60 000 Btu/h, 5 tons, 17.58 kW. */
    @Test
    void chillerOfTheTrade() {
        double inlet = 285.15;
        double flow = 10 * 3.785411784e-3 / 60 * Water.density(293.15);
        double heat = flow * (Water.enthalpy(inlet + 12 / 1.8) - Water.enthalpy(inlet));
        assertThat(heat).isCloseTo(17580, within(70.0));
    }

    /**
     * Magnus against IAPWS R7-97: the saturation pressure within 0.4 percent (what Alduchov and Eskridge state) from 0 to 50
     * degrees Celsius.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0.01, 5, 10, 20, 30, 40, 50})
    void magnus(double celsius) throws OutOfRangeException {
        double t = celsius + 273.15;
        assertThat(DewPoint.saturationPressure(t) / IAPWS.saturationPressureT(t))
                .isCloseTo(1, within(0.004));
    }

    /** The dew point by Magnus against the one on IAPWS R7-97's saturation line, above freezing. */
    @ParameterizedTest
    @ValueSource(doubles = {15, 20, 25, 30, 40})
    void dewPoint(double celsius) throws OutOfRangeException {
        double t = celsius + 273.15;
        for (double humidity = 0.4; humidity <= 1; humidity += 0.1) {
            double exact = WaterSaturation.temperature(humidity * IAPWS.saturationPressureT(t));
            assertThat(DewPoint.temperature(t, humidity)).isCloseTo(exact, within(0.05));
        }
    }
}
