package boilwright.rig.file;

import static boilwright.rig.file.Texts.faults;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.rig.Cooling;
import boilwright.rig.Cooling.Place;
import boilwright.rig.ElementKind;
import boilwright.rig.FieldCatalogue;
import boilwright.rig.Material;
import boilwright.rig.Rig;
import boilwright.rig.RigPaths;
import boilwright.rig.Supply;
import boilwright.rig.SupplyKind;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The five kinds of supply and the eight kinds of element: read, given their defaults, written and read again. */
class RigReaderCoolingTest {
    private static Supply supply(String text) {
        return Texts.read(Texts.cooled(text, Texts.BOTH_COILS)).cooling().supply();
    }

    private static Cooling.Element element(String text) {
        return Texts.read(Texts.cooled(Texts.TAP, Texts.BOTH_COILS + ", " + text))
                .cooling()
                .elements()
                .get(2);
    }

    @Test
    void aFlowThatWasMeasured() {
        assertThat(supply("\"kind\": \"given-flow\", \"inletTemperature\": \"20 degC\", \"flow\": \"6 L/min\""))
                .isEqualTo(new Supply.GivenFlow(293.15, 1e-4, java.util.OptionalDouble.empty()));
    }

    @Test
    void aChillerWithARatingAndUsualSlopes() {
        Supply.Chiller chiller = (Supply.Chiller) supply(Texts.CHILLER);
        assertThat(chiller.temperatureK()).isEqualTo(291.15);
        Supply.RatedCapacity rated = (Supply.RatedCapacity) chiller.capacity();
        assertThat(rated.ratedW()).isEqualTo(1800);
        assertThat(rated.waterK()).isEqualTo(293.15);
        assertThat(rated.roomK()).isEqualTo(298.15);
        assertThat(rated.perWaterKelvin()).isCloseTo(45, within(1e-9));
        assertThat(rated.perRoomKelvin()).isCloseTo(18, within(1e-9));
        assertThat(chiller.control()).isEqualTo(Supply.Control.MODULATING);
        assertThat(chiller.hysteresisK()).isEqualTo(1);
        assertThat(chiller.volumeM3()).isEqualTo(0.004);
        assertThat(chiller.pump().heatW()).isEqualTo(60);
        assertThat(chiller.pump().curve()).hasSize(3);
        assertThat(chiller.pump().curve().get(1).headM()).isEqualTo(9);
    }

    @Test
    void aChillerThatGoesOnAndOffHasAWiderBand() {
        Supply.Chiller chiller = (Supply.Chiller) supply(Texts.CHILLER.replace("modulating", "on-off"));
        assertThat(chiller.hysteresisK()).isEqualTo(2);
        Supply.Chiller narrow =
                (Supply.Chiller) supply(Texts.CHILLER + ", \"hysteresis\": \"0.4 K\", \"pumpHeat\": \"35 W\"");
        assertThat(narrow.hysteresisK()).isEqualTo(0.4);
        assertThat(narrow.pump().heatW()).isEqualTo(35);
    }

    @Test
    void aChillerWithATable() {
        Supply.Chiller chiller = (Supply.Chiller) supply(Texts.TABLE_CHILLER);
        Supply.CapacityTable table = (Supply.CapacityTable) chiller.capacity();
        assertThat(table.points()).hasSize(6);
        assertThat(table.points().get(1)).isEqualTo(new Supply.CapacityPoint(293.15, 293.15, 1900));
    }

    @Test
    void aTap() {
        Supply.Tap tap = (Supply.Tap) supply(Texts.TAP);
        assertThat(tap.temperatureK()).isEqualTo(285.15);
        assertThat(tap.staticPressurePa()).isEqualTo(3e5);
        assertThat(tap.lineFlowAtOneBarM3PerS()).isCloseTo(2e-4, within(1e-12));
    }

    @Test
    void aBucketExchangesHeatByItsSize() {
        Supply.Tank tank = (Supply.Tank) supply(Texts.TANK);
        assertThat(tank.volumeM3()).isEqualTo(0.012);
        assertThat(tank.iceKg()).isZero();
        assertThat(tank.pump().heatW()).isEqualTo(20);
        // 55 W/(m2 K) times (0.012 m3)^(2/3), to two figures.
        assertThat(tank.airConductance()).isEqualTo(2.9);
        Supply.Tank iced = (Supply.Tank) supply(Texts.TANK.replace("21 degC", "0 degC") + ", \"ice\": \"3 kg\"");
        assertThat(iced.iceKg()).isEqualTo(3);
        assertThat(iced.temperatureK()).isEqualTo(273.15);
        Supply.Tank barrel = (Supply.Tank) supply(Texts.TANK + ", \"airConductance\": \"1.3 W/K\"");
        assertThat(barrel.airConductance()).isEqualTo(1.3);
    }

    @Test
    void finsTakeTheRoomsAir() {
        Rig rig = Texts.read(Texts.cooled(Texts.FAN, ""));
        Supply.FinsAndFan fins = (Supply.FinsAndFan) rig.cooling().supply();
        assertThat(fins)
                .isEqualTo(new Supply.FinsAndFan(rig.room().temperatureK(), 4, 0.004, 0.02, 0.001, Material.ALUMINIUM));
        Rig warm = Texts.read(Texts.cooled(Texts.FAN + ", \"airTemperature\": \"31 degC\"", ""));
        assertThat(warm.cooling().supply().temperatureK()).isEqualTo(304.15);
        Rig room = RigEdit.of("room.temperature", 300).applied(rig);
        assertThat(room.cooling().supply().temperatureK())
                .as("air of the room follows the room")
                .isEqualTo(300);
        assertThat(RigEdit.of("room.temperature", 300)
                        .applied(warm)
                        .cooling()
                        .supply()
                        .temperatureK())
                .isEqualTo(304.15);
    }

    @Test
    void everyKindOfElementHasItsDefaults() {
        assertThat(element("{ \"kind\": \"baffle-coil\", \"tubeInnerDiameter\": \"6 mm\", \"tubeLength\": \"80 cm\" }"))
                .isEqualTo(new Cooling.CooledPart(Cooling.Part.BAFFLE, 0.006, 0.8, 0, 0.2, Place.PLAIN));
        assertThat(element("{ \"kind\": \"foreline-trap\", \"name\": \"trap\", \"tubeInnerDiameter\": \"6 mm\","
                        + " \"tubeLength\": \"1 m\", \"heatLoad\": \"12 W\", \"airConductance\": \"0.1 W/K\" }"))
                .isEqualTo(
                        new Cooling.CooledPart(Cooling.Part.FORELINE_TRAP, 0.006, 1, 12, 0.1, new Place("trap", "")));
        assertThat(element("{ \"kind\": \"hose\", \"tubeInnerDiameter\": \"9 mm\", \"tubeLength\": \"2 m\" }"))
                .isEqualTo(new Cooling.Hose(0.009, 2, 0.5, Place.PLAIN));
        assertThat(element("{ \"kind\": \"rise\", \"height\": \"-1.2 m\" }"))
                .isEqualTo(new Cooling.Rise(-1.2, Place.PLAIN));
        Cooling.Valve valve = (Cooling.Valve) element("{ \"kind\": \"valve\", \"flowAtOneBar\": \"1.8 m3/h\" }");
        assertThat(valve.flowAtOneBarM3PerS()).isCloseTo(5e-4, within(1e-12));
    }

    @Test
    void branchesAreNamed() {
        Rig rig = Texts.read(Texts.cooled(Texts.TANK, Texts.IN_BRANCHES));
        assertThat(rig.cooling().elements())
                .extracting(element -> element.place().branch())
                .containsExactly("", "cap", "cap", "body", "");
        assertThat(rig.cooling().elements().get(1).place()).isEqualTo(new Place("feed", "cap"));
    }

    private static List<String> everySort() {
        List<String> texts = new ArrayList<>();
        for (String supply : List.of(Texts.CHILLER, Texts.TABLE_CHILLER, Texts.TAP, Texts.TANK)) {
            texts.add(Texts.cooled(supply, Texts.IN_BRANCHES));
        }
        texts.add(Texts.cooled(Texts.TANK.replace("21 degC", "0 degC") + ", \"ice\": \"3 kg\"", Texts.EVERY_PART));
        texts.add(Texts.cooled(Texts.FAN, ""));
        texts.add(Texts.cooled(Texts.FAN + ", \"airTemperature\": \"31 degC\"", ""));
        return texts;
    }

    @Test
    void whatWasWrittenReadsBackEqualAndWritesTheSameAgain() {
        for (String text : everySort()) {
            Rig rig = Texts.read(text);
            String written = RigWriter.write(rig);
            assertThat(Texts.read(written)).isEqualTo(rig);
            assertThat(RigWriter.write(Texts.read(written))).isEqualTo(written);
        }
    }

    @Test
    void everyQuantityCanBeSetToWhatItIsAndMarkedAsAGuess() {
        for (String text : everySort()) {
            Rig rig = Texts.read(text);
            for (String path : RigPaths.of(rig)) {
                if (path.startsWith("cooling.")
                        && RigFields.of(rig).quantity(path).isPresent()) {
                    double value = RigFields.of(rig).quantity(path).getAsDouble();
                    assertThat(RigEdit.of(path, value).applied(rig)).as(path).isEqualTo(rig);
                }
            }
            Rig marked = rig.withGuesses(java.util.Set.copyOf(RigPaths.of(rig)));
            assertThat(Texts.read(RigWriter.write(marked))).isEqualTo(marked);
        }
    }

    @Test
    void theFieldsOfOneKindAreThoseOfTheCatalogue() {
        Rig rig = Texts.read(Texts.cooled(Texts.CHILLER, Texts.BOTH_COILS));
        assertThat(RigPaths.of(rig))
                .contains(
                        "cooling.supply.kind",
                        "cooling.supply.setPoint",
                        "cooling.supply.capacity",
                        "cooling.supply.pumpCurve[2].head",
                        "cooling.elements[0].branch")
                .doesNotContain(
                        "cooling.supply.flow",
                        "cooling.supply.ice",
                        "cooling.supply.pumpCurve[3].head",
                        "cooling.elements[0].name",
                        "cooling.elements[0].height");
        assertThat(FieldCatalogue.find("cooling.supply.pumpCurve[2].head")).isPresent();
    }

    @ParameterizedTest
    @EnumSource(SupplyKind.class)
    void theFileSpellsKindsOfSupplyAsTheCatalogueDoes(SupplyKind kind) {
        assertThat(FieldCatalogue.find("cooling.supply.kind").orElseThrow().choices())
                .contains(kind.id());
    }

    @ParameterizedTest
    @EnumSource(ElementKind.class)
    void theFileSpellsKindsOfElementAsTheCatalogueDoes(ElementKind kind) {
        assertThat(FieldCatalogue.find("cooling.elements[].kind").orElseThrow().choices())
                .contains(kind.id());
        Rig rig = Texts.read(Texts.cooled(Texts.TAP, Texts.EVERY_PART));
        boolean jacket = kind == ElementKind.JACKET;
        assertThat(rig.cooling().elements())
                .extracting(Cooling.Element::kind)
                .as("a metal body with a coil has no jacket")
                .matches(kinds -> jacket || kinds.contains(kind));
    }

    @Test
    void aFaultyFileSaysNothingTwice() {
        String bad = Texts.CHILLER.replace("1.8 kW", "1.8 kg").replace("\"9 m\"", "\"9 L\"");
        assertThat(faults(Texts.cooled(bad, Texts.BOTH_COILS)))
                .hasSize(2)
                .anyMatch(f -> f.contains("cooling.supply.capacity: \"1.8 kg\" is a mass"))
                .anyMatch(f -> f.contains("cooling.supply.pumpCurve[1].head: \"9 L\" is a volume"));
        String unknown = Texts.TAP.replace("\"tap\"", "\"tab\"");
        assertThat(faults(Texts.cooled(unknown, Texts.BOTH_COILS)))
                .singleElement()
                .asString()
                .contains("cooling.supply.kind is \"tab\": did you mean \"tap\"?");
        String typo = Texts.IN_BRANCHES.replace("\"kind\": \"soldered-coil\"", "\"kind\": \"solderd-coil\"");
        assertThat(faults(Texts.cooled(Texts.TAP, typo)))
                .singleElement()
                .asString()
                .contains("did you mean \"soldered-coil\"?");
    }
}
