package boilwright.thermal;

import boilwright.rig.Cooling;
import boilwright.rig.Cooling.Place;
import boilwright.rig.Rig;
import boilwright.rig.Supply;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Supplies and circuits for tests; their figures are invented. */
public final class Plumbing {
    /** A small pump: 6 m of head, 8 L/min free. */
    public static final Supply.Pump PUMP = new Supply.Pump(
            List.of(
                    new Supply.CurvePoint(0, 6),
                    new Supply.CurvePoint(4e-3 / 60, 4.5),
                    new Supply.CurvePoint(8e-3 / 60, 0)),
            60);

    private Plumbing() {}

    /** A chiller of this capacity at 20 C water and 20 C room, set to 20 C. */
    public static Supply.Chiller chiller(double watts, Supply.Control control, double hysteresisK) {
        return new Supply.Chiller(
                293.15,
                new Supply.RatedCapacity(watts, 293.15, 293.15, 0.025 * watts, 0.01 * watts),
                control,
                hysteresisK,
                0.008,
                PUMP);
    }

    /** A tank. */
    public static Supply.Tank tank(double startK, double volumeM3, double iceKg) {
        return new Supply.Tank(startK, volumeM3, iceKg, 2, PUMP);
    }

    /** A tap. */
    public static Supply.Tap tap() {
        return new Supply.Tap(285.15, 3e5, 1.2 / 3600);
    }

    /** The rig's own elements behind this supply, with a hose before and after. */
    public static Rig behind(Rig rig, Supply supply) {
        List<Cooling.Element> elements = new ArrayList<>();
        elements.add(hose("there"));
        elements.addAll(rig.cooling().elements());
        elements.add(hose("back"));
        return rig.withCooling(new Cooling(supply, elements));
    }

    /** The 150 mm metal pump with cap and body in two branches behind a measured flow. */
    public static Rig branched(Rig metal) {
        return metal.withCooling(new Cooling(
                new Supply.GivenFlow(291.15, 2e-3 / 60, OptionalDouble.empty()),
                List.of(
                        hose("there"),
                        new Cooling.CapCoil(0.006, 0.3, 20, new Place("", "a")),
                        new Cooling.SolderedCoil(List.of("top"), 0.008, 1.2, 20, new Place("", "a")),
                        new Cooling.SolderedCoil(List.of("middle", "lower"), 0.008, 2.3, 20, new Place("", "b")),
                        new Cooling.Valve(0.8 / 3600, new Place("meter", "")),
                        new Cooling.CooledPart(Cooling.Part.FORELINE_TRAP, 0.006, 0.5, 25, 0.2, Place.PLAIN),
                        hose("back"))));
    }

    private static Cooling.Hose hose(String name) {
        return new Cooling.Hose(0.009, 2, 0.5, new Place(name, ""));
    }
}
