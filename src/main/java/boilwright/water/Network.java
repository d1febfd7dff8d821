package boilwright.water;

import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.fluid.Water;
import boilwright.rig.Cooling;
import boilwright.rig.Rig;
import boilwright.water.OperatingPoint.ElementFlow;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The circuit of a rig with the cost of every element, water at the supply's temperature. For one thread. */
final class Network {
    private final double density;
    private final int elements;
    private final List<Branches> stretches = new ArrayList<>();

    Network(Rig rig) {
        Cooling cooling = rig.cooling();
        double temperature = cooling.inletTemperatureK();
        density = Water.density(temperature);
        double viscosity = Water.viscosity(temperature);
        elements = cooling.elements().size();
        Builder builder = new Builder(rig, density, viscosity);
        List<Integer> plain = new ArrayList<>();
        for (Circuit.Stretch stretch : Circuit.of(cooling.elements()).stretches()) {
            if (branchOf(cooling, stretch.branches().get(0)).isEmpty()) {
                plain.addAll(stretch.branches().get(0));
            } else {
                addPlain(plain, builder);
                stretches.add(new Branches(stretch.branches().stream()
                        .map(branch -> branch(branchOf(cooling, branch), branch, builder))
                        .toList()));
            }
        }
        addPlain(plain, builder);
    }

    private static String branchOf(Cooling cooling, List<Integer> branch) {
        return cooling.elements().get(branch.get(0)).place().branch();
    }

    private void addPlain(List<Integer> plain, Builder builder) {
        if (!plain.isEmpty()) {
            stretches.add(new Branches(List.of(new Line("", builder.line(plain)))));
            plain.clear();
        }
    }

    private static Line branch(String name, List<Integer> indices, Builder builder) {
        Line line = new Line(name, builder.line(indices));
        if (!(line.lossPa(1) > 0)) {
            throw new InputRefusedException(Message.of(MessageKey.WATER_BRANCH_WITHOUT_LOSS, name));
        }
        return line;
    }

    /** Density of the water, kg/m3. */
    double density() {
        return density;
    }

    /** Pressure that the circuit takes before anything flows, Pa; negative when it leads downward. */
    double liftPa() {
        double sum = 0;
        for (Branches stretch : stretches) {
            sum += stretch.liftPa();
        }
        return sum;
    }

    /** Pressure that the circuit takes at a flow, Pa, rises included; never falling. */
    double dropPa(double massFlow) {
        double sum = 0;
        for (Branches stretch : stretches) {
            sum += stretch.liftPa() + stretch.lossPa(massFlow);
        }
        return sum;
    }

    /** Lets this much flow through the whole circuit; the stretches then tell how. The water of every element. */
    List<ElementFlow> settle(double massFlow) {
        ElementFlow[] list = new ElementFlow[elements];
        for (Branches stretch : stretches) {
            stretch.settle(massFlow);
            stretch.report(list);
        }
        return List.of(list);
    }

    /** Stretches in the order the water meets them. */
    List<Branches> stretches() {
        return stretches;
    }

    /** Makes the elements of a line, each with its share of the joints. */
    private record Builder(Rig rig, double density, double viscosity) {
        List<Resistance> line(List<Integer> indices) {
            double[] joints = joints(indices);
            List<Resistance> line = new ArrayList<>();
            for (int k = 0; k < indices.size(); k++) {
                int index = indices.get(k);
                Cooling.Element element = element(index);
                double joint = joints[k];
                line.add(Passage.of(rig, element)
                        .map(p -> Resistance.passage(index, p, joint, density, viscosity))
                        .orElseGet(() -> Resistance.fitting(index, element, density)));
            }
            return line;
        }

        private Cooling.Element element(int index) {
            return rig.cooling().elements().get(index);
        }

        /** A joint belongs to the jacket at either side of it, otherwise to what the water enters; its end to the last. */
        private double[] joints(List<Integer> indices) {
            double[] joints = new double[indices.size()];
            int last = -1;
            Passage before = null;
            for (int k = 0; k < joints.length; k++) {
                Optional<Passage> here = Passage.of(rig, element(indices.get(k)));
                if (here.isPresent()) {
                    Passage passage = here.get();
                    double cost =
                            before == null ? Joints.entry(passage, density) : Joints.between(before, passage, density);
                    boolean toTheOneBefore = before != null && before.isGap() && !passage.isGap();
                    joints[toTheOneBefore ? last : k] += cost;
                    before = passage;
                    last = k;
                }
            }
            if (before != null) {
                joints[last] += Joints.exit(before, density);
            }
            return joints;
        }
    }
}
