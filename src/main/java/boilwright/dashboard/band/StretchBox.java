package boilwright.dashboard.band;

import javafx.scene.control.Label;
import javafx.scene.layout.HBox;

/** A stretch with its name and its length, as far as they fit in. */
final class StretchBox extends HBox {
    private final Stretch stretch;
    private final Label name = new Label();
    private final Label length = new Label();

    StretchBox(Stretch stretch) {
        this.stretch = stretch;
        getStyleClass().addAll("stretch", stretch.id());
        if (stretch.plateau()) {
            getStyleClass().add("plateau");
        }
        name.getStyleClass().add("stretch-name");
        length.getStyleClass().add("stretch-length");
        name.setText(stretch.name());
        length.setText(stretch.length());
        name.setMinWidth(USE_PREF_SIZE);
        length.setMinWidth(USE_PREF_SIZE);
        setMouseTransparent(true);
        setManaged(false);
        getChildren().addAll(name, length);
    }

    Stretch stretch() {
        return stretch;
    }

    /** Takes a place, and leaves out what would not fit. */
    void place(double x, double y, double width, double height) {
        double edges = snappedLeftInset() + snappedRightInset();
        double named = edges + name.prefWidth(-1);
        show(name, named <= width);
        show(length, !length.getText().isEmpty() && named + getSpacing() + length.prefWidth(-1) <= width);
        resizeRelocate(x, y, width, height);
    }

    /** Lets words go that something lies over, from one x to another in the band; half a word says nothing. */
    void clear(double from, double to) {
        double start = getLayoutX() + snappedLeftInset();
        double nameEnd = start + name.prefWidth(-1);
        double lengthStart = nameEnd + getSpacing();
        name.setOpacity(from < nameEnd && to > start ? 0 : 1);
        length.setOpacity(from < lengthStart + length.prefWidth(-1) && to > lengthStart ? 0 : 1);
    }

    private static void show(Label label, boolean shown) {
        label.setVisible(shown);
        label.setManaged(shown);
    }
}
