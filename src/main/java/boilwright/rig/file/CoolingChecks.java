package boilwright.rig.file;

import boilwright.errors.MessageKey;
import boilwright.rig.Cooling;
import boilwright.rig.Cooling.Element;
import boilwright.rig.ElementKind;
import boilwright.rig.Material;
import boilwright.rig.Rig;
import boilwright.rig.Stage;
import boilwright.rig.Supply;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Whether the elements that the water passes fit the stages, the body and the cap, and whether water of this supply can pass them
 * in the order in which they are listed, each of them once.
 */
final class CoolingChecks {
    private static final String ELEMENTS = "cooling.elements";

    private final Rig rig;
    private final Supply supply;
    private final List<Element> elements;
    private final Findings findings;
    private final List<String> stages;

    private CoolingChecks(Rig rig, Findings findings) {
        this.rig = rig;
        this.supply = rig.cooling().supply();
        this.elements = rig.cooling().elements();
        this.findings = findings;
        this.stages = rig.stages().stream()
                .map(Stage::name)
                .filter(name -> !name.isEmpty())
                .toList();
    }

    static void run(Rig rig, Findings findings) {
        SupplyChecks.run(rig, findings);
        CoolingChecks checks = new CoolingChecks(rig, findings);
        checks.order();
        checks.fit();
    }

    private void order() {
        if (supplyHasWater(supply)) {
            somethingToCool();
        } else if (!elements.isEmpty()) {
            String count = Integer.toString(elements.size());
            findings.reportField(ELEMENTS, MessageKey.RIG_ELEMENTS_WITHOUT_WATER, count);
        }
        once();
        alone(metAgain());
    }

    private void fit() {
        Set<String> covered = new HashSet<>();
        for (int i = 0; i < elements.size(); i++) {
            String at = path(i);
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

    private static boolean supplyHasWater(Supply supply) {
        return supply == null || !supply.isAir();
    }

    private void somethingToCool() {
        // Elements that were refused left an empty list behind; the file's own is looked at.
        boolean none = "[]".equals(findings.found(ELEMENTS));
        if (supply instanceof Supply.GivenFlow given) {
            if (none && given.flowM3PerS() > 0) {
                without("cooling.supply.flow");
            }
            if (none && given.capacityW().isPresent()) {
                without("cooling.supply.chillerCapacity");
            }
        } else if (none && supply != null) {
            String kind = Shown.quoted(supply.kind().id());
            findings.reportField(ELEMENTS, MessageKey.RIG_SUPPLY_WITHOUT_ELEMENTS, kind);
        }
        boolean cools = elements.stream()
                .anyMatch(e -> !(e instanceof Cooling.Hose || e instanceof Cooling.Valve || e instanceof Cooling.Rise));
        if (!elements.isEmpty() && !cools) {
            findings.reportField(ELEMENTS, MessageKey.RIG_CIRCUIT_COOLS_NOTHING);
        }
    }

    private void without(String path) {
        findings.reportField(path, MessageKey.RIG_WATER_WITHOUT_ELEMENTS, findings.found(path));
    }

    /** Every name stands once, and so does each part of which a pump usually has one. */
    private void once() {
        Map<String, Integer> names = new HashMap<>();
        Map<ElementKind, Integer> parts = new HashMap<>();
        for (int i = 0; i < elements.size(); i++) {
            Element element = elements.get(i);
            String name = element.place().name();
            Integer other = name.isEmpty() ? null : names.putIfAbsent(name, i);
            if (other != null) {
                findings.reportField(
                        path(i, "name"), MessageKey.RIG_ELEMENT_NAME_DOUBLED, Shown.quoted(name), path(other));
            }
            ElementKind kind = element.kind();
            Integer like = element instanceof Cooling.CooledPart ? parts.putIfAbsent(kind, i) : null;
            boolean unnamed = like != null
                    && (name.isEmpty() || elements.get(like).place().name().isEmpty());
            if (unnamed) {
                findings.reportField(
                        path(i, "kind"), MessageKey.RIG_ELEMENT_DOUBLED, Shown.quoted(kind.id()), path(like));
            }
        }
    }

    /** Reports branches that are left and met again. */
    private Set<String> metAgain() {
        Set<String> again = new HashSet<>();
        Map<String, Integer> last = new HashMap<>();
        for (int i = 0; i < elements.size(); i++) {
            String branch = elements.get(i).place().branch();
            Integer before = branch.isEmpty() ? null : last.put(branch, i);
            if (before != null && before != i - 1) {
                again.add(branch);
                findings.reportField(
                        path(i, "branch"), MessageKey.RIG_BRANCH_MET_AGAIN, Shown.quoted(branch), path(before));
            }
        }
        return again;
    }

    /** Reports branches that have no other beside them, unless the same branch was reported already. */
    private void alone(Set<String> reported) {
        int i = 0;
        while (i < elements.size()) {
            int first = i;
            Set<String> beside = new LinkedHashSet<>();
            while (i < elements.size() && !elements.get(i).place().branch().isEmpty()) {
                beside.add(elements.get(i++).place().branch());
            }
            if (beside.size() == 1 && !reported.containsAll(beside)) {
                String branch = Shown.quoted(beside.iterator().next());
                findings.reportField(path(first, "branch"), MessageKey.RIG_BRANCH_ALONE, branch);
            }
            if (i == first) {
                i++;
            }
        }
    }

    private static String path(int index) {
        return ELEMENTS + "[" + index + "]";
    }

    private static String path(int index, String name) {
        return path(index) + "." + name;
    }
}
