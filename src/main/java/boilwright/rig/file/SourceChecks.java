package boilwright.rig.file;

import boilwright.errors.MessageKey;
import boilwright.rig.ContactBody;
import boilwright.rig.FieldCatalogue;
import boilwright.rig.HeatSource;
import boilwright.rig.HeatSource.Contact;
import boilwright.rig.HeatSource.HeatPath;
import boilwright.rig.Material;
import boilwright.rig.Rig;
import boilwright.rig.Schedule;
import boilwright.rig.SourceKind;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import java.util.List;

/** Whether heat source and schedule fit the boiler and the room. */
final class SourceChecks {
    /** Areas worked out by hand differ in the last digit. */
    private static final double ROUNDING = 1.01;

    private final Rig rig;
    private final Findings findings;

    private SourceChecks(Rig rig, Findings findings) {
        this.rig = rig;
        this.findings = findings;
    }

    static void run(Rig rig, Findings findings) {
        SourceChecks checks = new SourceChecks(rig, findings);
        checks.source();
        checks.times();
        checks.heldTemperatures();
    }

    private void source() {
        HeatSource source = rig.heatSource();
        if (source != null) {
            source.body().ifPresent(body -> body(source, body));
        }
    }

    private void body(HeatSource source, ContactBody body) {
        area("heatSource." + HeatSourceFields.area(source.kind()), body.areaM2());
        Material boiler = rig.boiler().material();
        if (boiler == null) {
            return;
        }
        if (source.path() == HeatPath.BASE) {
            // The base is the boiler's own: the kind of contact says nothing then.
            if (!boiler.isFerrous()) {
                findings.reportField("heatSource.susceptor", MessageKey.RIG_SUSCEPTOR_NOT_FERROUS, boiler.id());
            }
        } else if (body.contact() != null && !body.contact().fits(boiler)) {
            misfit(source.kind(), body.contact(), boiler);
        }
    }

    private void misfit(SourceKind kind, Contact contact, Material boiler) {
        if (kind.has(SourceKind.Figures.CONTACT)) {
            String found = Shown.quoted(FieldCatalogue.id(contact));
            findings.reportField("heatSource.contact", MessageKey.RIG_CONTACT_MISFIT, found, boiler.id());
        } else {
            findings.reportField("heatSource.kind", MessageKey.RIG_CLAMPED_ON_GLASS, boiler.id(), kind.id());
        }
    }

    private void area(String path, double area) {
        double heated = rig.boiler().heatedAreaM2();
        if (area > heated * ROUNDING) {
            String most = QuantityWriter.writeAuto(heated, Dimension.AREA);
            findings.reportField(path, MessageKey.RIG_CONTACT_LARGER_THAN_HEATED, findings.found(path), most);
        }
    }

    private void times() {
        List<Schedule.Step> steps = rig.schedule().steps();
        for (int i = 0; i < steps.size(); i++) {
            String path = "schedule[" + i + "].at";
            double at = steps.get(i).atS();
            if (i == 0 && at > 0) {
                findings.reportField(path, MessageKey.RIG_SCHEDULE_START, findings.found(path));
            }
            if (i > 0 && at <= steps.get(i - 1).atS()) {
                String before = findings.found("schedule[" + (i - 1) + "].at");
                findings.reportField(path, MessageKey.RIG_SCHEDULE_ORDER, findings.found(path), before);
            }
        }
    }

    private void heldTemperatures() {
        List<Schedule.Step> steps = rig.schedule().steps();
        for (int i = 0; i < steps.size(); i++) {
            if (steps.get(i) instanceof Schedule.HoldOil hold
                    && hold.oilK() <= rig.room().temperatureK()) {
                String path = "schedule[" + i + "].holdOil";
                String room = QuantityWriter.writeAuto(rig.room().temperatureK(), Dimension.TEMPERATURE);
                findings.reportField(path, MessageKey.RIG_HOLD_BELOW_ROOM, findings.found(path), room);
            }
        }
    }
}
