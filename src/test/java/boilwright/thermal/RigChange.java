package boilwright.thermal;

import boilwright.rig.Cooling;
import boilwright.rig.Foreline;
import boilwright.rig.HeatSource;
import boilwright.rig.Rig;
import boilwright.rig.Schedule;
import boilwright.rig.Supply;
import boilwright.water.CircuitSolver;
import java.util.Map;
import java.util.OptionalDouble;

/** The same rig with one thing changed. */
public final class RigChange {
    private RigChange() {}

    /** Filled with another fluid. */
    public static Rig fluid(Rig r, String fluidId) {
        return rig(r, fluidId, r.heatSource(), r.schedule(), r.foreline(), r.cooling(), r.parameters());
    }

    /** Over another heat source. */
    public static Rig source(Rig r, HeatSource source) {
        return rig(r, r.fluidId(), source, r.schedule(), r.foreline(), r.cooling(), r.parameters());
    }

    /** Run to another schedule. */
    public static Rig schedule(Rig r, Schedule schedule) {
        return rig(r, r.fluidId(), r.heatSource(), schedule, r.foreline(), r.cooling(), r.parameters());
    }

    /** Run with one power all the time, as a share of the rated one. */
    public static Rig power(Rig r, double fraction) {
        return schedule(r, new Schedule(java.util.List.of(new Schedule.Power(0, fraction))));
    }

    /** With another foreline pressure. */
    public static Rig foreline(Rig r, double pressurePa) {
        return rig(
                r,
                r.fluidId(),
                r.heatSource(),
                r.schedule(),
                new Foreline.GivenPressure(pressurePa),
                r.cooling(),
                r.parameters());
    }

    /** With other cooling. */
    public static Rig cooling(Rig r, Cooling cooling) {
        return rig(r, r.fluidId(), r.heatSource(), r.schedule(), r.foreline(), cooling, r.parameters());
    }

    /** With another flow through the same cooling, m3/s, whatever drives it. */
    public static Rig waterFlow(Rig r, double flowM3PerS) {
        Cooling c = r.cooling();
        OptionalDouble capacity =
                c.supply() instanceof Supply.GivenFlow given ? given.capacityW() : OptionalDouble.empty();
        return cooling(r, new Cooling(c.inletTemperatureK(), flowM3PerS, c.elements(), capacity));
    }

    /** With the flow that its supply brings about as a measured one. */
    public static Rig measured(Rig r) {
        return waterFlow(r, CircuitSolver.operatingPoint(r).volumeFlowM3PerS());
    }

    /** The measured flow that cools it. */
    public static Supply.GivenFlow given(Rig r) {
        return (Supply.GivenFlow) r.cooling().supply();
    }

    /** With other values of uncertain defaults. */
    public static Rig parameters(Rig r, Map<String, Double> values) {
        return rig(r, r.fluidId(), r.heatSource(), r.schedule(), r.foreline(), r.cooling(), values);
    }

    private static Rig rig(
            Rig r,
            String fluidId,
            HeatSource source,
            Schedule schedule,
            Foreline foreline,
            Cooling cooling,
            Map<String, Double> parameters) {
        return new Rig(
                r.name(),
                r.note(),
                fluidId,
                r.chargeM3(),
                r.boiler(),
                r.column(),
                r.stages(),
                r.body(),
                r.topCap(),
                source,
                schedule,
                foreline,
                cooling,
                r.room(),
                r.limits(),
                r.vacuum(),
                r.protection(),
                parameters,
                r.sessionS(),
                java.util.Set.of());
    }
}
