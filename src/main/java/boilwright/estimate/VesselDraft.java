package boilwright.estimate;

import boilwright.rig.Body;
import boilwright.rig.Boiler;
import boilwright.rig.Column;
import boilwright.rig.Material;
import boilwright.rig.SourceKind;
import boilwright.rig.Stage;
import boilwright.rig.TypicalValues;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Boiler, column, jets and body in typical proportions. No publication collects the proportions of such pumps: all of them
 * are from memory.
 */
final class VesselDraft {
    /** Boiler base over body wall of a metal pump. */
    private static final double METAL_BASE = 2;
    /** Column wall over body wall of a glass pump. */
    private static final double GLASS_COLUMN = 0.8;
    /** Height of the lowest jet over the column's height. */
    private static final double LOWEST_JET = 0.45;
    /** Height of the uncooled lower wall over the lowest jet's. */
    private static final double LOWER_WALL = 0.5;

    private final OutsideMeasurements measured;
    private final GuessBook book;
    private final boolean glass;

    VesselDraft(OutsideMeasurements measured, GuessBook book) {
        this.measured = measured;
        this.book = book;
        glass = measured.material().isGlass();
    }

    Boiler boiler() {
        Material material = measured.material();
        double wall = book.quantity(
                "boiler.wallThickness", measured.wallM() * (glass ? 1 : METAL_BASE), EstimateText.BASIS_BOILER_WALL);
        double outside = measured.boilerDiameterM() + 2 * wall;
        boolean mantle = measured.source() == SourceKind.HEATING_MANTLE;
        double ball = Math.PI / 2 * outside * outside;
        double heated = book.quantity(
                "boiler.heatedArea",
                mantle ? ball : ball / 2,
                mantle ? EstimateText.BASIS_HEATED_MANTLE : EstimateText.BASIS_HEATED_PLAN);
        return new Boiler(
                material,
                measured.boilerDiameterM(),
                wall,
                heated,
                book.quantity(
                        "boiler.wettedArea", heated * TypicalValues.wettedRatio(material), EstimateText.BASIS_WETTED),
                book.quantity("boiler.outsideArea", ball, EstimateText.BASIS_OUTSIDE),
                insulation(),
                book.exactly(
                        "boiler.insulationConductivity",
                        TypicalValues.BOILER_INSULATION_CONDUCTIVITY,
                        EstimateText.BASIS_INSULATION),
                emissivity("boiler.emissivity", material),
                OptionalDouble.empty());
    }

    Column column() {
        Material material = glass
                ? measured.material()
                : book.mark("column.segments[0].material", Material.ALUMINIUM, EstimateText.BASIS_COLUMN_METAL);
        double wall = book.quantity(
                "column.segments[0].wallThickness",
                measured.wallM() * (glass ? GLASS_COLUMN : 1),
                EstimateText.BASIS_COLUMN_WALL);
        return new Column(List.of(new Column.Segment(
                measured.columnHeightM(),
                measured.columnDiameterM(),
                wall,
                material,
                emissivity("column.segments[0].emissivity", material))));
    }

    /** The jets, with these gaps from the bottom to the top. */
    List<Stage> stages(Column column, List<Double> gapsM) {
        Column.Segment segment = column.segments().get(0);
        double outside = segment.innerDiameterM() + 2 * segment.wallThicknessM();
        // A column that does not fit the body is refused as such; its throats shall not be blamed too.
        double throat = outside < measured.boreM() ? outside : 0.8 * measured.boreM();
        int count = measured.stages();
        List<Stage> stages = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            String at = "stages[" + i + "].";
            boolean top = i == count - 1;
            double share = top ? 1 : LOWEST_JET + (1 - LOWEST_JET) * i / (count - 1);
            // The column reaches up to the top jet: that height was measured.
            double height = top
                    ? measured.columnHeightM()
                    : book.quantity(at + "height", share * measured.columnHeightM(), EstimateText.BASIS_STAGE_HEIGHT);
            stages.add(new Stage(
                    name(i, count),
                    height,
                    book.quantity(at + "throatDiameter", throat, EstimateText.BASIS_THROAT_DIAMETER),
                    gapsM.get(i)));
        }
        return stages;
    }

    Body body(List<Stage> stages) {
        Material material = measured.material();
        return new Body(
                material,
                measured.boreM(),
                measured.wallM(),
                book.quantity(
                        "body.uncooledLowerHeight",
                        LOWER_WALL * stages.get(0).heightM(),
                        EstimateText.BASIS_LOWER_WALL),
                emissivity("body.emissivityInside", material),
                emissivity("body.emissivityOutside", material));
    }

    /** Names of the jets, bottom to top. */
    static String name(int index, int count) {
        if (index == 0) {
            return count == 1 ? "only" : "bottom";
        }
        if (index == count - 1) {
            return "top";
        }
        return count == 3 ? "middle" : "middle " + index;
    }

    private double insulation() {
        OptionalDouble known = measured.known().insulationM();
        return known.isPresent()
                ? known.getAsDouble()
                : book.exactly("boiler.insulationThickness", 0, EstimateText.BASIS_BARE);
    }

    private double emissivity(String path, Material material) {
        return book.exactly(path, material.usualEmissivity(), EstimateText.BASIS_EMISSIVITY);
    }
}
