package boilwright.rig.file;

import boilwright.errors.MessageKey;
import boilwright.rig.Field;
import boilwright.rig.FieldCatalogue;
import boilwright.rig.Schedule;
import boilwright.rig.Schedule.HoldOil;
import boilwright.rig.Schedule.Power;
import boilwright.rig.Schedule.Step;
import boilwright.units.Dimension;
import boilwright.units.UnitTable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads the schedule. A power may be a share of the rated one or an amount, which becomes a share. */
final class ScheduleReader {
    private static final Field SHARE = FieldCatalogue.find("schedule[].power").orElseThrow();

    private ScheduleReader() {}

    static Schedule read(List<Section> steps, double ratedPowerW, Findings findings) {
        List<Step> read = new ArrayList<>();
        for (Section step : steps) {
            double at = step.quantity("at");
            if (step.has("power") == step.has("holdOil")) {
                // An empty section is an entry that is no object, which was reported.
                if (!step.names().isEmpty()) {
                    findings.reportField(step.path(), MessageKey.RIG_SCHEDULE_ONE_OF);
                }
                read.add(new Power(at, Double.NaN));
            } else if (step.has("holdOil")) {
                read.add(new HoldOil(at, step.quantity("holdOil")));
            } else {
                read.add(new Power(at, fraction(step, ratedPowerW, findings)));
            }
        }
        return new Schedule(read);
    }

    private static double fraction(Section step, double ratedPowerW, Findings findings) {
        Optional<String> written = step.textOf("power");
        if (written.isEmpty() || !isAmount(written.get())) {
            return step.quantity("power");
        }
        double power = step.quantityAs("power", amount(ratedPowerW));
        if (power > ratedPowerW) {
            String rated = findings.found("heatSource.ratedPower");
            findings.reportField(
                    step.path("power"), MessageKey.RIG_POWER_ABOVE_RATED, Shown.quoted(written.get()), rated);
            return Double.NaN;
        }
        return power / ratedPowerW;
    }

    private static boolean isAmount(String text) {
        return UnitTable.accepted(Dimension.POWER).stream()
                .anyMatch(unit -> text.strip().endsWith(unit.text()));
    }

    /** The same field as an amount: from nothing up, with the rated power as the most that is usual. */
    private static Field amount(double ratedPowerW) {
        Field rated = FieldCatalogue.find("heatSource.ratedPower").orElseThrow();
        return new Field(
                SHARE.path(),
                SHARE.kind(),
                rated.dimension(),
                rated.unit(),
                0,
                rated.allowedHigh(),
                SHARE.typicalLow() * ratedPowerW,
                ratedPowerW,
                SHARE.required(),
                SHARE.source(),
                SHARE.textKey(),
                SHARE.choices(),
                SHARE.variants());
    }
}
