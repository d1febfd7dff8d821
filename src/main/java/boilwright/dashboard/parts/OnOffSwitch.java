package boilwright.dashboard.parts;

import javafx.scene.AccessibleAction;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import org.controlsfx.control.ToggleSwitch;

/** A setting that is on or off, as wide as its words; it also tells its state to those who hear it. */
public final class OnOffSwitch extends ToggleSwitch {
    /** @param words what is on when it is on */
    public OnOffSwitch(String words) {
        super(words);
        setAccessibleRole(AccessibleRole.TOGGLE_BUTTON);
        setMinWidth(USE_PREF_SIZE);
        setMaxWidth(USE_PREF_SIZE);
        selectedProperty()
                .addListener((property, before, now) -> notifyAccessibleAttributeChanged(AccessibleAttribute.SELECTED));
    }

    @Override
    public Object queryAccessibleAttribute(AccessibleAttribute attribute, Object... parameters) {
        return attribute == AccessibleAttribute.SELECTED
                ? isSelected()
                : super.queryAccessibleAttribute(attribute, parameters);
    }

    @Override
    public void executeAccessibleAction(AccessibleAction action, Object... parameters) {
        if (action == AccessibleAction.FIRE) {
            fire();
        } else {
            super.executeAccessibleAction(action, parameters);
        }
    }
}
