package boilwright.rig;

/** The six kinds of heat source, as rig files spell them. */
public enum SourceKind {
    GAS_BURNER("gas-burner"),
    CONTACT_PLATE("contact-plate"),
    HEATING_MANTLE("heating-mantle"),
    CLAMPED_HEATER("clamped-heater"),
    IMMERSED_ELEMENT("immersed-element"),
    INDUCTION("induction");

    private final String id;

    SourceKind(String id) {
        this.id = id;
    }

    /** How a rig file spells it. */
    public String id() {
        return id;
    }

    /** The kind of a heat source. */
    public static SourceKind of(HeatSource source) {
        if (source instanceof HeatSource.GasBurner) {
            return GAS_BURNER;
        }
        if (source instanceof HeatSource.ContactPlate) {
            return CONTACT_PLATE;
        }
        if (source instanceof HeatSource.HeatingMantle) {
            return HEATING_MANTLE;
        }
        if (source instanceof HeatSource.ClampedHeater) {
            return CLAMPED_HEATER;
        }
        if (source instanceof HeatSource.ImmersedElement) {
            return IMMERSED_ELEMENT;
        }
        return INDUCTION;
    }
}
