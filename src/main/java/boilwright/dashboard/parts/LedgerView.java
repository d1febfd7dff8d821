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
import javafx.scene.Node;
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
    /** What stands beside a line's words: padding and scroll bar. */
    private static final double BESIDE = 40;
    /** Width below which value and limit go under the title, in letters. */
    private static final double NARROW_EMS = 44;

    /** Ratios above this say no more than "far away". */
    private static final double FAR = 99;

    /** A ledger without a line. */
    public LedgerView() {
        getStyleClass().add("ledger");
        setAccessibleText(WindowText.say("parts.ledger"));
        setCellFactory(list -> new Line(this));
        widthProperty().addListener((property, before, now) -> refresh());
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

    /** Value and limit in words. What is counted, such as jets, is no share of anything. */
    private static String figures(Margin margin) {
        boolean counted = margin.dimension() == Dimension.FRACTION
                && margin.limit().orElse(0) > 1
                && margin.value().isPresent();
        if (!counted) {
            return figure(margin.value(), margin.dimension()) + "  " + limit(margin);
        }
        String most = plain(margin.limit().getAsDouble());
        String side = WindowText.say("parts.ledger." + margin.side().id(), most);
        return plain(margin.value().getAsDouble()) + "  " + side;
    }

    private static String plain(double count) {
        return new BigDecimal(count)
                .round(new MathContext(3, RoundingMode.HALF_UP))
                .stripTrailingZeros()
                .toPlainString();
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
        private final HBox line;
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
            line = new HBox(mark, title, ratio);
            line.getStyleClass().add("ledger-line");
            line.setAlignment(Pos.BASELINE_LEFT);
            all = new VBox(line);
            all.getStyleClass().add("ledger-entry");
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
            figures.setText(figures(margin));
            ratio.setText(ratio(margin));
            basis.setText(margin.basis());
            cure.setText(margin.cure().isEmpty() ? "" : WindowText.say("parts.ledger.cure", margin.cure()));
            boolean narrow =
                    getListView().getWidth() < NARROW_EMS * mark.getFont().getSize();
            line.getChildren().remove(figures);
            all.getChildren().remove(figures);
            if (narrow) {
                all.getChildren().add(1, figures);
            } else {
                line.getChildren().add(2, figures);
            }
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
