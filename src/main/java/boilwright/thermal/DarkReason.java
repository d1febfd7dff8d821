package boilwright.thermal;

import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;

/** Why a jet is not lit, in a practitioner's words. */
final class DarkReason {
    private DarkReason() {}

    static String of(PumpModel model, int k) {
        String name = model.rig.stages().get(k).name();
        VapourColumn column = model.column;
        JetModes jets = model.jets;
        if (column.flow() <= 0) {
            return "Jet " + name + " stays dark: the oil's vapour pressure does not reach the foreline pressure of "
                    + pressure(model.forelinePa) + ".";
        }
        if (column.stageFlow[k] <= 0) {
            return "Jet " + name + " stays dark: all vapour condenses in the column below it.";
        }
        if (jets.fraction[k] < JetModes.LIT_AT) {
            return "Jet " + name + " stays dark: it carries " + Math.round(100 * jets.fraction[k])
                    + " % of its full flow, and half is needed.";
        }
        if (jets.holding(k, column.stagePa[k]) < 1) {
            return "Jet " + name + " stays dark: " + pressure(jets.outletPa[k])
                    + " stands against it, more than the " + pressure(jets.holdablePa(column.stagePa[k]))
                    + " it can hold.";
        }
        return "Jet " + name + " stays dark: only " + Math.round(100 * model.walls.condensedShare[k])
                + " % of its vapour condenses on the wall, which is too warm.";
    }

    private static String pressure(double pa) {
        return QuantityWriter.writeAuto(pa, Dimension.PRESSURE);
    }
}
