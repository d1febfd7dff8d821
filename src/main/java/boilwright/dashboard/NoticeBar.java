package boilwright.dashboard;

import boilwright.dashboard.text.WindowText;
import java.util.Locale;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Where notices stand, the newest on top, until the person has dealt with them. Nothing else is blocked meanwhile. */
final class NoticeBar extends VBox {
    private static final int MOST = 4;
    private static final double TALLEST_LINES = 150;

    NoticeBar() {
        getStyleClass().add("notices");
        setFillWidth(true);
    }

    /** Shows a notice; one with the same words that is still there makes place for it. */
    void show(Notice notice) {
        getChildren().removeIf(shown -> notice.title().equals(shown.getUserData()));
        getChildren().add(0, entry(notice));
        if (getChildren().size() > MOST) {
            getChildren().remove(MOST, getChildren().size());
        }
    }

    /** Takes every notice away that only tells or refuses: it is about a rig that is no longer there. */
    void clearTold() {
        getChildren().removeIf(shown -> !shown.getStyleClass().contains("ask"));
    }

    private Region entry(Notice notice) {
        VBox entry = new VBox();
        entry.getStyleClass().addAll("notice", notice.kind().name().toLowerCase(Locale.ROOT));
        entry.setUserData(notice.title());
        Label mark =
                new Label(WindowText.say("frame.notice." + notice.kind().name().toLowerCase(Locale.ROOT)));
        mark.getStyleClass().add("notice-mark");
        mark.setMinWidth(Region.USE_PREF_SIZE);
        Label title = new Label(notice.title());
        title.setWrapText(true);
        title.getStyleClass().add("notice-title");
        HBox.setHgrow(title, Priority.ALWAYS);
        title.setMaxWidth(Double.MAX_VALUE);
        HBox row = new HBox(mark, title);
        row.setAlignment(Pos.CENTER_LEFT);
        row.getStyleClass().add("notice-row");
        for (Notice.Choice choice : notice.choices()) {
            row.getChildren().add(button(choice.title(), entry, choice.what()));
        }
        Button let = button(WindowText.say("frame.notice.let-be"), entry, () -> {});
        let.getStyleClass().add("flat");
        row.getChildren().add(let);
        entry.getChildren().add(row);
        if (!notice.lines().isEmpty()) {
            entry.getChildren().add(lines(notice));
        }
        return entry;
    }

    private Button button(String title, Region entry, Runnable what) {
        Button button = new Button(title);
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setOnAction(event -> {
            getChildren().remove(entry);
            what.run();
        });
        return button;
    }

    private static Region lines(Notice notice) {
        VBox lines = new VBox();
        lines.getStyleClass().add("notice-lines");
        for (String text : notice.lines()) {
            Label line = new Label(text);
            line.setWrapText(true);
            lines.getChildren().add(line);
        }
        ScrollPane scroll = new ScrollPane(lines);
        scroll.setFitToWidth(true);
        scroll.setMaxHeight(TALLEST_LINES);
        scroll.setMinHeight(Region.USE_PREF_SIZE);
        scroll.getStyleClass().add("edge-to-edge");
        scroll.setFocusTraversable(true);
        scroll.setAccessibleText(String.join(" ", notice.lines()));
        return scroll;
    }
}
