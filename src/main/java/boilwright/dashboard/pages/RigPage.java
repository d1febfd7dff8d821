package boilwright.dashboard.pages;

import boilwright.answers.Cautions.Place;
import boilwright.dashboard.text.WindowText;
import boilwright.dashboard.work.RigAnswer;
import boilwright.rig.Rig;
import boilwright.rig.file.RigFields;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TitledPane;
import javafx.scene.layout.VBox;

/** The rig to edit: first what is turned and changed at the bench, then every other field, part by part. */
public final class RigPage extends ScrollPane {
    private static final String FORELINE_KIND = "foreline.kind";
    private static final String FORELINE_PRESSURE = "foreline.pressure";
    /** What stands at the top, and therefore not again in the plain form. */
    private static final Set<String> AT_THE_TOP = atTheTop(
            "name",
            "note",
            "fluid",
            "charge",
            "heatSource.kind",
            "heatSource.ratedPower",
            "schedule[]",
            FORELINE_KIND,
            FORELINE_PRESSURE,
            "room.temperature");

    private static Set<String> atTheTop(String... paths) {
        Set<String> all = new HashSet<>(SupplyRows.PATHS);
        all.addAll(List.of(paths));
        return Set.copyOf(all);
    }

    private final PageContext context;
    private final List<FieldRow> rows = new ArrayList<>();
    private final ScheduleForm schedule;
    private final SupplyRows supply;
    private final Map<TitledPane, PartForm> parts = new LinkedHashMap<>();
    private final CautionList heatCautions = new CautionList(Place.HEAT);
    private final CautionList waterCautions = new CautionList(Place.WATER);
    private final CautionList fluidCautions = new CautionList(Place.ANYWHERE);
    private final VBox all = new VBox();

    /** A page that follows the session and the answers. */
    public RigPage(PageContext context) {
        this.context = context;
        schedule = new ScheduleForm(context);
        supply = new SupplyRows(context);
        getStyleClass().addAll("page", "rig-page", "edge-to-edge");
        all.getStyleClass().add("page-content");
        setContent(all);
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        VBox heat = section("pages.rig.heat", "heatSource.kind", "heatSource.ratedPower", "session");
        Label levels = new Label(WindowText.say("pages.schedule"));
        levels.getStyleClass().add("field-title");
        heat.getChildren().addAll(levels, schedule, heatCautions);
        section("pages.rig.fluid", "fluid", "charge").getChildren().add(fluidCautions);
        section("pages.rig.cooling").getChildren().addAll(supply, waterCautions);
        section("pages.rig.around", FORELINE_KIND, FORELINE_PRESSURE, "room.temperature");
        Label more = new Label(WindowText.say("pages.rig.more"));
        more.getStyleClass().add("section-title");
        all.getChildren().add(more);
        for (String part : List.of(
                "heatSource",
                "boiler",
                "column",
                "stages",
                "body",
                "topCap",
                "cooling",
                "foreline",
                "vacuum",
                "protection",
                "room",
                "limits",
                "parameters")) {
            all.getChildren().add(part(part));
        }
        section("pages.rig.name", "name", "note");
        context.session().rigProperty().addListener((property, before, now) -> show(now));
        context.answering().answerProperty().addListener((property, before, now) -> caution(now));
        show(context.session().rig());
    }

    private VBox section(String title, String... paths) {
        Label heading = new Label(WindowText.say(title));
        heading.getStyleClass().add("section-title");
        VBox section = new VBox(heading);
        section.getStyleClass().add("section");
        for (String path : paths) {
            FieldRow row = FieldRows.of(context, path);
            rows.add(row);
            section.getChildren().add(row);
        }
        all.getChildren().add(section);
        return section;
    }

    private TitledPane part(String part) {
        PartForm form = new PartForm(context, part, AT_THE_TOP);
        TitledPane pane = new TitledPane(WindowText.say("pages.part." + part), form);
        pane.setId("part-" + part);
        pane.setExpanded(false);
        pane.setAnimated(false);
        pane.getStyleClass().add("part");
        // Filled when first looked at: a hundred fields that nobody looks at would slow the start.
        pane.expandedProperty().addListener((property, before, now) -> {
            if (now) {
                form.show(RigFields.of(context.session().rig()));
            }
        });
        parts.put(pane, form);
        return pane;
    }

    private void show(Rig rig) {
        RigFields fields = RigFields.of(rig);
        rows.forEach(row -> row.show(fields));
        // a backing pump has no given pressure
        rows.stream().filter(row -> row.path().equals(FORELINE_PRESSURE)).forEach(row -> {
            row.setVisible(fields.has(FORELINE_PRESSURE));
            row.setManaged(row.isVisible());
        });
        schedule.show(fields);
        supply.show(fields);
        parts.forEach((pane, form) -> {
            if (pane.isExpanded()) {
                form.show(fields);
            }
        });
    }

    private void caution(RigAnswer answer) {
        heatCautions.show(answer);
        waterCautions.show(answer);
        fluidCautions.show(answer);
    }
}
