package boilwright.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.gasflow.ButaneProperties;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Heating values of n-butane from enthalpies of formation at 25 degC.
 *
 * <p>Source: NIST Chemistry WebBook (values from memory): n-butane gas -125.6, carbon dioxide -393.51, water liquid -285.83,
 * water vapour -241.82 kJ/mol. C4H10 + 6.5 O2 -> 4 CO2 + 5 H2O. Atomic weights C 12.011, H 1.008. Other gross values: 49.1
 * MJ/kg (NZ Energy data file 2003); a piping manual's table has 50.33 gross and 46.46 net, 1.6 % high.
 */
@Tag("validation")
class ButaneHeatingTest {
    private static final double BUTANE = -125.6e3;
    private static final double CARBON_DIOXIDE = -393.51e3;
    private static final double WATER = -285.83e3;
    private static final double STEAM = -241.82e3;
    private static final double MOLAR_MASS = (4 * 12.011 + 10 * 1.008) / 1000;

    @Test
    void grossAndNet() {
        double gross = (BUTANE - 4 * CARBON_DIOXIDE - 5 * WATER) / MOLAR_MASS;
        double net = (BUTANE - 4 * CARBON_DIOXIDE - 5 * STEAM) / MOLAR_MASS;
        assertThat(ButaneProperties.GROSS_HEATING_VALUE).isCloseTo(gross, within(5e-4 * gross));
        assertThat(ButaneProperties.NET_HEATING_VALUE).isCloseTo(net, within(5e-4 * net));
        assertThat(gross).isCloseTo(49.5e6, within(0.05e6));
        assertThat(net / gross).isCloseTo(0.923, within(0.001));
    }

    /** A burner sold as 2.2 kW burns 160 g an hour (from memory): ratings are on the gross value. */
    @Test
    void ratingsAreOnTheGrossValue() {
        double gramsPerHour = 2200 / ButaneProperties.GROSS_HEATING_VALUE * 3.6e6;
        assertThat(gramsPerHour).isCloseTo(160, within(1.0));
    }
}
