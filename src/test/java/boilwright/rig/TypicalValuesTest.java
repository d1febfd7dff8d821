package boilwright.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.dashboard.session.SourceDefaults;
import boilwright.estimate.Knowns;
import boilwright.estimate.OutsideMeasurements;
import boilwright.estimate.OutsideMeasurements.Known;
import boilwright.estimate.RigEstimator;
import boilwright.fluid.FluidLibrary;
import boilwright.rig.file.RigFields;
import boilwright.rig.file.RigReader;
import boilwright.rig.file.SourceLibrary;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import boilwright.units.UnitTable;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Whoever speaks of a typical value speaks of the same one. */
class TypicalValuesTest {
    private static final FluidLibrary FLUIDS = FluidLibrary.builtIn();

    static Arguments[] explained() {
        return new Arguments[] {
            Arguments.of("boiler.insulationConductivity", TypicalValues.BOILER_INSULATION_CONDUCTIVITY, "W/(m K)"),
            Arguments.of("heatSource.insulationConductivity", TypicalValues.HEATER_INSULATION_CONDUCTIVITY, "W/(m K)"),
            Arguments.of("heatSource.lossEmissivity", TypicalValues.LOSS_EMISSIVITY, "1"),
            Arguments.of("cooling.elements[].bondConductance", TypicalValues.BOND_CONDUCTANCE, "W/(m K)"),
            Arguments.of("cooling.elements[].airConductance", TypicalValues.PART_TO_AIR, "W/K"),
            Arguments.of("cooling.elements[].airConductancePerMetre", TypicalValues.HOSE_TO_AIR, "W/(m K)"),
            Arguments.of("cooling.supply.pumpHeat", TypicalValues.CHILLER_PUMP_HEAT_W, "W"),
            Arguments.of("cooling.supply.pumpHeat", TypicalValues.TANK_PUMP_HEAT_W, "W"),
            Arguments.of("cooling.supply.capacityPerWaterKelvin", TypicalValues.CAPACITY_PER_WATER_K, "%"),
            Arguments.of("cooling.supply.capacityPerRoomKelvin", TypicalValues.CAPACITY_PER_ROOM_K, "%"),
            Arguments.of("cooling.supply.hysteresis", TypicalValues.CHILLER_BAND_MODULATING_K, "K"),
            Arguments.of("cooling.supply.hysteresis", TypicalValues.CHILLER_BAND_ON_OFF_K, "K"),
            Arguments.of("piece.vaneAngle", Math.toDegrees(TypicalValues.VANE_ANGLE), "degrees"),
        };
    }

    @ParameterizedTest
    @MethodSource("explained")
    void theExplanationOfAFieldNamesIt(String path, double value, String unit) {
        Field field =
                FieldCatalogue.find(path.replace("piece.", "vacuum.line[].")).orElseThrow();
        String written = switch (unit) {
            case "degrees" -> Math.round(value) + " degrees";
            case "1" -> Double.toString(value);
            default ->
                QuantityWriter.exact(
                        value,
                        UnitTable.find(
                                        unit,
                                        unit.equals("%")
                                                ? Dimension.FRACTION
                                                : field.dimension().orElseThrow())
                                .orElseThrow());
        };
        assertThat(FieldTexts.explanation(field)).contains(written);
    }

    /** The library's figures are those of single things; what is typical lies within what it believes possible of them. */
    @Test
    void theLimitsLieWithinTheRangesOfTheLibrary() {
        Rig demo = RigReader.readDemo("mirror-club", FLUIDS.workingFluids(), Set.of());
        for (OfferedSource offered : SourceLibrary.builtIn().sources()) {
            double typical =
                    SourceDefaults.of(offered.source().kind(), demo).limitK().orElse(Double.NaN);
            boolean small = offered.id().startsWith("hot-plate-500");
            offered.ranges().stream()
                    .filter(range -> range.field().equals("limit") && !small)
                    .forEach(range -> assertThat(typical).as(offered.id()).isBetween(range.low(), range.high()));
        }
    }

    /** Fields without a size in them are the same to the last bit, those with one to the figures that each writes. */
    @ParameterizedTest
    @EnumSource(SourceKind.class)
    void aFormStartsFromTheSourceThatAnEstimateAssumes(SourceKind kind) {
        Material material = kind == SourceKind.HEATING_MANTLE ? Material.BOROSILICATE : Material.MILD_STEEL;
        OutsideMeasurements measured = new OutsideMeasurements(
                "",
                material,
                0.1,
                2,
                0.2,
                0.05,
                0.1,
                0.003,
                1.5e-4,
                "704-type",
                kind,
                800,
                Knowns.withThroatGaps(Known.NOTHING, List.of(6e-4, 9e-4)));
        Rig estimated = RigEstimator.estimate(measured, FLUIDS.find("704-type"), Set.of())
                .rig();
        RigFields there = RigFields.of(estimated);
        RigFields offered = RigFields.of(estimated.withHeatSource(SourceDefaults.of(kind, estimated)));
        for (Field field : FieldCatalogue.children("heatSource")) {
            String path = field.path();
            if (!path.equals("heatSource.contactConductance") && there.has(path)) {
                assertThat(offered.has(path)).as(path).isTrue();
                if (field.kind() == Field.Kind.QUANTITY) {
                    double expected = there.quantity(path).orElseThrow();
                    assertThat(offered.quantity(path).orElseThrow())
                            .as(path)
                            .isCloseTo(expected, within(path.endsWith("limit") ? 0 : 0.05 * expected));
                } else if (field.kind() == Field.Kind.CHOICE) {
                    assertThat(offered.text(path)).as(path).isEqualTo(there.text(path));
                }
            }
        }
    }
}
