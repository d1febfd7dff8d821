package boilwright.rig.file;

import boilwright.errors.MessageKey;
import boilwright.rig.Body;
import boilwright.rig.Boiler;
import boilwright.rig.Column;
import boilwright.rig.Field;
import boilwright.rig.FieldCatalogue;
import boilwright.rig.HeatSource;
import boilwright.rig.Limits;
import boilwright.rig.Material;
import boilwright.rig.Protection;
import boilwright.rig.Rig;
import boilwright.rig.RigPaths;
import boilwright.rig.Room;
import boilwright.rig.Schedule;
import boilwright.rig.Stage;
import boilwright.rig.TopCap;
import boilwright.rig.TypicalValues;
import boilwright.rig.file.Json.JsonObject;
import boilwright.units.NearestSpelling;
import boilwright.units.PhysicalConstants;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Builds a rig from the object of its file and fills in what was left out. When faults were reported the rig has NaN or
 * null in their place and must not leave this package.
 */
final class RigAssembler {

    private RigAssembler() {}

    static Rig assemble(JsonObject file, Collection<String> fluidIds, Findings findings) {
        Section root = Section.root(file, findings);
        String fluid = root.text("fluid");
        if (!fluid.isEmpty() && !fluidIds.contains(fluid)) {
            root.reportChoice("fluid", fluid, fluidIds);
        }
        HeatSource source = HeatSourceFields.read(root.objectOfKinds("heatSource"));
        double ratedPower = source == null ? Double.NaN : source.ratedPowerW();
        List<String> guesses = root.texts("guesses");
        Room room = room(root.object("room"));
        Rig rig = new Rig(
                root.text("name"),
                root.text("note"),
                fluid,
                root.quantity("charge"),
                boiler(root.object("boiler")),
                column(root.object("column")),
                root.list("stages").stream().map(RigAssembler::stage).toList(),
                body(root.object("body")),
                root.has("topCap") ? Optional.of(topCap(root.object("topCap"))) : Optional.empty(),
                source,
                root.has("schedule")
                        ? ScheduleReader.read(root.list("schedule"), ratedPower, findings)
                        : new Schedule(List.of(new Schedule.Power(0, 1))),
                VacuumReader.foreline(root.objectOfKinds("foreline")),
                CoolingReader.read(root.object("cooling"), room.temperatureK()),
                room,
                root.has("limits") ? limits(root.object("limits")) : Limits.USUAL,
                root.has("vacuum") ? Optional.of(VacuumReader.vacuum(root.object("vacuum"))) : Optional.empty(),
                root.has("protection") ? VacuumReader.protection(root.object("protection")) : Protection.NONE,
                root.has("parameters") ? parameters(root.object("parameters")) : Map.of(),
                root.quantityOr("session", TypicalValues.SESSION_S),
                new LinkedHashSet<>(guesses));
        checkGuesses(rig, guesses, findings);
        return rig;
    }

    private static Boiler boiler(Section in) {
        Material material = material(in);
        double diameter = in.quantity("innerDiameter");
        double wall = in.quantity("wallThickness");
        double heated = in.quantity("heatedArea");
        double wettedRatio = material == null ? Double.NaN : TypicalValues.wettedRatio(material);
        double outside = diameter + 2 * wall;
        return new Boiler(
                material,
                diameter,
                wall,
                heated,
                in.quantityOr("wettedArea", squareMillimetres(wettedRatio * heated)),
                in.quantityOr("outsideArea", squareMillimetres(Math.PI / 2 * outside * outside)),
                in.quantityOr("insulationThickness", 0),
                in.quantityOr("insulationConductivity", TypicalValues.BOILER_INSULATION_CONDUCTIVITY),
                in.quantityOr("emissivity", usualEmissivity(material)),
                in.optionalQuantity("wallMass"));
    }

    private static Column column(Section in) {
        return new Column(in.list("segments").stream()
                .map(segment -> {
                    Material material = material(segment);
                    return new Column.Segment(
                            segment.quantity("height"),
                            segment.quantity("innerDiameter"),
                            segment.quantity("wallThickness"),
                            material,
                            segment.quantityOr("emissivity", usualEmissivity(material)));
                })
                .toList());
    }

    private static Stage stage(Section in) {
        return new Stage(
                in.text("name"), in.quantity("height"), in.quantity("throatDiameter"), in.quantity("throatGap"));
    }

    private static Body body(Section in) {
        Material material = material(in);
        return new Body(
                material,
                in.quantity("innerDiameter"),
                in.quantity("wallThickness"),
                in.quantity("uncooledLowerHeight"),
                in.quantityOr("emissivityInside", usualEmissivity(material)),
                in.quantityOr("emissivityOutside", usualEmissivity(material)));
    }

    private static TopCap topCap(Section in) {
        return new TopCap(in.quantity("area"), in.quantity("thickness"), material(in));
    }

    private static Room room(Section in) {
        return new Room(
                in.quantity("temperature"), in.quantityOr("pressure", PhysicalConstants.STANDARD_ATMOSPHERE_PA));
    }

    private static Limits limits(Section in) {
        return new Limits(
                in.optionalQuantity("requiredBoilerPressure"),
                in.optionalQuantity("heatMargin"),
                in.optionalQuantity("oilBulk"),
                in.optionalQuantity("oilFilm"),
                in.optionalQuantity("glassStress"),
                in.optionalQuantity("source"),
                in.optionalQuantity("waterOut"),
                in.optionalQuantity("waterInLow"),
                in.optionalQuantity("waterInHigh"),
                in.optionalQuantity("cap"),
                in.optionalQuantity("columnMach"),
                in.optionalQuantity("hydrostaticSuperheat"),
                in.optionalQuantity("oilLoss"),
                in.optionalQuantity("leastLiquidFraction"));
    }

    private static Map<String, Double> parameters(Section in) {
        Map<String, Double> values = new HashMap<>();
        FieldCatalogue.children("parameters").stream()
                .map(Field::name)
                .filter(in::has)
                .forEach(id -> values.put(id, in.quantity(id)));
        return values;
    }

    private static Material material(Section in) {
        return in.choice("material", Material.values(), Material::id);
    }

    /** An estimated area, m2, to the square millimetre: more digits would only look exact. */
    private static double squareMillimetres(double area) {
        return Math.rint(area * 1e6) / 1e6;
    }

    private static double usualEmissivity(Material material) {
        return material == null ? Double.NaN : material.usualEmissivity();
    }

    /**
     * Reports every mark that is on no field, or on one that is marked already.
     *
     * @param guesses the marks as the file lists them; what is no text was refused before and is empty here
     */
    static void checkGuesses(Rig rig, List<String> guesses, Findings findings) {
        if (guesses.isEmpty()) {
            return;
        }
        List<String> known = RigPaths.of(rig);
        Set<String> marked = new HashSet<>();
        for (int i = 0; i < guesses.size(); i++) {
            String guess = guesses.get(i);
            String at = "guesses[" + i + "]";
            boolean refusedBefore = guess.isEmpty() && !Shown.quoted("").equals(findings.found(at));
            if (refusedBefore) {
                continue;
            }
            if (!known.contains(guess)) {
                unknownGuess(at, guess, known, findings);
            } else if (!marked.add(guess)) {
                findings.reportField(at, MessageKey.RIG_GUESS_DOUBLED, Shown.quoted(guess));
            }
        }
    }

    private static void unknownGuess(String at, String guess, List<String> known, Findings findings) {
        String shown = Shown.quoted(guess);
        Migrations.pathNow(guess)
                .filter(known::contains)
                .or(() -> NearestSpelling.of(guess, known))
                .ifPresentOrElse(
                        near -> findings.reportField(at, MessageKey.RIG_GUESS_UNKNOWN_NEAR, shown, near),
                        () -> findings.reportField(at, MessageKey.RIG_GUESS_UNKNOWN, shown));
    }
}
