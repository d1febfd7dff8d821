package boilwright.choice;

import boilwright.answers.RestAnswer;
import boilwright.errors.ComputationException;
import boilwright.rig.ContactBody;
import boilwright.rig.HeatSource;
import boilwright.rig.Parameter;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import boilwright.rig.Schedule;
import boilwright.thermal.DeliveredHeat;
import boilwright.thermal.NeededState;
import boilwright.thermal.SteadySolver;
import boilwright.thermal.SteadyState;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/**
 * What a pump takes at rest against the temperature of its boiler's outer face. It is found by heating the pump with a source
 * of the same way of heating (flame, from outside, in the oil) that delivers any heat at any temperature.
 */
final class NeedCurve {
    /** Shares of the heat needed for full jets at which the curve is worked out. */
    private static final double[] SHARES = {
        0.02, 0.05, 0.1, 0.15, 0.2, 0.25, 0.3, 0.35, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1, 1.1, 1.25, 1.4, 1.6, 1.8, 2
    };

    /** So good that a contact of it is none, W/(m2 K). */
    private static final double NO_RESISTANCE = 1e9;
    /** A limit that no pump reaches, K. */
    private static final double NO_LIMIT_K = 3000;
    /** A flame that never grows wider than the base, W/m2. */
    private static final double NO_SATURATION = 1e12;

    /** Steps beyond these, up to where the source brings the pump. */
    private static final double STEP = 1.15;

    private static final int POINTS = 60;
    private static final double BEYOND_K = 60;

    /** A body through which any heat passes. */
    private static final ContactBody PERFECT = new ContactBody(
            HeatSource.Contact.MACHINED_METAL,
            1,
            OptionalDouble.of(NO_RESISTANCE),
            1000,
            NO_LIMIT_K,
            HeatSource.Thermostat.PROPORTIONAL,
            0,
            0,
            0,
            1);

    private NeedCurve() {}

    /**
     * The curve by rising temperature; points beyond every known range of the oil are left out.
     *
     * @param upToW heat that the curve should reach, W
     */
    static List<WallPoint> of(Rig rig, HeatTrial trial, double upToW) {
        NeededState needed = trial.needed(rig);
        ParameterValues values = trial.values().with(Parameter.BURNER_SATURATION_FLUX, NO_SATURATION);
        List<WallPoint> points = new ArrayList<>();
        points.add(new WallPoint(rig.room().temperatureK(), 0));
        Rig full = rig.withSchedule(new Schedule(List.of(new Schedule.Power(0, 1))));
        for (double share : shares(upToW / needed.heatNeededW())) {
            double watts = share * needed.heatNeededW();
            if (share == 1) {
                points.add(new WallPoint(needed.state().outerFaceK(), watts));
                continue;
            }
            Rig heated = full.withHeatSource(willing(rig.heatSource(), watts, values));
            at(heated, trial, values).ifPresent(s -> points.add(new WallPoint(s.outerFaceK(), s.heatDeliveredW())));
        }
        points.sort(Comparator.comparingDouble(WallPoint::wallK));
        return points;
    }

    private static double[] shares(double upTo) {
        DoubleStream.Builder all = DoubleStream.builder();
        for (double share : SHARES) {
            all.add(share);
        }
        double share = SHARES[SHARES.length - 1];
        while (share < upTo) {
            share *= STEP;
            all.add(share);
        }
        return all.build().toArray();
    }

    private static Optional<SteadyState> at(Rig rig, HeatTrial trial, ParameterValues values) {
        try {
            return Optional.of(new SteadySolver(rig, trial.tables(), values).steady());
        } catch (ComputationException e) {
            return Optional.empty();
        }
    }

    private static HeatSource willing(HeatSource like, double watts, ParameterValues values) {
        return switch (like.path()) {
            case FLAME ->
                new HeatSource.GasBurner(watts / values.get(Parameter.BURNER_BEST_EFFICIENCY), Optional.empty());
            case OIL -> like.withRatedPower(watts);
            case CONTACT, BASE, NOWHERE -> new HeatSource.ClampedHeater(watts, PERFECT);
        };
    }

    /**
     * Both curves of a rig at full power.
     *
     * @param need {@link #of} the rig, or of another heated in the same way
     * @param rest the rig at rest at full power; empty where its oil would leave every known range
     */
    static HeatCurves curves(Rig rig, HeatTrial trial, List<WallPoint> need, Optional<RestAnswer> rest) {
        NeededState needed = rest.map(RestAnswer::needed).orElseGet(() -> trial.needed(rig));
        DeliveredHeat source = DeliveredHeat.atFullPower(rig, trial.values());
        double low = rig.room().temperatureK();
        double full = needed.state().outerFaceK();
        double high = Math.max(rest.map(r -> r.steady().outerFaceK()).orElse(full), full) + BEYOND_K;
        List<WallPoint> delivered = new ArrayList<>();
        for (int i = 0; i < POINTS; i++) {
            double wall = low + (high - low) * i / (POINTS - 1);
            // a schedule that holds the oil has no part in full power, so the oil's temperature does not matter
            delivered.add(new WallPoint(wall, source.watts(wall, wall)));
        }
        return new HeatCurves(
                delivered,
                need,
                new WallPoint(full, needed.heatNeededW()),
                rest.map(r -> new WallPoint(r.steady().outerFaceK(), r.steady().heatDeliveredW())));
    }
}
