package boilwright.thermal;

import boilwright.rig.Body;
import boilwright.rig.Material;
import boilwright.rig.Rig;
import boilwright.rig.TopCap;

/**
 * The walls around the column as lumps: one zone per stage (0 to stages - 1), then the uncooled lower wall when there is
 * one, then the top cap when there is one.
 */
final class WallGeometry {
    final int zones;
    final int count;
    /** Index of the uncooled lower wall, or -1. */
    final int lower;
    /** Index of the top cap, or -1. */
    final int cap;

    final double[] heightM;
    final double[] bottomM;
    final double[] innerAreaM2;
    final double[] outerAreaM2;
    final double[] heatCapacity;
    /** Resistance of half the wall, K/W. */
    final double[] halfResistance;

    final double[] emissivityInside;
    /** Walls of the body from the boiler up: the lower wall when there is one, then the zones. */
    final int[] upward;
    /** Conductance along the body between upward[i] and upward[i + 1], W/K. */
    final double[] alongBody;
    /** Conductance along the body from the boiler to upward[0], W/K. */
    final double fromBoiler;

    WallGeometry(Rig rig, double columnHeightM) {
        Body body = rig.body();
        zones = rig.stages().size();
        boolean hasLower = body.uncooledLowerHeightM() > 0;
        lower = hasLower ? zones : -1;
        cap = rig.topCap().isPresent() ? zones + (hasLower ? 1 : 0) : -1;
        count = zones + (hasLower ? 1 : 0) + (cap >= 0 ? 1 : 0);
        heightM = new double[count];
        bottomM = new double[count];
        innerAreaM2 = new double[count];
        outerAreaM2 = new double[count];
        heatCapacity = new double[count];
        halfResistance = new double[count];
        emissivityInside = new double[count];
        double bottom = body.uncooledLowerHeightM();
        for (int k = 0; k < zones; k++) {
            double top = k == zones - 1 ? columnHeightM : rig.stages().get(k).heightM();
            tube(k, body, bottom, top - bottom);
            bottom = top;
        }
        if (hasLower) {
            tube(lower, body, 0, body.uncooledLowerHeightM());
        }
        if (cap >= 0) {
            plate(cap, rig.topCap().orElseThrow(), columnHeightM);
        }
        upward = new int[zones + (hasLower ? 1 : 0)];
        for (int i = 0; i < upward.length; i++) {
            upward[i] = hasLower ? (i == 0 ? lower : i - 1) : i;
        }
        double section = Math.PI * (body.innerDiameterM() + body.wallThicknessM()) * body.wallThicknessM();
        double perLength = body.material().conductivity() * section;
        fromBoiler = perLength / (heightM[upward[0]] / 2);
        alongBody = new double[upward.length - 1];
        for (int i = 0; i < alongBody.length; i++) {
            alongBody[i] = perLength / ((heightM[upward[i]] + heightM[upward[i + 1]]) / 2);
        }
    }

    private void tube(int w, Body body, double bottom, double height) {
        double inner = body.innerDiameterM();
        double wall = body.wallThicknessM();
        Material material = body.material();
        bottomM[w] = bottom;
        heightM[w] = height;
        innerAreaM2[w] = Math.PI * inner * height;
        outerAreaM2[w] = Math.PI * (inner + 2 * wall) * height;
        heatCapacity[w] = Math.PI * (inner + wall) * wall * height * material.density() * material.specificHeat();
        halfResistance[w] = wall / (2 * material.conductivity() * Math.PI * (inner + wall) * height);
        emissivityInside[w] = body.emissivityInside();
    }

    private void plate(int w, TopCap topCap, double bottom) {
        Material material = topCap.material();
        bottomM[w] = bottom;
        heightM[w] = topCap.thicknessM();
        innerAreaM2[w] = topCap.areaM2();
        outerAreaM2[w] = 0;
        heatCapacity[w] = topCap.areaM2() * topCap.thicknessM() * material.density() * material.specificHeat();
        halfResistance[w] = topCap.thicknessM() / (2 * material.conductivity() * topCap.areaM2());
        emissivityInside[w] = material.usualEmissivity();
    }

    /** The wall that a column cell at this height faces. */
    int facing(double heightAboveFootM) {
        if (lower >= 0 && heightAboveFootM < heightM[lower]) {
            return lower;
        }
        for (int k = 0; k < zones; k++) {
            if (heightAboveFootM < bottomM[k] + heightM[k]) {
                return k;
            }
        }
        return zones - 1;
    }
}
