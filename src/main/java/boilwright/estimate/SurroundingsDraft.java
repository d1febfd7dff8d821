package boilwright.estimate;

import boilwright.rig.Cooling;
import boilwright.rig.ElementKind;
import boilwright.rig.Foreline;
import boilwright.rig.ForelineKind;
import boilwright.rig.Room;
import boilwright.rig.Stage;
import boilwright.rig.SupplyKind;
import boilwright.rig.TypicalValues;
import boilwright.units.PhysicalConstants;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;

/** Water, foreline and room as they usually are; all of it is from memory. */
final class SurroundingsDraft {
    /** 50 mTorr. */
    private static final double FORELINE_PA = 6.666;

    private final OutsideMeasurements measured;
    private final GuessBook book;

    SurroundingsDraft(OutsideMeasurements measured, GuessBook book) {
        this.measured = measured;
        this.book = book;
    }

    Foreline foreline() {
        OptionalDouble known = measured.known().forelinePa();
        if (known.isEmpty()) {
            // Nobody described the backing pump either.
            book.mark("foreline.kind", ForelineKind.GIVEN_PRESSURE, EstimateText.BASIS_FORELINE);
        }
        return new Foreline.GivenPressure(
                known.isPresent()
                        ? known.getAsDouble()
                        : book.quantity("foreline.pressure", FORELINE_PA, EstimateText.BASIS_FORELINE));
    }

    Room room() {
        return new Room(
                book.exactly("room.temperature", TypicalValues.ROOM_K, EstimateText.BASIS_ROOM),
                book.exactly(
                        "room.pressure", PhysicalConstants.STANDARD_ATMOSPHERE_PA, EstimateText.BASIS_AIR_PRESSURE));
    }

    Cooling cooling(List<Stage> stages) {
        OptionalDouble inlet = measured.known().waterInletK();
        double inletK = inlet.isPresent()
                ? inlet.getAsDouble()
                : book.exactly(
                        "cooling.supply.inletTemperature", TypicalValues.WATER_INLET_K, EstimateText.BASIS_WATER_INLET);
        if (measured.known().airCooled()) {
            return new Cooling(inletK, 0, List.of(), OptionalDouble.empty());
        }
        OptionalDouble flow = measured.known().waterFlowM3PerS();
        double usualFlow =
                TypicalValues.waterFlowM3PerS(WorkingPower.usual(measured).ratingW());
        if (flow.isEmpty()) {
            // Whatever drives it: a flow that is guessed stands for a supply that nobody described.
            book.mark("cooling.supply.kind", SupplyKind.GIVEN_FLOW, EstimateText.BASIS_WATER_FLOW);
        }
        double flowM3PerS = flow.isPresent()
                ? flow.getAsDouble()
                : book.quantity("cooling.supply.flow", usualFlow, EstimateText.BASIS_WATER_FLOW);
        return new Cooling(inletK, flowM3PerS, List.of(element(stages)), OptionalDouble.empty());
    }

    private Cooling.Element element(List<Stage> stages) {
        String at = "cooling.elements[0].";
        EstimateText basis = EstimateText.BASIS_COOLING_ELEMENT;
        List<String> names = new ArrayList<>(stages.stream().map(Stage::name).toList());
        Collections.reverse(names);
        ElementKind kind = measured.material().isGlass() ? ElementKind.JACKET : ElementKind.SOLDERED_COIL;
        book.mark(at + "kind", kind, basis);
        List<String> covers = book.mark(at + "covers", names, basis);
        if (kind == ElementKind.JACKET) {
            return new Cooling.Jacket(
                    covers,
                    book.quantity(at + "gap", TypicalValues.JACKET_GAP_M, basis),
                    book.quantity(at + "shellThickness", measured.wallM(), basis));
        }
        double turn = Math.PI * (measured.boreM() + 2 * measured.wallM());
        return new Cooling.SolderedCoil(
                covers,
                book.quantity(at + "tubeInnerDiameter", TypicalValues.COIL_BORE_M, basis),
                book.quantity(at + "tubeLength", turn * measured.columnHeightM() / TypicalValues.COIL_PITCH_M, basis),
                book.exactly(at + "bondConductance", TypicalValues.BOND_CONDUCTANCE, basis));
    }
}
