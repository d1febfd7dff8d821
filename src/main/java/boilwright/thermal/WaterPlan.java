package boilwright.thermal;

import boilwright.rig.Cooling;
import boilwright.rig.Rig;
import boilwright.thermal.WaterNode.Inflow;
import boilwright.water.Circuit;
import boilwright.water.OperatingPoint;
import boilwright.water.Passage;
import java.util.ArrayList;
import java.util.List;

/** Lays the nodes of a rig's water out along its circuit, each with what it receives from those before it. */
final class WaterPlan {
    /** Water on its way: kg/s from a node, or from the supply (-1). */
    private record Stream(int node, double massFlow) {}

    /** Tightest turns that the relations of coils are made for. */
    private static final double TIGHTEST = 0.2;

    private final Rig rig;
    private final WallGeometry walls;
    private final OperatingPoint flow;
    private final List<WaterNode> nodes = new ArrayList<>();

    private WaterPlan(Rig rig, WallGeometry walls, OperatingPoint flow) {
        this.rig = rig;
        this.walls = walls;
        this.flow = flow;
    }

    /**
     * The nodes and the mixture of their water that leaves the circuit.
     *
     * @param nodes nodes in the order the water meets them
     * @param outlet what leaves, as the inflow of a node that would follow
     */
    record Layout(List<WaterNode> nodes, Inflow outlet) {}

    static Layout of(Rig rig, WallGeometry walls, OperatingPoint flow) {
        WaterPlan plan = new WaterPlan(rig, walls, flow);
        List<Stream> streams = List.of(new Stream(-1, flow.massFlowKgPerS()));
        for (Circuit.Stretch stretch : Circuit.of(rig.cooling().elements()).stretches()) {
            List<Stream> after = new ArrayList<>();
            for (List<Integer> branch : stretch.branches()) {
                after.addAll(plan.branch(branch, streams));
            }
            streams = after;
        }
        return new Layout(List.copyOf(plan.nodes), inflow(streams, flow.massFlowKgPerS()));
    }

    private List<Stream> branch(List<Integer> elements, List<Stream> before) {
        double massFlow = flow.elements().get(elements.get(0)).massFlowKgPerS();
        List<Stream> streams = before;
        for (int element : elements) {
            int first = nodes.size();
            element(element, rig.cooling().elements().get(element), inflow(streams, massFlow));
            if (nodes.size() > first) {
                streams = List.of(new Stream(nodes.size() - 1, massFlow));
            }
        }
        // a branch of valves alone passes its share on as it came
        return streams == before ? scaled(before, massFlow) : streams;
    }

    private static List<Stream> scaled(List<Stream> streams, double massFlow) {
        double total = streams.stream().mapToDouble(Stream::massFlow).sum();
        return streams.stream()
                .map(s -> new Stream(s.node(), total > 0 ? s.massFlow() * massFlow / total : 0))
                .toList();
    }

    private static Inflow inflow(List<Stream> streams, double massFlow) {
        List<Stream> nodes = streams.stream().filter(s -> s.node() >= 0).toList();
        double total = streams.stream().mapToDouble(Stream::massFlow).sum();
        int[] from = nodes.stream().mapToInt(Stream::node).toArray();
        double[] share = nodes.stream()
                .mapToDouble(s -> total > 0 ? s.massFlow() / total : 1.0 / streams.size())
                .toArray();
        return new Inflow(massFlow, from, share);
    }

    private void element(int index, Cooling.Element element, Inflow inflow) {
        List<WaterNode> own = switch (element.kind()) {
            case JACKET -> jacket(index, element.jacket().orElseThrow(), inflow);
            case SOLDERED_COIL -> soldered(index, element.solderedCoil().orElseThrow(), inflow);
            case CAP_COIL -> List.of(onCap(index, element.capCoil().orElseThrow(), inflow));
            case BAFFLE_COIL, FORELINE_TRAP ->
                List.of(part(index, element.cooledPart().orElseThrow(), inflow));
            case HOSE -> List.of(hose(index, element.hose().orElseThrow(), inflow));
            case VALVE, RISE -> List.of();
        };
        nodes.addAll(own);
    }

    private List<WaterNode> jacket(int index, Cooling.Jacket jacket, Inflow inflow) {
        List<WaterNode> own = new ArrayList<>();
        double inner = rig.body().innerDiameterM() + 2 * rig.body().wallThicknessM();
        for (String stage : jacket.covers()) {
            int k = zone(stage);
            own.add(WaterNode.jacket(
                    next(inflow, own), index, k, inner, jacket.gapM(), jacket.shellThicknessM(), walls.heightM[k]));
        }
        return own;
    }

    private List<WaterNode> soldered(int index, Cooling.SolderedCoil coil, Inflow inflow) {
        List<WaterNode> own = new ArrayList<>();
        double height =
                coil.covers().stream().mapToDouble(s -> walls.heightM[zone(s)]).sum();
        for (String stage : coil.covers()) {
            int k = zone(stage);
            double length = coil.tubeLengthM() * walls.heightM[k] / height;
            own.add(WaterNode.tube(
                    next(inflow, own),
                    index,
                    k,
                    coil.tubeInnerDiameterM(),
                    curvature(coil),
                    length,
                    coil.bondConductance(),
                    0,
                    0));
        }
        return own;
    }

    private WaterNode onCap(int index, Cooling.CapCoil coil, Inflow inflow) {
        return WaterNode.tube(
                inflow,
                index,
                walls.cap,
                coil.tubeInnerDiameterM(),
                curvature(coil),
                coil.tubeLengthM(),
                coil.bondConductance(),
                0,
                0);
    }

    private static WaterNode part(int index, Cooling.CooledPart part, Inflow inflow) {
        return WaterNode.tube(
                inflow,
                index,
                -1,
                part.tubeInnerDiameterM(),
                0,
                part.tubeLengthM(),
                0,
                part.heatLoadW(),
                part.airConductance());
    }

    private static WaterNode hose(int index, Cooling.Hose hose, Inflow inflow) {
        return WaterNode.tube(
                inflow,
                index,
                -1,
                hose.tubeInnerDiameterM(),
                0,
                hose.tubeLengthM(),
                0,
                0,
                hose.airConductance() * hose.tubeLengthM());
    }

    /** Bore over diameter of the turns, which are those that the pressure drop is worked out with. */
    private double curvature(Cooling.Tube tube) {
        double turns = Passage.of(rig, tube).orElseThrow().coilDiameterM();
        return Math.min(TIGHTEST, tube.tubeInnerDiameterM() / turns);
    }

    /** What reaches the next node of an element: the element's inflow, or its own node before. */
    private Inflow next(Inflow inflow, List<WaterNode> own) {
        int last = nodes.size() + own.size() - 1;
        return own.isEmpty() ? inflow : new Inflow(inflow.massFlow(), new int[] {last}, new double[] {1});
    }

    private int zone(String stage) {
        for (int k = 0; k < rig.stages().size(); k++) {
            if (rig.stages().get(k).name().equals(stage)) {
                return k;
            }
        }
        throw new IllegalArgumentException(stage);
    }
}
