package boilwright.dashboard.parts;

import boilwright.answers.Margin;
import boilwright.dashboard.text.WindowText;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.OptionalDouble;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/**
 * The ledger of margins, worst first: mark, word, value, limit and ratio in a line each; the margin that is chosen, and every
 * one that fails, also says where its limit comes from and what would cure it.
 */
public final class LedgerView extends ListView<Margin> {
    /** Ratios above this say no more than "far away". */
    private static final double FAR = 99;

    /** A ledger without a line. */
    public LedgerView() {
        getStyleClass().add("ledger");
        setAccessibleText(WindowText.say("parts.ledger"));
        setCellFactory(list -> new Line(this));
        getSelectionModel().selectedItemProperty().addListener((property, before, now) -> refresh());
    }

    /** Shows these margins, in the order given; the one that was chosen stays chosen. */
    public void setMargins(List<Margin> margins) {
        Margin chosen = getSelectionModel().getSelectedItem();
        getItems().setAll(margins);
        if (chosen != null) {
            margins.stream()
                    .filter(margin -> margin.id().equals(chosen.id()))
                    .findFirst()
                    .ifPresent(getSelectionModel()::select);
        }
    }

    private static String figure(OptionalDouble si, Dimension dimension) {
        return si.isEmpty()
                ? WindowText.say("parts.ledger.unknown")
                : QuantityWriter.writeAuto(si.getAsDouble(), dimension);
    }

    private static String limit(Margin margin) {
        return margin.limit().isEmpty()
                ? WindowText.say("parts.ledger.no-limit")
                : WindowText.say("parts.ledger." + margin.side().id(), figure(margin.limit(), margin.dimension()));
    }

    private static String ratio(Margin margin) {
        if (margin.ratio().isEmpty()) {
            return "";
        }
        double ratio = margin.ratio().getAsDouble();
        return ratio > FAR
                ? WindowText.say("parts.ledger.far")
                : new BigDecimal(ratio)
                        .round(new MathContext(3, RoundingMode.HALF_UP))
                        .setScale(2, RoundingMode.HALF_UP)
                        .toPlainString();
    }

    /** One margin. */
    private static final class Line extends ListCell<Margin> {
        private final Label mark = new Label();
        private final Label title = new Label();
        private final Label figures = new Label();
        private final Label ratio = new Label();
        private final Label basis = new Label();
        private final Label cure = new Label();
        private final VBox all;

        Line(LedgerView list) {
            mark.getStyleClass().add("ledger-mark");
            title.getStyleClass().add("ledger-title");
            figures.getStyleClass().add("ledger-figures");
            ratio.getStyleClass().add("ledger-ratio");
            basis.getStyleClass().add("ledger-basis");
            cure.getStyleClass().add("ledger-cure");
            mark.setMinWidth(Region.USE_PREF_SIZE);
            ratio.setMinWidth(Region.USE_PREF_SIZE);
            title.setMaxWidth(Double.MAX_VALUE);
            HBox.setHgrow(title, Priority.ALWAYS);
            basis.setWrapText(true);
            cure.setWrapText(true);
            HBox line = new HBox(mark, title, figures, ratio);
            line.getStyleClass().add("ledger-line");
            line.setAlignment(Pos.BASELINE_LEFT);
            all = new VBox(line);
            all.getStyleClass().add("ledger-entry");
            prefWidthProperty().bind(list.widthProperty().subtract(24));
            setMaxWidth(USE_PREF_SIZE);
        }

        @Override
        protected void updateItem(Margin margin, boolean empty) {
            super.updateItem(margin, empty);
            getStyleClass().removeAll("fails", "tight", "unknown", "holds");
            if (empty || margin == null) {
                setGraphic(null);
                setAccessibleText("");
                return;
            }
            getStyleClass().add(margin.status().id());
            mark.setText(margin.status().mark() + " " + margin.status().id());
            title.setText(margin.title());
            figures.setText(figure(margin.value(), margin.dimension()) + "  " + limit(margin));
            ratio.setText(ratio(margin));
            basis.setText(margin.basis());
            cure.setText(margin.cure().isEmpty() ? "" : WindowText.say("parts.ledger.cure", margin.cure()));
            boolean open = isSelected() || margin.status() == Margin.Status.FAILS;
            all.getChildren().removeAll(basis, cure);
            if (isSelected()) {
                all.getChildren().add(basis);
            }
            if (open && !margin.cure().isEmpty()) {
                all.getChildren().add(cure);
            }
            setGraphic(all);
            setAccessibleText(String.join(
                    ". ",
                    margin.title(),
                    margin.status().id(),
                    figures.getText(),
                    ratio.getText(),
                    margin.basis(),
                    cure.getText()));
        }
    }
}
