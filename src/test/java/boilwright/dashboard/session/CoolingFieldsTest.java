package boilwright.dashboard.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import boilwright.fluid.FluidLibrary;
import boilwright.rig.Cooling;
import boilwright.rig.ElementKind;
import boilwright.rig.Field;
import boilwright.rig.FieldCatalogue;
import boilwright.rig.Rig;
import boilwright.rig.Supply;
import boilwright.rig.SupplyKind;
import boilwright.rig.file.RigFields;
import boilwright.rig.file.RigReader;
import boilwright.water.CircuitSolver;
import java.util.List;
import java.util.Set;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Supplies and elements of the cooling changed one by one, as the form changes them. */
class CoolingFieldsTest {
    private static final List<String> FLUIDS = FluidLibrary.builtIn().workingFluids();
    private static final String TABLE = "cooling.supply.capacityTable";

    private static Rig demo(String name) {
        return RigReader.readDemo(name, FLUIDS, Set.of());
    }

    private static Rig with(Rig rig, SupplyKind kind) {
        return RigFields.of(rig.withCooling(SupplyDefaults.of(kind, rig))).rig(FLUIDS);
    }

    private static double flow(Rig rig) {
        return CircuitSolver.operatingPoint(rig).volumeFlowM3PerS();
    }

    @ParameterizedTest
    @EnumSource(SupplyKind.class)
    void everyKindOfSupplyHasBelievableFiguresThatBringTheSameFlow(SupplyKind kind) {
        for (String demo : RigReader.demoNames()) {
            Rig before = demo(demo);
            Rig after = with(before, kind);
            assertThat(after.cooling().supply().kind()).isEqualTo(kind);
            RigFields fields = RigFields.of(after);
            for (Field field : FieldCatalogue.children("cooling.supply")) {
                String path = "cooling.supply." + field.name();
                if (field.kind() == Field.Kind.QUANTITY && fields.has(path)) {
                    assertThat(field.isTypical(fields.quantity(path).orElseThrow()))
                            .as(demo + " " + path)
                            .isTrue();
                }
            }
            if (kind == SupplyKind.FINS_AND_FAN) {
                assertThat(after.cooling().elements()).isEmpty();
            } else {
                assertThat(after.cooling().elements())
                        .isEqualTo(before.cooling().elements());
                // Two figures each of head, flow and line.
                assertThat(flow(after)).isCloseTo(flow(before), Percentage.withPercentage(6));
            }
        }
    }

    @Test
    void fromAirBackToWaterThereIsSomethingToCool() {
        for (String demo : RigReader.demoNames()) {
            Rig air = with(demo(demo), SupplyKind.FINS_AND_FAN);
            Rig water = with(air, SupplyKind.TAP);
            boolean glass = air.body().material().isGlass();
            assertThat(water.cooling().elements())
                    .singleElement()
                    .isInstanceOf(glass ? Cooling.Jacket.class : Cooling.SolderedCoil.class);
            assertThat(flow(water)).isPositive();
            assertThat(RigFields.of(with(air, SupplyKind.FINS_AND_FAN)).rig(FLUIDS))
                    .isEqualTo(air);
        }
    }

    @Test
    void aSupplyThatCannotLiftTheWaterCanBeReplaced() {
        Rig high = RigFields.of(demo("neon-workshop"))
                .with("cooling.elements[3].height", 5)
                .rig(FLUIDS);
        assertThatThrownBy(() -> CircuitSolver.operatingPoint(high)).hasMessageContaining("5.00 m");
        assertThat(with(high, SupplyKind.TAP).cooling().supply()).isInstanceOf(Supply.Tap.class);
    }

    @ParameterizedTest
    @EnumSource(ElementKind.class)
    void anElementOfAnyKindComesAtTheEnd(ElementKind kind) {
        Rig before = demo("mirror-club");
        boolean covers = kind == ElementKind.JACKET || kind == ElementKind.SOLDERED_COIL;
        RigFields bare = covers
                ? RigFields.of(before).with("cooling.elements[3].covers", List.of("top", "middle"))
                : RigFields.of(before);
        Rig after = FieldDefaults.newEntry(bare, "cooling.elements", kind.id()).rig(FLUIDS);
        Cooling.Element last = after.cooling().elements().get(5);
        assertThat(last.kind()).isEqualTo(kind);
        if (last instanceof Cooling.Jacket jacket) {
            assertThat(jacket.covers()).containsExactly("bottom");
        }
    }

    @Test
    void anEmptyListTakesItsFirstElement() {
        RigFields air = RigFields.of(with(demo("neon-workshop"), SupplyKind.FINS_AND_FAN));
        RigFields water = FieldDefaults.newEntry(air, "cooling.elements", "jacket");
        assertThat(water.count("cooling.elements")).isEqualTo(1);
        assertThat(water.texts("cooling.elements[0].covers")).containsExactly("bottom", "middle", "top");
    }

    @Test
    void anElementGoesBeforeTheOneThatItFollowedAndItsMarksGoAlong() {
        Rig guessed = demo("mirror-club")
                .withGuesses(Set.of("cooling.elements[2].tubeLength", "cooling.elements[3].bondConductance", "charge"));
        RigFields fields = RigFields.of(guessed);
        Rig after = fields.earlier("cooling.elements[3]").rig(FLUIDS);
        List<Cooling.Element> before = guessed.cooling().elements();
        assertThat(after.cooling().elements())
                .containsExactly(before.get(0), before.get(1), before.get(3), before.get(2), before.get(4));
        assertThat(after.guesses())
                .containsExactlyInAnyOrder(
                        "cooling.elements[3].tubeLength", "cooling.elements[2].bondConductance", "charge");
        assertThat(fields.earlier("cooling.elements[0]").rig(FLUIDS)).isEqualTo(guessed);
    }

    @Test
    void oneMoreHoseHasNoNameYet() {
        Rig rig = FieldDefaults.oneMore(RigFields.of(demo("mirror-club")), "cooling.elements[0]")
                .rig(FLUIDS);
        assertThat(rig.cooling().elements().get(1).place().name()).isEmpty();
        Rig named = FieldDefaults.added(RigFields.of(rig), "cooling.elements[1].name")
                .rig(FLUIDS);
        assertThat(named.cooling().elements().get(1).place().name()).isEqualTo("hose 1");
    }

    @Test
    void branchesComeAndGoTogether() {
        RigFields fields = RigFields.of(demo("mirror-club"));
        RigFields two = FieldDefaults.added(fields, "cooling.elements[2].branch");
        assertThat(branches(two)).containsExactly("", "", "A", "B", "");
        RigFields three = FieldDefaults.added(two, "cooling.elements[4].branch");
        assertThat(branches(three)).containsExactly("", "", "A", "B", "C");
        RigFields last = FieldDefaults.added(fields, "cooling.elements[4].branch");
        assertThat(branches(last)).containsExactly("", "", "", "B", "A");
        assertThat(branches(FieldDefaults.takenAway(two, "cooling.elements[3].branch")))
                .containsExactly("", "", "", "", "");
        assertThat(branches(FieldDefaults.takenAway(three, "cooling.elements[3]")))
                .containsExactly("", "", "A", "C");
        assertThat(branches(FieldDefaults.takenAway(two, "cooling.elements[2]")))
                .containsExactly("", "", "", "");
    }

    private static List<String> branches(RigFields fields) {
        return fields.rig(FLUIDS).cooling().elements().stream()
                .map(element -> element.place().branch())
                .toList();
    }

    @Test
    void aRatingBecomesATableOfTheSameCapacitiesAndBack() {
        RigFields rated = RigFields.of(demo("mirror-club"));
        assertThat(FieldDefaults.mayBeAdded(rated, TABLE)).isTrue();
        Rig rig = FieldDefaults.added(rated, TABLE).rig(FLUIDS);
        Supply.CapacityTable table =
                (Supply.CapacityTable) ((Supply.Chiller) rig.cooling().supply()).capacity();
        assertThat(table.points()).hasSize(4);
        // 1.8 kW at 30 and 25 degC, 45 W/K and 18 W/K: at 8 and 10 degC 1.8 kW - 22 K 45 W/K + 15 K 18 W/K.
        assertThat(table.points().get(0)).satisfies(first -> {
            assertThat(first.waterK()).isCloseTo(281.15, within(1e-9));
            assertThat(first.roomK()).isCloseTo(283.15, within(1e-9));
            assertThat(first.capacityW()).isEqualTo(1080);
        });
        RigFields tabled = RigFields.of(rig);
        assertThat(FieldDefaults.mayBeAdded(tabled, "cooling.supply.capacity")).isTrue();
        assertThat(FieldDefaults.mayBeAdded(tabled, "cooling.supply.ratedRoomTemperature"))
                .isFalse();
        Rig back = FieldDefaults.added(tabled, "cooling.supply.capacity").rig(FLUIDS);
        Supply.RatedCapacity again =
                (Supply.RatedCapacity) ((Supply.Chiller) back.cooling().supply()).capacity();
        assertThat(again.waterK()).isCloseTo(291.15, within(1e-9));
        assertThat(again.ratedW())
                .isIn(table.points().stream()
                        .map(Supply.CapacityPoint::capacityW)
                        .toList());
    }

    @Test
    void aRatingIsWholeOrNotThere() {
        assertThat(FieldDefaults.mayBeLeftOut("cooling.supply.capacity")).isFalse();
        assertThat(FieldDefaults.mayBeLeftOut("cooling.supply.ratedRoomTemperature"))
                .isFalse();
        assertThat(FieldDefaults.mayBeLeftOut("cooling.supply.capacityPerRoomKelvin"))
                .isTrue();
        assertThat(FieldDefaults.mayBeLeftOut("cooling.supply.pumpHeat")).isTrue();
        assertThat(FieldDefaults.mayBeLeftOut("cooling.supply.tankVolume")).isFalse();
    }

    @Test
    void aCurveIsReplacedAsAWholeAndIsNoGuessAnyMore() {
        Rig guessed = demo("neon-workshop").withGuesses(Set.of("cooling.supply.pumpCurve[1].head", "charge"));
        Rig rig = RigFields.of(guessed)
                .withRows("cooling.supply.pumpCurve", List.of(List.of(0.0, 2.0), List.of(1e-4, 0.5)))
                .rig(FLUIDS);
        assertThat(((Supply.Tank) rig.cooling().supply()).pump().curve())
                .containsExactly(new Supply.CurvePoint(0, 2), new Supply.CurvePoint(1e-4, 0.5));
        assertThat(rig.guesses()).containsExactly("charge");
    }
}
