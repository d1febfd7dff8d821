package boilwright.dashboard.fluids;

import boilwright.dashboard.text.WindowText;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.Function;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.TableCell;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableColumn.SortType;
import javafx.scene.control.TableRow;
import javafx.scene.control.TableView;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;

/** All working fluids, a line each, to be sorted by any figure; the fluid of the rig is marked. */
final class FluidTable extends TableView<FluidRow> {
    private static final PseudoClass IN_RIG = PseudoClass.getPseudoClass("in-rig");
    private static final double NAME_EMS = 14;
    private static final double FAMILY_EMS = 7.8;
    private static final double FIGURE_EMS = 6;
    private static final double PRESSURE_EMS = 6.8;
    /** Width of the names from which there is room for what the fluid is called in full. */
    private static final double TITLE_EMS = 42;

    private static final double HEAD_EMS = 3.1;
    private static final double ROW_EMS = 2.1;
    private static final int LEAST_ROWS = 5;
    private static final int MOST_ROWS = 9;
    /** What the scroll bar takes. */
    private static final double BESIDE_EMS = 1.2;

    private final TableColumn<FluidRow, String> name = new TableColumn<>(WindowText.say("fluids.column.name"));
    private final TableColumn<FluidRow, String> family = new TableColumn<>(WindowText.say("fluids.column.family"));
    private final List<TableColumn<FluidRow, OptionalDouble>> figures = new ArrayList<>();
    private final BooleanProperty roomForTitles = new SimpleBooleanProperty(this, "roomForTitles");
    private String inRig = "";
    private double em;
    private int leastRows = LEAST_ROWS;

    FluidTable() {
        setId("fluids-table");
        getStyleClass().addAll("fluid-table", "dense");
        setAccessibleText(WindowText.say("fluids.table"));
        setPlaceholder(new Label(WindowText.say("fluids.loading")));
        name.setCellValueFactory(
                cell -> new ReadOnlyObjectWrapper<>(cell.getValue().id()));
        name.setCellFactory(column -> new NameCell());
        family.setCellValueFactory(
                cell -> new ReadOnlyObjectWrapper<>(cell.getValue().familyInWords()));
        getColumns().add(name);
        getColumns().add(family);
        for (Column figure : Column.values()) {
            TableColumn<FluidRow, OptionalDouble> column = new TableColumn<>();
            column.setId(figure.key());
            column.getStyleClass().add("figure-column");
            column.setText(WindowText.say(figure.key(), ""));
            column.setCellValueFactory(cell -> new ReadOnlyObjectWrapper<>(figure.of(cell.getValue())));
            column.setCellFactory(of -> new FigureCell(figure));
            column.setComparator((one, other) ->
                    Column.order(column.getSortType() == SortType.DESCENDING).compare(one, other));
            figures.add(column);
            getColumns().add(column);
        }
        setRowFactory(table -> new Row());
        widthProperty().addListener((property, before, now) -> fit());
    }

    /** Shows these fluids; the one that was chosen stays chosen. */
    void show(List<FluidRow> rows, String boilerPressure) {
        FluidRow chosen = getSelectionModel().getSelectedItem();
        getItems().setAll(rows);
        tall();
        figures.get(Column.BOILS.ordinal()).setText(WindowText.say(Column.BOILS.key(), boilerPressure));
        sort();
        if (chosen != null) {
            choose(chosen.id());
        }
    }

    /** Chooses a fluid, if it is there. */
    void choose(String id) {
        getItems().stream().filter(row -> row.id().equals(id)).findFirst().ifPresent(row -> {
            getSelectionModel().select(row);
            scrollTo(row);
        });
    }

    /** Says which fluid is in the rig. */
    void mark(String id) {
        inRig = id;
        refresh();
    }

    /**
     * Takes the size of the type, from which widths follow.
     *
     * @param size px
     * @param roomy whether every usual fluid may stay in view
     */
    void letters(double size, boolean roomy) {
        em = size;
        leastRows = roomy ? MOST_ROWS : LEAST_ROWS;
        setFixedCellSize(Math.ceil(ROW_EMS * em));
        fit();
        tall();
    }

    private void tall() {
        double height = HEAD_EMS * em + Math.max(1, getItems().size()) * getFixedCellSize();
        setPrefHeight(height);
        setMaxHeight(height);
        int rows = Math.max(1, Math.min(leastRows, getItems().size()));
        setMinHeight(HEAD_EMS * em + rows * getFixedCellSize());
    }

    /** Every column as wide as its words; what is left over goes to the names. */
    private void fit() {
        family.setPrefWidth(FAMILY_EMS * em);
        double others = FAMILY_EMS * em;
        for (TableColumn<FluidRow, OptionalDouble> column : figures) {
            double width = column == figures.get(Column.VAPOUR.ordinal()) ? PRESSURE_EMS : FIGURE_EMS;
            column.setPrefWidth(width * em);
            others += width * em;
        }
        double names = Math.max(NAME_EMS * em, getWidth() - others - BESIDE_EMS * em);
        name.setPrefWidth(names);
        roomForTitles.set(names > TITLE_EMS * em);
    }

    private final class Row extends TableRow<FluidRow> {
        @Override
        protected void updateItem(FluidRow row, boolean empty) {
            super.updateItem(row, empty);
            boolean marked = !empty && row != null && row.id().equals(inRig);
            pseudoClassStateChanged(IN_RIG, marked);
            setTooltip(empty || row == null ? null : new Tooltip(row.title()));
        }
    }

    /** The name, with what is particular about this fluid. */
    private final class NameCell extends TableCell<FluidRow, String> {
        private final Label id = new Label();
        private final Label title = new Label();
        private final Label rig = tag("fluids.in-rig");
        private final Label own = tag("fluids.own");
        private final HBox line = new HBox(id, title, rig, own);

        NameCell() {
            line.getStyleClass().add("fluid-name");
            line.setAlignment(Pos.CENTER_LEFT);
            id.getStyleClass().add("fluid-id");
            title.getStyleClass().add("fluid-called");
            title.visibleProperty().bind(roomForTitles);
            for (Label label : List.of(title, rig, own)) {
                label.managedProperty().bind(label.visibleProperty());
            }
        }

        private static Label tag(String key) {
            Label label = new Label(WindowText.say(key));
            label.getStyleClass().add("fluid-tag");
            label.setMinWidth(USE_PREF_SIZE);
            return label;
        }

        @Override
        protected void updateItem(String name, boolean empty) {
            super.updateItem(name, empty);
            FluidRow row = empty ? null : getTableRow().getItem();
            if (row == null) {
                setGraphic(null);
                setAccessibleText("");
                return;
            }
            boolean inThere = name.equals(inRig);
            id.setText(name);
            title.setText(row.title());
            rig.setVisible(inThere);
            own.setVisible(row.ownFile().isPresent());
            setGraphic(line);
            setAccessibleText(row.title() + (inThere ? ", " + WindowText.say("fluids.in-rig-long") : ""));
        }
    }

    private static final class FigureCell extends TableCell<FluidRow, OptionalDouble> {
        private final Column column;

        FigureCell(Column column) {
            this.column = column;
            getStyleClass().add("figure-cell");
        }

        @Override
        protected void updateItem(OptionalDouble si, boolean empty) {
            super.updateItem(si, empty);
            setText(empty || si == null ? "" : column.text(si, WindowText.say("fluids.none")));
        }
    }

    /** The figures of the table, in their order. */
    enum Column {
        MOLAR_MASS(Dimension.MOLAR_MASS, row -> OptionalDouble.of(row.molarMass())),
        BOILS(Dimension.TEMPERATURE, FluidRow::boilsK),
        VAPOUR(Dimension.PRESSURE, FluidRow::vapourPressurePa),
        LATENT_HEAT(Dimension.SPECIFIC_ENERGY, FluidRow::latentHeat),
        BULK(Dimension.TEMPERATURE, FluidRow::bulkLimitK),
        AIR(Dimension.TEMPERATURE, FluidRow::airLimitK);

        private final Dimension dimension;
        private final Function<FluidRow, OptionalDouble> figure;

        Column(Dimension dimension, Function<FluidRow, OptionalDouble> figure) {
            this.dimension = dimension;
            this.figure = figure;
        }

        /** Its name in the bundle. */
        String key() {
            return "fluids.column." + name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        /** The figure of a fluid, SI. */
        OptionalDouble of(FluidRow row) {
            return figure.apply(row);
        }

        /** A figure with its unit, or the words for none. */
        String text(OptionalDouble si, String none) {
            return si.isPresent() ? QuantityWriter.writeAuto(si.getAsDouble(), dimension) : none;
        }

        /** Orders figures so that, once turned round if it has to be, fluids without one come last. */
        static Comparator<OptionalDouble> order(boolean turnedRound) {
            double none = turnedRound ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
            return Comparator.comparingDouble(si -> si.orElse(none));
        }
    }
}
