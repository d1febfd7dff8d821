package boilwright.thermal;

import boilwright.fluid.Water;
import boilwright.heattransfer.GlassStress;
import boilwright.rig.Limits;
import boilwright.rig.Material;
import boilwright.rig.TypicalValues;
import boilwright.thermal.DrillRun.LimitTime;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** The limits that a drill watches, added to those of every run. */
final class DrillWatches {
    /** Share of a driven jet that has to condense for it to pump; the same at which a jet goes out. */
    private static final double LEAST_SHARE = 0.5;
    /** Tension that annealed borosilicate bears when cooled suddenly, Pa: a sudden difference of 120 K, trade figure. */
    private static final double SHOCK_PA = 31e6;
    /** Share of its full flow from which a jet counts as driven. */
    private static final double DRIVEN = 0.45;
    /** Share of the charge that may go in one failure (engineering judgement). */
    private static final double LOSS = 0.01;

    private record Watched(DrillLimit limit, double value, RunWatch.Value excess) {}

    private final PumpModel model;
    private final StateLayout at;
    private final List<Watched> watched = new ArrayList<>();

    /**
     * Sets the limits up.
     *
     * @param model the model
     * @param start state at the start of the run
     */
    DrillWatches(PumpModel model, double[] start) {
        this.model = model;
        at = model.layout;
        Limits limits = model.rig.limits();
        watched.add(new Watched(DrillLimit.FILM, LEAST_SHARE, (t, y) -> LEAST_SHARE - leastShare(y)));
        if (model.wallGeometry.cap >= 0) {
            double cap = limits.capK().orElse(TypicalValues.CAP_LIMIT_K);
            watched.add(new Watched(DrillLimit.CAP, cap, (t, y) -> y[at.walls + model.wallGeometry.cap] - cap));
        }
        if (model.water.count > 0) {
            double boiling = model.water.boilingK();
            watched.add(new Watched(DrillLimit.WATER_BOILS, boiling, (t, y) -> hottestWaterK(y) - boiling));
        }
        Material body = model.rig.body().material();
        if (body.isGlass() && model.water.count > 0) {
            double allowed = model.water.inletK + shockK(body);
            watched.add(new Watched(DrillLimit.COLD_SHOCK, allowed, (t, y) -> hottestGlassK(y) - allowed));
        }
        OptionalDouble bulk = limits.oilBulkK().isPresent() ? limits.oilBulkK() : model.fluid.bulkLimit();
        bulk.ifPresent(k -> watched.add(new Watched(DrillLimit.OIL, k, (t, y) -> y[at.oil] - k)));
        double loss = LOSS * model.chargeKg;
        double before = start[at.oilMass];
        watched.add(new Watched(DrillLimit.OIL_LOSS, loss, (t, y) -> (before - y[at.oilMass]) / loss - 1));
        if (at.forelineSize > 0) {
            double most = DrillLimit.FORELINE_WITH_HOT_OIL_PA;
            double airK = model.fluid.airAdmissionLimit().orElse(model.roomK + TypicalValues.AT_ROOM_K);
            watched.add(new Watched(
                    DrillLimit.FORELINE,
                    most,
                    (t, y) -> Math.min(model.forelinePa(y) / most - 1, (y[at.oil] - airK) / TypicalValues.AT_ROOM_K)));
        }
        watched.add(new Watched(
                DrillLimit.TOUCH,
                TypicalValues.TOUCH_K,
                (t, y) -> model.faces.bodyTouchExcessK(y, model.wallGeometry.zones)));
    }

    /** Adds the limits to what a run watches. */
    void addTo(RunWatches watches) {
        for (Watched w : watched) {
            watches.note(WatchKind.DRILL_LIMIT, w.limit().name(), w.excess());
        }
    }

    /**
     * When each limit was passed.
     *
     * @param watches what was watched
     * @param start state at the start of the run
     * @param failedS when the failure came, s
     */
    List<LimitTime> times(RunWatches watches, double[] start, double failedS) {
        List<LimitTime> times = new ArrayList<>();
        for (Watched w : watched) {
            boolean before = failedS == 0 && w.excess().of(0, start) >= 0;
            OptionalDouble passed =
                    watches.first(WatchKind.DRILL_LIMIT, w.limit().name(), true);
            OptionalDouble after =
                    passed.isPresent() ? OptionalDouble.of(Math.max(0, passed.getAsDouble() - failedS)) : passed;
            boolean earlier = before || (passed.isPresent() && passed.getAsDouble() < failedS);
            times.add(new LimitTime(w.limit(), w.value(), before ? OptionalDouble.of(0) : after, earlier));
        }
        return times;
    }

    /** Least condensed share of a jet that is driven; 1 when none is. */
    private double leastShare(double[] y) {
        model.solveFlows(y);
        double least = 1;
        for (int k = 0; k < model.jets.stages; k++) {
            if (model.jets.fraction[k] >= DRIVEN) {
                least = Math.min(least, model.walls.condensedShare[k]);
            }
        }
        return least;
    }

    private double hottestWaterK(double[] y) {
        double hottest = 0;
        for (int i = 0; i < model.water.count; i++) {
            // a node that boils is held within a fraction of a kelvin above the boiling point
            hottest = Math.max(hottest, y[at.water + i]);
        }
        return hottest;
    }

    private double hottestGlassK(double[] y) {
        double hottest = 0;
        for (int i = 0; i < model.water.count; i++) {
            if (model.water.wall(i) >= 0 && model.water.isJacket(i)) {
                hottest = Math.max(hottest, y[at.walls + model.water.wall(i)]);
            }
        }
        return hottest;
    }

    /** How much hotter than the water the glass may be when the water comes back, K; infinite for tiny flows. */
    private double shockK(Material body) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < model.water.count; i++) {
            WaterNode node = model.water.node(i);
            if (node.jacket()) {
                double hot = Math.min(model.water.boilingK(), Water.HIGHEST_K);
                double h = node.coefficient(hot, model.water.inletK, node.massFlow(), model.water.boilingK());
                double biot = h * model.rig.body().wallThicknessM() / body.conductivity();
                double perKelvin =
                        GlassStress.coldShock(body.expansion(), body.youngsModulus(), body.poissonRatio(), 1, biot);
                least = Math.min(least, SHOCK_PA / perKelvin);
            }
        }
        return least;
    }
}
