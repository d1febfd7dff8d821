package boilwright.dashboard.pages;

import boilwright.dashboard.parts.ChoiceBoxes;
import boilwright.dashboard.session.FieldDefaults;
import boilwright.dashboard.session.SourceDefaults;
import boilwright.dashboard.session.SupplyDefaults;
import boilwright.rig.Cooling;
import boilwright.rig.HeatSource;
import boilwright.rig.Rig;
import boilwright.rig.SourceKind;
import boilwright.rig.SupplyKind;
import boilwright.rig.file.RigFields;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import javafx.scene.control.ComboBox;

/** A field that holds one of some entries: words of the catalogue, a fluid of the library, a material of the outgassing data. */
final class ChoiceRow extends FieldRow {
    private final ComboBox<String> box;
    private boolean showing;

    /**
     * @param choices ids of the entries
     * @param words what an entry is called
     */
    ChoiceRow(PageContext context, String path, List<String> choices, Function<String, String> words) {
        super(context, path);
        box = ChoiceBoxes.of(choices, words);
        box.setMaxWidth(Double.MAX_VALUE);
        ChoiceBoxes.onChosen(box, now -> {
            if (!showing) {
                chosen(now);
            }
        });
        put(box);
    }

    /** Offers other entries; what was chosen stays chosen. */
    void offer(List<String> choices) {
        if (!box.getItems().equals(choices)) {
            showing = true;
            ChoiceBoxes.offer(box, choices, box.getValue());
            showing = false;
        }
    }

    private void chosen(String id) {
        RigFields now = RigFields.of(context().session().rig());
        if (id == null || now.text(path()).equals(Optional.of(id))) {
            // Closed without a choice: what the rig has stands there again.
            showValue(now);
            return;
        }
        boolean accepted = switch (path()) {
            case "heatSource.kind" -> changeSource(id);
            case "cooling.supply.kind" -> changeSupply(id);
            default ->
                field().name().equals("kind")
                        ? commit(fields -> FieldDefaults.ofKind(fields, parent(), id))
                        : commit(fields -> fields.with(path(), id));
        };
        if (!accepted) {
            show(RigFields.of(context().session().rig()));
        }
    }

    /** Another kind of source comes with believable figures of its own. */
    private boolean changeSource(String id) {
        SourceKind kind = Arrays.stream(SourceKind.values())
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow();
        return change(rig -> withSource(rig, SourceDefaults.of(kind, rig)));
    }

    /** Another kind of supply comes with figures that bring about the flow that was there, and with what it cools. */
    private boolean changeSupply(String id) {
        SupplyKind kind = Arrays.stream(SupplyKind.values())
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow();
        return change(rig -> {
            Cooling cooling = SupplyDefaults.of(kind, rig);
            boolean sameElements = cooling.elements().equals(rig.cooling().elements());
            String gone = sameElements ? "cooling.supply." : "cooling.";
            return rig.withCooling(cooling).withGuesses(without(rig.guesses(), gone));
        });
    }

    private boolean change(UnaryOperator<Rig> how) {
        boolean accepted = context()
                .session()
                .edit(
                        editName(),
                        rig -> RigFields.of(how.apply(rig))
                                .rig(context().fluids().workingFluids()));
        say(accepted ? "" : context().refusal());
        return accepted;
    }

    private static Set<String> without(Set<String> guesses, String gone) {
        return guesses.stream().filter(guess -> !guess.startsWith(gone)).collect(Collectors.toSet());
    }

    private static Rig withSource(Rig rig, HeatSource source) {
        return rig.withHeatSource(source).withGuesses(without(rig.guesses(), "heatSource."));
    }

    private String parent() {
        return path().substring(0, path().lastIndexOf('.'));
    }

    @Override
    void showValue(RigFields fields) {
        showing = true;
        box.setValue(fields.text(path()).orElse(null));
        showing = false;
    }

    @Override
    void focusControl() {
        box.requestFocus();
    }
}
