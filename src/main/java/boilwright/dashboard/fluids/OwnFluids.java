package boilwright.dashboard.fluids;

import boilwright.dashboard.pages.PageContext;
import boilwright.dashboard.text.WindowText;
import boilwright.dashboard.work.Answering;
import boilwright.dashboard.work.BackgroundWork;
import boilwright.dashboard.work.BackgroundWork.Urgency;
import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.fluid.FluidFile;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Files of the person's own: read and checked in the background, added to the shelf, and what is said of each. */
final class OwnFluids extends VBox {
    private final PageContext context;
    private final BackgroundWork work;
    private final Consumer<String> coming;

    /**
     * @param coming hears the id of a fluid before it is there
     */
    OwnFluids(PageContext context, BackgroundWork work, Consumer<String> coming) {
        this.context = context;
        this.work = work;
        this.coming = coming;
        setId("fluids-own");
        getStyleClass().add("notices");
        setMinHeight(USE_PREF_SIZE);
        managedProperty().bind(visibleProperty());
        setVisible(false);
    }

    /** Reads these files; what was said of earlier ones is forgotten. */
    void open(List<Path> files) {
        clear();
        for (Path file : files) {
            work.request(
                    Urgency.FILES, (cancel, progress) -> FluidFile.read(file), this::read, why -> refused(file, why));
        }
    }

    private void read(FluidFile file) {
        String id = file.fluid().id();
        if (file.fluid().isValidationOnly()) {
            say("refused", WindowText.say("fluids.own.no-pump", shortName(Path.of(file.name()))), List.of());
            return;
        }
        boolean again = context.fluids().ownFile(id).isPresent();
        try {
            coming.accept(id);
            context.shelf().add(file);
        } catch (InputRefusedException taken) {
            refused(Path.of(file.name()), taken);
            return;
        }
        String key = again ? "fluids.own.again" : "fluids.own.added";
        say("tell", WindowText.say(key, id, file.name()), List.of(WindowText.say("fluids.own.command-line", id)));
    }

    private void refused(Path file, RuntimeException why) {
        List<String> faults = why instanceof InputRefusedException refusal
                ? refusal.faults().stream().map(Message::text).toList()
                : List.of(Answering.words(why));
        say("refused", WindowText.say("fluids.own.refused", shortName(file)), faults);
    }

    private void say(String kind, String title, List<String> lines) {
        VBox notice = new VBox();
        notice.getStyleClass().addAll("notice", kind);
        Label mark = new Label(WindowText.say("frame.notice." + kind));
        mark.getStyleClass().add("notice-mark");
        mark.setMinWidth(USE_PREF_SIZE);
        Label words = new Label(title);
        words.getStyleClass().add("notice-title");
        words.setWrapText(true);
        words.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(words, Priority.ALWAYS);
        Button let = new Button(WindowText.say("frame.notice.let-be"));
        let.getStyleClass().addAll("small", "flat");
        let.setMinWidth(USE_PREF_SIZE);
        let.setOnAction(event -> {
            getChildren().remove(notice);
            setVisible(!getChildren().isEmpty());
        });
        HBox row = new HBox(mark, words, let);
        row.setAlignment(Pos.CENTER_LEFT);
        row.getStyleClass().add("notice-row");
        notice.getChildren().add(row);
        if (!lines.isEmpty()) {
            notice.getChildren().add(lines(lines));
        }
        getChildren().add(notice);
        setVisible(true);
    }

    /** Every fault can be reached, even when there are many: then they scroll, with the keyboard too. */
    private static Region lines(List<String> texts) {
        VBox lines = new VBox();
        lines.getStyleClass().add("notice-lines");
        for (String text : texts) {
            Label line = new Label(text);
            line.setWrapText(true);
            lines.getChildren().add(line);
        }
        if (texts.size() == 1) {
            return lines;
        }
        ScrollPane scroll = new ScrollPane(lines);
        scroll.setFitToWidth(true);
        // As tall as the words are once they are wrapped; the style sheet says how tall at most.
        scroll.prefHeightProperty().bind(lines.heightProperty().add(2));
        scroll.setMinHeight(USE_PREF_SIZE);
        scroll.getStyleClass().addAll("edge-to-edge", "fluid-faults");
        scroll.setFocusTraversable(true);
        scroll.setAccessibleText(String.join(" ", texts));
        return scroll;
    }

    private static String shortName(Path file) {
        return file.getFileName() == null ? file.toString() : file.getFileName().toString();
    }

    private void clear() {
        getChildren().clear();
        setVisible(false);
    }
}
