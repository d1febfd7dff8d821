package boilwright.rig.file;

import boilwright.errors.MessageKey;
import boilwright.rig.Cooling;
import boilwright.rig.Material;
import boilwright.rig.Rig;
import boilwright.rig.Stage;
import boilwright.rig.Supply;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Whether the water and its elements fit the stages, the body and the cap. */
final class CoolingChecks {
    private final Rig rig;
    private final Findings findings;
    private final List<String> stages;

    private CoolingChecks(Rig rig, Findings findings) {
        this.rig = rig;
        this.findings = findings;
        this.stages = rig.stages().stream()
                .map(Stage::name)
                .filter(name -> !name.isEmpty())
                .toList();
    }

    static void run(Rig rig, Findings findings) {
        CoolingChecks checks = new CoolingChecks(rig, findings);
        checks.waterWithoutElements();
        checks.elements();
    }

    private void waterWithoutElements() {
        // Elements that were refused left an empty list behind; the file's own is looked at.
        boolean none = "[]".equals(findings.found("cooling.elements"));
        if (none && rig.cooling().supply() instanceof Supply.GivenFlow given && given.flowM3PerS() > 0) {
            withoutElements("cooling.flow");
        }
        if (none
                && rig.cooling().supply() instanceof Supply.GivenFlow given
                && given.capacityW().isPresent()) {
            withoutElements("cooling.chillerCapacity");
        }
    }

    private void withoutElements(String path) {
        findings.reportField(path, MessageKey.RIG_WATER_WITHOUT_ELEMENTS, findings.found(path));
    }

    private void elements() {
        Set<String> covered = new HashSet<>();
        List<Cooling.Element> elements = rig.cooling().elements();
        for (int i = 0; i < elements.size(); i++) {
            String at = "cooling.elements[" + i + "]";
            Material body = rig.body().material();
            if (elements.get(i) instanceof Cooling.Jacket jacket) {
                covers(jacket.covers(), at, covered);
            } else if (elements.get(i) instanceof Cooling.SolderedCoil coil) {
                covers(coil.covers(), at, covered);
                soldered(at, body);
            } else if (rig.topCap().isEmpty()) {
                findings.reportField(at + ".kind", MessageKey.RIG_CAP_COIL_WITHOUT_CAP);
            } else {
                soldered(at, rig.topCap().get().material());
            }
        }
    }

    private void soldered(String at, Material material) {
        if (material != null && material.isGlass()) {
            findings.reportField(at + ".kind", MessageKey.RIG_COIL_ON_GLASS, material.id());
        }
    }

    private void covers(List<String> names, String at, Set<String> covered) {
        for (int i = 0; i < names.size(); i++) {
            String name = names.get(i);
            String path = at + ".covers[" + i + "]";
            if (!name.isEmpty() && !stages.isEmpty() && !stages.contains(name)) {
                findings.reportChoice(path, name, stages);
            } else if (!name.isEmpty() && !covered.add(name)) {
                findings.reportField(path, MessageKey.RIG_STAGE_COVERED_TWICE, Shown.quoted(name));
            }
        }
    }
}
