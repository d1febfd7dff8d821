package boilwright.dashboard.drawing;

import java.util.function.Consumer;
import javafx.scene.AccessibleAction;
import javafx.scene.AccessibleRole;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.layout.Region;

/** The place of one part: nothing to see but a frame when it has the focus. A click, Enter or Space asks for its card. */
final class PartSpot extends Region {
    private final Part part;
    private final Consumer<PartSpot> asked;

    PartSpot(Part part, Consumer<PartSpot> pointed, Consumer<PartSpot> asked) {
        this.part = part;
        this.asked = asked;
        setManaged(false);
        getStyleClass().add("part-spot");
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.BUTTON);
        setPickOnBounds(true);
        hoverProperty().addListener((property, before, now) -> pointed.accept(this));
        focusedProperty().addListener((property, before, now) -> pointed.accept(this));
        setOnMousePressed(event -> requestFocus());
        setOnMouseClicked(event -> {
            if (event.getButton() == MouseButton.PRIMARY) {
                asked.accept(this);
            }
        });
        addEventHandler(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.ENTER || event.getCode() == KeyCode.SPACE && !event.isShortcutDown()) {
                asked.accept(this);
                event.consume();
            }
        });
    }

    @Override
    public void executeAccessibleAction(AccessibleAction action, Object... parameters) {
        if (action == AccessibleAction.FIRE) {
            asked.accept(this);
        } else {
            super.executeAccessibleAction(action, parameters);
        }
    }

    Part part() {
        return part;
    }
}
