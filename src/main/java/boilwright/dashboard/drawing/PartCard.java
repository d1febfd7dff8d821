package boilwright.dashboard.drawing;

import boilwright.answers.Margin;
import boilwright.dashboard.drawing.PartReading.MarginLine;
import boilwright.dashboard.text.WindowText;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.controlsfx.control.PopOver;

/**
 * The card of one part, beside it: its figures and the margins that live there, each with where its limit comes from and what
 * would help. Takes no focus; Esc or a click elsewhere closes it.
 */
final class PartCard extends PopOver {
    private static final double APART = 3;
    private static final double ARROW = 9;

    private final VBox content = new VBox();
    private PartReading shown;

    PartCard() {
        super();
        content.getStyleClass().add("part-card");
        setContentNode(content);
        getStyleClass().add("part-popover");
        setArrowSize(ARROW);
        setDetachable(false);
        setAnimated(false);
        // A click on another part closes this card and opens that part's.
        setConsumeAutoHidingEvents(false);
    }

    /** Shows a part's reading right of the part, for the page beside the drawing leaves room there. */
    void show(PartSpot spot, PartReading reading) {
        if (isShowing()) {
            hide();
        }
        tell(reading);
        double height = spot.getScene().getHeight();
        double middle = spot.localToScene(spot.getBoundsInLocal()).getCenterY();
        setArrowLocation(
                middle < height / 3
                        ? ArrowLocation.LEFT_TOP
                        : middle < 2 * height / 3 ? ArrowLocation.LEFT_CENTER : ArrowLocation.LEFT_BOTTOM);
        show(spot, APART);
    }

    /** Whether a reading needs no other height than the one shown: it differs in its figures alone. */
    boolean isAsHighFor(PartReading reading) {
        return shown != null
                && reading.figures().size() == shown.figures().size()
                && reading.margins().equals(shown.margins())
                && reading.guess() == shown.guess();
    }

    /** Tells another reading of the part at which it stands. */
    void tell(PartReading reading) {
        if (reading.equals(shown)) {
            return;
        }
        shown = reading;
        content.getChildren().setAll(label(reading.name(), "reading-name"));
        reading.figures().forEach(line -> add(line, "reading-line"));
        reading.margins().forEach(this::add);
        if (reading.guess()) {
            add(WindowText.say("drawing.guess.why"), "reading-basis");
        }
    }

    private void add(MarginLine line) {
        Margin margin = line.margin();
        Label words = add(line.words(), "reading-margin");
        words.getStyleClass().add(margin.status().id());
        if (!margin.basis().isEmpty()) {
            add(margin.basis(), "reading-basis");
        }
        if (!margin.cure().isEmpty()) {
            add(WindowText.say("parts.ledger.cure", margin.cure()), "reading-line");
        }
    }

    private Label add(String text, String style) {
        Label label = label(text, style);
        content.getChildren().add(label);
        return label;
    }

    private static Label label(String text, String style) {
        Label label = new Label(text);
        label.getStyleClass().add(style);
        label.setWrapText(true);
        label.setMinHeight(Label.USE_PREF_SIZE);
        return label;
    }
}
