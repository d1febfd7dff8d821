package boilwright.rig;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

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
 * @param foreline what holds the pressure below the pump
 * @param cooling the water and the elements it passes
 * @param room air temperature and pressure
 * @param limits limits that the user sets instead of the usual ones
 * @param vacuum chamber, line and gauge, when they are described
 * @param protection what acts by itself when something fails
 * @param parameters values that the user gives for uncertain defaults, by parameter id, SI
 * @param sessionS how long a session is, from heat-on to heat-off, s
 * @param guesses paths of the fields that were guessed, not measured, such as {@code stages[0].throatGap}; each is one of
 *     {@link RigPaths#of}
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
        Optional<GasSide> vacuum,
        Protection protection,
        Map<String, Double> parameters,
        double sessionS,
        Set<String> guesses) {
    public Rig {
        stages = List.copyOf(stages);
        parameters = Map.copyOf(parameters);
        guesses = Collections.unmodifiableSet(new LinkedHashSet<>(guesses));
    }

    /** A rig of which nothing is a guess, without chamber and line, with nothing that acts by itself, run in sessions of the usual length. */
    public Rig(
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
        this(
                name,
                note,
                fluidId,
                chargeM3,
                boiler,
                column,
                stages,
                body,
                topCap,
                heatSource,
                schedule,
                foreline,
                cooling,
                room,
                limits,
                Optional.empty(),
                Protection.NONE,
                parameters,
                TypicalValues.SESSION_S,
                Set.of());
    }

    /** The same rig heated by another source. */
    public Rig withHeatSource(HeatSource other) {
        return with(
                fluidId, chargeM3, boiler, other, schedule, foreline, cooling, vacuum, protection, sessionS, guesses);
    }

    /** The same rig with another vessel for its charge. */
    public Rig withBoiler(Boiler other) {
        return with(
                fluidId,
                chargeM3,
                other,
                heatSource,
                schedule,
                foreline,
                cooling,
                vacuum,
                protection,
                sessionS,
                guesses);
    }

    /** The same rig with another charge, m3, of the fluid of this id. */
    public Rig withCharge(String otherFluidId, double otherChargeM3) {
        return with(
                otherFluidId,
                otherChargeM3,
                boiler,
                heatSource,
                schedule,
                foreline,
                cooling,
                vacuum,
                protection,
                sessionS,
                guesses);
    }

    /** The same rig run to another schedule. */
    public Rig withSchedule(Schedule other) {
        return with(
                fluidId, chargeM3, boiler, heatSource, other, foreline, cooling, vacuum, protection, sessionS, guesses);
    }

    /** The same rig with other cooling. */
    public Rig withCooling(Cooling other) {
        return with(
                fluidId,
                chargeM3,
                boiler,
                heatSource,
                schedule,
                foreline,
                other,
                vacuum,
                protection,
                sessionS,
                guesses);
    }

    /** The same rig in another room. */
    public Rig withRoom(Room other) {
        return new Rig(
                name,
                note,
                fluidId,
                chargeM3,
                boiler,
                column,
                stages,
                body,
                topCap,
                heatSource,
                schedule,
                foreline,
                cooling,
                other,
                limits,
                vacuum,
                protection,
                parameters,
                sessionS,
                guesses);
    }

    /** The same rig with another backing side. */
    public Rig withForeline(Foreline other) {
        return with(
                fluidId, chargeM3, boiler, heatSource, schedule, other, cooling, vacuum, protection, sessionS, guesses);
    }

    /** The same rig with another chamber, line or gauge. */
    public Rig withVacuum(GasSide other) {
        return with(
                fluidId,
                chargeM3,
                boiler,
                heatSource,
                schedule,
                foreline,
                cooling,
                Optional.of(other),
                protection,
                sessionS,
                guesses);
    }

    /** The same rig with other trips and another stand-by supply. */
    public Rig withProtection(Protection other) {
        return with(
                fluidId, chargeM3, boiler, heatSource, schedule, foreline, cooling, vacuum, other, sessionS, guesses);
    }

    /** The same rig with other fields marked as guesses. */
    public Rig withGuesses(Set<String> paths) {
        return with(
                fluidId,
                chargeM3,
                boiler,
                heatSource,
                schedule,
                foreline,
                cooling,
                vacuum,
                protection,
                sessionS,
                paths);
    }

    /** The same rig run in sessions of another length, s. */
    public Rig withSession(double otherS) {
        return with(
                fluidId,
                chargeM3,
                boiler,
                heatSource,
                schedule,
                foreline,
                cooling,
                vacuum,
                protection,
                otherS,
                guesses);
    }

    private Rig with(
            String otherFluidId,
            double otherChargeM3,
            Boiler otherBoiler,
            HeatSource otherSource,
            Schedule otherSchedule,
            Foreline otherForeline,
            Cooling otherCooling,
            Optional<GasSide> otherVacuum,
            Protection otherProtection,
            double otherSessionS,
            Set<String> otherGuesses) {
        return new Rig(
                name,
                note,
                otherFluidId,
                otherChargeM3,
                otherBoiler,
                column,
                stages,
                body,
                topCap,
                otherSource,
                otherSchedule,
                otherForeline,
                otherCooling,
                room,
                limits,
                otherVacuum,
                otherProtection,
                parameters,
                otherSessionS,
                otherGuesses);
    }
}
