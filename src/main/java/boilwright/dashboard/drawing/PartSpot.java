package boilwright.dashboard.drawing;

import java.util.function.Consumer;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.Region;

/** The place of one part: nothing to see but a frame when it has the focus. */
final class PartSpot extends Region {
    private final Part part;

    PartSpot(Part part, Consumer<PartSpot> pointed) {
        this.part = part;
        setManaged(false);
        getStyleClass().add("part-spot");
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.TEXT);
        setPickOnBounds(true);
        hoverProperty().addListener((property, before, now) -> pointed.accept(this));
        focusedProperty().addListener((property, before, now) -> pointed.accept(this));
        setOnMousePressed(event -> requestFocus());
    }

    Part part() {
        return part;
    }
}
