package boilwright.units;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.Counts;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every entry of the table converts, both ways and to the last bit, as the units of JSR-385 do. */
class JsrUnitsTest {
    private static final int VALUES = Counts.of(400, 2000);

    @ParameterizedTest
    @MethodSource("boilwright.units.UnitTableTest#everySpelling")
    void everySpellingConvertsAsTheUnitOfTheLibrary(UnitSpelling unit) {
        JsrUnits.Conversion library = JsrUnits.find(unit.text(), unit.dimension());
        assertThat(library).as(unit.text()).isNotNull();
        Random random = new Random(385);
        for (int i = 0; i < VALUES; i++) {
            double value = i < 200 ? i / 10.0 : Math.pow(10, 24 * random.nextDouble() - 12);
            assertThat(unit.toSi(value))
                    .as("%s %s", value, unit)
                    .isEqualTo(library.toSi().applyAsDouble(value));
            assertThat(unit.fromSi(value))
                    .as("%s %s", value, unit)
                    .isEqualTo(library.fromSi().applyAsDouble(value));
        }
    }
}
