package boilwright.commandline;

import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.estimate.OutsideMeasurements;
import boilwright.rig.FieldCatalogue;
import boilwright.rig.HeatSource;
import boilwright.rig.Material;
import boilwright.rig.SourceKind;
import boilwright.rig.file.TypedFields;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Option;

/** What was measured on the outside of a pump, as options. */
final class MeasurementOptions {
    private static final double TENTHS_OF_MICRONS = 1e7;

    /** The kinds of heat source, for the help. */
    static final class SourceKinds extends ArrayList<String> {
        private static final long serialVersionUID = 1;

        SourceKinds() {
            super(FieldCatalogue.find("heatSource.kind").orElseThrow().choices());
        }
    }

    @Option(names = "--name", paramLabel = "TEXT", description = "What to call the rig.")
    private String name = "";

    @Option(
            names = "--material",
            required = true,
            paramLabel = "WORD",
            description = "Material of the body: borosilicate, stainless, mild-steel, copper or aluminium.")
    private String material;

    @ArgGroup(multiplicity = "1")
    private Width width;

    /** The body's width, inside or outside. */
    static final class Width {
        @Option(names = "--bore", paramLabel = "LENGTH", description = "Inner diameter of the body at the top jet.")
        private String bore;

        @Option(
                names = "--body-diameter",
                paramLabel = "LENGTH",
                description = "Outer diameter of the body, in place of the bore.")
        private String body;
    }

    @Option(names = "--stages", required = true, paramLabel = "N", description = "Number of jets.")
    private String stages;

    @Option(
            names = "--column-height",
            required = true,
            paramLabel = "LENGTH",
            description = "Height of the vapour column from the boiler to the top jet.")
    private String columnHeight;

    @Option(
            names = "--column-diameter",
            required = true,
            paramLabel = "LENGTH",
            description = "Inner diameter of the vapour column.")
    private String columnDiameter;

    @Option(
            names = "--boiler-diameter",
            required = true,
            paramLabel = "LENGTH",
            description = "Inner diameter of the boiler at the oil level.")
    private String boilerDiameter;

    @Option(names = "--wall", required = true, paramLabel = "LENGTH", description = "Wall thickness of the body.")
    private String wall;

    @Option(names = "--charge", required = true, paramLabel = "VOLUME", description = "Volume of the working fluid.")
    private String charge;

    @Option(
            names = "--fluid",
            required = true,
            paramLabel = "ID",
            description = "Working fluid; the command fluids lists them.")
    private String fluid;

    @Option(
            names = "--source",
            required = true,
            paramLabel = "WORD",
            completionCandidates = SourceKinds.class,
            description = "Heat source: ${COMPLETION-CANDIDATES}.")
    private String source;

    @Option(
            names = "--power",
            required = true,
            paramLabel = "POWER",
            description = "Its rating: electrical, or of the fuel.")
    private String power;

    @Option(
            names = "--contact",
            paramLabel = "WORD",
            description = "If known, how the boiler stands on a plate: machined-metal, flat-glass or domed-glass.")
    private String contact;

    @Option(
            names = "--source-limit",
            paramLabel = "TEMPERATURE",
            description = "If known, the temperature at which the source is held.")
    private String sourceLimit;

    @Option(
            names = "--insulation",
            paramLabel = "LENGTH",
            description = "If known, how thick the boiler is wrapped: \"0 mm\" for a bare one.")
    private String insulation;

    @Option(names = "--air-cooled", description = "No water cools the body.")
    private boolean airCooled;

    @Option(names = "--water-inlet", paramLabel = "TEMPERATURE", description = "If known, how warm the water comes.")
    private String waterInlet;

    @Option(names = "--water-flow", paramLabel = "FLOW", description = "If known, how much water flows.")
    private String waterFlow;

    @Option(
            names = "--foreline",
            paramLabel = "PRESSURE",
            description = "If known, the pressure that the backing pump holds.")
    private String foreline;

    @Option(
            names = "--throat-gap",
            paramLabel = "LENGTHS",
            description = "If known, the throat gaps from the bottom to the top, such as \"0.6 mm,0.7 mm,0.8 mm\".")
    private String throatGaps;

    @Option(
            names = "--works-at",
            paramLabel = "POWER",
            description = "If the gaps are not known: the power of this source at which the pump is said to work.")
    private String worksAt;

    @Option(
            names = "--nameplate",
            paramLabel = "POWER",
            description = "If known, the rating of the heater that the pump was sold with, whatever heats it now.")
    private String nameplate;

    @Option(
            names = "--nameplate-source",
            paramLabel = "WORD",
            completionCandidates = SourceKinds.class,
            description = "What that heater was; else a clamped heater on metal, a mantle on glass.")
    private String nameplateSource;

    /**
     * Reads what was typed.
     *
     * @param acceptedFields fields whose unusual values are meant
     * @param fluidIds the fluids that there are
     * @throws boilwright.errors.InputRefusedException with every fault
     */
    OutsideMeasurements read(Set<String> acceptedFields, Collection<String> fluidIds) {
        TypedFields typed = new TypedFields(acceptedFields);
        if (airCooled && waterFlow != null) {
            typed.refuse(Message.of(MessageKey.NEW_WATER_WITHOUT_JACKET));
        }
        if (!name.isEmpty()) {
            typed.text("--name", "name", name);
        }
        Optional<Material> wallMaterial =
                typed.choice("--material", "body.material", material, Material.values(), Material::id);
        double wallM = typed.quantity("--wall", "body.wallThickness", wall);
        double boreM = bore(typed, wallM);
        int count = typed.count("--stages", "stages", stages);
        double heightM = typed.quantity("--column-height", "column.segments[0].height", columnHeight);
        double columnM = typed.quantity("--column-diameter", "column.segments[0].innerDiameter", columnDiameter);
        double boilerM = typed.quantity("--boiler-diameter", "boiler.innerDiameter", boilerDiameter);
        double chargeM3 = typed.quantity("--charge", "charge", charge);
        typed.word("--fluid", "fluid", fluid, fluidIds);
        Optional<SourceKind> kind =
                typed.choice("--source", "heatSource.kind", source, SourceKind.values(), SourceKind::id);
        double powerW = typed.quantity("--power", "heatSource.ratedPower", power);
        OutsideMeasurements.Known known = known(typed, wallMaterial);
        typed.refuseFaults();
        return new OutsideMeasurements(
                name,
                wallMaterial.orElseThrow(),
                boreM,
                count,
                heightM,
                columnM,
                boilerM,
                wallM,
                chargeM3,
                fluid,
                kind.orElseThrow(),
                powerW,
                known);
    }

    private double bore(TypedFields typed, double wallM) {
        if (width.bore != null) {
            return typed.quantity("--bore", "body.innerDiameter", width.bore);
        }
        double inner = typed.quantity("--body-diameter", "body.innerDiameter", width.body) - 2 * wallM;
        // Nobody measures finer; the file then has a short number.
        return Math.rint(inner * TENTHS_OF_MICRONS) / TENTHS_OF_MICRONS;
    }

    private OutsideMeasurements.Known known(TypedFields typed, Optional<Material> wallMaterial) {
        Optional<HeatSource.Contact> stands = contact == null
                ? Optional.empty()
                : typed.choice(
                        "--contact", "heatSource.contact", contact, HeatSource.Contact.ofPlates(), FieldCatalogue::id);
        return new OutsideMeasurements.Known(
                stands,
                optional(typed, "--source-limit", "heatSource.limit", sourceLimit),
                optional(typed, "--insulation", "boiler.insulationThickness", insulation),
                airCooled,
                optional(typed, "--water-inlet", "cooling.supply.inletTemperature", waterInlet),
                optional(typed, "--water-flow", "cooling.supply.flow", waterFlow),
                optional(typed, "--foreline", "foreline.pressure", foreline),
                throatGaps == null ? List.of() : typed.quantities("--throat-gap", "stages[].throatGap", throatGaps),
                optional(typed, "--works-at", "heatSource.ratedPower", worksAt),
                nameplate(typed, wallMaterial));
    }

    private Optional<OutsideMeasurements.Nameplate> nameplate(TypedFields typed, Optional<Material> wallMaterial) {
        Optional<SourceKind> kind = nameplateSource == null
                ? Optional.empty()
                : typed.choice(
                        "--nameplate-source", "heatSource.kind", nameplateSource, SourceKind.values(), SourceKind::id);
        if (nameplate == null) {
            return Optional.empty();
        }
        double powerW = typed.quantity("--nameplate", "heatSource.ratedPower", nameplate);
        return kind.map(k -> new OutsideMeasurements.Nameplate(powerW, k))
                .or(() -> wallMaterial.map(m -> OutsideMeasurements.Nameplate.of(powerW, m)));
    }

    private static OptionalDouble optional(TypedFields typed, String option, String path, String text) {
        return text == null ? OptionalDouble.empty() : OptionalDouble.of(typed.quantity(option, path, text));
    }
}
