package boilwright.thermal;

import boilwright.numerics.StepHandler;
import boilwright.numerics.StepInterpolant;
import boilwright.rig.SupplyKind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Writes the time line of a run down: at every start, at the end of every step, and in between where steps are long. */
final class SeriesRecorder implements StepHandler {
    private static final double LONGEST_GAP_S = 30;

    private record Spec(
            String key, String title, TimeSeries.Kind kind, int stage, ToDoubleFunction<double[]> reading) {}

    private static final class Growing {
        private double[] values = new double[256];
        private int size;

        void add(double v) {
            if (size == values.length) {
                values = Arrays.copyOf(values, 2 * size);
            }
            values[size++] = v;
        }

        double[] trimmed() {
            return Arrays.copyOf(values, size);
        }
    }

    private final PumpModel model;
    private final RunSystem system;
    private final RestDetector rest;
    private final double[] work;
    private final double[] rates;
    private final List<Spec> specs = new ArrayList<>();
    private final List<Growing> data = new ArrayList<>();
    private final Growing times = new Growing();
    private final List<double[]> cells = new ArrayList<>();

    SeriesRecorder(PumpModel model, RunSystem system, RestDetector rest) {
        this.rest = rest;
        this.model = model;
        this.system = system;
        work = new double[model.layout.size];
        rates = new double[model.layout.size];
        describe();
        for (int i = 0; i < specs.size(); i++) {
            data.add(new Growing());
        }
    }

    private void describe() {
        StateLayout at = model.layout;
        add("liquidTemperatureK", "oil", TimeSeries.Kind.TEMPERATURE, 0, y -> y[at.oil]);
        add("boilerWallK", "boiler wall", TimeSeries.Kind.TEMPERATURE, 0, y -> y[at.boilerWall]);
        if (!Double.isNaN(model.source.bodyK(model.coldState(), at.source))) {
            add("sourceTemperatureK", "heat source", TimeSeries.Kind.TEMPERATURE, 0, y -> y[at.source]);
        }
        add("columnFootK", "column foot", TimeSeries.Kind.TEMPERATURE, 0, y -> y[at.column]);
        add("columnTopK", "column top", TimeSeries.Kind.TEMPERATURE, 0, y -> y[at.column + at.cells - 1]);
        for (int w = 0; w < model.jets.stages; w++) {
            int wall = w;
            String stage = model.rig.stages().get(w).name();
            add(
                    "stage" + (w + 1) + "WallK",
                    "wall at " + stage,
                    TimeSeries.Kind.TEMPERATURE,
                    w + 1,
                    y -> y[at.walls + wall]);
        }
        if (model.wallGeometry.cap >= 0) {
            add("capK", "cap", TimeSeries.Kind.TEMPERATURE, 0, y -> y[at.walls + model.wallGeometry.cap]);
        }
        if (model.water.count > 0) {
            add(
                    "waterOutK",
                    "water out",
                    TimeSeries.Kind.TEMPERATURE,
                    0,
                    y -> model.water.outletK(y, at.water, model.supply.enteringK(y, at.supply)));
        }
        add("boilerPressurePa", "boiler pressure", TimeSeries.Kind.PRESSURE, 0, y -> model.column.boilerPa());
        add("vapourFlowKgPerS", "vapour", TimeSeries.Kind.FLOW, 0, y -> model.column.flow());
        for (int k = 0; k < model.jets.stages; k++) {
            int stage = k;
            String name = model.rig.stages().get(k).name();
            String key = "stage" + (k + 1);
            add(key + "FlowKgPerS", "jet " + name, TimeSeries.Kind.FLOW, k + 1, y -> model.column.stageFlow[stage]);
            add(key + "FullFlowFraction", "jet " + name, TimeSeries.Kind.SHARE, k + 1, y -> model.jets.fraction[stage]);
            add(
                    key + "CondensedShare",
                    "condensed at " + name,
                    TimeSeries.Kind.SHARE,
                    k + 1,
                    y -> model.walls.condensedShare[stage]);
            add(key + "Lit", "lit " + name, TimeSeries.Kind.SHARE, k + 1, y -> model.jets.isLit(stage) ? 1 : 0);
        }
        add(
                "heatDeliveredW",
                "heat delivered",
                TimeSeries.Kind.HEAT,
                0,
                y -> rates[at.quadrature(StateLayout.Quadrature.IN)] - model.water.loadW());
        add("sourceInputW", "power taken", TimeSeries.Kind.HEAT, 0, y -> model.source.inputW());
        add("heatToWaterW", "heat to water", TimeSeries.Kind.HEAT, 0, y -> model.toWaterW());
        add("heatToAirW", "heat to air", TimeSeries.Kind.HEAT, 0, y -> model.toAirW());
        supply(at);
        add("dissolvedGasFraction", "gas left in the oil", TimeSeries.Kind.GAS, 0, y -> y[at.gas]);
        if (at.forelineSize > 0) {
            add("forelinePa", "foreline", TimeSeries.Kind.PRESSURE, 0, y -> y[at.foreline]);
        }
        add("oilMassKg", "oil", TimeSeries.Kind.MASS, 0, y -> y[at.oilMass]);
        if (model.source.size() == 2) {
            add("cartridgeTemperatureK", "cartridge", TimeSeries.Kind.TEMPERATURE, 0, y -> y[at.source]);
            add("fuelMassKg", "fuel", TimeSeries.Kind.MASS, 0, y -> y[at.source + 1]);
        }
    }

    private void supply(StateLayout at) {
        if (at.supplySize > 0) {
            add("waterInK", "water in", TimeSeries.Kind.TEMPERATURE, 0, y -> y[at.supply]);
        }
        if (model.rig.cooling().supply().kind() == SupplyKind.CHILLER) {
            add("chillerW", "chiller", TimeSeries.Kind.HEAT, 0, y -> model.supply.removedW());
        }
        if (at.supplySize > 1) {
            add("iceKg", "ice", TimeSeries.Kind.MASS, 0, y -> y[at.supply + 1]);
        }
    }

    private void add(String key, String title, TimeSeries.Kind kind, int stage, ToDoubleFunction<double[]> reading) {
        specs.add(new Spec(key, title, kind, stage, reading));
    }

    @Override
    public void started(double t, double[] y) {
        record(t, y);
    }

    @Override
    public void stretch(StepInterpolant solution, double from, double to) {
        int pieces = (int) Math.max(1, Math.ceil((to - from) / LONGEST_GAP_S));
        for (int i = 1; i <= pieces; i++) {
            double t = i == pieces ? to : from + (to - from) * i / pieces;
            solution.stateAt(t, work);
            record(t, work);
        }
        rest.look(to, work);
    }

    private void record(double t, double[] y) {
        // several records at one time show a jump of modes: the first and the last are enough
        system.derivative(t, y, rates);
        times.add(t);
        cells.add(Arrays.copyOfRange(y, model.layout.column, model.layout.column + model.layout.cells));
        for (int i = 0; i < specs.size(); i++) {
            data.get(i).add(specs.get(i).reading().applyAsDouble(y));
        }
    }

    /** Column temperatures at the times of the series. */
    ColumnHistory column() {
        return new ColumnHistory(model.geometry.midM.clone(), cells.toArray(new double[0][]));
    }

    TimeSeries series() {
        List<TimeSeries.Column> columns = new ArrayList<>();
        columns.add(new TimeSeries.Column("timeS", "time", TimeSeries.Kind.TIME, 0, times.trimmed()));
        for (int i = 0; i < specs.size(); i++) {
            Spec s = specs.get(i);
            columns.add(new TimeSeries.Column(
                    s.key(), s.title(), s.kind(), s.stage(), data.get(i).trimmed()));
        }
        return new TimeSeries(columns);
    }
}
