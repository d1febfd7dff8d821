package boilwright.dashboard.parts;

import boilwright.dashboard.text.WindowText;
import javafx.css.PseudoClass;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** The verdict in words and, when it is not the one of the rig as it is now, why it is still shown. */
public final class VerdictBar extends VBox {
    private static final PseudoClass STALE = PseudoClass.getPseudoClass("stale");

    private final Label words = new Label();
    private final Label why = new Label();

    /** A bar that says nothing yet. */
    public VerdictBar() {
        getStyleClass().add("verdict-bar");
        words.getStyleClass().add("verdict");
        why.getStyleClass().add("verdict-stale");
        words.setWrapText(true);
        why.setWrapText(true);
        why.managedProperty().bind(why.textProperty().isNotEmpty());
        why.visibleProperty().bind(why.managedProperty());
        words.setMinHeight(USE_PREF_SIZE);
        why.setMinHeight(USE_PREF_SIZE);
        setMinHeight(USE_PREF_SIZE);
        getChildren().addAll(words, why);
    }

    /**
     * Shows a verdict.
     *
     * @param verdict the verdict, whole sentences
     * @param stale whether it is of an earlier rig
     * @param staleWhy why there is none of the rig as it is now; empty while it is on its way
     */
    public void setVerdict(String verdict, boolean stale, String staleWhy) {
        words.setText(verdict);
        why.setText(staleWhy.isEmpty() ? "" : WindowText.say("parts.verdict.stale", staleWhy));
        pseudoClassStateChanged(STALE, stale);
        setAccessibleText((why.getText() + " " + verdict).strip());
    }
}
