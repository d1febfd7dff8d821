package boilwright.thermal;

import boilwright.numerics.StepHandler;
import boilwright.numerics.StepInterpolant;
import boilwright.rig.SupplyKind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** Writes the time line of a run down: at every start, at the end of every step, and in between where steps are long. */
final class SeriesRecorder implements StepHandler {
    /** Longest time between two records of a run whose curves are drawn, s. */
    static final double USUAL_GAP_S = 30;

    private final double longestGapS;

    private record Spec(SeriesQuantity quantity, int stage, String title, ToDoubleFunction<double[]> reading) {}

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

    SeriesRecorder(PumpModel model, RunSystem system, RestDetector rest, double longestGapS) {
        this.longestGapS = longestGapS;
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

    /** In the order of the enum; neighbours that are of a stage stand together stage by stage. */
    private void describe() {
        SeriesQuantity[] all = SeriesQuantity.values();
        int next;
        for (int first = 0; first < all.length; first = next) {
            next = first + 1;
            boolean ofStage = all[first].isOfStage();
            while (ofStage && next < all.length && all[next].isOfStage()) {
                next++;
            }
            for (int k = 0; k < (ofStage ? model.jets.stages : 1); k++) {
                for (SeriesQuantity quantity : Arrays.asList(all).subList(first, next)) {
                    String title = quantity.title(model.rig.stages().get(k).name());
                    int stage = ofStage ? k + 1 : 0;
                    reading(quantity, k).ifPresent(r -> specs.add(new Spec(quantity, stage, title, r)));
                }
            }
        }
    }

    /** How a quantity is read from the state, for a stage where it is one of a stage; empty where the rig has no such thing. */
    private Optional<ToDoubleFunction<double[]>> reading(SeriesQuantity quantity, int k) {
        StateLayout at = model.layout;
        int cap = model.wallGeometry.cap;
        return switch (quantity) {
            case TIME -> Optional.empty(); // stands before all others
            case LIQUID_TEMPERATURE -> Optional.of(y -> y[at.oil]);
            case BOILER_WALL -> Optional.of(y -> y[at.boilerWall]);
            case SOURCE_TEMPERATURE ->
                when(!Double.isNaN(model.source.bodyK(model.coldState(), at.source)), y -> y[at.source]);
            case COLUMN_FOOT -> Optional.of(y -> y[at.column]);
            case COLUMN_TOP -> Optional.of(y -> y[at.column + at.cells - 1]);
            case STAGE_WALL -> Optional.of(y -> y[at.walls + k]);
            case CAP -> when(cap >= 0, y -> y[at.walls + cap]);
            case WATER_OUT ->
                when(
                        model.water.count > 0,
                        y -> model.water.outletK(y, at.water, model.supply.enteringK(y, at.supply)));
            case BOILER_PRESSURE -> Optional.of(y -> model.column.boilerPa());
            case VAPOUR_FLOW -> Optional.of(y -> model.column.flow());
            case STAGE_FLOW -> Optional.of(y -> model.column.stageFlow[k]);
            case STAGE_FULL_FLOW_FRACTION -> Optional.of(y -> model.jets.fraction[k]);
            case STAGE_CONDENSED_SHARE -> Optional.of(y -> model.walls.condensedShare[k]);
            case STAGE_LIT -> Optional.of(y -> model.jets.isLit(k) ? 1 : 0);
            case HEAT_DELIVERED ->
                Optional.of(y -> rates[at.quadrature(StateLayout.Quadrature.IN)] - model.water.loadW());
            case SOURCE_INPUT -> Optional.of(y -> model.source.inputW());
            case HEAT_TO_WATER -> Optional.of(y -> model.toWaterW());
            case HEAT_TO_AIR -> Optional.of(y -> model.toAirW());
            case WATER_IN -> when(at.supplySize > 0, y -> y[at.supply]);
            case CHILLER ->
                when(model.rig.cooling().supply().kind() == SupplyKind.CHILLER, y -> model.supply.removedW());
            case ICE -> when(at.supplySize > 1, y -> y[at.supply + 1]);
            case DISSOLVED_GAS -> Optional.of(y -> y[at.gas]);
            case FORELINE -> when(at.forelineSize > 0, y -> y[at.foreline]);
            case OIL_MASS -> Optional.of(y -> y[at.oilMass]);
            case CARTRIDGE_TEMPERATURE -> when(model.source.size() == 2, y -> y[at.source]);
            case FUEL_MASS -> when(model.source.size() == 2, y -> y[at.source + 1]);
            case INNER_FACE -> Optional.of(y -> model.boiler.innerFaceK());
            case LEAST_FILM_MARGIN -> Optional.of(y -> leastFilmMarginK());
            case HOTTEST_WATER ->
                when(model.water.flows(), y -> model.water.hottestK(y, at.water, model.supply.enteringK(y, at.supply)));
            case BOILER_GLASS_STRESS ->
                when(
                        SteadyReport.boilerStress(model, 0).isPresent(),
                        y -> SteadyReport.boilerStress(model, model.boiler.heatToOilW(y[at.boilerWall], y[at.oil]))
                                .orElseThrow());
            case BODY_GLASS_STRESS ->
                when(
                        SteadyReport.bodyStress(model).isPresent(),
                        y -> SteadyReport.bodyStress(model).orElseThrow());
            case HOTTEST_OUTSIDE -> Optional.of(y -> model.faces.touchK(y));
        };
    }

    /** Only of jets that are full: while a jet comes up its wall has hardly any vapour to condense. */
    private double leastFilmMarginK() {
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k < model.jets.stages; k++) {
            if (model.jets.isFull(k)) {
                least = Math.min(least, model.walls.filmMarginK[k]);
            }
        }
        return least;
    }

    private static Optional<ToDoubleFunction<double[]>> when(boolean there, ToDoubleFunction<double[]> reading) {
        return there ? Optional.of(reading) : Optional.empty();
    }

    @Override
    public void started(double t, double[] y) {
        record(t, y);
    }

    @Override
    public void stretch(StepInterpolant solution, double from, double to) {
        int pieces = (int) Math.max(1, Math.ceil((to - from) / longestGapS));
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
        columns.add(new TimeSeries.Column(SeriesQuantity.TIME, 0, SeriesQuantity.TIME.title(""), times.trimmed()));
        for (int i = 0; i < specs.size(); i++) {
            Spec s = specs.get(i);
            columns.add(new TimeSeries.Column(
                    s.quantity(), s.stage(), s.title(), data.get(i).trimmed()));
        }
        return new TimeSeries(columns);
    }
}
