package boilwright.rig;

import java.util.List;
import java.util.Set;

/**
 * What acts by itself when something fails.
 *
 * @param trips switches that cut the heat
 * @param battery what goes on without mains
 */
public record Protection(List<Trip> trips, Battery battery) {
    /** Nothing acts by itself. */
    public static final Protection NONE = new Protection(List.of(), new Battery(Set.of(), 0));

    public Protection {
        trips = List.copyOf(trips);
    }

    /**
     * A switch that cuts the heat.
     *
     * @param kind what it watches
     * @param setPoint where it trips: K, m3/s or Pa
     * @param delayS how long the value must stand beyond it, s
     */
    public record Trip(TripKind kind, double setPoint, double delayS) {}

    /** What a trip watches. */
    public enum TripKind {
        /** Boiler wall or plate too hot. */
        BOILER_TEMPERATURE,
        /** Body wall too hot. */
        BODY_TEMPERATURE,
        /** Water leaving too hot. */
        WATER_TEMPERATURE,
        /** Too little water flows. */
        WATER_FLOW,
        /** Foreline pressure too high. */
        FORELINE_PRESSURE
    }

    /**
     * A battery or other stand-by supply.
     *
     * @param keeps what it keeps running
     * @param forS for how long, s; 0 for none
     */
    public record Battery(Set<Load> keeps, double forS) {
        public Battery {
            keeps = Set.copyOf(keeps);
        }
    }

    /** What a battery may keep running. */
    public enum Load {
        WATER,
        BACKING_PUMP,
        FAN
    }
}
