package boilwright.dashboard.companion;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** A bar that calls: a mark, whole sentences and what can be done about them. Takes no room while there is nothing to say. */
final class CallBar extends HBox {
    private final Label mark = new Label();
    private final VBox sentences = new VBox();

    CallBar(String id, String markText, Button... choices) {
        setId(id);
        getStyleClass().addAll("companion-bar", id);
        setAlignment(Pos.CENTER_LEFT);
        mark.setText(markText);
        mark.getStyleClass().add("companion-bar-mark");
        mark.setMinWidth(Label.USE_PREF_SIZE);
        sentences.getStyleClass().add("companion-bar-lines");
        HBox.setHgrow(sentences, Priority.ALWAYS);
        getChildren().addAll(mark, sentences);
        for (Button choice : choices) {
            choice.setMinWidth(Button.USE_PREF_SIZE);
            getChildren().add(choice);
        }
        setMinHeight(USE_PREF_SIZE);
        say(List.of());
    }

    void say(List<String> words) {
        List<String> before = sentences.getChildren().stream()
                .map(node -> ((Label) node).getText())
                .toList();
        if (!before.equals(words)) {
            sentences.getChildren().setAll(words.stream().map(CallBar::line).toList());
            setAccessibleText(mark.getText() + " " + String.join(" ", words));
        }
        setVisible(!words.isEmpty());
        setManaged(!words.isEmpty());
    }

    private static Label line(String words) {
        Label label = Says.label("companion-bar-line");
        label.setText(words);
        return label;
    }

    boolean isCalling() {
        return isVisible();
    }
}
