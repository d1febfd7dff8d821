package boilwright.invariants;

import boilwright.rig.Boiler;
import boilwright.rig.ContactBody;
import boilwright.rig.HeatSource;
import boilwright.rig.HeatSource.Contact;
import boilwright.rig.HeatSource.Susceptor;
import boilwright.rig.HeatSource.Thermostat;
import boilwright.rig.SourceKind;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The heat sources of {@link RandomRigs}. */
final class RandomSources {
    private RandomSources() {}

    static HeatSource source(Draw draw, SourceKind kind, double wanted, Boiler boiler) {
        double power = Math.min(12e3, Math.max(60, wanted));
        double area = boiler.heatedAreaM2() * draw.between(0.6, 1);
        double loss = area * draw.between(1.5, 3);
        double capacity = area * draw.between(2e4, 8e4);
        double insulation = draw.chance(0.4) ? draw.between(0.005, 0.04) : 0;
        double conductivity = draw.between(0.03, 0.1);
        double emissivity = draw.between(0.3, 0.95);
        double limit = draw.between(620, 780);
        return switch (kind) {
            case GAS_BURNER -> new HeatSource.GasBurner(1.5 * power, cartridge(draw));
            case CONTACT_PLATE ->
                new HeatSource.ContactPlate(
                        power,
                        new ContactBody(
                                contact(draw, boiler),
                                area,
                                known(draw, 60, 200),
                                capacity,
                                limit,
                                draw.of(Arrays.asList(Thermostat.values())),
                                loss,
                                emissivity,
                                insulation,
                                conductivity));
            case HEATING_MANTLE ->
                new HeatSource.HeatingMantle(
                        power,
                        new ContactBody(
                                Contact.WRAPPED,
                                area,
                                known(draw, 25, 60),
                                capacity,
                                limit,
                                Thermostat.PROPORTIONAL,
                                loss,
                                emissivity,
                                insulation,
                                conductivity));
            case CLAMPED_HEATER ->
                new HeatSource.ClampedHeater(
                        power,
                        new ContactBody(
                                Contact.MACHINED_METAL,
                                area,
                                known(draw, 600, 1500),
                                capacity,
                                limit,
                                draw.of(Arrays.asList(Thermostat.values())),
                                loss,
                                emissivity,
                                insulation,
                                conductivity));
            case IMMERSED_ELEMENT ->
                new HeatSource.ImmersedElement(power, Math.max(6e-4, power / draw.between(1e4, 4e4)));
            case INDUCTION ->
                new HeatSource.Induction(
                        power,
                        susceptor(draw, boiler),
                        draw.between(0.7, 0.95),
                        new ContactBody(
                                contact(draw, boiler),
                                area,
                                known(draw, 60, 200),
                                capacity,
                                limit,
                                Thermostat.PROPORTIONAL,
                                loss,
                                emissivity,
                                0,
                                1));
        };
    }

    private static Optional<HeatSource.Cartridge> cartridge(Draw draw) {
        if (draw.chance(0.6)) {
            return Optional.empty();
        }
        double fuel = draw.between(0.1, 0.45);
        return Optional.of(new HeatSource.Cartridge(
                fuel, fuel * draw.between(0.4, 0.7), draw.between(0.1, 0.6), draw.between(0, 0.05)));
    }

    private static Contact contact(Draw draw, Boiler boiler) {
        return boiler.material().isGlass()
                ? draw.of(List.of(Contact.FLAT_GLASS, Contact.DOMED_GLASS))
                : Contact.MACHINED_METAL;
    }

    private static Susceptor susceptor(Draw draw, Boiler boiler) {
        Susceptor likely = boiler.material().isFerrous() ? Susceptor.FERROUS_BASE : Susceptor.PLATE;
        return draw.chance(0.1) ? Susceptor.NONE : likely;
    }

    private static OptionalDouble known(Draw draw, double low, double high) {
        return draw.chance(0.3) ? OptionalDouble.of(draw.ratio(low, high)) : OptionalDouble.empty();
    }
}
