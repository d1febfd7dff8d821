package boilwright.rig;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One vapour-jet pump with its heat source, charge, cooling and room, in SI. Built by the file reader, which checks every
 * field against the {@link FieldCatalogue}; never changed afterwards.
 *
 * @param name short name that people read
 * @param note free text, may be empty
 * @param fluidId id of the working fluid in the fluid data
 * @param chargeM3 volume of the cold charge, m3
 * @param boiler the vessel that holds the charge
 * @param column the vapour column, from the boiler up
 * @param stages the jets, bottom to top; at least one
 * @param body the condensing wall around the column
 * @param topCap the plate or cap over the top jet, when there is one
 * @param heatSource what heats the boiler
 * @param schedule what the source is told to do against time
 * @param foreline the pressure the backing pump holds
 * @param cooling the water and the elements it passes
 * @param room air temperature and pressure
 * @param limits limits that the user sets instead of the usual ones
 * @param parameters values that the user gives for uncertain defaults, by parameter id, SI
 */
public record Rig(
        String name,
        String note,
        String fluidId,
        double chargeM3,
        Boiler boiler,
        Column column,
        List<Stage> stages,
        Body body,
        Optional<TopCap> topCap,
        HeatSource heatSource,
        Schedule schedule,
        Foreline foreline,
        Cooling cooling,
        Room room,
        Limits limits,
        Map<String, Double> parameters) {
    public Rig {
        stages = List.copyOf(stages);
        parameters = Map.copyOf(parameters);
    }
}
