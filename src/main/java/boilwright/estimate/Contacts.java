package boilwright.estimate;

import boilwright.rig.HeatSource;
import boilwright.rig.Parameter;
import java.util.Optional;

/** Which entry of the parameter registry says how well a source touches the boiler. */
final class Contacts {
    private Contacts() {}

    /** The entry for a kind of contact. */
    static Parameter parameter(HeatSource.Contact contact) {
        return switch (contact) {
            case MACHINED_METAL -> Parameter.CONTACT_MACHINED_METAL;
            case FLAT_GLASS -> Parameter.CONTACT_FLAT_GLASS;
            case DOMED_GLASS -> Parameter.CONTACT_DOMED_GLASS;
        };
    }

    /** The entry for a heat source; empty when it touches nothing. */
    static Optional<Parameter> parameter(HeatSource source) {
        if (source instanceof HeatSource.ContactPlate plate) {
            return Optional.of(parameter(plate.contact()));
        }
        if (source instanceof HeatSource.Induction induction) {
            return Optional.of(parameter(induction.contact()));
        }
        if (source instanceof HeatSource.HeatingMantle) {
            return Optional.of(Parameter.CONTACT_MANTLE);
        }
        return source instanceof HeatSource.ClampedHeater
                ? Optional.of(Parameter.CONTACT_MACHINED_METAL)
                : Optional.empty();
    }
}
