package boilwright.sequence;

import boilwright.answers.Instructions;
import boilwright.answers.Say;
import boilwright.fluid.WorkingFluid;
import boilwright.rig.GasSide;
import boilwright.rig.Protection;
import boilwright.rig.Rig;
import boilwright.rig.TypicalValues;
import java.util.OptionalDouble;

/**
 * What a rig has that an order of work depends on.
 *
 * @param rig the rig
 */
record PumpSetup(Rig rig) {

    static PumpSetup of(Rig rig) {
        return new PumpSetup(rig);
    }

    /** Whether something that flows must be turned on: water, or a fan's air. */
    boolean isCooled() {
        return isFan() || !rig.cooling().elements().isEmpty();
    }

    boolean isFan() {
        return rig.cooling().supply().isAir();
    }

    boolean hasWater() {
        return isCooled() && !isFan();
    }

    boolean isFlame() {
        return rig.heatSource().isFlame();
    }

    /** Whether cold water meets glass. */
    boolean coolsGlass() {
        return hasWater() && rig.body().material().isGlass();
    }

    /** How much flows when the cooling is on, in words. */
    String coolingInWords(SimulatedRun run) {
        if (rig.cooling().supply().isAir()) {
            return SequenceText.VALUE_FAN.say();
        }
        double flow = run.check().steady().flow().volumeFlowM3PerS();
        return flow > 0 ? Say.flow(flow) : SequenceText.VALUE_NO_FLOW.say();
    }

    /** Whether the chamber is roughed past the pump; taken so when no chamber is described. */
    boolean isRoughedApart() {
        return rig.vacuum().map(side -> !side.roughing().isEmpty()).orElse(true);
    }

    /** Whether something can shut the chamber off from the pump. */
    boolean hasValve() {
        return Instructions.hasValve(rig);
    }

    /** Foreline pressure above which there must be no heat, Pa: the usual one, or that of the rig's own trip when lower. */
    double forelineLimitPa() {
        return Math.min(Rule.FORELINE_PA, forelineTripPa().orElse(Double.POSITIVE_INFINITY));
    }

    private OptionalDouble forelineTripPa() {
        return rig.protection().trips().stream()
                .filter(trip -> trip.kind() == Protection.TripKind.FORELINE_PRESSURE)
                .mapToDouble(Protection.Trip::setPoint)
                .min();
    }

    /**
     * Whether the foreline can be read before heat: a trip watches it, or a gauge over the open, dark pump is made for its
     * pressure.
     */
    boolean readsForeline() {
        if (forelineTripPa().isPresent()) {
            return true;
        }
        double limit = forelineLimitPa();
        return !isRoughedApart()
                && rig.vacuum()
                        .flatMap(GasSide::gauge)
                        .filter(g -> g.lowestPa() <= limit && limit <= g.highestPa())
                        .isPresent();
    }

    /** How long the backing pump runs before heat at least, s: longer when nobody can read the foreline. */
    double backingLeastS() {
        return readsForeline() ? Rule.BACKING_LEAST_S : Rule.BACKING_LONG_S;
    }

    /** Highest temperature at which the water should leave, K. */
    double waterOutLimitK() {
        return rig.limits().waterOutK().orElse(TypicalValues.WATER_OUT_LIMIT_K);
    }

    /** Highest oil temperature, K, when one is known. */
    OptionalDouble oilLimitK(WorkingFluid fluid) {
        return rig.limits().oilBulkK().isPresent() ? rig.limits().oilBulkK() : fluid.bulkLimit();
    }
}
