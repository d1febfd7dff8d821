package boilwright.dashboard.pages;

import boilwright.answers.Cautions;
import boilwright.dashboard.text.WindowText;
import boilwright.dashboard.work.RigAnswer;
import java.util.Arrays;
import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** What can hurt someone, said where the hand is. */
public final class CautionList extends VBox {
    private final List<Cautions.Place> places;

    /** A list of the cautions that belong to these places. */
    public CautionList(Cautions.Place... places) {
        this.places = Arrays.asList(places);
        getStyleClass().add("cautions");
        managedProperty().bind(visibleProperty());
    }

    /** Shows the cautions of an answer that belong here. */
    public void show(RigAnswer answer) {
        List<String> sentences = answer == null
                ? List.of()
                : Cautions.placed(
                                answer.check().rig(),
                                answer.fluid(),
                                answer.check().steady().hottestOutsideK())
                        .stream()
                        .filter(caution -> places.contains(caution.place()))
                        .map(Cautions.Caution::sentence)
                        .toList();
        getChildren().clear();
        for (String sentence : sentences) {
            Label label = new Label(WindowText.say("pages.caution", sentence));
            label.setWrapText(true);
            label.getStyleClass().add("caution");
            getChildren().add(label);
        }
        setVisible(!sentences.isEmpty());
    }
}
