package boilwright.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.units.Dimension;
import boilwright.units.UnitSpelling;
import boilwright.units.UnitTable;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Conversion factors against A. Thompson and B. N. Taylor, Guide for the Use of the International System of Units (SI),
 * NIST Special Publication 811 (2008), appendix B.8 and B.9, and the temperature formulas there. The factors are from
 * memory.
 */
@Tag("validation")
class NistSp811Test {
    private static final String FILE = "/reference/nist-sp-811/appendix-b.csv";

    static Stream<String> rows() throws IOException {
        try (InputStream in = NistSp811Test.class.getResourceAsStream(FILE)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines().filter(line -> !line.startsWith("#")).skip(1).toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("rows")
    void factorAgreesToThePrintedDigits(String row) {
        String[] cells = row.split(",", -1);
        BigDecimal printed = new BigDecimal(cells[2]);
        boolean exact = "exact".equals(cells[3]);
        double halfLastDigit = printed.ulp().doubleValue() / 2;
        double rounding = 4 * Math.ulp(printed.doubleValue());
        assertThat(unit(cells[0], Dimension.valueOf(cells[1])).toSi(1.0))
                .isCloseTo(printed.doubleValue(), within(exact ? rounding : halfLastDigit));
    }

    /** T/K = t/degC + 273.15 and T/K = (t/degF + 459.67)/1.8; both exact. */
    @ParameterizedTest
    @CsvSource({
        "degC, 0, 273.15",
        "degC, 100, 373.15",
        "degF, 32, 273.15",
        "degF, 212, 373.15",
        "degF, 455, 508.15",
        "degF, -459.67, 0",
        "K, 508.15, 508.15"
    })
    void temperature(String spelling, double value, double kelvin) {
        assertThat(unit(spelling, Dimension.TEMPERATURE).toSi(value)).isCloseTo(kelvin, within(1e-10));
    }

    /** Common practice, no source: the vacuum trade's "micron" is a thousandth of a torr. */
    @Test
    void micronIsAMillitorr() {
        double micron = unit("micron", Dimension.PRESSURE).toSi(1000.0);
        assertThat(micron).isEqualTo(unit("mTorr", Dimension.PRESSURE).toSi(1000.0));
        assertThat(micron).isCloseTo(unit("Torr", Dimension.PRESSURE).toSi(1.0), within(1e-12));
    }

    private static UnitSpelling unit(String spelling, Dimension dimension) {
        Optional<UnitSpelling> unit = UnitTable.find(spelling, dimension);
        return unit.orElseThrow(() -> new AssertionError("no " + spelling + " for " + dimension));
    }
}
