package boilwright.thermal;

import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;

/** Why a jet is not lit, in a practitioner's words. */
final class DarkReason {
    /** Share of the boiler's flow below which a jet gets nothing. */
    private static final double NOTHING = 1e-6;

    private DarkReason() {}

    static String of(PumpModel model, int k) {
        String name = model.rig.stages().get(k).name();
        VapourColumn column = model.column;
        JetModes jets = model.jets;
        if (column.flow() <= 0) {
            return ModelText.DARK_NO_VAPOUR.say(name, pressure(model.forelinePa));
        }
        if (column.stageFlow[k] < NOTHING * column.flow()) {
            return ModelText.DARK_COLUMN_TAKES_ALL.say(name);
        }
        if (jets.fraction[k] < JetModes.LIT_AT) {
            return ModelText.DARK_TOO_LITTLE.say(name, percent(jets.fraction[k]));
        }
        if (jets.holding(k, column.stagePa[k]) < 1) {
            return ModelText.DARK_BACK_PRESSURE.say(
                    name, pressure(jets.outletPa[k]), pressure(jets.holdablePa(column.stagePa[k])));
        }
        return ModelText.DARK_WARM_WALL.say(name, percent(model.walls.condensedShare[k]));
    }

    private static String percent(double share) {
        return Long.toString(Math.round(100 * share));
    }

    private static String pressure(double pa) {
        return QuantityWriter.writeAuto(pa, Dimension.PRESSURE);
    }
}
