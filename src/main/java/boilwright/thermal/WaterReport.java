package boilwright.thermal;

import boilwright.rig.Cooling;
import boilwright.water.Circuit;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Reads what happens in each element of the circuit off a settled model. */
final class WaterReport {
    private final PumpModel model;
    private final double[] y;
    private final int water;
    private final double enteringK;
    private final ElementState[] states;

    private WaterReport(PumpModel model, double[] y) {
        this.model = model;
        this.y = y;
        water = model.layout.water;
        enteringK = model.supply.enteringK(y, model.layout.supply);
        states = new ElementState[model.rig.cooling().elements().size()];
    }

    /** The elements in the order of the rig's cooling. */
    static List<ElementState> of(PumpModel model, double[] y) {
        WaterReport report = new WaterReport(model, y);
        List<Cooling.Element> elements = model.rig.cooling().elements();
        double before = report.enteringK;
        for (Circuit.Stretch stretch : Circuit.of(elements).stretches()) {
            double mass = 0;
            double after = 0;
            for (List<Integer> branch : stretch.branches()) {
                double k = before;
                for (int element : branch) {
                    k = report.element(element, k);
                }
                double flow = model.water.flow().elements().get(branch.get(0)).massFlowKgPerS();
                mass += flow;
                after += flow * k;
            }
            before = mass > 0 ? after / mass : before;
        }
        return List.of(report.states);
    }

    /** Reads one element; returns what leaves it, K. */
    private double element(int element, double beforeK) {
        double outK = beforeK;
        double flow = model.water.flow().elements().get(element).massFlowKgPerS();
        double heat = 0;
        double conductance = 0;
        double area = 0;
        double hottest = Double.NaN;
        List<Integer> nodes = nodes(element);
        for (int i : nodes) {
            WaterNode node = model.water.node(i);
            double upstream = model.water.upstreamEnthalpy(i, y, water, enteringK);
            heat += model.water.streamW(i, upstream, y[water + i]);
            outK = y[water + i];
            if (node.wall() >= 0) {
                double wallK = y[model.layout.walls + node.wall()];
                conductance += model.water.coefficient(i, wallK, y[water + i]) * node.wettedAreaM2();
                area += node.wettedAreaM2();
                hottest = Double.isNaN(hottest) ? wallK : Math.max(hottest, wallK);
            }
        }
        states[element] = new ElementState(
                element,
                beforeK,
                outK,
                flow,
                heat,
                area > 0 ? OptionalDouble.of(conductance / area) : OptionalDouble.empty(),
                Double.isNaN(hottest) ? OptionalDouble.empty() : OptionalDouble.of(hottest));
        return outK;
    }

    private List<Integer> nodes(int element) {
        List<Integer> nodes = new ArrayList<>();
        for (int i = 0; i < model.water.count; i++) {
            if (model.water.node(i).element() == element) {
                nodes.add(i);
            }
        }
        return nodes;
    }
}
