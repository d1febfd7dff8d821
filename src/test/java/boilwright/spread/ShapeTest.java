package boilwright.spread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.numerics.SobolPoints;
import boilwright.numerics.Tally;
import boilwright.rig.Parameter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ShapeTest {
    private static final int SAMPLES = 4096;

    /** The inverse of a uniform distribution, by hand. */
    @Test
    void uniformValuesLieInProportion() {
        assertThat(Shape.UNIFORM.at(0, 2, 9, 6)).isEqualTo(2);
        assertThat(Shape.UNIFORM.at(0.25, 2, 9, 6)).isEqualTo(3);
        assertThat(Shape.UNIFORM.at(1, 2, 9, 6)).isEqualTo(6);
    }

    /** The middle of a logarithmic range is its geometric mean. */
    @Test
    void logUniformValuesLieInProportionToTheirLogarithms() {
        assertThat(Shape.LOG_UNIFORM.at(0, 20, 40, 80)).isEqualTo(20);
        assertThat(Shape.LOG_UNIFORM.at(0.5, 20, 40, 80)).isCloseTo(40, within(1e-12));
        assertThat(Shape.LOG_UNIFORM.at(1, 20, 40, 80)).isEqualTo(80);
    }

    /** The triangle's area by hand: below the likeliest value lies (c - a)/(b - a), and half-way up to it a quarter of that. */
    @Test
    void triangularValuesFollowTheAreaOfTheTriangle() {
        assertThat(Shape.TRIANGULAR.at(0, 0, 1, 4)).isEqualTo(0);
        assertThat(Shape.TRIANGULAR.at(0.25, 0, 1, 4)).isCloseTo(1, within(1e-12));
        assertThat(Shape.TRIANGULAR.at(0.0625, 0, 1, 4)).isCloseTo(0.5, within(1e-12));
        assertThat(Shape.TRIANGULAR.at(1, 0, 1, 4)).isEqualTo(4);
        // a likeliest value at an end is a triangle too
        assertThat(Shape.TRIANGULAR.at(0.25, 0, 0, 1)).isCloseTo(1 - Math.sqrt(0.75), within(1e-12));
    }

    @ParameterizedTest
    @EnumSource(Parameter.class)
    void everyDefaultIsDrawnOverItsRangeByItsShape(Parameter parameter) {
        Shape shape = Shape.of(parameter);
        SobolPoints points = new SobolPoints(Parameter.values().length, 7);
        Tally tally = new Tally();
        for (int i = 0; i < SAMPLES; i++) {
            double u = points.point(i)[parameter.ordinal()];
            double value = shape.at(u, parameter.low(), parameter.nominal(), parameter.high());
            assertThat(value).isBetween(parameter.low(), parameter.high());
            tally.add(value);
        }
        boolean logarithmic = parameter.shape() == Parameter.Shape.LOG_UNIFORM;
        for (double share : new double[] {0.1, 0.5, 0.9}) {
            double expected = logarithmic
                    ? Math.exp((1 - share) * Math.log(parameter.low()) + share * Math.log(parameter.high()))
                    : (1 - share) * parameter.low() + share * parameter.high();
            assertThat(tally.quantile(share).getAsDouble())
                    .isCloseTo(expected, within(2.0 / SAMPLES * (parameter.high() - parameter.low()) * 3));
        }
    }
}
