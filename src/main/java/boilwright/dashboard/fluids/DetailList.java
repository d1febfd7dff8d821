package boilwright.dashboard.fluids;

import boilwright.dashboard.text.WindowText;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Every property of one fluid, a line each: figure, range, uncertainty and source. */
final class DetailList extends VBox {
    /** What stands beside a line's words: padding and scroll bar. */
    private static final double BESIDE = 40;

    private final ListView<DetailLine> list = new ListView<>();

    DetailList() {
        getStyleClass().add("fluid-details");
        list.setId("fluids-details");
        list.getStyleClass().add("fluid-detail-list");
        list.setAccessibleText(WindowText.say("fluids.detail"));
        list.setCellFactory(of -> new Cell(list));
        Columns head = new Columns();
        head.getStyleClass().add("fluid-detail-head");
        head.fill(new DetailLine(
                WindowText.say("fluids.detail.property"),
                WindowText.say("fluids.detail.value"),
                WindowText.say("fluids.detail.vouched"),
                WindowText.say("fluids.detail.uncertainty"),
                WindowText.say("fluids.detail.place-title"),
                ""));
        VBox.setVgrow(list, Priority.ALWAYS);
        getChildren().addAll(head, list);
    }

    /** Shows these lines; the line that was read stays in view. */
    void show(List<DetailLine> lines) {
        int read = list.getSelectionModel().getSelectedIndex();
        list.getItems().setAll(lines);
        list.getSelectionModel().select(read);
    }

    /** The words of a line side by side. */
    private static final class Columns extends HBox {
        private final Label title = words("fluid-detail-title");
        private final Label value = words("fluid-detail-value");
        private final Label range = words("fluid-detail-range");
        private final Label uncertainty = words("fluid-detail-uncertainty");
        private final Label place = words("fluid-detail-place");

        Columns() {
            getStyleClass().add("fluid-detail");
            setAlignment(Pos.TOP_LEFT);
            place.setMaxWidth(Double.MAX_VALUE);
            HBox.setHgrow(place, Priority.ALWAYS);
        }

        private static Label words(String style) {
            Label label = new Label();
            label.setWrapText(true);
            label.getStyleClass().add(style);
            return label;
        }

        void fill(DetailLine line) {
            title.setText(line.title());
            value.setText(line.value());
            range.setText(line.range());
            uncertainty.setText(line.uncertainty());
            place.setText(line.place());
            boolean figure = !line.place().isEmpty();
            value.setMaxWidth(figure ? USE_PREF_SIZE : Double.MAX_VALUE);
            HBox.setHgrow(value, figure ? Priority.NEVER : Priority.ALWAYS);
            value.getStyleClass().remove("fluid-detail-none");
            if (figure) {
                getChildren().setAll(title, value, range, uncertainty, place);
            } else {
                value.getStyleClass().add("fluid-detail-none");
                getChildren().setAll(title, value);
            }
        }
    }

    private static final class Cell extends ListCell<DetailLine> {
        private final Columns columns = new Columns();

        Cell(ListView<DetailLine> list) {
            setPrefWidth(0);
            list.widthProperty().addListener((property, before, now) -> requestLayout());
        }

        /** As tall as its words need at the list's width; a cell would otherwise cut them off in their first line. */
        @Override
        protected double computePrefHeight(double width) {
            double room = getListView() == null ? width : getListView().getWidth() - BESIDE;
            return getGraphic() == null || room <= 0
                    ? super.computePrefHeight(width)
                    : snappedTopInset() + columns.prefHeight(room) + snappedBottomInset();
        }

        @Override
        protected void updateItem(DetailLine line, boolean empty) {
            super.updateItem(line, empty);
            if (empty || line == null) {
                setGraphic(null);
                setAccessibleText("");
                return;
            }
            columns.fill(line);
            setGraphic(columns);
            setAccessibleText(String.join(
                    ". ", line.title(), line.value(), line.range(), line.uncertainty(), line.place(), line.source()));
        }
    }
}
