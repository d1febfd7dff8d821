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
import java.util.Random;

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

    /** Any element but a cap coil's second, in a branch that has friction. */
    static Element element(Random random, String branch) {
        Place place = branch(branch);
        double bore = 0.003 + 0.012 * random.nextDouble();
        double length = 0.05 * Math.pow(200, random.nextDouble());
        return switch (random.nextInt(7)) {
            case 0 -> new Cooling.Jacket(List.of("lower", "middle"), 0.001 + 0.01 * random.nextDouble(), 0.003, place);
            case 1 -> new Cooling.SolderedCoil(List.of("top"), bore, length, 20, place);
            case 2 -> new Cooling.CapCoil(bore, length, 20, place);
            case 3 -> new Cooling.CooledPart(Cooling.Part.BAFFLE, bore, length, 10, 0, place);
            case 4 -> new Cooling.CooledPart(Cooling.Part.FORELINE_TRAP, bore, length, 10, 0, place);
            case 5 -> valve(1 + 30 * random.nextDouble(), branch);
            default -> new Cooling.Hose(bore, length, 0, place);
        };
    }

    /** A stretch, two to four branches side by side, a stretch; some with rises that not every supply overcomes. */
    static List<Element> circuit(Random random) {
        List<Element> elements = new ArrayList<>();
        some(random, elements, "");
        int branches = 2 + random.nextInt(3);
        for (int b = 0; b < branches; b++) {
            some(random, elements, "b" + b);
        }
        some(random, elements, "");
        return elements;
    }

    private static void some(Random random, List<Element> elements, String branch) {
        int count = 1 + random.nextInt(3);
        for (int i = 0; i < count; i++) {
            elements.add(element(random, branch));
        }
        if (random.nextInt(3) == 0) {
            elements.add(rise(2 * random.nextDouble() - 0.5, branch));
        }
    }

    /** A pump or a tap, from an aquarium's to the mains. */
    static Supply supply(Random random) {
        double flow = 0.5 * Math.pow(100, random.nextDouble());
        double head = 1 * Math.pow(40, random.nextDouble());
        if (random.nextInt(3) == 0) {
            return tap(head * 1e4, flow);
        }
        double middle = random.nextDouble();
        return tank(0, head, flow * 0.5, head * (0.1 + 0.8 * middle), flow, 0);
    }
}
