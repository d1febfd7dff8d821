package boilwright.water;

import boilwright.fluid.Water;
import boilwright.rig.Rig;
import boilwright.rig.Supply;
import boilwright.water.OperatingPoint.ElementFlow;
import java.util.ArrayList;
import java.util.List;

/** Finds the flow at which supply and circuit agree. */
public final class CircuitSolver {
    private CircuitSolver() {}

    /**
     * The flow through a rig's circuit with water at the supply's temperature all the way: colder than it will be, so that what
     * flows later is a little more.
     *
     * @param rig the rig
     */
    public static OperatingPoint operatingPoint(Rig rig) {
        double density = Water.density(rig.cooling().inletTemperatureK());
        if (!(rig.cooling().supply() instanceof Supply.GivenFlow given)) {
            throw new UnsupportedOperationException();
        }
        double mass = given.flowM3PerS() * density;
        List<ElementFlow> elements = new ArrayList<>();
        rig.cooling().elements().forEach(e -> elements.add(new ElementFlow(mass, Double.NaN, 0)));
        return new OperatingPoint(mass, given.flowM3PerS(), elements, Double.NaN, 0);
    }
}
