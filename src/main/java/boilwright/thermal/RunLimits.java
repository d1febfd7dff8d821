package boilwright.thermal;

import boilwright.fluid.TabulatedFluid;
import boilwright.rig.Limits;
import boilwright.rig.TypicalValues;
import java.util.List;
import java.util.OptionalDouble;

/** Limits that are watched while a rig runs. */
final class RunLimits {

    /** Names of the limits, as the events call them. */
    static final List<String> NAMES = List.of("oil too hot", "water out too hot", "cap too hot");

    /** Cartridge temperature above which it may burst, K (50 C, the usual warning on cartridges; common practice). */
    static final double CARTRIDGE_K = 323.15;
    /** Share of the charge at which a run ends because the boiler is as good as dry. */
    static final double LEAST_CHARGE = 0.05;
    /** Boiler pressure beyond which no jet pump works, Pa (150 Torr). */
    private static final double WILD_PA = 2e4;
    /** Room left below the fluid table's end, K. */
    private static final double TABLE_MARGIN_K = 25;

    private RunLimits() {}

    /** Oil temperature at which a run is ended: no vapour-jet pump works there. */
    static double wildOilK(TabulatedFluid fluid) {
        return Math.min(fluid.highestTemperature() - TABLE_MARGIN_K, fluid.saturationTemperature(WILD_PA));
    }

    static void watch(PumpModel model, RunWatches watches) {
        Limits limits = model.rig.limits();
        StateLayout at = model.layout;
        OptionalDouble bulk = limits.oilBulkK().isPresent() ? limits.oilBulkK() : model.fluid.bulkLimit();
        bulk.ifPresent(limit -> watches.note(WatchKind.LIMIT, NAMES.get(0), (t, y) -> y[at.oil] - limit));
        if (model.water.flows()) {
            double limit = limits.waterOutK().orElse(TypicalValues.WATER_OUT_LIMIT_K);
            watches.note(
                    WatchKind.LIMIT,
                    NAMES.get(1),
                    (t, y) -> model.water.outletK(y, at.water, model.supply.enteringK(y, at.supply)) - limit);
        }
        if (model.wallGeometry.cap >= 0) {
            double limit = limits.capK().orElse(TypicalValues.CAP_LIMIT_K);
            watches.note(WatchKind.LIMIT, NAMES.get(2), (t, y) -> y[at.walls + model.wallGeometry.cap] - limit);
        }
    }
}
