package boilwright.dashboard.pages;

import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;

/** Names and figures, one pair a line. */
public final class FigureGrid extends GridPane {
    private int count;

    /** A grid without a line. */
    public FigureGrid() {
        getStyleClass().add("figures");
        ColumnConstraints names = new ColumnConstraints();
        ColumnConstraints figures = new ColumnConstraints();
        figures.setHgrow(Priority.ALWAYS);
        getColumnConstraints().setAll(names, figures);
    }

    /** Takes every line away. */
    public void clear() {
        getChildren().clear();
        count = 0;
    }

    /** Adds a line. */
    public void add(String name, String figure) {
        Label left = new Label(name);
        left.getStyleClass().add("figure-name");
        Label right = new Label(figure);
        right.getStyleClass().add("figure");
        left.setLabelFor(right);
        addRow(count++, left, right);
    }
}
