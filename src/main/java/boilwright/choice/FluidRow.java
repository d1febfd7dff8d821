package boilwright.choice;

import boilwright.answers.CheckAnswer;
import java.util.OptionalDouble;

/**
 * The rig filled with one fluid, the same volume of it as now.
 *
 * @param id id of the fluid
 * @param title what people call it
 * @param check the whole check of that rig
 * @param ratio heat that the source could deliver at the temperature of full jets over heat needed there
 * @param fullAfterS from heat-on to full pumping, s; empty when that never comes
 * @param roomPressurePa its vapour pressure at room temperature, Pa
 * @param leastChargeM3 the least charge that leaves the share in the boiler that is wanted and 3 mm of oil over the base, m3;
 *     empty when more than ten times the present charge would be needed
 * @param verdict one sentence
 */
public record FluidRow(
        String id,
        String title,
        CheckAnswer check,
        double ratio,
        OptionalDouble fullAfterS,
        double roomPressurePa,
        OptionalDouble leastChargeM3,
        String verdict) {}
