package boilwright.rig.file;

import boilwright.errors.MessageKey;
import boilwright.rig.Cooling;
import boilwright.rig.Material;
import boilwright.rig.Rig;
import boilwright.rig.Stage;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Whether the elements that the water passes fit the stages, the body and the cap. */
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
        SupplyChecks.run(rig, findings);
        PlumbingChecks.run(rig, findings);
        new CoolingChecks(rig, findings).elements();
    }

    private void elements() {
        Set<String> covered = new HashSet<>();
        List<Cooling.Element> elements = rig.cooling().elements();
        for (int i = 0; i < elements.size(); i++) {
            String at = "cooling.elements[" + i + "]";
            if (elements.get(i) instanceof Cooling.Jacket jacket) {
                covers(jacket.covers(), at, covered);
            } else if (elements.get(i) instanceof Cooling.SolderedCoil coil) {
                covers(coil.covers(), at, covered);
                soldered(at, rig.body().material());
            } else if (elements.get(i) instanceof Cooling.CapCoil) {
                onCap(at);
            }
        }
    }

    private void onCap(String at) {
        if (rig.topCap().isEmpty()) {
            findings.reportField(at + ".kind", MessageKey.RIG_CAP_COIL_WITHOUT_CAP);
        } else {
            soldered(at, rig.topCap().get().material());
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
