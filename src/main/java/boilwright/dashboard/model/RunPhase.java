package boilwright.dashboard.model;

/**
 * A named stretch of the axis.
 *
 * @param kind what goes on
 * @param startS where it starts on the axis, s
 * @param endS where it ends on the axis, s; above startS
 */
public record RunPhase(Kind kind, double startS, double endS) {
    /** What goes on in a stretch. */
    public enum Kind {
        /** Gas leaves the oil; the heat is off or has just come on. */
        DEGAS,
        /** The oil is heated and gives no vapour yet. */
        HEAT,
        /** Vapour heats the column from the foot up. */
        FRONT_CLIMBS,
        /** Every jet carries its full flow. */
        PUMPING,
        /** Some jets are lit, not all are full. */
        PARTLY_LIT,
        /** No jet is lit. */
        NO_JET,
        /** The heat is off and the oil too hot for air. */
        COOLING,
        /** Air may be let in. */
        SAFE_TO_OPEN
    }
}
