package boilwright.thermal;

import boilwright.fluid.TabulatedFluid;
import boilwright.gasflow.Gas;
import boilwright.gasflow.PumpSpeed;
import boilwright.heattransfer.GlassStress;
import boilwright.numerics.Roots;
import boilwright.rig.Boiler;
import boilwright.rig.Material;
import boilwright.rig.Parameter;
import boilwright.rig.Rig;
import boilwright.units.Dimension;
import boilwright.units.PhysicalConstants;
import boilwright.units.QuantityWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Reads a {@link SteadyState} off a settled model. */
final class SteadyReport {

    private SteadyReport() {}

    /**
     * Reads the state.
     *
     * @param model settled model
     * @param y its state; the boiler wall is filled in from the face
     * @param faceHeatW heat through the boiler's outer face, W
     * @param faceK temperature of that face, K
     */
    static SteadyState of(PumpModel model, double[] y, double faceHeatW, double faceK) {
        Rig rig = model.rig;
        StateLayout layout = model.layout;
        double oilK = y[layout.oil];
        double wallK = model.source.heatsLiquid() ? faceK : faceK - faceHeatW * model.boiler.halfResistance();
        double intoOil = model.boiler.heatToOilW(wallK, oilK);
        double innerK = model.boiler.innerFaceK();
        double[] work = y.clone();
        work[layout.boilerWall] = wallK;
        model.source.steadyStates(work, layout.source, model.roomK);
        double[] rates = new double[layout.size];
        model.derivative(0, work, rates);
        double toWater = model.toWaterW();
        double toAir = model.toAirW();
        double toForeline = model.walls.lossKgPerS() * model.column.latentHeat();
        double closure = Math.abs(faceHeatW + model.water.loadW() - toWater - toAir - toForeline)
                / Math.max(1, Math.max(Math.abs(faceHeatW), toWater + toAir));
        double lowest = model.jets.criticalBacking(model.column.stagePa[0]);
        boolean topLit = model.jets.isLit(model.jets.stages - 1);
        double topShare = topLit ? Math.min(1, model.jets.fraction[model.jets.stages - 1]) : 0;
        double bore = rig.body().innerDiameterM();
        double speed = PumpSpeed.full(
                model.parameters.get(Parameter.SPEED_COEFFICIENT) * topShare,
                Math.PI / 4 * bore * bore,
                model.roomK,
                Gas.AIR.molarMass());
        // the derivative saw an on/off thermostat in one of its two positions; at rest it is the mean that counts
        model.source.steadyDeliveredW(faceK, oilK);
        double bodyK = model.source.steadyBodyK();
        return new SteadyState(
                oilK,
                model.column.boilerPa(),
                model.column.flow(),
                faceHeatW,
                toWater,
                toAir,
                toForeline,
                model.source.inputW(),
                model.source.lossW(),
                Double.isNaN(bodyK) ? OptionalDouble.empty() : OptionalDouble.of(bodyK),
                faceK,
                innerK,
                model.column.footMach(),
                hydrostaticSuperheat(model, oilK),
                HoldUp.liquidFraction(model, y),
                model.walls.lossKgPerS(),
                meanReturn(model),
                model.water.flows()
                        ? OptionalDouble.of(
                                model.water.outletK(y, layout.water, model.supply.enteringK(y, layout.supply)))
                        : OptionalDouble.empty(),
                model.wallGeometry.cap < 0
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(y[layout.walls + model.wallGeometry.cap]),
                model.faces.touchK(work),
                boilerStress(model, intoOil),
                bodyStress(model),
                speed,
                model.parameters.get(Parameter.THROUGHPUT_PER_POWER) * Math.max(0, faceHeatW),
                lowest,
                model.forelinePa,
                list(model.geometry.midM),
                part(y, layout.column, layout.cells),
                list(model.column.cellPa),
                stages(model, y),
                WaterReport.of(model, work),
                model.water.flow(),
                closure,
                assumptions(model));
    }

    private static double hydrostaticSuperheat(PumpModel model, double oilK) {
        if (model.column.flow() <= 0) {
            return 0;
        }
        double depth = model.rig.chargeM3() / model.rig.boiler().surfaceAreaM2();
        double surface = model.column.boilerPa();
        double bottom = surface + model.fluid.liquidDensity(oilK) * PhysicalConstants.STANDARD_GRAVITY * depth;
        return model.fluid.saturationTemperature(bottom) - model.fluid.saturationTemperature(surface);
    }

    private static double meanReturn(PumpModel model) {
        double mass = 0;
        double enthalpy = 0;
        for (int w = 0; w < model.wallGeometry.count; w++) {
            mass += model.walls.condensed[w];
            enthalpy += model.walls.condensed[w] * model.walls.returnLiquidEnthalpy[w];
        }
        for (double take : model.column.cellTake) {
            mass += take;
            enthalpy += take * model.column.cellLiquidEnthalpy(0);
        }
        return mass <= 0 ? model.roomK : liquidTemperature(model.fluid, enthalpy / mass);
    }

    /** Stress in the boiler's heated glass at this heat into the oil, W; empty where it is no glass or carries no heat. */
    static OptionalDouble boilerStress(PumpModel model, double intoOil) {
        Boiler boiler = model.rig.boiler();
        Material material = boiler.material();
        if (!material.isGlass() || model.source.heatsLiquid()) {
            return OptionalDouble.empty();
        }
        double flux =
                Math.abs(intoOil) / boiler.heatedAreaM2() * model.parameters.get(Parameter.GLASS_FLUX_PEAK_FACTOR);
        return OptionalDouble.of(stress(material, flux * boiler.wallThicknessM() / material.conductivity()));
    }

    /** Highest stress in the body's glass at the last evaluation, Pa; empty for metal. */
    static OptionalDouble bodyStress(PumpModel model) {
        Material material = model.rig.body().material();
        if (!material.isGlass()) {
            return OptionalDouble.empty();
        }
        double highest = 0;
        for (int k = 0; k < model.wallGeometry.zones; k++) {
            double drop = Math.abs(model.walls.heatW[k]) * 2 * model.wallGeometry.halfResistance[k];
            highest = Math.max(highest, drop * model.parameters.get(Parameter.GLASS_FLUX_PEAK_FACTOR));
        }
        return OptionalDouble.of(stress(material, highest));
    }

    private static double stress(Material material, double dT) {
        return GlassStress.coldFace(material.expansion(), material.youngsModulus(), material.poissonRatio(), dT);
    }

    static List<StageState> stages(PumpModel model, double[] y) {
        List<StageState> stages = new ArrayList<>();
        for (int k = 0; k < model.jets.stages; k++) {
            int node = model.nodeOfWall(k);
            stages.add(new StageState(
                    model.rig.stages().get(k).name(),
                    model.column.stageFlow[k],
                    model.column.stagePa[k],
                    model.jets.outletPa[k],
                    model.jets.isLit(k),
                    model.jets.isFull(k),
                    model.jets.fraction[k],
                    model.walls.condensedShare[k],
                    model.walls.filmMarginK[k],
                    y[model.layout.walls + k],
                    node < 0 ? model.roomK : y[model.layout.water + node],
                    model.walls.heatW[k],
                    model.jets.isLit(k) ? "" : DarkReason.of(model, k)));
        }
        return stages;
    }

    private static List<String> assumptions(PumpModel model) {
        List<String> list = new ArrayList<>();
        list.add(ModelText.ASSUMED_LAST_LEVEL.say());
        list.add(
                model.foreline.size() > 0
                        ? ModelText.ASSUMED_BACKING_AT_REST.say(
                                QuantityWriter.writeAuto(model.forelinePa, Dimension.PRESSURE))
                        : ModelText.ASSUMED_FIXED_BOUNDARIES.say());
        list.add(ModelText.ASSUMED_PROPORTIONAL.say());
        if (model.source.size() == 2) {
            list.add(ModelText.ASSUMED_WARM_CARTRIDGE.say());
        }
        if (model.walls.lossKgPerS() > 0) {
            list.add(ModelText.ASSUMED_OIL_REPLACED.say());
        }
        return list;
    }

    private static List<Double> list(double[] values) {
        return part(values, 0, values.length);
    }

    private static List<Double> part(double[] values, int start, int count) {
        List<Double> list = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            list.add(values[start + i]);
        }
        return list;
    }

    static double liquidTemperature(TabulatedFluid fluid, double enthalpy) {
        return Roots.bracketed(
                t -> fluid.liquidEnthalpy(t) - enthalpy,
                fluid.lowestTemperature(),
                fluid.highestTemperature(),
                1e-11,
                0,
                "temperature of returning oil");
    }
}
