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
        if (described instanceof HeatSource.GasBurner burner) {
            return new FlameSource(rig, burner, parameters, half);
        } else if (described instanceof HeatSource.ContactPlate plate) {
            return HeatedBody.plate(rig, plate, parameters, half);
        } else if (described instanceof HeatSource.HeatingMantle mantle) {
            return HeatedBody.mantle(rig, mantle, parameters, half);
        } else if (described instanceof HeatSource.ClampedHeater clamped) {
            return HeatedBody.clamped(rig, clamped, parameters, half);
        } else if (described instanceof HeatSource.ImmersedElement element) {
            return DirectSource.immersed(element, parameters);
        }
        HeatSource.Induction induction = (HeatSource.Induction) described;
        return switch (induction.susceptor()) {
            case PLATE -> HeatedBody.susceptor(rig, induction, parameters, half);
            case FERROUS_BASE ->
                DirectSource.induction(induction, rig.boiler().material().isFerrous(), parameters);
            case NONE -> DirectSource.induction(induction, false, parameters);
        };
    }
}
