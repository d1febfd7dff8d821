package boilwright.fluid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every equation form against its formula worked out apart from the program, and its slope against a difference. */
class EquationFormTest {
    /** Form, coefficients, temperature in K, value. */
    @ParameterizedTest
    @CsvSource({
        "CONSTANT, 4.5, 300, 4.5",
        "LINEAR, 205000 -240 473.15, 573.15, 181000",
        "POLYNOMIAL, 1 2 3, 10, 321",
        "POLYNOMIAL, 1 0 0 0 0 1, 10, 100001",
        "EXPANSION, 1000 1e-3 300, 400, 904.837418035960",
        "LOG10_INVERSE, 5 1000, 500, 1000",
        "LOG10_VOGEL, -1 400 100, 300, 10",
        "LN_ANTOINE, 10 1000 -100, 200, 1",
        "DIPPR_101, 1 -600 2 0.01 1, 300, 665015.0489037583",
        "DIPPR_105, 0.5 0.25 600 0.5, 450, 4",
        "DIPPR_106, 800 0.06 1 0.5 0.5, 400, 0.02313316238111911",
        "WAGNER, 1000 5 -6 1 2 2, 500, 0.03368973499542734"
    })
    void isItsFormula(EquationForm form, String coefficients, double t, double value) {
        double[] c = Arrays.stream(coefficients.split(" "))
                .mapToDouble(Double::parseDouble)
                .toArray();
        assertThat(form.takes(c.length)).isTrue();
        Relation relation = form.relation(c);
        assertThat(relation.value(t) / value).isCloseTo(1, within(1e-6));
        double difference = (relation.value(t + 1e-3) - relation.value(t - 1e-3)) / 2e-3;
        assertThat(relation.slope(t)).isCloseTo(difference, within(1e-6 * Math.abs(difference) + 1e-12));
        Relation scaled = Relation.scaled(relation, 3);
        assertThat(scaled.value(t)).isCloseTo(3 * relation.value(t), within(1e-12 * Math.abs(3 * value)));
        assertThat(scaled.slope(t)).isCloseTo(3 * relation.slope(t), within(1e-9 * Math.abs(difference)));
    }

    @Test
    void namesAreThoseOfTheFiles() {
        assertThat(EquationForm.LOG10_INVERSE.text()).isEqualTo("log10-inverse");
        assertThat(EquationForm.of("dippr-106")).contains(EquationForm.DIPPR_106);
        assertThat(EquationForm.of("DIPPR-106")).isEmpty();
        assertThat(EquationForm.WAGNER.takes(5)).isFalse();
        assertThat(EquationForm.POLYNOMIAL.takes(7)).isFalse();
    }

    @Test
    void integralOfAPolynomialIsZeroWhereItIsCountedFrom() {
        Relation.Polynomial heat = new Relation.Polynomial(100, new double[] {1000, 2, -0.001});
        Relation.Polynomial enthalpy = heat.integralFrom(273.15);
        assertThat(enthalpy.value(273.15)).isCloseTo(0, within(1e-9));
        assertThat(enthalpy.slope(400)).isCloseTo(heat.value(400), within(1e-9));
    }
}
