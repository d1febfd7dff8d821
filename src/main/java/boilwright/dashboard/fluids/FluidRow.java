package boilwright.dashboard.fluids;

import boilwright.dashboard.text.WindowText;
import boilwright.errors.ComputationException;
import boilwright.fluid.FluidLibrary;
import boilwright.fluid.FluidRecord;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleSupplier;

/**
 * One fluid of the table, by the figures with which one is chosen, SI; what is not known is empty.
 *
 * @param id how rigs name it
 * @param title what people call it
 * @param family what it is chemically; empty when its file does not say
 * @param ownFile the file of the person's own that it comes from; empty for one that comes with the program
 * @param molarMass kg/mol
 * @param boilsK temperature at which its vapour has the pressure asked for, K
 * @param vapourPressurePa vapour pressure at 20 degrees Celsius, Pa
 * @param bulkLimitK highest recommended bulk temperature, K
 * @param airLimitK temperature below which air may be let in, K
 * @param latentHeat heat of vaporisation where it boils, J/kg
 */
public record FluidRow(
        String id,
        String title,
        Optional<String> family,
        Optional<String> ownFile,
        double molarMass,
        OptionalDouble boilsK,
        OptionalDouble vapourPressurePa,
        OptionalDouble bulkLimitK,
        OptionalDouble airLimitK,
        OptionalDouble latentHeat) {
    /** The temperature of a cool room, K, at which oils are compared by the vapour that they give off. */
    public static final double COOL_ROOM_K = 293.15;

    /**
     * The row of a fluid.
     *
     * @param boilerPa the pressure at which it shall boil, Pa
     */
    public static FluidRow of(FluidLibrary library, String id, double boilerPa) {
        FluidRecord fluid = library.find(id);
        OptionalDouble boilsK = known(() -> fluid.saturationTemperature(boilerPa));
        return new FluidRow(
                id,
                fluid.title(),
                fluid.family(),
                library.ownFile(id),
                fluid.molarMass(),
                boilsK,
                known(() -> fluid.vapourPressure(COOL_ROOM_K)),
                fluid.bulkLimit(),
                fluid.airAdmissionLimit(),
                boilsK.isPresent() ? known(() -> fluid.latentHeat(boilsK.getAsDouble())) : boilsK);
    }

    /** The rows of all fluids for pumps, in the library's order. */
    public static List<FluidRow> all(FluidLibrary library, double boilerPa) {
        return library.workingFluids().stream()
                .map(id -> of(library, id, boilerPa))
                .toList();
    }

    /** What it is chemically, in words. */
    public String familyInWords() {
        return family.map(one -> WindowText.say("fluids.family." + one.replace(' ', '-')))
                .orElseGet(() -> WindowText.say("fluids.family.not-stated"));
    }

    /** A fluid's file need not reach so far; then the table says that there is no figure. */
    private static OptionalDouble known(DoubleSupplier figure) {
        try {
            return OptionalDouble.of(figure.getAsDouble());
        } catch (ComputationException outside) {
            return OptionalDouble.empty();
        }
    }
}
