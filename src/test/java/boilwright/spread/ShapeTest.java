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

    /** Half of the mass on each side of the nominal value, in proportion there; by hand. */
    @Test
    void uniformValuesLieInProportionOnEachSide() {
        assertThat(Shape.UNIFORM.at(0, 2, 3, 6)).isEqualTo(2);
        assertThat(Shape.UNIFORM.at(0.25, 2, 3, 6)).isEqualTo(2.5);
        assertThat(Shape.UNIFORM.at(0.5, 2, 3, 6)).isEqualTo(3);
        assertThat(Shape.UNIFORM.at(0.75, 2, 3, 6)).isEqualTo(4.5);
        assertThat(Shape.UNIFORM.at(1, 2, 3, 6)).isEqualTo(6);
        // outside a range that somebody gave, the range alone counts
        assertThat(Shape.UNIFORM.at(0.25, 2, 9, 6)).isEqualTo(3);
    }

    /** The middle of each side of a logarithmic range is its geometric mean. */
    @Test
    void logUniformValuesLieInProportionToTheirLogarithms() {
        assertThat(Shape.LOG_UNIFORM.at(0, 20, 40, 160)).isEqualTo(20);
        assertThat(Shape.LOG_UNIFORM.at(0.25, 20, 45, 80)).isCloseTo(30, within(1e-12));
        assertThat(Shape.LOG_UNIFORM.at(0.5, 20, 40, 160)).isCloseTo(40, within(1e-12));
        assertThat(Shape.LOG_UNIFORM.at(0.75, 20, 40, 160)).isCloseTo(80, within(1e-12));
        assertThat(Shape.LOG_UNIFORM.at(1, 20, 40, 160)).isCloseTo(160, within(1e-12));
    }

    /** Each side of the triangle by its area: half-way to the nominal value lies a quarter of that side. */
    @Test
    void triangularValuesFollowTheAreaOfTheTriangle() {
        assertThat(Shape.TRIANGULAR.at(0, 0, 1, 4)).isEqualTo(0);
        assertThat(Shape.TRIANGULAR.at(0.125, 0, 1, 4)).isCloseTo(0.5, within(1e-12));
        assertThat(Shape.TRIANGULAR.at(0.5, 0, 1, 4)).isCloseTo(1, within(1e-12));
        assertThat(Shape.TRIANGULAR.at(0.875, 0, 1, 4)).isCloseTo(2.5, within(1e-12));
        assertThat(Shape.TRIANGULAR.at(1, 0, 1, 4)).isEqualTo(4);
    }

    /** No insulation is an end of its range: half of the samples have none. */
    @ParameterizedTest
    @EnumSource(Shape.class)
    void aNominalValueAtAnEndIsHalfOfTheSamples(Shape shape) {
        assertThat(shape.at(0.3, 1, 1, 3)).isEqualTo(1);
        assertThat(shape.at(0.6, 1, 1, 3)).isGreaterThan(1);
        assertThat(shape.at(0.7, 1, 3, 3)).isEqualTo(3);
        assertThat(shape.at(0.4, 1, 3, 3)).isLessThan(3);
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
        assertThat(tally.quantile(0.5).getAsDouble())
                .isCloseTo(parameter.nominal(), within(2.0 / SAMPLES * (parameter.high() - parameter.low()) * 3));
    }
}
