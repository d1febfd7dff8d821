package boilwright.rig.file;

import boilwright.errors.MessageKey;
import boilwright.rig.FieldCatalogue;
import boilwright.rig.HeatSource;
import boilwright.rig.HeatSource.ClampedHeater;
import boilwright.rig.HeatSource.Contact;
import boilwright.rig.HeatSource.ContactPlate;
import boilwright.rig.HeatSource.HeatingMantle;
import boilwright.rig.HeatSource.Induction;
import boilwright.rig.HeatSource.Susceptor;
import boilwright.rig.Material;
import boilwright.rig.Rig;
import boilwright.rig.Schedule;
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
        Material boiler = rig.boiler().material();
        if (source instanceof ContactPlate plate) {
            contact(plate.contact(), boiler);
            area("heatSource.contactArea", plate.contactAreaM2());
        } else if (source instanceof HeatingMantle mantle) {
            area("heatSource.wrappedArea", mantle.wrappedAreaM2());
        } else if (source instanceof ClampedHeater heater) {
            area("heatSource.contactArea", heater.contactAreaM2());
            if (boiler != null && boiler.isGlass()) {
                findings.reportField("heatSource.kind", MessageKey.RIG_CLAMPED_ON_GLASS, boiler.id());
            }
        } else if (source instanceof Induction induction) {
            induction(induction, boiler);
        }
    }

    private void induction(Induction induction, Material boiler) {
        area("heatSource.contactArea", induction.contactAreaM2());
        if (induction.susceptor() == Susceptor.FERROUS_BASE) {
            // The base is the boiler's own: the kind of contact says nothing then.
            if (boiler != null && !boiler.isFerrous()) {
                findings.reportField("heatSource.susceptor", MessageKey.RIG_SUSCEPTOR_NOT_FERROUS, boiler.id());
            }
        } else {
            contact(induction.contact(), boiler);
        }
    }

    private void contact(Contact contact, Material boiler) {
        if (contact != null && boiler != null && (contact == Contact.MACHINED_METAL) == boiler.isGlass()) {
            String found = Shown.quoted(FieldCatalogue.id(contact));
            findings.reportField("heatSource.contact", MessageKey.RIG_CONTACT_MISFIT, found, boiler.id());
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
