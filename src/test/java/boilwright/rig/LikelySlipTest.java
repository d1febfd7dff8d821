package boilwright.rig;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.units.QuantityReader;
import boilwright.units.Reading;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Slips of the trade; common practice, no source. */
class LikelySlipTest {
    @ParameterizedTest
    @CsvSource({
        "heatSource.ratedPower, 2400 kW, 2400 W",
        "heatSource.ratedPower, 2.2 W, 2.2 kW",
        "heatSource.ratedPower, 30000 BTU/h, ''",
        "charge, 35 L, 35 mL",
        "charge, .06 mL, .06 L",
        "charge, 4.5 L, ''",
        "foreline.pressure, 50 Torr, 50 mTorr (50 micron)",
        "foreline.pressure, 0.05 micron, 0.05 Torr",
        "foreline.pressure, 50mbar, 50 mTorr (50 micron)",
        "boiler.innerDiameter, 120 m, 120 mm",
        "boiler.innerDiameter, 120 cm, 120 mm",
        "boiler.innerDiameter, 12 mm, 12 cm",
        "boiler.innerDiameter, 6 in, ''",
        "body.innerDiameter, 150 in, 150 mm",
        "stages[].throatGap, 1.2 m, 1.2 mm",
        "stages[].throatGap, 0.04 mm, 0.04 cm",
        "cooling.supply.flow, 1.5 L/s, 1.5 L/min",
        "cooling.supply.flow, 1500 L/min, 1500 mL/min",
        "cooling.supply.flow, 0 L/min, ''",
        "cooling.supply.inletTemperature, 64 degC, 64 degF",
        "cooling.supply.inletTemperature, 64 degF, ''",
        "cooling.supply.setPoint, 65 degC, 65 degF",
        "cooling.supply.capacity, 1800 kW, 1800 W",
        "cooling.supply.tankVolume, 4 mL, 4 L",
        "cooling.supply.staticPressure, 3 MPa, ''",
        "cooling.supply.staticPressure, 300 Pa, 300 kPa",
        "cooling.supply.pumpCurve[].head, 800 m, 800 mm",
        "cooling.supply.pumpCurve[].flow, 5 L/s, 5 L/min",
        "cooling.supply.pumpCurve[].flow, 600 L/min, 600 mL/min",
        "cooling.supply.volume, 12 m3, 12 L",
        "cooling.supply.ice, 3000 kg, 3000 g",
        "cooling.supply.airSpeed, 400 m/s, 400 ft/min",
        "cooling.supply.airSpeed, 4 ft/min, 4 m/s",
        "cooling.supply.finPitch, 4 cm, 4 mm",
        "cooling.elements[].flowAtOneBar, 1.2 L/min, ''",
        "cooling.elements[].flowAtOneBar, 0.5 L/min, 0.5 m3/h",
        "cooling.elements[].flowAtOneBar, 900 m3/h, 900 L/h",
        "cooling.elements[].height, 80 m, 80 mm",
        "schedule[].holdOil, 215 K, 215 degC",
        "schedule[].power, 80, 80 %",
        "schedule[].at, 900 min, 900 s",
        "room.pressure, 101 Pa, 101 kPa",
        "cooling.elements[].tubeLength, 5 mm, 5 m",
        "heatSource.heatCapacity, 900 kJ/K, 900 J/K",
        "boiler.wallMass, 500 kg, 500 g",
        "boiler.emissivity, 90 %, ''",
    })
    void theLikelyMeaningIsNamed(String path, String written, String meant) {
        Field field = FieldCatalogue.find(path).orElseThrow();
        Reading.Read read =
                (Reading.Read) QuantityReader.read(written, field.dimension().orElseThrow());
        Optional<String> expected = meant.isEmpty() ? Optional.empty() : Optional.of(meant);
        assertThat(LikelySlip.meant(field, written, read)).isEqualTo(expected);
    }
}
