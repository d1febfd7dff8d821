package boilwright.dashboard.parts;

import boilwright.answers.Margin;
import boilwright.dashboard.text.WindowText;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
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

    private final ReadOnlyDoubleWrapper lineHeight = new ReadOnlyDoubleWrapper(this, "lineHeight");
    private final Map<Integer, Double> heights = new HashMap<>();

    /** A ledger without a line. */
    public LedgerView() {
        getStyleClass().add("ledger");
        setAccessibleText(WindowText.say("parts.ledger"));
        setCellFactory(list -> new Line(this));
        widthProperty().addListener((property, before, now) -> refresh());
        getSelectionModel().selectedItemProperty().addListener((property, before, now) -> refresh());
    }

    /** Height of a line of one row, px; 0 before the first is laid out. */
    public ReadOnlyDoubleProperty lineHeightProperty() {
        return lineHeight.getReadOnlyProperty();
    }

    /**
     * A height at which the last line seen, scrolled to the top, is seen whole.
     *
     * @param most the most there is, px
     * @return at most that, px; as much as every line needs where that is less
     */
    public double wholeLines(double most) {
        double edges = snappedTopInset() + snappedBottomInset();
        double line = lineHeight.get();
        if (line <= 0 || getItems().isEmpty()) {
            return most;
        }
        double height = edges;
        for (int i = 0; i < getItems().size(); i++) {
            double next = height + heights.getOrDefault(i, line);
            if (next > most && i > 0) {
                break;
            }
            height = next;
        }
        return Math.min(most, height);
    }

    @Override
    protected void layoutChildren() {
        super.layoutChildren();
        heights.clear();
        double least = Double.MAX_VALUE;
        for (Node node : lookupAll(".list-cell")) {
            if (node instanceof Line line && !line.isEmpty() && line.getHeight() > 0) {
                heights.put(line.getIndex(), line.getHeight());
                least = Math.min(least, line.getHeight());
            }
        }
        if (least < Double.MAX_VALUE) {
            lineHeight.set(least);
        }
    }

    /** Shows these margins, in the order given; the one that was chosen stays chosen. */
    public void setMargins(List<Margin> margins) {
        Margin chosen = getSelectionModel().getSelectedItem();
        getItems().setAll(margins);
        if (chosen != null) {
            margins.stream()
                    .filter(margin -> margin.id() == chosen.id())
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
        if (ratio > FAR) {
            return WindowText.say("parts.ledger.far");
        }
        BigDecimal figures = new BigDecimal(ratio).round(new MathContext(3, RoundingMode.HALF_UP));
        int most = figures.compareTo(BigDecimal.TEN) >= 0 ? 1 : 2;
        return figures.setScale(most, RoundingMode.HALF_UP).toPlainString();
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
