package boilwright.dashboard.drawing;

import javafx.geometry.Bounds;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** The reading of one part, beside it. */
final class ReadingCard extends VBox {
    private static final double APART = 10;
    private static final double MOST_WIDTH = 340;

    private final Label name = new Label();
    private final Label lines = new Label();

    ReadingCard() {
        getStyleClass().add("reading-card");
        setManaged(false);
        setMouseTransparent(true);
        setVisible(false);
        name.getStyleClass().add("reading-name");
        lines.getStyleClass().add("reading-lines");
        lines.setWrapText(true);
        getChildren().addAll(name, lines);
    }

    /** Shows a reading beside a part and within the drawing. */
    void show(PartReading reading, Bounds part, double width, double height) {
        name.setText(reading.name());
        lines.setText(String.join("\n", reading.lines()));
        setVisible(true);
        applyCss();
        double w = Math.min(Math.min(MOST_WIDTH, width - 2), Math.ceil(prefWidth(-1)));
        double h = Math.ceil(prefHeight(w));
        double right = part.getMaxX() + APART;
        double left = part.getMinX() - APART - w;
        double x = right + w <= width ? right : left >= 0 ? left : Math.max(0, width - w);
        double y = Math.max(0, Math.min(height - h, part.getCenterY() - h / 2));
        resizeRelocate(Math.round(x), Math.round(y), w, h);
    }
}
