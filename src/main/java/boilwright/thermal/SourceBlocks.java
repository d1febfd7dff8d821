package boilwright.thermal;

import boilwright.rig.HeatSource;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;

/** From a described heat source to its block of the network. */
final class SourceBlocks {
    private SourceBlocks() {}

    /**
     * The block of the heat source that a rig describes.
     *
     * @param half resistance of half the boiler's wall, K/W
     */
    static SourceBlock of(Rig rig, ParameterValues parameters, double half) {
        HeatSource described = rig.heatSource();
        return switch (described.path()) {
            case FLAME -> new FlameSource(rig, described, parameters, half);
            case CONTACT -> HeatedBody.of(rig, described, parameters, half);
            case OIL -> DirectSource.immersed(described, parameters);
            case BASE ->
                DirectSource.induction(described, rig.boiler().material().isFerrous(), parameters);
            case NOWHERE -> DirectSource.induction(described, false, parameters);
        };
    }
}
