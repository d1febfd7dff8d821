package boilwright.rig;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/** The kinds of heat source: how rig files spell them, what people call them and which figures they have. */
public enum SourceKind {
    GAS_BURNER("gas-burner", "gas burner", "gas burner", Mounting.STANDS, Figures.CARTRIDGE),
    CONTACT_PLATE(
            "contact-plate",
            "hot plate",
            "hot plate",
            Mounting.TAKEN_AWAY,
            Figures.CONTACT,
            Figures.CONTACT_AREA,
            Figures.BODY,
            Figures.THERMOSTAT,
            Figures.INSULATION),
    HEATING_MANTLE(
            "heating-mantle",
            "heating mantle",
            "mantle",
            Mounting.TAKEN_AWAY,
            Figures.WRAPPED_AREA,
            Figures.BODY,
            Figures.INSULATION),
    CLAMPED_HEATER(
            "clamped-heater",
            "clamped heater",
            "clamped heater",
            Mounting.BUILT_IN,
            Figures.CONTACT_AREA,
            Figures.BODY,
            Figures.THERMOSTAT,
            Figures.INSULATION),
    IMMERSED_ELEMENT(
            "immersed-element", "immersed element", "immersed element", Mounting.BUILT_IN, Figures.SURFACE_AREA),
    INDUCTION(
            "induction",
            "induction coil",
            "induction coil",
            Mounting.STANDS,
            Figures.SUSCEPTOR,
            Figures.EFFICIENCY,
            Figures.CONTACT,
            Figures.CONTACT_AREA,
            Figures.BODY);

    /** How a source is fixed to the pump. */
    public enum Mounting {
        /** Stands by the boiler and is left there when it is off. */
        STANDS,
        /** Holds its heat when it is off, and can be taken away from the boiler. */
        TAKEN_AWAY,
        /** Is a part of the pump. */
        BUILT_IN
    }

    /** Fields of a rig file that go together. */
    public enum Figures {
        /** The cartridge from which it burns. */
        CARTRIDGE,
        /** What an induction field heats. */
        SUSCEPTOR,
        /** Share of the electrical power that arises as heat where it is wanted. */
        EFFICIENCY,
        /** How the boiler stands on it, a choice of the user. */
        CONTACT,
        /** Area of contact. */
        CONTACT_AREA,
        /** Area that it wraps. */
        WRAPPED_AREA,
        /** Surface in the oil. */
        SURFACE_AREA,
        /** Conductance of its contact, heat capacity, limit and losses: see {@link ContactBody}. */
        BODY,
        /** A choice of thermostats; without it the control is proportional. */
        THERMOSTAT,
        /** Insulation over the faces that lose heat. */
        INSULATION
    }

    private final String id;
    private final String title;
    private final String shortTitle;
    private final Mounting mounting;
    private final Set<Figures> figures;

    SourceKind(String id, String title, String shortTitle, Mounting mounting, Figures... figures) {
        this.id = id;
        this.title = title;
        this.shortTitle = shortTitle;
        this.mounting = mounting;
        this.figures = EnumSet.copyOf(Arrays.asList(figures));
    }

    /** How a rig file spells it. */
    public String id() {
        return id;
    }

    /** What people call it in a sentence, such as "heating mantle". */
    public String title() {
        return title;
    }

    /** What people call it where space is short, such as "mantle". */
    public String shortTitle() {
        return shortTitle;
    }

    /** How it is fixed to the pump. */
    public Mounting mounting() {
        return mounting;
    }

    /** Whether it has these fields. */
    public boolean has(Figures some) {
        return figures.contains(some);
    }

    /** Ids of the kinds that have these fields. */
    static String[] idsWith(Figures some) {
        return Arrays.stream(values())
                .filter(kind -> kind.has(some))
                .map(SourceKind::id)
                .toArray(String[]::new);
    }

    /** The kind that rig files spell so, if there is one. */
    public static Optional<SourceKind> find(String id) {
        return Arrays.stream(values()).filter(kind -> kind.id.equals(id)).findFirst();
    }
}
