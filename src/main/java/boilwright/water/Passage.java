package boilwright.water;

import boilwright.rig.Body;
import boilwright.rig.Cooling;
import boilwright.rig.Rig;
import boilwright.rig.Stage;
import java.util.List;
import java.util.Optional;

/**
 * The way that water finds through one element: a round tube or the gap of a jacket.
 *
 * @param areaM2 cross-section, m2
 * @param hydraulicDiameterM bore of a tube, twice the gap of a jacket, m
 * @param diameterRatio inner over outer diameter of a jacket's gap, above 0, below 1; 0 for a tube
 * @param lengthM length along the flow, m
 * @param coilDiameterM diameter of the turns from tube axis to tube axis, m; infinite for a straight way
 */
public record Passage(
        double areaM2, double hydraulicDiameterM, double diameterRatio, double lengthM, double coilDiameterM) {

    /**
     * The passage of an element; none for a valve or a rise. The turns of a soldered coil lie on the body's outside, those of a cap
     * coil on a circle of the cap's area, those of a baffle in the body's bore; how a trap's tube is bent is not known: it
     * counts as straight. In a jacket water flows along the axis, through the heights of the zones it covers.
     *
     * @param rig the rig to which it belongs
     * @param element one of its cooling's elements
     */
    public static Optional<Passage> of(Rig rig, Cooling.Element element) {
        return switch (element.kind()) {
            case JACKET -> element.jacket().map(jacket -> gap(rig, jacket));
            case SOLDERED_COIL, CAP_COIL, BAFFLE_COIL, FORELINE_TRAP, HOSE ->
                element.tube().map(tube -> tube(rig, tube));
            case VALVE, RISE -> Optional.empty();
        };
    }

    /** Whether it is the gap of a jacket. */
    public boolean isGap() {
        return diameterRatio > 0;
    }

    private static Passage gap(Rig rig, Cooling.Jacket jacket) {
        double inner = outerDiameter(rig.body());
        double outer = inner + 2 * jacket.gapM();
        double area = Math.PI * (inner + jacket.gapM()) * jacket.gapM();
        double length = jacket.covers().stream()
                .mapToDouble(stage -> zoneHeight(rig, stage))
                .sum();
        return new Passage(area, 2 * jacket.gapM(), inner / outer, length, Double.POSITIVE_INFINITY);
    }

    private static Passage tube(Rig rig, Cooling.Tube tube) {
        double bore = tube.tubeInnerDiameterM();
        return new Passage(Math.PI / 4 * bore * bore, bore, 0, tube.tubeLengthM(), turns(rig, tube));
    }

    private static double turns(Rig rig, Cooling.Tube tube) {
        return switch (tube.kind()) {
            case SOLDERED_COIL -> outerDiameter(rig.body()) + tube.tubeInnerDiameterM();
            case CAP_COIL -> Math.sqrt(4 / Math.PI * rig.topCap().orElseThrow().areaM2());
            case BAFFLE_COIL -> rig.body().innerDiameterM();
            case FORELINE_TRAP, HOSE, JACKET, VALVE, RISE -> Double.POSITIVE_INFINITY;
        };
    }

    private static double outerDiameter(Body body) {
        return body.innerDiameterM() + 2 * body.wallThicknessM();
    }

    /** Height of the zone that belongs to a stage: up to it from the one below, at the top to the column's end. */
    private static double zoneHeight(Rig rig, String name) {
        List<Stage> stages = rig.stages();
        double bottom = rig.body().uncooledLowerHeightM();
        for (int k = 0; k < stages.size(); k++) {
            double top = k == stages.size() - 1
                    ? rig.column().heightM()
                    : stages.get(k).heightM();
            if (stages.get(k).name().equals(name)) {
                return top - bottom;
            }
            bottom = top;
        }
        throw new IllegalArgumentException(name);
    }
}
