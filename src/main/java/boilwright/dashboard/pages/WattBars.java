package boilwright.dashboard.pages;

import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;

/** Heat flows as bars on one scale, each with its name and its watts. */
final class WattBars extends Region {
    private static final double GAP = 8;

    private record Row(Label name, Region bar, Label watts, double value) {}

    private final List<Row> rows = new ArrayList<>();

    WattBars() {
        getStyleClass().add("watt-bars");
    }

    /**
     * One bar.
     *
     * @param name what it is
     * @param watts how much, W
     * @param style what it is drawn as
     */
    record Bar(String name, double watts, String style) {}

    /** Shows these bars in place of those before. */
    void show(Bar... bars) {
        rows.clear();
        getChildren().clear();
        StringBuilder spoken = new StringBuilder();
        for (Bar bar : bars) {
            Label name = new Label(bar.name());
            name.getStyleClass().add("bar-name");
            Region fill = new Region();
            fill.getStyleClass().addAll("bar", bar.style());
            Label watts = new Label(QuantityWriter.writeAuto(bar.watts(), Dimension.POWER));
            watts.getStyleClass().add("bar-watts");
            rows.add(new Row(name, fill, watts, Math.max(0, bar.watts())));
            getChildren().addAll(name, fill, watts);
            spoken.append(bar.name()).append(' ').append(watts.getText()).append(". ");
        }
        setAccessibleText(spoken.toString());
        requestLayout();
    }

    @Override
    protected void layoutChildren() {
        double greatest = rows.stream().mapToDouble(Row::value).max().orElse(1);
        double names =
                rows.stream().mapToDouble(r -> r.name().prefWidth(-1)).max().orElse(0);
        double watts =
                rows.stream().mapToDouble(r -> r.watts().prefWidth(-1)).max().orElse(0);
        double room = Math.max(10, getWidth() - names - watts - 3 * GAP);
        double y = snappedTopInset();
        for (Row row : rows) {
            double height = rowHeight(row);
            double length = greatest <= 0 ? 0 : room * row.value() / greatest;
            double thick = snapSizeY(0.62 * height);
            row.name().resizeRelocate(0, snapPositionY(y), names, height);
            row.bar()
                    .resizeRelocate(
                            snapPositionX(names + GAP),
                            snapPositionY(y + (height - thick) / 2),
                            Math.max(1, snapSizeX(length)),
                            thick);
            row.watts().resizeRelocate(snapPositionX(names + 2 * GAP + length), snapPositionY(y), watts, height);
            y += height;
        }
    }

    private double rowHeight(Row row) {
        return snapSizeY(1.35 * row.name().prefHeight(-1));
    }

    @Override
    protected double computePrefHeight(double width) {
        return snappedTopInset()
                + snappedBottomInset()
                + rows.stream().mapToDouble(this::rowHeight).sum();
    }

    @Override
    protected double computePrefWidth(double height) {
        return 300;
    }
}
