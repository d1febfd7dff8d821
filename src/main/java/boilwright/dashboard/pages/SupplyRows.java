package boilwright.dashboard.pages;

import boilwright.rig.file.RigFields;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.VBox;

/** The kind of cooling supply and the figures of that kind which are turned and changed at the bench. */
final class SupplyRows extends VBox {
    private static final String SUPPLY = "cooling.supply";
    /** The figures, of whichever kinds; they stand nowhere else. */
    static final List<String> PATHS = List.of(
            SUPPLY + ".kind",
            SUPPLY + ".flow",
            SUPPLY + ".inletTemperature",
            SUPPLY + ".setPoint",
            SUPPLY + ".staticPressure",
            SUPPLY + ".lineFlowAtOneBar",
            SUPPLY + ".startTemperature",
            SUPPLY + ".volume",
            SUPPLY + ".ice",
            SUPPLY + ".airSpeed");

    private final PageContext context;
    private final List<FieldRow> rows = new ArrayList<>();

    SupplyRows(PageContext context) {
        this.context = context;
        getStyleClass().add("section");
    }

    /** Shows what the rig has; rows that stay are kept, so that the focus does. */
    void show(RigFields fields) {
        List<String> wanted = PATHS.stream().filter(fields::has).toList();
        List<FieldRow> before = new ArrayList<>(rows);
        if (!wanted.equals(before.stream().map(FieldRow::path).toList())) {
            rows.clear();
            for (String path : wanted) {
                rows.add(before.stream()
                        .filter(row -> row.path().equals(path))
                        .findFirst()
                        .orElseGet(() -> FieldRows.of(context, path)));
            }
            getChildren().retainAll(rows);
            for (int i = 0; i < rows.size(); i++) {
                if (!getChildren().contains(rows.get(i))) {
                    getChildren().add(i, rows.get(i));
                }
            }
        }
        rows.forEach(row -> row.show(fields));
    }
}
