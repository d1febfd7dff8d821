package boilwright.invariants;

import boilwright.answers.Margin;
import boilwright.answers.MarginId;
import boilwright.answers.Stored;
import boilwright.answers.Trial;
import boilwright.errors.ComputationException;
import boilwright.errors.InputRefusedException;
import boilwright.invariants.RandomRigs.Drawn;
import boilwright.invariants.RandomRigs.Mode;
import boilwright.rig.Field;
import boilwright.rig.FieldCatalogue;
import boilwright.rig.Rig;
import boilwright.rig.RigPaths;
import boilwright.rig.file.RigEdit;
import boilwright.rig.file.RigFields;
import boilwright.rig.file.RigWriter;
import boilwright.rig.file.Texts;
import boilwright.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Plausible rigs with figures set anywhere that a file may have them, or turned until a margin comes near 1. */
final class Altered {
    private static final int MOST_FIGURES = 3;
    /** Figures tried before a rig is left with the ones that were accepted. */
    private static final int MOST_TRIED = 40;
    /** How far a figure is turned up and down in search of a limit. */
    private static final double REACH = 5;

    private static final int HALVINGS = 6;
    /** What can be turned by hand or bought one size larger, and the throats, which everything hangs on. */
    private static final List<String> TURNED = List.of(
            "heatSource.ratedPower",
            "heatSource.contactConductance",
            "cooling.supply.flow",
            "cooling.supply.capacity",
            "cooling.supply.lineFlowAtOneBar",
            "cooling.supply.airSpeed",
            "cooling.elements[0].tubeInnerDiameter",
            "foreline.pressure",
            "foreline.pump.ultimate",
            "foreline.line[0].innerDiameter",
            "charge",
            "stages[0].throatGap");

    /** Gross heating value of butane, J/kg (from memory); only to find a fuel that is nearly used up. */
    private static final double BUTANE = 49.5e6;

    private final Draw draw;
    private int refused;

    Altered(Draw draw) {
        this.draw = draw;
    }

    /** How many rigs and figures were refused so far. */
    int refused() {
        return refused;
    }

    /** Whether a file with this rig would be read as it is. */
    boolean isAccepted(Rig rig) {
        try {
            Texts.rig(RigWriter.write(rig), RandomRigs.FLUIDS);
            return true;
        } catch (InputRefusedException e) {
            refused++;
            return false;
        }
    }

    Drawn anywhere(Rig rig) {
        List<String> paths = RigPaths.of(rig).stream()
                .filter(path -> FieldCatalogue.find(path).orElseThrow().kind() == Field.Kind.QUANTITY)
                .toList();
        int wanted = draw.of(List.of(1, 2, MOST_FIGURES));
        List<String> told = new ArrayList<>();
        Rig changed = rig;
        for (int tried = 0; told.size() < wanted && tried < MOST_TRIED; tried++) {
            String path = draw.of(paths);
            if (RigFields.of(changed).quantity(path).isEmpty()) {
                continue;
            }
            double value = anywhere(FieldCatalogue.find(path).orElseThrow());
            Optional<Rig> next = with(changed, path, value);
            if (next.isPresent()) {
                changed = next.get();
                told.add(path + " = " + value);
            }
        }
        return new Drawn(changed, Mode.ANYWHERE, String.join(", ", told), "", refused);
    }

    private double anywhere(Field field) {
        double low = field.allowedLow();
        double high = field.allowedHigh();
        if (low <= 0 || field.dimension().orElseThrow() == Dimension.TEMPERATURE) {
            // what may be zero or less spans no ratio: evenly, or down to the smallest that is usual
            boolean small = low == 0 && field.typicalLow() > 0 && draw.chance(0.7);
            return small ? draw.ratio(field.typicalLow() / 10, high) : draw.between(low, high);
        }
        return draw.ratio(low, high);
    }

    private Optional<Rig> with(Rig rig, String path, double value) {
        try {
            return Optional.of(RigEdit.of(path, value).applied(rig));
        } catch (InputRefusedException e) {
            refused++;
            return Optional.empty();
        }
    }

    Drawn nearALimit(Rig rig) {
        String fuel = "heatSource.cartridge.fuelMass";
        if (RigFields.of(rig).quantity(fuel).isPresent() && draw.chance(0.5)) {
            double burnt = rig.heatSource().ratedPowerW() * draw.ratio(600, 5400) / BUTANE;
            Optional<Rig> nearly = with(rig, fuel, burnt);
            if (nearly.isPresent()) {
                return new Drawn(
                        nearly.get(), Mode.NEAR_A_LIMIT, fuel + " = " + burnt, MarginId.FUEL.toString(), refused);
            }
        }
        double target = draw.between(0.95, 1.05);
        List<String> left = new ArrayList<>(TURNED);
        left.removeIf(path -> RigFields.of(rig).quantity(path).isEmpty());
        while (!left.isEmpty()) {
            String path = draw.of(left);
            left.remove(path);
            Optional<Drawn> found = turned(rig, path, target);
            if (found.isPresent()) {
                return found.get();
            }
        }
        return new Drawn(rig, Mode.NEAR_A_LIMIT, "", "", refused);
    }

    /** The rig with this figure turned until some margin has the ratio wanted. */
    private Optional<Drawn> turned(Rig rig, String path, double target) {
        double now = RigFields.of(rig).quantity(path).orElseThrow();
        Optional<Rig> least = with(rig, path, now / REACH);
        Optional<Rig> most = with(rig, path, now * REACH);
        Map<String, Double> low = ratios(least.orElse(rig));
        Map<String, Double> high = ratios(most.orElse(rig));
        List<String> crossing = low.keySet().stream()
                .filter(high::containsKey)
                .filter(id -> (low.get(id) < target) != (high.get(id) < target))
                .toList();
        if (crossing.isEmpty()) {
            return Optional.empty();
        }
        String margin = draw.of(crossing);
        boolean rises = high.get(margin) > low.get(margin);
        double from = least.isPresent() ? now / REACH : now;
        double to = most.isPresent() ? now * REACH : now;
        Optional<Rig> near = Optional.empty();
        for (int i = 0; i < HALVINGS; i++) {
            double middle = Math.sqrt(from * to);
            near = with(rig, path, middle);
            Double ratio = near.map(Altered::ratios).orElse(Map.of()).get(margin);
            if (ratio == null) {
                return Optional.empty();
            }
            if ((ratio < target) == rises) {
                from = middle;
            } else {
                to = middle;
            }
        }
        return near.map(found -> {
            double value = RigFields.of(found).quantity(path).orElseThrow();
            String told = String.format(Locale.ROOT, "%s = %s for %s of %.2f", path, value, margin, target);
            return new Drawn(found, Mode.NEAR_A_LIMIT, told, margin, refused);
        });
    }

    /** The ratio of each margin at rest; none where no state at rest can be found. */
    private static Map<String, Double> ratios(Rig rig) {
        Map<String, Double> ratios = new TreeMap<>();
        try {
            for (Margin margin : Trial.atRest(Stored.asked(rig)).margins()) {
                margin.ratio().ifPresent(ratio -> ratios.put(margin.id().toString(), ratio));
            }
        } catch (ComputationException e) {
            return Map.of();
        }
        return ratios;
    }
}
