package boilwright.drill;

import boilwright.answers.CheckAnswer;
import boilwright.answers.WaterQuestion;
import boilwright.fluid.Water;
import boilwright.fluid.WorkingFluid;
import boilwright.rig.Limits;
import boilwright.rig.Protection.TripKind;
import boilwright.rig.Supply;
import boilwright.thermal.DrillLimit;
import boilwright.thermal.DrillRun;
import boilwright.thermal.EventKind;
import boilwright.thermal.SeriesQuantity;
import boilwright.thermal.TimeSeries;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Where a rig's trips should be set: halfway between what is usual and where the harm begins. */
final class SetPoints {
    /** Way from what is usual to the limit at which a trip is set. */
    private static final double HALFWAY = 0.5;
    /** A flow trip stands at most at this share of the usual flow. */
    private static final double FLOW_SHARE = 0.8;

    private static final double FLOW_HYSTERESIS = 0.1;
    private static final double HYSTERESIS = 0.2;
    private static final double PRESSURE_HYSTERESIS = 0.5;
    /** Least room between what is usual and the limit in which a trip can be set: K, and share of a flow or pressure. */
    private static final double LEAST_ROOM_K = 2;

    private static final double LEAST_ROOM_SHARE = 0.1;

    /**
     * A trip that could be.
     *
     * @param kind what it watches
     * @param usual the furthest that the value gets towards the limit while all is well
     * @param limit where the harm begins
     * @param setPoint where it should trip; empty when there is no room between the two
     * @param hysteresis how far the value must come back
     */
    record Draft(TripKind kind, double usual, double limit, OptionalDouble setPoint, double hysteresis) {}

    private final CheckAnswer check;
    private final WorkingFluid fluid;
    private final List<DrillAnswer> drills;

    SetPoints(CheckAnswer check, List<DrillAnswer> drills) {
        this.check = check;
        fluid = check.asked().fluid();
        this.drills = drills;
    }

    /** The trips that can watch something at this rig. */
    List<Draft> list() {
        List<Draft> drafts = new ArrayList<>();
        flow().ifPresent(drafts::add);
        rising(TripKind.WATER_TEMPERATURE, waterLimit()).ifPresent(drafts::add);
        rising(TripKind.BOILER_TEMPERATURE, boilerLimit()).ifPresent(drafts::add);
        rising(TripKind.BODY_TEMPERATURE, bodyLimit()).ifPresent(drafts::add);
        rising(TripKind.FORELINE_PRESSURE, forelineLimit()).ifPresent(drafts::add);
        return drafts;
    }

    private Optional<Draft> flow() {
        double usual = check.steady().flow().volumeFlowM3PerS();
        if (check.rig().cooling().supply() instanceof Supply.FinsAndFan || usual <= 0) {
            return Optional.empty();
        }
        double entering = check.rig().cooling().inletTemperatureK();
        double out = check.steady().waterOutK().orElse(entering);
        double allowed = WaterQuestion.outletLimitK(check.rig());
        double least = usual * Math.max(0, out - entering) / Math.max(LEAST_ROOM_K, allowed - entering);
        double set = Math.min(FLOW_SHARE * usual, usual + HALFWAY * (least - usual));
        boolean room = least < (1 - LEAST_ROOM_SHARE) * usual;
        return Optional.of(new Draft(
                TripKind.WATER_FLOW,
                usual,
                least,
                room ? OptionalDouble.of(set) : OptionalDouble.empty(),
                FLOW_HYSTERESIS * usual));
    }

    /** A trip on a value that rises when something fails. */
    private Optional<Draft> rising(TripKind kind, OptionalDouble limit) {
        OptionalDouble usual = usual(kind);
        if (limit.isEmpty() || usual.isEmpty()) {
            return Optional.empty();
        }
        double from = usual.getAsDouble();
        double to = limit.getAsDouble();
        boolean pressure = kind == TripKind.FORELINE_PRESSURE;
        boolean room = pressure ? from < (1 - LEAST_ROOM_SHARE) * to : from < to - LEAST_ROOM_K;
        double set = pressure ? Math.sqrt(from * to) : from + HALFWAY * (to - from);
        return Optional.of(new Draft(
                kind,
                from,
                to,
                room ? OptionalDouble.of(set) : OptionalDouble.empty(),
                pressure ? PRESSURE_HYSTERESIS * set : HYSTERESIS * Math.max(0, to - from)));
    }

    /** The furthest that a value gets while all is well and the heat is on: in the warm-up, and at rest before a fault. */
    private OptionalDouble usual(TripKind kind) {
        TimeSeries warmup = check.warmup().series();
        double heatOnS = check.warmup().events().stream()
                .filter(e -> e.kind() == EventKind.HEAT_ON && e.timeS().isPresent())
                .mapToDouble(e -> e.timeS().getAsDouble())
                .findFirst()
                .orElse(0);
        Optional<double[]> read = TripClock.values(kind, warmup);
        if (read.isEmpty()) {
            return OptionalDouble.empty();
        }
        double[] time = warmup.column(SeriesQuantity.TIME).values();
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < time.length; i++) {
            if (time[i] >= heatOnS) {
                most = Math.max(most, read.get()[i]);
            }
        }
        for (DrillAnswer drill : drills) {
            if (drill.atS().isEmpty() && isWell(drill)) {
                most = Math.max(
                        most,
                        TripClock.values(kind, drill.heatOn().run().series()).orElseThrow()[0]);
            }
        }
        return OptionalDouble.of(most);
    }

    /** Whether nothing was beyond its limit before the fault came. */
    private static boolean isWell(DrillAnswer drill) {
        return drill.heatOn().limits().stream().noneMatch(l -> l.limit().harms() && l.orNever() == 0);
    }

    private OptionalDouble waterLimit() {
        return check.steady().waterOutK().isPresent()
                ? OptionalDouble.of(WaterQuestion.outletLimitK(check.rig()))
                : OptionalDouble.empty();
    }

    /** Boiler wall at which the oil reaches its limit: as far above the usual as the oil's limit above the usual oil. */
    private OptionalDouble boilerLimit() {
        Limits limits = check.rig().limits();
        OptionalDouble oil = limits.oilBulkK().isPresent() ? limits.oilBulkK() : fluid.bulkLimit();
        OptionalDouble wall = usual(TripKind.BOILER_TEMPERATURE);
        if (oil.isEmpty() || wall.isEmpty()) {
            return OptionalDouble.empty();
        }
        double[] usualOil = check.warmup()
                .series()
                .column(SeriesQuantity.LIQUID_TEMPERATURE)
                .values();
        double most = 0;
        for (double k : usualOil) {
            most = Math.max(most, k);
        }
        for (DrillAnswer drill : drills) {
            if (drill.atS().isEmpty() && isWell(drill)) {
                DrillRun on = drill.heatOn();
                most = Math.max(
                        most,
                        on.run()
                                .series()
                                .column(SeriesQuantity.LIQUID_TEMPERATURE)
                                .values()[0]);
            }
        }
        return OptionalDouble.of(wall.getAsDouble() + oil.getAsDouble() - most);
    }

    /** Body wall at which jets stop condensing in a drill or, where none does, at which water boils. */
    private OptionalDouble bodyLimit() {
        for (DrillAnswer drill : drills) {
            OptionalDouble film = drill.heatOn().limits().stream()
                    .filter(l -> l.limit() == DrillLimit.FILM && l.passedS().isPresent() && l.orNever() > 0)
                    .mapToDouble(l -> l.orNever())
                    .findFirst();
            if (film.isPresent()) {
                TimeSeries series = drill.heatOn().run().series();
                double[] walls =
                        TripClock.values(TripKind.BODY_TEMPERATURE, series).orElseThrow();
                return OptionalDouble.of(
                        at(series, walls, film.getAsDouble() + drill.atS().orElse(0)));
            }
        }
        boolean wet = check.steady().waterOutK().isPresent();
        return wet
                ? OptionalDouble.of(Water.boilingTemperature(check.rig().room().pressurePa()))
                : OptionalDouble.empty();
    }

    private static double at(TimeSeries series, double[] values, double timeS) {
        double[] time = series.column(SeriesQuantity.TIME).values();
        int i = 0;
        while (i < time.length - 1 && time[i] < timeS) {
            i++;
        }
        return values[i];
    }

    private OptionalDouble forelineLimit() {
        boolean followed = drills.stream().anyMatch(d -> TripClock.isRead(TripKind.FORELINE_PRESSURE, d.heatOn()));
        return followed
                ? OptionalDouble.of(Math.min(
                        DrillLimit.FORELINE_WITH_HOT_OIL_PA, check.steady().criticalBackingPa()))
                : OptionalDouble.empty();
    }
}
