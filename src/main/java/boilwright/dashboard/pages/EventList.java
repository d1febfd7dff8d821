package boilwright.dashboard.pages;

import boilwright.dashboard.text.WindowText;
import boilwright.report.EventWords;
import boilwright.thermal.TimeEvent;
import java.util.List;
import java.util.function.DoubleConsumer;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** What happens when, line by line; choosing a line leads the time cursor there. What never happens says why. */
final class EventList extends ListView<EventList.Line> {
    /** What stands beside a line's words: padding and scroll bar. */
    private static final double BESIDE = 40;

    private final ObservableList<Line> lines = FXCollections.observableArrayList();

    /**
     * One event.
     *
     * @param event the event, with the time within its own run
     * @param axisS where the time band has it, s; not a number when it does not happen
     * @param run what the run is called
     */
    record Line(TimeEvent event, double axisS, String run) {}

    EventList(DoubleConsumer lead) {
        getStyleClass().add("event-list");
        setItems(lines);
        setAccessibleText(WindowText.say("pages.time.events"));
        setCellFactory(list -> new Cell(this));
        setOnMouseClicked(event -> leadTo(lead));
        setOnKeyPressed(event -> {
            if (event.getCode() == KeyCode.ENTER) {
                leadTo(lead);
                event.consume();
            }
        });
    }

    /** Shows these events in place of those before. */
    void show(List<Line> events) {
        lines.setAll(events);
    }

    private void leadTo(DoubleConsumer lead) {
        Line line = getSelectionModel().getSelectedItem();
        if (line != null && !Double.isNaN(line.axisS())) {
            lead.accept(line.axisS());
        }
    }

    /** A line with its time, its title and what it means. */
    private static final class Cell extends ListCell<Line> {
        private final Label when = new Label();
        private final Label what = new Label();
        private final Label why = new Label();
        private final HBox row;

        Cell(ListView<Line> list) {
            when.getStyleClass().add("event-time");
            when.setMinWidth(Region.USE_PREF_SIZE);
            what.getStyleClass().add("event-title");
            why.getStyleClass().add("event-reason");
            why.setWrapText(true);
            what.setWrapText(true);
            VBox words = new VBox(what, why);
            HBox.setHgrow(words, Priority.ALWAYS);
            row = new HBox(when, words);
            row.getStyleClass().add("event-row");
            row.setAlignment(Pos.TOP_LEFT);
            setPrefWidth(0);
            list.widthProperty().addListener((property, before, now) -> requestLayout());
        }

        /** As tall as its words need at the list's width; a cell would otherwise cut them off in their first line. */
        @Override
        protected double computePrefHeight(double width) {
            Node words = getGraphic();
            double room = getListView() == null ? width : getListView().getWidth() - BESIDE;
            return words == null || room <= 0
                    ? super.computePrefHeight(width)
                    : snappedTopInset() + words.prefHeight(room) + snappedBottomInset();
        }

        @Override
        protected void updateItem(Line line, boolean empty) {
            super.updateItem(line, empty);
            if (empty || line == null) {
                setGraphic(null);
                setAccessibleText("");
                return;
            }
            TimeEvent event = line.event();
            String time = event.timeS().isPresent()
                    ? EventWords.clock(event.timeS().getAsDouble())
                    : WindowText.say("pages.time.never");
            when.setText(time);
            what.setText(WindowText.say("pages.time.event", line.run(), EventWords.title(event)));
            why.setText(event.reason());
            setGraphic(row);
            setAccessibleText(time + " " + what.getText() + ". " + event.reason());
        }
    }
}
