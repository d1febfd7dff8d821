package boilwright.rig;

import static boilwright.units.Dimension.AREA;
import static boilwright.units.Dimension.FRACTION;
import static boilwright.units.Dimension.LENGTH;
import static boilwright.units.Dimension.MASS;
import static boilwright.units.Dimension.THERMAL_CONDUCTIVITY;
import static boilwright.units.Dimension.TIME;
import static boilwright.units.Dimension.VOLUME;

import java.util.ArrayList;
import java.util.List;

/** The fields of the pump itself: the rig's head, boiler, column, stages, body and cap. */
final class VesselFields {
    private VesselFields() {}

    static List<Field> all() {
        List<Field> all = new ArrayList<>();
        all.addAll(new FieldSet("")
                .whole("format", 3, 3)
                .text("name", 1, 80)
                .text("note", 0, 4000)
                .optional()
                .text("fluid", 1, 80)
                .quantity("charge", VOLUME, "mL", 5e-7, 0.2, 1e-5, 4e-3)
                .object("boiler")
                .object("column")
                .list("stages", 1, 12)
                .object("body")
                .object("topCap")
                .optional()
                .object("heatSource")
                .list("schedule", 1, 200)
                .optional()
                .quantityFrom("a minute to a day, common practice", "session", TIME, "h", 60, 86_400, 900, 50_000)
                .optional()
                .object("foreline")
                .object("cooling")
                .object("room")
                .object("vacuum")
                .optional()
                .object("protection")
                .optional()
                .object("limits")
                .optional()
                .object("parameters")
                .optional()
                .textList("guesses", 0, 400)
                .optional()
                .fields());
        all.addAll(new FieldSet("boiler")
                .material("material")
                .quantity("innerDiameter", LENGTH, "mm", 0.005, 3, 0.03, 1)
                .quantity("wallThickness", LENGTH, "mm", 1e-4, 0.06, 8e-4, 0.015)
                .quantity("heatedArea", AREA, "cm2", 1e-4, 10, 3e-4, 1)
                .quantity("wettedArea", AREA, "cm2", 1e-4, 30, 3e-4, 3)
                .optional()
                .quantity("outsideArea", AREA, "cm2", 1e-4, 30, 3e-4, 3)
                .optional()
                .quantity("insulationThickness", LENGTH, "mm", 0, 0.5, 1e-3, 0.15)
                .optional()
                .quantityFrom(
                        FieldSet.JUDGEMENT, "insulationConductivity", THERMAL_CONDUCTIVITY, "W/(m K)", 5e-3, 5, 0.01, 1)
                .optional()
                .quantityFrom(FieldSet.JUDGEMENT, "emissivity", FRACTION, "1", 0.01, 1, 0.01, 1)
                .optional()
                .quantity("wallMass", MASS, "kg", 1e-3, 1000, 0.02, 60)
                .optional()
                .fields());
        all.addAll(new FieldSet("column").list("segments", 1, 20).fields());
        all.addAll(new FieldSet("column.segments[]")
                .quantity("height", LENGTH, "mm", 5e-3, 5, 0.02, 1.2)
                .quantity("innerDiameter", LENGTH, "mm", 2e-3, 2, 8e-3, 0.6)
                .quantity("wallThickness", LENGTH, "mm", 5e-5, 0.05, 3e-4, 0.012)
                .material("material")
                .quantityFrom(FieldSet.JUDGEMENT, "emissivity", FRACTION, "1", 0.01, 1, 0.01, 1)
                .optional()
                .fields());
        all.addAll(new FieldSet("stages[]")
                .text("name", 1, 40)
                .quantity("height", LENGTH, "mm", 5e-3, 5, 0.02, 1.5)
                .quantity("throatDiameter", LENGTH, "mm", 1e-3, 2, 5e-3, 0.7)
                .quantity("throatGap", LENGTH, "mm", 2e-5, 0.1, 2e-4, 0.015)
                .fields());
        all.addAll(new FieldSet("body")
                .material("material")
                .quantity("innerDiameter", LENGTH, "mm", 5e-3, 3, 0.02, 1.2)
                .quantity("wallThickness", LENGTH, "mm", 1e-4, 0.05, 5e-4, 0.015)
                .quantity("uncooledLowerHeight", LENGTH, "mm", 0, 2, 2e-3, 0.5)
                .quantityFrom(FieldSet.JUDGEMENT, "emissivityInside", FRACTION, "1", 0.01, 1, 0.01, 1)
                .optional()
                .quantityFrom(FieldSet.JUDGEMENT, "emissivityOutside", FRACTION, "1", 0.01, 1, 0.01, 1)
                .optional()
                .fields());
        all.addAll(new FieldSet("topCap")
                .quantity("area", AREA, "cm2", 1e-5, 5, 3e-4, 1)
                .quantity("thickness", LENGTH, "mm", 1e-4, 0.05, 3e-4, 0.02)
                .material("material")
                .fields());
        return all;
    }
}
