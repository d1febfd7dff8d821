package boilwright.thermal;

import boilwright.fluid.TabulatedFluid;
import boilwright.numerics.OdeDriver;
import boilwright.numerics.OdeSystem;
import boilwright.numerics.Roots;
import boilwright.numerics.StabilizedExplicit;
import boilwright.numerics.Tolerances;
import boilwright.rig.Body;
import boilwright.rig.Boiler;
import boilwright.rig.Column;
import boilwright.rig.Cooling;
import boilwright.rig.Foreline;
import boilwright.rig.HeatSource;
import boilwright.rig.Limits;
import boilwright.rig.Material;
import boilwright.rig.Parameter;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import boilwright.rig.Room;
import boilwright.rig.Schedule;
import boilwright.rig.Stage;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A vapour column on its own: the program's geometry, march and cell heat balance, with the oil, the body wall and the
 * foreline held. The column stands in a body at room temperature, loses to it by one constant coefficient and has no jet
 * that vapour could reach.
 */
public final class ColumnBench {
    private final PumpModel model;
    private final double[] y;
    private final double[] heat;
    private double time;
    private double[] moving;

    /**
     * Sets it up, cold.
     *
     * @param fluid fluid
     * @param segment the column; its outside radiates nothing
     * @param lossW loss coefficient of the outside, W/(m2 K)
     * @param forelinePa foreline pressure, Pa
     * @param roomK room temperature, K
     * @param cells number of cells
     * @param axialConduction whether heat goes along the wall
     */
    public ColumnBench(
            TabulatedFluid fluid,
            Column.Segment segment,
            double lossW,
            double forelinePa,
            double roomK,
            int cells,
            boolean axialConduction) {
        double bore = segment.innerDiameterM();
        Rig rig = new Rig(
                "column",
                "",
                fluid.id(),
                1e-3,
                new Boiler(Material.STAINLESS, 0.5, 0.002, 0.1, 0.1, 0.1, 0, 1, 0.5, OptionalDouble.empty()),
                new Column(List.of(segment)),
                List.of(new Stage("end", segment.heightM(), bore, 1e-6)),
                new Body(Material.STAINLESS, 2 * bore, 0.002, 0, 0.5, 0.5),
                Optional.empty(),
                new HeatSource.GasBurner(0, Optional.empty()),
                new Schedule(List.of(new Schedule.Power(0, 0))),
                new Foreline.GivenPressure(forelinePa),
                new Cooling(roomK, 0, List.of(), OptionalDouble.empty()),
                new Room(roomK, 101325),
                Limits.USUAL,
                Map.of(Parameter.THIN_GAS_CONDUCTANCE.id(), lossW));
        model = new PumpModel(rig, fluid, ParameterValues.of(rig), cells);
        if (!axialConduction) {
            Arrays.fill(model.geometry.axialConductance, 0);
        }
        y = model.coldState();
        heat = new double[cells];
        moving = new double[cells + 2];
        Arrays.fill(moving, 0, cells, roomK);
    }

    /** Heat that the cold column takes from vapour of this oil temperature, W. */
    private double powerW(double oilK) {
        y[model.layout.oil] = oilK;
        model.modesChanged();
        model.solveFlows(y);
        return model.column.flow() * (model.column.vapourEnthalpy() - model.column.cellLiquidEnthalpy(0));
    }

    /** Holds the oil where the cold column takes this heat, W. */
    public void holdPower(double powerW) {
        double still = model.fluid.saturationTemperature(model.forelinePa);
        y[model.layout.oil] = Roots.bracketed(t -> powerW(t) - powerW, still, still + 5, 1e-13, 0, "oil temperature");
        model.modesChanged();
    }

    /** Goes on to this time, s. */
    public void runTo(double until) {
        int cells = model.geometry.cells;
        double[] absolute = new double[cells + 2];
        Arrays.fill(absolute, 0, cells, 2e-3);
        absolute[cells] = 1e-9;
        absolute[cells + 1] = 1e-3;
        moving = new OdeDriver(new Cells(), new StabilizedExplicit(), new Tolerances(1e-6, absolute))
                .run(time, moving, until)
                .state();
        time = until;
        load(moving);
    }

    private void load(double[] state) {
        System.arraycopy(state, 0, y, model.layout.column, model.geometry.cells);
        model.modesChanged();
        model.solveFlows(y);
    }

    private final class Cells implements OdeSystem {
        @Override
        public int size() {
            return moving.length;
        }

        @Override
        public boolean isAutonomous() {
            return true;
        }

        @Override
        public void derivative(double t, double[] state, double[] rates) {
            int cells = model.geometry.cells;
            load(state);
            model.columnHeat(y, heat);
            for (int j = 0; j < cells; j++) {
                rates[j] = heat[j] / model.geometry.heatCapacity[j];
            }
            // what leaks through the throat once all is warm does not condense here
            double condensing = Arrays.stream(model.column.cellTake).sum();
            rates[cells] = condensing;
            rates[cells + 1] = condensing * (model.column.vapourEnthalpy() - model.column.cellLiquidEnthalpy(0));
        }
    }

    /** Vapour condensed so far, kg. */
    public double condensateKg() {
        return moving[model.geometry.cells];
    }

    /** Heat given up by the vapour so far, J. */
    public double heatJ() {
        return moving[model.geometry.cells + 1];
    }

    /** Heat stored in the column's wall, J, above room temperature. */
    public double storedJ() {
        double stored = 0;
        for (int j = 0; j < model.geometry.cells; j++) {
            stored += model.geometry.heatCapacity[j] * (moving[j] - model.roomK);
        }
        return stored;
    }

    /** Heat capacity of the column's wall, J/K. */
    public double heatCapacity() {
        return Arrays.stream(model.geometry.heatCapacity).sum();
    }

    /** Heat stored as a length of wall at the vapour's temperature, m. */
    public double heatedLengthM(double excessK) {
        double length = 0;
        for (int j = 0; j < model.geometry.cells; j++) {
            length += model.geometry.cellM[j] * (moving[j] - model.roomK) / excessK;
        }
        return length;
    }

    /** Height at which the wall is half way from room to vapour temperature, m. */
    public double frontM(double excessK) {
        double half = model.roomK + excessK / 2;
        int j = 0;
        while (j < model.geometry.cells && moving[j] > half) {
            j++;
        }
        if (j == 0 || j == model.geometry.cells) {
            throw new AssertionError("no front in the column");
        }
        double share = (moving[j - 1] - half) / (moving[j - 1] - moving[j]);
        return model.geometry.midM[j - 1] + share * (model.geometry.midM[j] - model.geometry.midM[j - 1]);
    }

    /** Cell temperatures, K, from the bottom. */
    public double[] cellsK() {
        return Arrays.copyOf(moving, model.geometry.cells);
    }

    /** Middle heights of the cells, m. */
    public double[] heightsM() {
        return model.geometry.midM.clone();
    }
}
