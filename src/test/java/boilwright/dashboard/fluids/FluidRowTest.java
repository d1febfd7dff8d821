package boilwright.dashboard.fluids;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.fluid.FluidLibrary;
import boilwright.fluid.FluidRecord;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** The figures of the table. */
class FluidRowTest {
    private static final FluidLibrary LIBRARY = FluidLibrary.builtIn();

    @Test
    void figuresAreThoseOfTheLibrary() {
        List<FluidRow> rows = FluidRow.all(LIBRARY, 100);
        assertThat(rows).extracting(FluidRow::id).isEqualTo(LIBRARY.workingFluids());
        for (FluidRow row : rows) {
            FluidRecord fluid = LIBRARY.find(row.id());
            double boilsK = row.boilsK().orElseThrow();
            assertThat(fluid.vapourPressure(boilsK)).isCloseTo(100, within(1e-6));
            assertThat(row.title()).isEqualTo(fluid.title());
            assertThat(row.molarMass()).isEqualTo(fluid.molarMass());
            assertThat(row.vapourPressurePa()).hasValue(fluid.vapourPressure(293.15));
            assertThat(row.latentHeat()).hasValue(fluid.latentHeat(boilsK));
            assertThat(row.bulkLimitK()).isEqualTo(fluid.bulkLimit());
            assertThat(row.airLimitK()).isEqualTo(fluid.airAdmissionLimit());
            assertThat(row.ownFile()).isEmpty();
        }
    }

    @Test
    void whatIsNotKnownIsEmptyAndSaidInWords() {
        FluidRow mercury = FluidRow.of(LIBRARY, "mercury", 100);
        assertThat(mercury.bulkLimitK()).isEmpty();
        assertThat(FluidTable.Column.BULK.text(FluidTable.Column.BULK.of(mercury), "no figure"))
                .isEqualTo("no figure");
        FluidRow farAway = FluidRow.of(LIBRARY, "704-type", 1e9);
        assertThat(farAway.boilsK()).isEmpty();
        assertThat(farAway.latentHeat()).isEmpty();
        assertThat(farAway.vapourPressurePa()).isPresent();
    }

    @Test
    void figuresAreWrittenWithTheirUnits() {
        FluidRow row = FluidRow.of(LIBRARY, "704-type", 100);
        assertThat(FluidTable.Column.MOLAR_MASS.text(FluidTable.Column.MOLAR_MASS.of(row), ""))
                .isEqualTo("485 g/mol");
        assertThat(FluidTable.Column.BULK.text(FluidTable.Column.BULK.of(row), ""))
                .endsWith(" degC");
        assertThat(FluidTable.Column.VAPOUR.text(FluidTable.Column.VAPOUR.of(row), ""))
                .endsWith(" Pa");
        assertThat(FluidTable.Column.LATENT_HEAT.text(FluidTable.Column.LATENT_HEAT.of(row), ""))
                .endsWith(" kJ/kg");
    }

    @Test
    void fluidsWithoutAFigureComeLastWhicheverWayTheTableIsSorted() {
        List<OptionalDouble> some = List.of(OptionalDouble.of(3), OptionalDouble.empty(), OptionalDouble.of(1));
        assertThat(some.stream().sorted(FluidTable.Column.order(false)).toList())
                .containsExactly(OptionalDouble.of(1), OptionalDouble.of(3), OptionalDouble.empty());
        assertThat(some.stream()
                        .sorted(FluidTable.Column.order(true).reversed())
                        .toList())
                .containsExactly(OptionalDouble.of(3), OptionalDouble.of(1), OptionalDouble.empty());
    }

    @Test
    void everyFamilyHasItsWord() {
        assertThat(FluidRow.all(LIBRARY, 100))
                .extracting(FluidRow::familyInWords)
                .containsExactly("silicone", "silicone", "phenyl ether", "hydrocarbon", "ester", "ester", "metal");
    }
}
