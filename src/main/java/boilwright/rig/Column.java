package boilwright.rig;

import java.util.List;

/**
 * The vapour column from the boiler up to the top jet.
 *
 * @param segments pieces of one bore and wall each, bottom to top; at least one
 */
public record Column(List<Segment> segments) {
    public Column {
        segments = List.copyOf(segments);
    }

    /**
     * A piece of the column.
     *
     * @param heightM height, m
     * @param innerDiameterM bore, m
     * @param wallThicknessM wall thickness, m
     * @param material wall material
     * @param emissivity emissivity of its outside, towards the body wall
     */
    public record Segment(
            double heightM, double innerDiameterM, double wallThicknessM, Material material, double emissivity) {}

    /** Height of the whole column, m. */
    public double heightM() {
        return segments.stream().mapToDouble(Segment::heightM).sum();
    }
}
