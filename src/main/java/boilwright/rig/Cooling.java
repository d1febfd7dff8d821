package boilwright.rig;

import java.util.List;
import java.util.OptionalDouble;

/**
 * The cooling water and what it passes, in the order it meets them. No elements: the body is cooled by air alone.
 *
 * @param inletTemperatureK water temperature at the inlet, K
 * @param flowM3PerS water flow, m3/s; 0 for standing water
 * @param elements jackets and coils in series
 * @param chillerCapacityW what the chiller carries away at this inlet temperature, W, when a chiller is described
 */
public record Cooling(
        double inletTemperatureK, double flowM3PerS, List<Element> elements, OptionalDouble chillerCapacityW) {
    public Cooling {
        elements = List.copyOf(elements);
    }

    /** One thing that the water passes. */
    public sealed interface Element permits Jacket, SolderedCoil, CapCoil {}

    /**
     * A water jacket around the body.
     *
     * @param covers names of the stages whose zones it covers, in the order the water meets them
     * @param gapM width of the water gap, m
     * @param shellThicknessM thickness of the outer shell, m
     */
    public record Jacket(List<String> covers, double gapM, double shellThicknessM) implements Element {
        public Jacket {
            covers = List.copyOf(covers);
        }
    }

    /**
     * A tube soldered round the body.
     *
     * @param covers names of the stages whose zones it covers, in the order the water meets them
     * @param tubeInnerDiameterM bore of the tube, m
     * @param tubeLengthM length of tube in contact over all zones covered, m; shared by zone height
     * @param bondConductance conductance of the soldered joint per metre of tube, W/(m K)
     */
    public record SolderedCoil(
            List<String> covers, double tubeInnerDiameterM, double tubeLengthM, double bondConductance)
            implements Element {
        public SolderedCoil {
            covers = List.copyOf(covers);
        }
    }

    /**
     * A tube soldered to the top cap.
     *
     * @param tubeInnerDiameterM bore of the tube, m
     * @param tubeLengthM length of tube in contact, m
     * @param bondConductance conductance of the soldered joint per metre of tube, W/(m K)
     */
    public record CapCoil(double tubeInnerDiameterM, double tubeLengthM, double bondConductance) implements Element {}
}
