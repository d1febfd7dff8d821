package boilwright.estimate;

import boilwright.rig.HeatSource;
import boilwright.rig.Material;
import boilwright.rig.SourceKind;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a person can find out about a pump without cutting it open, SI. Ranges are those of the field catalogue for the
 * fields that the values become.
 *
 * @param name what the rig is called; empty: named after size and material
 * @param material glass, or the metal of body and boiler
 * @param boreM inner diameter of the body at the top jet, m
 * @param stages number of jets
 * @param columnHeightM height of the column from the boiler to the top jet, m
 * @param columnDiameterM inner diameter of the column, m
 * @param boilerDiameterM inner diameter of the boiler at the oil level, m
 * @param wallM wall thickness of the body, m
 * @param chargeM3 volume of the cold charge, m3
 * @param fluidId id of the working fluid
 * @param source kind of heat source
 * @param ratedPowerW its rating, W: electrical, or fuel on the gross heating value
 * @param known what else is known
 */
public record OutsideMeasurements(
        String name,
        Material material,
        double boreM,
        int stages,
        double columnHeightM,
        double columnDiameterM,
        double boilerDiameterM,
        double wallM,
        double chargeM3,
        String fluidId,
        SourceKind source,
        double ratedPowerW,
        Known known) {

    /** The same with another rating of the source, W. */
    OutsideMeasurements withRatedPower(double powerW) {
        return new OutsideMeasurements(
                name,
                material,
                boreM,
                stages,
                columnHeightM,
                columnDiameterM,
                boilerDiameterM,
                wallM,
                chargeM3,
                fluidId,
                source,
                powerW,
                known);
    }

    /**
     * The heater that a pump was sold with.
     *
     * @param powerW its rating, W
     * @param kind what it was
     */
    public record Nameplate(double powerW, SourceKind kind) {
        /** A nameplate that does not say what the heater was: metal pumps are sold with a clamped heater, glass ones with a mantle. */
        public static Nameplate of(double powerW, Material material) {
            return new Nameplate(powerW, material.isGlass() ? SourceKind.HEATING_MANTLE : SourceKind.CLAMPED_HEATER);
        }
    }

    /**
     * What some people know and others do not.
     *
     * @param contact how the boiler stands on a plate
     * @param sourceLimitK temperature at which plate, mantle or heater is held, K
     * @param insulationM thickness of the insulation round the boiler, m; 0 for a bare one
     * @param airCooled true when no water cools the body
     * @param waterInletK water temperature at the inlet, K
     * @param waterFlowM3PerS water flow, m3/s
     * @param forelinePa pressure that the backing pump holds, Pa
     * @param throatGapsM throat gaps from the bottom to the top, m; empty when they are not known
     * @param worksAtW power of this source at which the pump is known to work, W
     * @param nameplate what the pump's own nameplate says, apart from the source in use
     */
    public record Known(
            Optional<HeatSource.Contact> contact,
            OptionalDouble sourceLimitK,
            OptionalDouble insulationM,
            boolean airCooled,
            OptionalDouble waterInletK,
            OptionalDouble waterFlowM3PerS,
            OptionalDouble forelinePa,
            List<Double> throatGapsM,
            OptionalDouble worksAtW,
            Optional<Nameplate> nameplate) {
        /** Nothing of it is known. */
        public static final Known NOTHING = new Known(
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                false,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                List.of(),
                OptionalDouble.empty(),
                Optional.empty());

        public Known {
            throatGapsM = List.copyOf(throatGapsM);
        }
    }
}
