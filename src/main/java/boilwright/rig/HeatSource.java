package boilwright.rig;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;

/** What heats the boiler. The rated power is never what reaches the oil. */
public sealed interface HeatSource {
    /** Its kind. */
    SourceKind kind();

    /** Rated power, W: electrical, or fuel on the gross heating value for a burner. */
    double ratedPowerW();

    /** The same source with another rated power, W. */
    HeatSource withRatedPower(double watts);

    /** How its heat gets into the boiler. */
    HeatPath path();

    /** The heated mass with its contact; empty when the source has none. */
    Optional<ContactBody> body();

    /** The same source with its heated mass changed; the source itself when it has none. */
    HeatSource withBody(UnaryOperator<ContactBody> change);

    /** The temperature at which it holds itself, K; empty when it knows none. */
    default OptionalDouble limitK() {
        return body().map(body -> OptionalDouble.of(body.limitK())).orElse(OptionalDouble.empty());
    }

    /** How it touches the boiler; empty when it does not. */
    default Optional<Contact> contact() {
        return body().map(ContactBody::contact);
    }

    /** What people call it in a sentence, such as "hot plate". */
    default String title() {
        return kind().title();
    }

    /** Whether it burns gas and needs no mains. */
    default boolean isFlame() {
        return path() == HeatPath.FLAME;
    }

    /** Whether heat passes from its heated mass through a contact into the boiler. */
    default boolean touches() {
        return path() == HeatPath.CONTACT;
    }

    /** Share of the electrical power that arises as heat where it is wanted, 0 to 1; what a flame gives is a matter of the model. */
    default double efficiency() {
        return 1;
    }

    /** The cartridge that it burns from without a regulator; empty for every other source. */
    default Optional<Cartridge> cartridge() {
        return Optional.empty();
    }

    /** The same source as it is under a boiler: it touches no more than the boiler's heated area. */
    default HeatSource under(Boiler boiler) {
        double base = boiler.heatedAreaM2();
        return withBody(body -> body.areaM2() > base ? body.withArea(base) : body);
    }

    /** How the heat of a source gets into the boiler. */
    enum HeatPath {
        /** A flame licks the boiler. */
        FLAME,
        /** Through a contact, from a heated mass with a temperature of its own. */
        CONTACT,
        /** It arises in the boiler's own base. */
        BASE,
        /** It arises in the oil. */
        OIL,
        /** Nothing near is heated. */
        NOWHERE
    }

    /** How a thermostat switches. */
    enum Thermostat {
        /** On and off with 10 K between. */
        ON_OFF,
        /** Power falls to zero over the 10 K below the limit. */
        PROPORTIONAL
    }

    /** How a heated mass touches the boiler. */
    enum Contact {
        /** Machined metal clamped to metal. */
        MACHINED_METAL(Parameter.CONTACT_MACHINED_METAL),
        /** Flat glass standing on the plate. */
        FLAT_GLASS(Parameter.CONTACT_FLAT_GLASS),
        /** Round or domed glass on a flat plate. */
        DOMED_GLASS(Parameter.CONTACT_DOMED_GLASS),
        /** Cloth wrapped round the boiler. */
        WRAPPED(Parameter.CONTACT_MANTLE);

        private final Parameter usualConductance;

        Contact(Parameter usualConductance) {
            this.usualConductance = usualConductance;
        }

        /** The registry's entry for its conductance. */
        public Parameter usualConductance() {
            return usualConductance;
        }

        /** Whether a boiler of this material can be touched so. */
        public boolean fits(Material boiler) {
            return switch (this) {
                case MACHINED_METAL -> !boiler.isGlass();
                case FLAT_GLASS, DOMED_GLASS -> boiler.isGlass();
                case WRAPPED -> true;
            };
        }

        /** How a boiler can stand on a plate, as a rig file says it. */
        public static Contact[] ofPlates() {
            return new Contact[] {MACHINED_METAL, FLAT_GLASS, DOMED_GLASS};
        }
    }

    /**
     * An open gas burner.
     *
     * @param ratedPowerW fuel power on the gross heating value, W, with a warm cartridge
     * @param cartridge the cartridge it burns from when its pressure is not regulated; empty for a regulated supply
     */
    record GasBurner(double ratedPowerW, Optional<Cartridge> cartridge) implements HeatSource {
        @Override
        public SourceKind kind() {
            return SourceKind.GAS_BURNER;
        }

        @Override
        public GasBurner withRatedPower(double watts) {
            return new GasBurner(watts, cartridge);
        }

        @Override
        public HeatPath path() {
            return HeatPath.FLAME;
        }

        @Override
        public Optional<ContactBody> body() {
            return Optional.empty();
        }

        @Override
        public GasBurner withBody(UnaryOperator<ContactBody> change) {
            return this;
        }
    }

    /**
     * A gas cartridge of n-butane that feeds the burner without a regulator.
     *
     * @param fuelMassKg fuel in it, kg
     * @param metalMassKg mass of the steel can, kg
     * @param airConductance heat gain from the room per kelvin, W/K
     * @param heatReturnFraction share of the flame's power led back by a heat-return plate (0 for none)
     */
    record Cartridge(double fuelMassKg, double metalMassKg, double airConductance, double heatReturnFraction) {}

    /** A source that heats a mass which touches the boiler. */
    sealed interface TouchingSource extends HeatSource {
        /** The heated mass. */
        ContactBody mass();

        @Override
        default HeatPath path() {
            return HeatPath.CONTACT;
        }

        @Override
        default Optional<ContactBody> body() {
            return Optional.of(mass());
        }
    }

    /**
     * A heated plate under the boiler: hot plate, cooktop, cast plate.
     *
     * @param ratedPowerW electrical power, W
     * @param mass the plate
     */
    record ContactPlate(double ratedPowerW, ContactBody mass) implements TouchingSource {
        @Override
        public SourceKind kind() {
            return SourceKind.CONTACT_PLATE;
        }

        @Override
        public ContactPlate withRatedPower(double watts) {
            return new ContactPlate(watts, mass);
        }

        @Override
        public ContactPlate withBody(UnaryOperator<ContactBody> change) {
            return new ContactPlate(ratedPowerW, change.apply(mass));
        }
    }

    /**
     * A heating mantle wrapped round the boiler.
     *
     * @param ratedPowerW electrical power, W
     * @param mass element and cloth
     */
    record HeatingMantle(double ratedPowerW, ContactBody mass) implements TouchingSource {
        @Override
        public SourceKind kind() {
            return SourceKind.HEATING_MANTLE;
        }

        @Override
        public HeatingMantle withRatedPower(double watts) {
            return new HeatingMantle(watts, mass);
        }

        @Override
        public HeatingMantle withBody(UnaryOperator<ContactBody> change) {
            return new HeatingMantle(ratedPowerW, change.apply(mass));
        }
    }

    /**
     * A band or cast-in heater clamped to a metal boiler.
     *
     * @param ratedPowerW electrical power, W
     * @param mass the heater
     */
    record ClampedHeater(double ratedPowerW, ContactBody mass) implements TouchingSource {
        @Override
        public SourceKind kind() {
            return SourceKind.CLAMPED_HEATER;
        }

        @Override
        public ClampedHeater withRatedPower(double watts) {
            return new ClampedHeater(watts, mass);
        }

        @Override
        public ClampedHeater withBody(UnaryOperator<ContactBody> change) {
            return new ClampedHeater(ratedPowerW, change.apply(mass));
        }
    }

    /**
     * An element immersed in the oil.
     *
     * @param ratedPowerW electrical power, W
     * @param surfaceAreaM2 surface of the element in the oil, m2
     */
    record ImmersedElement(double ratedPowerW, double surfaceAreaM2) implements HeatSource {
        @Override
        public SourceKind kind() {
            return SourceKind.IMMERSED_ELEMENT;
        }

        @Override
        public ImmersedElement withRatedPower(double watts) {
            return new ImmersedElement(watts, surfaceAreaM2);
        }

        @Override
        public HeatPath path() {
            return HeatPath.OIL;
        }

        @Override
        public Optional<ContactBody> body() {
            return Optional.empty();
        }

        @Override
        public ImmersedElement withBody(UnaryOperator<ContactBody> change) {
            return this;
        }
    }

    /** What the induction field heats. */
    enum Susceptor {
        /** Nothing ferrous: the field finds nothing to heat. */
        NONE,
        /** A ferrous plate between coil and boiler. */
        PLATE,
        /** The boiler's own ferrous base. */
        FERROUS_BASE
    }

    /**
     * An induction coil under the boiler.
     *
     * @param ratedPowerW electrical power, W
     * @param susceptor what it heats
     * @param efficiency share of the electrical power that reaches the susceptor, 0 to 1
     * @param mass the susceptor; its limit is where the cooktop cuts out, and a ferrous base has no contact in between
     */
    record Induction(double ratedPowerW, Susceptor susceptor, double efficiency, ContactBody mass)
            implements TouchingSource {
        @Override
        public SourceKind kind() {
            return SourceKind.INDUCTION;
        }

        @Override
        public Induction withRatedPower(double watts) {
            return new Induction(watts, susceptor, efficiency, mass);
        }

        @Override
        public HeatPath path() {
            return switch (susceptor) {
                case NONE -> HeatPath.NOWHERE;
                case PLATE -> HeatPath.CONTACT;
                case FERROUS_BASE -> HeatPath.BASE;
            };
        }

        @Override
        public Induction withBody(UnaryOperator<ContactBody> change) {
            return new Induction(ratedPowerW, susceptor, efficiency, change.apply(mass));
        }

        /** Without a plate of its own the field heats a ferrous base, and nothing under any other. */
        @Override
        public HeatSource under(Boiler boiler) {
            Susceptor bare = boiler.material().isFerrous() ? Susceptor.FERROUS_BASE : Susceptor.NONE;
            Susceptor found = susceptor == Susceptor.PLATE ? susceptor : bare;
            return new Induction(ratedPowerW, found, efficiency, mass)
                    .withBody(body -> body.withArea(Math.min(body.areaM2(), boiler.heatedAreaM2())));
        }
    }
}
