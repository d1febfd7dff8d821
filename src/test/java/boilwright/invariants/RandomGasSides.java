package boilwright.invariants;

import boilwright.rig.Foreline;
import boilwright.rig.GasSide;
import boilwright.rig.LinePiece;
import boilwright.rig.PieceKind;
import boilwright.rig.Protection;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Backing pump, chamber and what acts by itself, for {@link RandomRigs}. */
final class RandomGasSides {
    private static final List<String> WALLS = List.of("stainless-steel", "aluminium", "borosilicate");
    private static final double M3_PER_H = 1 / 3600.0;

    private RandomGasSides() {}

    /** A rotary pump of 1.5 to 25 m3/h behind its line. */
    static Foreline.Backing backing(Draw draw) {
        double bore = draw.between(0.016, 0.04);
        double speed = draw.ratio(1.5, 25) * M3_PER_H;
        double ultimate = draw.ratio(0.1, 5);
        List<LinePiece> line = new ArrayList<>();
        line.add(tube(draw, "foreline", bore));
        if (draw.chance(0.4)) {
            line.add(new LinePiece(
                    PieceKind.ELBOW,
                    "foreline bend",
                    new LinePiece.Elbow(bore, 2 * bore, Math.PI / 2),
                    Optional.empty(),
                    0));
        }
        return new Foreline.Backing(
                line,
                draw.ratio(3e-4, 0.01),
                new Foreline.BackingPump(
                        List.of(
                                new Foreline.SpeedPoint(10, speed * draw.between(0.6, 0.95)),
                                new Foreline.SpeedPoint(1e5, speed)),
                        ultimate,
                        draw.chance(0.2),
                        ultimate * draw.ratio(1, 20)));
    }

    /** A chamber over a line, roughed through the pump or past it. */
    static GasSide chamber(Draw draw, double boreM) {
        double volume = draw.ratio(0.001, 0.2);
        double area = 6 * Math.pow(volume, 2.0 / 3) * draw.between(1, 2);
        GasSide.Chamber chamber = new GasSide.Chamber(
                volume,
                draw.ratio(600, 1e5),
                draw.of(Arrays.asList(GasSide.Exposure.values())),
                List.of(new GasSide.Surface(draw.of(WALLS), area, draw.chance(0.2))),
                List.of(new GasSide.Seal(
                        draw.of(List.of("fkm", "nitrile-rubber")),
                        draw.between(0.05, 0.4),
                        draw.between(0.003, 0.008))),
                draw.chance(0.2) ? draw.ratio(1e-8, 1e-4) : 0);
        List<LinePiece> line = new ArrayList<>();
        if (draw.chance(0.7)) {
            line.add(new LinePiece(
                    PieceKind.VALVE,
                    "high-vacuum valve",
                    new LinePiece.Valve(boreM, draw.between(0.03, 0.1), OptionalDouble.empty()),
                    Optional.empty(),
                    0));
        }
        if (draw.chance(0.5)) {
            line.add(tube(draw, "neck", boreM * draw.between(0.3, 1)));
        }
        List<LinePiece> roughing = draw.chance(0.5) ? List.of(tube(draw, "roughing tube", 0.025)) : List.of();
        GasSide.GaugeKind kind = draw.of(Arrays.asList(GasSide.GaugeKind.values()));
        return new GasSide(
                chamber,
                line,
                draw.chance(0.7)
                        ? Optional.of(new GasSide.Gauge(
                                draw.of(List.of(GasSide.Gauge.AT_CHAMBER, GasSide.Gauge.AT_INLET)),
                                kind,
                                kind.lowestPa(),
                                kind.highestPa(),
                                1))
                        : Optional.empty(),
                roughing,
                draw.chance(0.5) ? OptionalDouble.of(draw.ratio(1e-4, 0.1)) : OptionalDouble.empty());
    }

    private static LinePiece tube(Draw draw, String name, double boreM) {
        return new LinePiece(
                PieceKind.TUBE,
                name,
                new LinePiece.Tube(boreM, draw.between(0.1, 1.5)),
                draw.chance(0.3) ? Optional.of("stainless-steel") : Optional.empty(),
                0);
    }

    /** Some trips, near where they are usually set or not, and now and then a battery. */
    static Protection protection(Draw draw) {
        List<Protection.Trip> trips = new ArrayList<>();
        for (Protection.TripKind kind : Protection.TripKind.values()) {
            if (draw.chance(0.4)) {
                trips.add(new Protection.Trip(kind, setPoint(draw, kind), draw.chance(0.5) ? draw.between(1, 120) : 0));
            }
        }
        Set<Protection.Load> keeps = EnumSet.noneOf(Protection.Load.class);
        for (Protection.Load load : Protection.Load.values()) {
            if (draw.chance(0.5)) {
                keeps.add(load);
            }
        }
        boolean battery = !keeps.isEmpty() && draw.chance(0.3);
        return new Protection(
                trips,
                battery ? new Protection.Battery(keeps, draw.ratio(60, 7200)) : new Protection.Battery(Set.of(), 0));
    }

    private static double setPoint(Draw draw, Protection.TripKind kind) {
        return switch (kind) {
            case BOILER_TEMPERATURE -> draw.between(480, 620);
            case BODY_TEMPERATURE -> draw.between(320, 370);
            case WATER_TEMPERATURE -> draw.between(305, 350);
            case WATER_FLOW -> draw.ratio(0.1, 2) * 1e-3 / 60;
            case FORELINE_PRESSURE -> draw.ratio(20, 200);
        };
    }
}
