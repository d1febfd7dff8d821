package boilwright.dashboard.pages;

import boilwright.dashboard.parts.OnOffSwitch;
import boilwright.dashboard.session.RigFiles;
import boilwright.dashboard.text.FormWords;
import boilwright.dashboard.text.WindowText;
import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.estimate.OutsideMeasurements;
import boilwright.fluid.FluidLibrary;
import boilwright.rig.Field;
import boilwright.rig.FieldCatalogue;
import boilwright.rig.HeatSource;
import boilwright.rig.Material;
import boilwright.rig.SourceKind;
import boilwright.rig.file.TypedFields;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** A rig of one's own from what can be measured on the outside of a pump. */
public final class NewRigForm extends ScrollPane {
    private static final Set<String> EVERY_FIELD =
            FieldCatalogue.fields().stream().map(Field::path).collect(Collectors.toUnmodifiableSet());

    private final Map<String, AskedRow> rows = new LinkedHashMap<>();
    private final OnOffSwitch airCooled = new OnOffSwitch(WindowText.say("pages.new.air-cooled"));
    private final Label message = new Label();
    private final Button meant = new Button(WindowText.say("pages.new.meant"));
    private final VBox all = new VBox();
    private final BiConsumer<OutsideMeasurements, Set<String>> make;

    /**
     * A form.
     *
     * @param fluids the fluids that there are
     * @param make gets the measurements once they are in order, and the fields whose unusual values are meant
     */
    public NewRigForm(FluidLibrary fluids, BiConsumer<OutsideMeasurements, Set<String>> make) {
        this.make = make;
        getStyleClass().addAll("page", "new-page", "edge-to-edge");
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        setContent(all);
        all.getStyleClass().add("page-content");
        heading("pages.new.heading");
        text("pages.new.explanation");
        add(AskedRow.typed("name", ""));
        choice("material", ids("body.material"), true);
        add(AskedRow.typed("bore", "75 mm"));
        add(AskedRow.typed("wall", "2.2 mm"));
        add(AskedRow.typed("stages", "3"));
        add(AskedRow.typed("column-height", "250 mm"));
        add(AskedRow.typed("column-diameter", "46 mm"));
        add(AskedRow.typed("boiler-diameter", "160 mm"));
        add(AskedRow.typed("charge", "150 mL"));
        add(AskedRow.chosen(
                "fluid", fluids.workingFluids(), id -> fluids.find(id).title(), true));
        choice("source", ids("heatSource.kind"), true);
        add(AskedRow.typed("power", "1.5 kW"));
        heading("pages.new.if-known");
        add(AskedRow.typed("works-at", "1.2 kW"));
        add(AskedRow.typed("nameplate", "0.8 kW"));
        add(AskedRow.typed("throat-gaps", "0.6 mm, 0.7 mm, 0.8 mm"));
        choice("contact", ids("heatSource.contact"), false);
        add(AskedRow.typed("source-limit", "450 degC"));
        add(AskedRow.typed("insulation", "0 mm"));
        add(AskedRow.typed("water-inlet", "18 degC"));
        add(AskedRow.typed("water-flow", "1 L/min"));
        add(AskedRow.typed("foreline", "40 mTorr"));
        airCooled.setId("new-air-cooled");
        all.getChildren().add(airCooled);
        buttons();
    }

    private void buttons() {
        Button go = new Button(WindowText.say("pages.new.make"));
        go.setId("new-make");
        go.setDefaultButton(true);
        go.setOnAction(event -> take(Set.of()));
        meant.setId("new-meant");
        meant.setVisible(false);
        meant.setOnAction(event -> take(EVERY_FIELD));
        message.getStyleClass().add("field-message");
        message.setWrapText(true);
        message.managedProperty().bind(message.textProperty().isNotEmpty());
        HBox line = new HBox(go, meant);
        line.getStyleClass().add("form-buttons");
        all.getChildren().addAll(message, line);
    }

    /** Says why no rig came of it. */
    public void refused(String words) {
        message.setText(words);
    }

    private void take(Set<String> accepted) {
        rows.values().forEach(row -> row.say(""));
        message.setText("");
        meant.setVisible(false);
        try {
            make.accept(read(accepted), accepted);
        } catch (InputRefusedException refusal) {
            refusal.faults().forEach(this::say);
            message.setText(WindowText.say("pages.new.look"));
            meant.setVisible(RigFiles.onlySlips(refusal));
            rows.values().stream()
                    .filter(row -> refusal.faults().stream().anyMatch(fault -> isAbout(fault, row)))
                    .findFirst()
                    .ifPresent(AskedRow::focusControl);
        }
    }

    private void say(Message fault) {
        Optional<AskedRow> row =
                rows.values().stream().filter(one -> isAbout(fault, one)).findFirst();
        row.ifPresentOrElse(
                one -> one.say(FormWords.of(fault, one.title())), () -> message.setText(FormWords.of(fault)));
    }

    private static boolean isAbout(Message fault, AskedRow row) {
        return !fault.arguments().isEmpty() && fault.arguments().get(0).equals(row.title());
    }

    private OutsideMeasurements read(Set<String> accepted) {
        TypedFields typed = new TypedFields(accepted);
        String name = answer("name");
        if (!name.isEmpty()) {
            typed.text(place("name"), "name", name);
        }
        Optional<Material> material =
                typed.choice(place("material"), "body.material", answer("material"), Material.values(), Material::id);
        Optional<SourceKind> source =
                typed.choice(place("source"), "heatSource.kind", answer("source"), SourceKind.values(), SourceKind::id);
        double bore = quantity(typed, "bore", "body.innerDiameter");
        double wall = quantity(typed, "wall", "body.wallThickness");
        int stages = typed.count(place("stages"), "stages", answer("stages"));
        double height = quantity(typed, "column-height", "column.segments[0].height");
        double column = quantity(typed, "column-diameter", "column.segments[0].innerDiameter");
        double boiler = quantity(typed, "boiler-diameter", "boiler.innerDiameter");
        double charge = quantity(typed, "charge", "charge");
        double power = quantity(typed, "power", "heatSource.ratedPower");
        OutsideMeasurements.Known known = known(typed, material);
        typed.refuseFaults();
        return new OutsideMeasurements(
                name,
                material.orElseThrow(),
                bore,
                stages,
                height,
                column,
                boiler,
                wall,
                charge,
                answer("fluid"),
                source.orElseThrow(),
                power,
                known);
    }

    private OutsideMeasurements.Known known(TypedFields typed, Optional<Material> material) {
        Optional<HeatSource.Contact> contact = answer("contact").isEmpty()
                ? Optional.empty()
                : typed.choice(
                        place("contact"),
                        "heatSource.contact",
                        answer("contact"),
                        HeatSource.Contact.ofPlates(),
                        FieldCatalogue::id);
        String gaps = answer("throat-gaps");
        return new OutsideMeasurements.Known(
                contact,
                optional(typed, "source-limit", "heatSource.limit"),
                optional(typed, "insulation", "boiler.insulationThickness"),
                airCooled.isSelected(),
                airCooled.isSelected()
                        ? OptionalDouble.empty()
                        : optional(typed, "water-inlet", "cooling.supply.inletTemperature"),
                airCooled.isSelected() ? OptionalDouble.empty() : optional(typed, "water-flow", "cooling.supply.flow"),
                optional(typed, "foreline", "foreline.pressure"),
                gaps.isEmpty() ? List.of() : typed.quantities(place("throat-gaps"), "stages[].throatGap", gaps),
                optional(typed, "works-at", "heatSource.ratedPower"),
                answer("nameplate").isEmpty()
                        ? Optional.empty()
                        : material.map(m -> OutsideMeasurements.Nameplate.of(
                                quantity(typed, "nameplate", "heatSource.ratedPower"), m)));
    }

    private double quantity(TypedFields typed, String key, String path) {
        return typed.quantity(place(key), path, answer(key));
    }

    private OptionalDouble optional(TypedFields typed, String key, String path) {
        return answer(key).isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(quantity(typed, key, path));
    }

    private String answer(String key) {
        return rows.get(key).answer();
    }

    /** Messages name a line by what it asks. */
    private String place(String key) {
        return rows.get(key).title();
    }

    private static List<String> ids(String path) {
        return FieldCatalogue.find(path).orElseThrow().choices();
    }

    private void choice(String key, List<String> ids, boolean needed) {
        add(AskedRow.chosen(key, ids, FieldRows::choiceWord, needed));
    }

    private void add(AskedRow row) {
        rows.put(row.key(), row);
        all.getChildren().add(row);
    }

    private void heading(String key) {
        Label label = new Label(WindowText.say(key));
        label.getStyleClass().add("section-title");
        all.getChildren().add(label);
    }

    private void text(String key) {
        Label label = new Label(WindowText.say(key));
        label.setWrapText(true);
        all.getChildren().add(label);
    }
}
