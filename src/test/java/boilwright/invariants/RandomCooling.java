package boilwright.invariants;

import boilwright.rig.Body;
import boilwright.rig.Cooling;
import boilwright.rig.Cooling.Element;
import boilwright.rig.Cooling.Place;
import boilwright.rig.Material;
import boilwright.rig.Room;
import boilwright.rig.Stage;
import boilwright.rig.Supply;
import boilwright.rig.SupplyKind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/** The cooling of {@link RandomRigs}: every kind of supply, and what its water passes, one after the other or side by side. */
final class RandomCooling {
    private static final double LITRE_PER_MINUTE = 1e-3 / 60;

    private RandomCooling() {}

    /** Water whose flow was measured, through what cools the pump alone; now and then no water at all. */
    static Cooling measured(Draw draw, List<Stage> stages, Body body, boolean capped) {
        double inlet = draw.between(280, 300);
        if (draw.chance(0.1)) {
            return new Cooling(inlet, 0, List.of(), OptionalDouble.empty());
        }
        List<Element> elements = onThePump(draw, stages, body, capped);
        return new Cooling(
                inlet,
                draw.ratio(0.2, 4) * LITRE_PER_MINUTE,
                elements,
                draw.chance(0.3) ? OptionalDouble.of(draw.ratio(200, 4000)) : OptionalDouble.empty());
    }

    /** A supply of this kind, with hoses, valves, heights and branches where it has water. */
    static Cooling of(
            Draw draw, SupplyKind kind, List<Stage> stages, Body body, boolean capped, double powerW, Room room) {
        if (kind == SupplyKind.GIVEN_FLOW) {
            return measured(draw, stages, body, capped);
        }
        Supply supply = supply(draw, kind, powerW, room);
        return new Cooling(
                supply,
                kind == SupplyKind.FINS_AND_FAN ? List.of() : plumbed(draw, onThePump(draw, stages, body, capped)));
    }

    private static Supply supply(Draw draw, SupplyKind kind, double powerW, Room room) {
        return switch (kind) {
            case GIVEN_FLOW -> throw new IllegalArgumentException("its flow belongs to its elements");
            case CHILLER -> chiller(draw, powerW, room);
            case TAP ->
                new Supply.Tap(draw.between(279, 295), draw.ratio(5e4, 6e5), draw.ratio(1, 60) * LITRE_PER_MINUTE);
            case TANK -> tank(draw);
            case FINS_AND_FAN ->
                new Supply.FinsAndFan(
                        room.temperatureK(),
                        draw.between(0, 8),
                        draw.between(0.002, 0.008),
                        draw.between(0.008, 0.05),
                        draw.between(3e-4, 0.0015),
                        draw.of(List.of(Material.ALUMINIUM, Material.COPPER)));
        };
    }

    private static Supply chiller(Draw draw, double powerW, Room room) {
        double rated = Math.max(100, powerW * draw.ratio(0.4, 2));
        double setPoint = draw.between(284, 298);
        return new Supply.Chiller(
                setPoint,
                new Supply.RatedCapacity(
                        rated,
                        setPoint + draw.between(0, 10),
                        room.temperatureK() + draw.between(-5, 10),
                        0.02 * rated,
                        0.01 * rated),
                draw.of(Arrays.asList(Supply.Control.values())),
                draw.between(0.3, 3),
                draw.ratio(0.001, 0.02),
                pump(draw));
    }

    private static Supply tank(Draw draw) {
        double volume = draw.ratio(0.005, 0.3);
        boolean iced = draw.chance(0.4);
        return new Supply.Tank(
                iced ? 273.15 : draw.between(280, 298),
                volume,
                iced ? volume * draw.between(50, 500) : 0,
                Supply.Tank.bucketToAir(volume),
                pump(draw));
    }

    /** From an aquarium's pump to a booster's. */
    private static Supply.Pump pump(Draw draw) {
        double flow = draw.ratio(1, 40) * LITRE_PER_MINUTE;
        double head = draw.ratio(1, 40);
        return new Supply.Pump(
                List.of(
                        new Supply.CurvePoint(0, head),
                        new Supply.CurvePoint(flow / 2, head * draw.between(0.2, 0.9)),
                        new Supply.CurvePoint(flow, 0)),
                draw.between(5, 80));
    }

    private static List<Element> onThePump(Draw draw, List<Stage> stages, Body body, boolean capped) {
        List<String> downward = new ArrayList<>();
        stages.forEach(stage -> downward.add(0, stage.name()));
        List<Element> elements = new ArrayList<>();
        if (capped) {
            elements.add(new Cooling.CapCoil(
                    draw.between(0.004, 0.008), draw.between(0.2, 1), draw.between(5, 40), Cooling.Place.PLAIN));
        }
        int cut = downward.size() > 1 && draw.chance(0.3) ? 1 : downward.size();
        elements.add(around(draw, body, downward.subList(0, cut)));
        if (cut < downward.size()) {
            elements.add(around(draw, body, downward.subList(cut, downward.size())));
        }
        return elements;
    }

    private static Element around(Draw draw, Body body, List<String> covers) {
        if (body.material().isGlass() || draw.chance(0.4)) {
            return new Cooling.Jacket(covers, draw.between(0.003, 0.01), draw.between(0.001, 0.003));
        }
        double turn = Math.PI * (body.innerDiameterM() + 2 * body.wallThicknessM());
        double turns = covers.size() * draw.between(2, 4);
        return new Cooling.SolderedCoil(covers, draw.between(0.005, 0.01), turns * turn, draw.between(5, 40));
    }

    /** A stretch, what cools the pump in one line or in branches beside one another, a stretch. */
    private static List<Element> plumbed(Draw draw, List<Element> onThePump) {
        List<Element> elements = new ArrayList<>();
        elements.add(hose(draw, ""));
        fitting(draw, elements, "");
        if (draw.chance(0.5)) {
            for (int i = 0; i < onThePump.size(); i++) {
                elements.add(placed(onThePump.get(i), new Place("", "b" + i)));
                fitting(draw, elements, "b" + i);
            }
            elements.add(new Cooling.CooledPart(
                    draw.of(Arrays.asList(Cooling.Part.values())),
                    draw.between(0.004, 0.01),
                    draw.ratio(0.1, 3),
                    draw.between(0, 60),
                    0.1,
                    new Place("", "beside")));
        } else {
            elements.addAll(onThePump);
        }
        fitting(draw, elements, "");
        elements.add(hose(draw, ""));
        return elements;
    }

    private static void fitting(Draw draw, List<Element> elements, String branch) {
        if (draw.chance(0.4)) {
            elements.add(new Cooling.Valve(draw.ratio(1, 40) * LITRE_PER_MINUTE, new Place("", branch)));
        }
        if (draw.chance(0.2)) {
            elements.add(new Cooling.Rise(draw.between(-0.5, 1), new Place("", branch)));
        }
    }

    private static Element hose(Draw draw, String branch) {
        return new Cooling.Hose(
                draw.between(0.004, 0.014), draw.ratio(0.2, 8), draw.between(0, 1), new Place("", branch));
    }

    private static Element placed(Element element, Place place) {
        if (element instanceof Cooling.Jacket jacket) {
            return new Cooling.Jacket(jacket.covers(), jacket.gapM(), jacket.shellThicknessM(), place);
        } else if (element instanceof Cooling.SolderedCoil coil) {
            return new Cooling.SolderedCoil(
                    coil.covers(), coil.tubeInnerDiameterM(), coil.tubeLengthM(), coil.bondConductance(), place);
        }
        Cooling.CapCoil coil = (Cooling.CapCoil) element;
        return new Cooling.CapCoil(coil.tubeInnerDiameterM(), coil.tubeLengthM(), coil.bondConductance(), place);
    }
}
