package boilwright.rig;

import java.util.Optional;
import java.util.OptionalDouble;

/** What heats the boiler: one of six kinds. The rated power is never what reaches the oil. */
public sealed interface HeatSource {
    /** Rated power, W: electrical, or fuel on the gross heating value for a burner. */
    double ratedPowerW();

    /** How a thermostat switches. */
    enum Thermostat {
        /** On and off with 10 K between. */
        ON_OFF,
        /** Power falls to zero over the 10 K below the limit. */
        PROPORTIONAL
    }

    /** How a heated body touches the boiler. */
    enum Contact {
        /** Machined metal clamped to metal. */
        MACHINED_METAL,
        /** Flat glass standing on the plate. */
        FLAT_GLASS,
        /** Round or domed glass on a flat plate. */
        DOMED_GLASS
    }

    /**
     * An open gas burner.
     *
     * @param ratedPowerW fuel power on the gross heating value, W, with a warm cartridge
     * @param cartridge the cartridge it burns from when its pressure is not regulated; empty for a regulated supply
     */
    record GasBurner(double ratedPowerW, Optional<Cartridge> cartridge) implements HeatSource {}

    /**
     * A gas cartridge of n-butane that feeds the burner without a regulator.
     *
     * @param fuelMassKg fuel in it, kg
     * @param metalMassKg mass of the steel can, kg
     * @param airConductance heat gain from the room per kelvin, W/K
     * @param heatReturnFraction share of the flame's power led back by a heat-return plate (0 for none)
     */
    record Cartridge(double fuelMassKg, double metalMassKg, double airConductance, double heatReturnFraction) {}

    /**
     * A heated plate under the boiler: hot plate, cooktop, cast plate.
     *
     * @param ratedPowerW electrical power, W
     * @param contact how the boiler stands on it
     * @param contactAreaM2 projected area of contact, m2
     * @param contactConductance W/(m2 K) when known; empty: by the kind of contact, with its range
     * @param heatCapacity heat capacity of the plate, J/K
     * @param limitK temperature at which the thermostat or cut-out holds the plate, K
     * @param thermostat how it holds it
     * @param lossAreaM2 area of the other faces, m2
     * @param lossEmissivity their emissivity
     * @param insulationThicknessM insulation over them, m; 0 for none
     * @param insulationConductivity W/(m K)
     */
    record ContactPlate(
            double ratedPowerW,
            Contact contact,
            double contactAreaM2,
            OptionalDouble contactConductance,
            double heatCapacity,
            double limitK,
            Thermostat thermostat,
            double lossAreaM2,
            double lossEmissivity,
            double insulationThicknessM,
            double insulationConductivity)
            implements HeatSource {}

    /**
     * A heating mantle wrapped round the boiler.
     *
     * @param ratedPowerW electrical power, W
     * @param wrappedAreaM2 area of boiler it wraps, m2
     * @param contactConductance W/(m2 K) when known; empty: the usual one with its range
     * @param heatCapacity heat capacity of element and cloth, J/K
     * @param limitK highest element temperature, K
     * @param lossAreaM2 outside area, m2
     * @param lossEmissivity its emissivity
     * @param insulationThicknessM thickness of its insulation, m
     * @param insulationConductivity W/(m K)
     */
    record HeatingMantle(
            double ratedPowerW,
            double wrappedAreaM2,
            OptionalDouble contactConductance,
            double heatCapacity,
            double limitK,
            double lossAreaM2,
            double lossEmissivity,
            double insulationThicknessM,
            double insulationConductivity)
            implements HeatSource {}

    /**
     * A band or cast-in heater clamped to a metal boiler.
     *
     * @param ratedPowerW electrical power, W
     * @param contactAreaM2 area of contact, m2
     * @param contactConductance W/(m2 K) when known; empty: clamped metal with its range
     * @param heatCapacity heat capacity of the heater, J/K
     * @param limitK temperature of its cut-out, K
     * @param thermostat how it is held there
     * @param lossAreaM2 area of its other faces, m2
     * @param lossEmissivity their emissivity
     * @param insulationThicknessM insulation over them, m; 0 for none
     * @param insulationConductivity W/(m K)
     */
    record ClampedHeater(
            double ratedPowerW,
            double contactAreaM2,
            OptionalDouble contactConductance,
            double heatCapacity,
            double limitK,
            Thermostat thermostat,
            double lossAreaM2,
            double lossEmissivity,
            double insulationThicknessM,
            double insulationConductivity)
            implements HeatSource {}

    /**
     * An element immersed in the oil.
     *
     * @param ratedPowerW electrical power, W
     * @param surfaceAreaM2 surface of the element in the oil, m2
     */
    record ImmersedElement(double ratedPowerW, double surfaceAreaM2) implements HeatSource {}

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
     * @param contact how the boiler stands on the susceptor (ignored for a ferrous base)
     * @param contactAreaM2 area of contact, m2
     * @param contactConductance W/(m2 K) when known; empty: by the kind of contact
     * @param heatCapacity heat capacity of the susceptor, J/K
     * @param limitK susceptor temperature at which the cooktop cuts out, K
     * @param lossAreaM2 area of its other faces, m2
     * @param lossEmissivity their emissivity
     */
    record Induction(
            double ratedPowerW,
            Susceptor susceptor,
            double efficiency,
            Contact contact,
            double contactAreaM2,
            OptionalDouble contactConductance,
            double heatCapacity,
            double limitK,
            double lossAreaM2,
            double lossEmissivity)
            implements HeatSource {}
}
