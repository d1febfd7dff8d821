package boilwright.water;

import boilwright.rig.Cooling;
import boilwright.rig.Cooling.Element;
import boilwright.rig.Cooling.Place;
import boilwright.rig.Rig;
import boilwright.rig.Supply;
import boilwright.thermal.RigChange;
import boilwright.thermal.TestRigs;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Circuits for tests; invented data. */
public final class Plumbing {
    static final double WATER_K = 293.15;
    static final double LITRE_PER_MINUTE = 1e-3 / 60;

    private Plumbing() {}

    /** A metal pump with this cooling. */
    static Rig rig(Supply supply, Element... elements) {
        return rig(supply, List.of(elements));
    }

    /** A metal pump with this cooling. */
    static Rig rig(Supply supply, List<Element> elements) {
        return RigChange.cooling(TestRigs.metal150(2000), new Cooling(supply, elements));
    }

    static Supply given(double litresPerMinute) {
        return new Supply.GivenFlow(WATER_K, litresPerMinute * LITRE_PER_MINUTE, OptionalDouble.empty());
    }

    /** A tank with a pump; flows in L/min and heads in m by turns. */
    static Supply tank(double... flowAndHead) {
        List<Supply.CurvePoint> curve = new ArrayList<>();
        for (int i = 0; i < flowAndHead.length; i += 2) {
            curve.add(new Supply.CurvePoint(flowAndHead[i] * LITRE_PER_MINUTE, flowAndHead[i + 1]));
        }
        return new Supply.Tank(WATER_K, 0.02, 0, 1, new Supply.Pump(curve, 20));
    }

    static Supply tap(double staticPa, double litresPerMinuteAtOneBar) {
        return new Supply.Tap(WATER_K, staticPa, litresPerMinuteAtOneBar * LITRE_PER_MINUTE);
    }

    static Place branch(String name) {
        return new Place("", name);
    }

    static Element hose(double boreM, double lengthM, String branch) {
        return new Cooling.Hose(boreM, lengthM, 0, branch(branch));
    }

    static Element valve(double litresPerMinuteAtOneBar, String branch) {
        return new Cooling.Valve(litresPerMinuteAtOneBar * LITRE_PER_MINUTE, branch(branch));
    }

    static Element rise(double heightM, String branch) {
        return new Cooling.Rise(heightM, branch(branch));
    }

    /** Twelve elements, three branches: hose, valve, rise; three branches with coils, jacket and trap; hose. */
    public static Rig twelveElements() {
        return rig(
                tank(0, 12, 6, 9, 12, 0),
                hose(0.008, 2, ""),
                valve(20, ""),
                rise(0.4, ""),
                hose(0.006, 0.5, "a"),
                new Cooling.CapCoil(0.006, 0.3, 20, branch("a")),
                new Cooling.CooledPart(Cooling.Part.BAFFLE, 0.006, 0.8, 40, 0.1, branch("a")),
                valve(12, "b"),
                new Cooling.SolderedCoil(List.of("top", "middle", "lower"), 0.008, 3.5, 20, branch("b")),
                hose(0.006, 0.5, "c"),
                new Cooling.CooledPart(Cooling.Part.FORELINE_TRAP, 0.006, 1.2, 20, 0.1, branch("c")),
                rise(-0.4, ""),
                hose(0.008, 2, ""));
    }
}
