package boilwright.answers;

import boilwright.errors.Message;
import boilwright.fluid.FluidLibrary;
import boilwright.fluid.FluidRecord;
import boilwright.fluid.TabulatedFluid;
import boilwright.fluid.WorkingFluid;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import java.util.List;

/**
 * What every question about a rig is about. Two are equal when their answers are: the version of the fluid data says which
 * figures a fluid has, so that the fluid itself is compared by its title.
 *
 * @param rig the rig
 * @param fluid its fluid
 * @param dataVersion version of the fluid data
 * @param values values of the uncertain defaults
 */
public record Asked(Rig rig, WorkingFluid fluid, String dataVersion, ParameterValues values) {
    /** A rig as it is, with the fluid that it names. */
    public static Asked of(Rig rig, FluidLibrary fluids) {
        return of(rig, fluids.find(rig.fluidId()), fluids.dataVersion());
    }

    /** A rig as it is: the uncertain defaults as they are for it. */
    public static Asked of(Rig rig, WorkingFluid fluid, String dataVersion) {
        return new Asked(rig, fluid, dataVersion, ParameterValues.of(rig));
    }

    /** The same of another rig with the same fluid; the uncertain defaults are those of that rig. */
    public Asked with(Rig other) {
        return with(other, ParameterValues.of(other));
    }

    /** The same of another rig with the same fluid, and of other values. */
    public Asked with(Rig other, ParameterValues otherValues) {
        return new Asked(other, fluid, dataVersion, otherValues);
    }

    /** The fluid as the model's inner loops use it. */
    public TabulatedFluid tables() {
        return TabulatedFluid.of(fluid);
    }

    /** Where figures of the fluid are used beyond the range for which their sources vouch, up to a temperature, K. */
    List<String> rangeNotes(double hottestK) {
        if (!(fluid instanceof FluidRecord file)) {
            return List.of();
        }
        double coldest = Math.min(rig.room().temperatureK(), rig.cooling().inletTemperatureK());
        return file.rangeNotes(coldest, hottestK).stream().map(Message::text).toList();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Asked asked
                && rig.equals(asked.rig)
                && fluid.title().equals(asked.fluid.title())
                && dataVersion.equals(asked.dataVersion)
                && values.equals(asked.values);
    }

    @Override
    public int hashCode() {
        return rig.hashCode();
    }
}
