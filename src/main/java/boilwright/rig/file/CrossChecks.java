package boilwright.rig.file;

import boilwright.errors.MessageKey;
import boilwright.rig.Body;
import boilwright.rig.Column;
import boilwright.rig.Foreline;
import boilwright.rig.Limits;
import boilwright.rig.Rig;
import boilwright.rig.Stage;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What no field can know alone: whether the parts of a rig fit one another. Comparisons are written so that a value which
 * was refused before (NaN, null, an empty name) adds no second fault.
 */
final class CrossChecks {
    /** Deepest pool over the boiler's diameter; a deeper one boils at the bottom far hotter than at the top. */
    private static final double DEEPEST_POOL = 2;
    /** Largest heated area over the cross-section: base and wall of a pot twice as high as wide, and a little. */
    private static final double LARGEST_HEATED = 8;

    private final Rig rig;
    private final Findings findings;

    private CrossChecks(Rig rig, Findings findings) {
        this.rig = rig;
        this.findings = findings;
    }

    /** Reports every pair of parts that cannot be as described. */
    static void run(Rig rig, Findings findings) {
        CrossChecks checks = new CrossChecks(rig, findings);
        checks.boiler();
        checks.column();
        checks.stages();
        checks.foreline();
        checks.limits();
        SourceChecks.run(rig, findings);
        CoolingChecks.run(rig, findings);
        VacuumChecks.run(rig, findings);
    }

    private void boiler() {
        double section = rig.boiler().surfaceAreaM2();
        double depth = rig.chargeM3() / section;
        double deepest = DEEPEST_POOL * rig.boiler().innerDiameterM();
        if (depth > deepest && !findings.accepts("charge")) {
            findings.reportField(
                    "charge", MessageKey.RIG_CHARGE_TOO_DEEP, findings.found("charge"), length(depth), length(deepest));
        }
        double outer = rig.boiler().innerDiameterM() + 2 * rig.boiler().wallThicknessM();
        double largest = LARGEST_HEATED * Math.PI / 4 * outer * outer;
        if (rig.boiler().heatedAreaM2() > largest) {
            String most = QuantityWriter.writeAuto(largest, Dimension.AREA);
            findings.reportField(
                    "boiler.heatedArea",
                    MessageKey.RIG_HEATED_AREA_TOO_LARGE,
                    findings.found("boiler.heatedArea"),
                    most);
        }
    }

    private void column() {
        double body = rig.body().innerDiameterM();
        List<Column.Segment> segments = rig.column().segments();
        for (int i = 0; i < segments.size(); i++) {
            double outer =
                    segments.get(i).innerDiameterM() + 2 * segments.get(i).wallThicknessM();
            if (outer >= body) {
                findings.reportField(
                        "column.segments[" + i + "].innerDiameter",
                        MessageKey.RIG_COLUMN_WIDER_THAN_BODY,
                        length(outer),
                        length(body));
            }
        }
    }

    private void stages() {
        Set<String> names = new HashSet<>();
        for (int i = 0; i < rig.stages().size(); i++) {
            Stage stage = rig.stages().get(i);
            String at = "stages[" + i + "]";
            if (!stage.name().isEmpty() && !names.add(stage.name())) {
                findings.reportField(at + ".name", MessageKey.RIG_STAGE_NAME_DOUBLED, Shown.quoted(stage.name()));
            }
            height(stage, at + ".height", i);
            throat(stage, at);
        }
        lowerWall();
    }

    private void height(Stage stage, String at, int index) {
        double column = rig.column().heightM();
        // A column of pieces adds up with rounding; a stage at its very top is meant to be there.
        boolean anySegment = !rig.column().segments().isEmpty();
        if (anySegment && stage.heightM() > column * (1 + 1e-9)) {
            findings.reportField(at, MessageKey.RIG_STAGE_ABOVE_COLUMN, findings.found(at), length(column));
        }
        if (index > 0) {
            Stage below = rig.stages().get(index - 1);
            if (stage.heightM() <= below.heightM()) {
                String name = Shown.quoted(below.name());
                findings.reportField(at, MessageKey.RIG_STAGE_ORDER, findings.found(at), name, length(below.heightM()));
            }
        }
    }

    private void throat(Stage stage, String at) {
        double outer = stage.throatDiameterM() + stage.throatGapM();
        double body = rig.body().innerDiameterM();
        if (outer >= body) {
            findings.reportField(
                    at + ".throatDiameter", MessageKey.RIG_THROAT_WIDER_THAN_BODY, length(outer), length(body));
        }
        if (stage.throatGapM() >= stage.throatDiameterM()) {
            findings.reportField(
                    at + ".throatGap",
                    MessageKey.RIG_THROAT_GAP_CLOSED,
                    findings.found(at + ".throatGap"),
                    length(stage.throatDiameterM()));
        }
    }

    private void lowerWall() {
        Body body = rig.body();
        if (rig.stages().isEmpty()) {
            return;
        }
        Stage lowest = rig.stages().get(0);
        if (body.uncooledLowerHeightM() >= lowest.heightM()) {
            String path = "body.uncooledLowerHeight";
            findings.reportField(
                    path,
                    MessageKey.RIG_UNCOOLED_ABOVE_STAGE,
                    findings.found(path),
                    Shown.quoted(lowest.name()),
                    length(lowest.heightM()));
        }
    }

    private void foreline() {
        if (rig.foreline() instanceof Foreline.GivenPressure given
                && given.pressurePa() >= rig.room().pressurePa()) {
            String path = "foreline.pressure";
            String room = QuantityWriter.writeAuto(rig.room().pressurePa(), Dimension.PRESSURE);
            findings.reportField(path, MessageKey.RIG_FORELINE_ABOVE_ROOM, findings.found(path), room);
        }
    }

    private void limits() {
        Limits limits = rig.limits();
        if (limits.waterInLowK().isPresent()
                && limits.waterInHighK().isPresent()
                && limits.waterInLowK().getAsDouble() >= limits.waterInHighK().getAsDouble()) {
            String path = "limits.waterInLow";
            String high = findings.found("limits.waterInHigh");
            findings.reportField(path, MessageKey.RIG_LIMITS_CROSSED, findings.found(path), high);
        }
    }

    private static String length(double metres) {
        return QuantityWriter.writeAuto(metres, Dimension.LENGTH);
    }
}
