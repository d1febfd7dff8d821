package boilwright.dashboard;

import atlantafx.base.theme.PrimerDark;
import atlantafx.base.theme.PrimerLight;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.application.Application;
import javafx.css.PseudoClass;
import javafx.scene.Parent;
import javafx.scene.Scene;

/** The two looks of the window. */
public enum Theme {
    LIGHT,
    DARK;

    private static final PseudoClass DARK_CLASS = PseudoClass.getPseudoClass("dark");
    private static final List<String> SHEETS = List.of(
            "bridge", "frame", "drawing", "band", "chart", "parts", "pages", "water", "vacuum", "run", "fluids");

    /** How the command line spells it. */
    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The theme with this spelling. */
    public static Optional<Theme> find(String id) {
        return Arrays.stream(values()).filter(theme -> theme.id().equals(id)).findFirst();
    }

    /** The other one. */
    Theme other() {
        return this == LIGHT ? DARK : LIGHT;
    }

    /** Dresses a scene: the theme, the bridge for controls that know only the usual colour names, and our own sheets. */
    void dress(Scene scene) {
        Application.setUserAgentStylesheet(
                this == LIGHT ? new PrimerLight().getUserAgentStylesheet() : new PrimerDark().getUserAgentStylesheet());
        List<String> sheets = SHEETS.stream()
                .map(name -> Theme.class.getResource("/boilwright/css/" + name + ".css"))
                .filter(sheet -> sheet != null)
                .map(Object::toString)
                .toList();
        // Set once more, the same sheets would have all of the scene styled a second time.
        if (!scene.getStylesheets().equals(sheets)) {
            scene.getStylesheets().setAll(sheets);
        }
        mark(scene.getRoot());
    }

    /** Tells the root of a scene in which theme it stands. */
    void mark(Parent root) {
        root.pseudoClassStateChanged(DARK_CLASS, this == DARK);
    }
}
