package boilwright.rig.file;

import boilwright.rig.Body;
import boilwright.rig.Boiler;
import boilwright.rig.Column;
import boilwright.rig.FieldCatalogue;
import boilwright.rig.Limits;
import boilwright.rig.Protection;
import boilwright.rig.Rig;
import boilwright.rig.RigPaths;
import boilwright.rig.Schedule;
import boilwright.rig.Stage;
import boilwright.rig.TopCap;
import tools.jackson.databind.node.ObjectNode;

/** Lays a rig out as the object of its file, every default written out. */
final class RigTree {
    private RigTree() {}

    static ObjectNode of(Rig rig) {
        FieldWriter root = FieldWriter.root();
        root.number("format", Migrations.CURRENT.newest());
        root.text("name", rig.name());
        if (!rig.note().isEmpty()) {
            root.text("note", rig.note());
        }
        root.text("fluid", rig.fluidId()).quantity("charge", rig.chargeM3());
        boiler(root.object("boiler"), rig.boiler());
        rig.column().segments().forEach(segment -> segment(root.object("column"), segment));
        rig.stages().forEach(stage -> stage(root.entry("stages"), stage));
        body(root.object("body"), rig.body());
        rig.topCap().ifPresent(cap -> topCap(root.object("topCap"), cap));
        HeatSourceFields.write(root.object("heatSource"), rig.heatSource());
        rig.schedule().steps().forEach(step -> step(root.entry("schedule"), step));
        root.quantity("session", rig.sessionS());
        VacuumTree.foreline(root.object("foreline"), rig.foreline());
        CoolingTree.fill(root.object("cooling"), rig.cooling(), rig.room());
        root.object("room")
                .quantity("temperature", rig.room().temperatureK())
                .quantity("pressure", rig.room().pressurePa());
        rig.vacuum().ifPresent(side -> VacuumTree.vacuum(root.object("vacuum"), side));
        if (!rig.protection().equals(Protection.NONE)) {
            VacuumTree.protection(root.object("protection"), rig.protection());
        }
        if (!rig.limits().equals(Limits.USUAL)) {
            limits(root.object("limits"), rig.limits());
        }
        if (!rig.parameters().isEmpty()) {
            FieldWriter parameters = root.object("parameters");
            FieldCatalogue.children("parameters").stream()
                    .filter(field -> rig.parameters().containsKey(field.name()))
                    .forEach(field ->
                            parameters.quantity(field.name(), rig.parameters().get(field.name())));
        }
        if (!rig.guesses().isEmpty()) {
            // In the order of the fields, whatever the order in which they were marked.
            root.texts(
                    "guesses",
                    RigPaths.of(rig).stream().filter(rig.guesses()::contains).toList());
        }
        return root.node();
    }

    private static void boiler(FieldWriter out, Boiler boiler) {
        out.text("material", boiler.material().id())
                .quantity("innerDiameter", boiler.innerDiameterM())
                .quantity("wallThickness", boiler.wallThicknessM())
                .quantity("heatedArea", boiler.heatedAreaM2())
                .quantity("wettedArea", boiler.wettedAreaM2())
                .quantity("outsideArea", boiler.outsideAreaM2())
                .quantity("insulationThickness", boiler.insulationThicknessM())
                .quantity("insulationConductivity", boiler.insulationConductivity())
                .quantity("emissivity", boiler.emissivity())
                .optional("wallMass", boiler.wallMassKg());
    }

    private static void segment(FieldWriter column, Column.Segment segment) {
        column.entry("segments")
                .quantity("height", segment.heightM())
                .quantity("innerDiameter", segment.innerDiameterM())
                .quantity("wallThickness", segment.wallThicknessM())
                .text("material", segment.material().id())
                .quantity("emissivity", segment.emissivity());
    }

    private static void stage(FieldWriter out, Stage stage) {
        out.text("name", stage.name())
                .quantity("height", stage.heightM())
                .quantity("throatDiameter", stage.throatDiameterM())
                .quantity("throatGap", stage.throatGapM());
    }

    private static void body(FieldWriter out, Body body) {
        out.text("material", body.material().id())
                .quantity("innerDiameter", body.innerDiameterM())
                .quantity("wallThickness", body.wallThicknessM())
                .quantity("uncooledLowerHeight", body.uncooledLowerHeightM())
                .quantity("emissivityInside", body.emissivityInside())
                .quantity("emissivityOutside", body.emissivityOutside());
    }

    private static void topCap(FieldWriter out, TopCap cap) {
        out.quantity("area", cap.areaM2())
                .quantity("thickness", cap.thicknessM())
                .text("material", cap.material().id());
    }

    private static void step(FieldWriter out, Schedule.Step step) {
        out.quantity("at", step.atS());
        if (step instanceof Schedule.Power power) {
            out.quantity("power", power.fraction());
        } else if (step instanceof Schedule.HoldOil hold) {
            out.quantity("holdOil", hold.oilK());
        }
    }

    private static void limits(FieldWriter out, Limits limits) {
        out.optional("requiredBoilerPressure", limits.requiredBoilerPressurePa())
                .optional("heatMargin", limits.heatMargin())
                .optional("oilBulk", limits.oilBulkK())
                .optional("oilFilm", limits.oilFilmK())
                .optional("glassStress", limits.glassStressPa())
                .optional("source", limits.sourceK())
                .optional("waterOut", limits.waterOutK())
                .optional("waterInLow", limits.waterInLowK())
                .optional("waterInHigh", limits.waterInHighK())
                .optional("cap", limits.capK())
                .optional("columnMach", limits.columnMach())
                .optional("hydrostaticSuperheat", limits.hydrostaticSuperheatK())
                .optional("oilLoss", limits.oilLossKgPerS())
                .optional("leastLiquidFraction", limits.leastLiquidFraction());
    }
}
