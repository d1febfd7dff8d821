package boilwright.dashboard;

import boilwright.dashboard.text.WindowText;
import java.util.Locale;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;

/** Everything that a person can ask of the window from anywhere in it, each with its keys. */
public enum Action {
    NEW(KeyCode.N),
    OPEN(KeyCode.O),
    SAVE(KeyCode.S),
    SAVE_AS(KeyCode.S, KeyCombination.SHIFT_DOWN),
    UNDO(KeyCode.Z),
    REDO(KeyCode.Z, KeyCombination.SHIFT_DOWN),
    PLAY(KeyCode.SPACE),
    EXPORT(KeyCode.E),
    THEME(KeyCode.T),
    PAGE_RIG(KeyCode.DIGIT1),
    PAGE_HEAT(KeyCode.DIGIT2),
    PAGE_TIME(KeyCode.DIGIT3),
    PAGE_WATER(KeyCode.DIGIT4),
    PAGE_VACUUM(KeyCode.DIGIT5),
    PAGE_RUN(KeyCode.DIGIT6),
    PAGE_FLUIDS(KeyCode.DIGIT7),
    CLOSE(KeyCode.W);

    private final KeyCombination keys;

    Action(KeyCode code, KeyCombination.Modifier... more) {
        KeyCombination.Modifier[] all = new KeyCombination.Modifier[more.length + 1];
        all[0] = KeyCombination.SHORTCUT_DOWN;
        System.arraycopy(more, 0, all, 1, more.length);
        this.keys = new KeyCodeCombination(code, all);
    }

    /** Its keys. */
    public KeyCombination keys() {
        return keys;
    }

    /** What its button says. */
    public String title() {
        return WindowText.say(key() + ".title");
    }

    /** What it does, in a sentence. */
    public String explanation() {
        return WindowText.say(key() + ".explanation");
    }

    private String key() {
        return "frame.action." + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
