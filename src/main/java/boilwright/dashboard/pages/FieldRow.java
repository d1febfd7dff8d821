package boilwright.dashboard.pages;

import boilwright.dashboard.text.WindowText;
import boilwright.rig.Field;
import boilwright.rig.FieldCatalogue;
import boilwright.rig.FieldTexts;
import boilwright.rig.file.RigFields;
import java.util.function.UnaryOperator;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** One field of the form: its title, its control and, under it, what is wrong with what was entered last. */
public abstract class FieldRow extends VBox {
    private static final Object TAKEN = FieldRow.class;

    private final PageContext context;
    private final String path;
    private final Field field;
    private final Label title = new Label();
    private final Label message = new Label();
    private final Label mark = new Label(WindowText.say("pages.guess"));
    private final HBox line = new HBox(title);

    FieldRow(PageContext context, String path) {
        this.context = context;
        this.path = path;
        this.field = FieldCatalogue.find(path).orElseThrow();
        getStyleClass().add("field-row");
        setId(path);
        title.setText(FieldTexts.title(field));
        title.getStyleClass().add("field-title");
        title.setTooltip(new Tooltip(FieldTexts.explanation(field)));
        title.setWrapText(true);
        line.setAlignment(Pos.CENTER_LEFT);
        line.getStyleClass().add("field-line");
        mark.getStyleClass().add("guess");
        mark.setMinWidth(Region.USE_PREF_SIZE);
        mark.setTooltip(new Tooltip(WindowText.say("pages.guess.explanation")));
        message.getStyleClass().add("field-message");
        message.setWrapText(true);
        getChildren().add(line);
        say("");
    }

    /** Puts the control behind the title. */
    void put(Region control) {
        title.setLabelFor(control);
        control.setAccessibleText(FieldTexts.title(field));
        control.setAccessibleHelp(FieldTexts.explanation(field));
        HBox.setHgrow(control, Priority.ALWAYS);
        line.getChildren().add(control);
    }

    /** Leaves the title away, where what stands beside says what the field is; it is still read out. */
    void withoutTitle() {
        line.getChildren().remove(title);
    }

    /** Puts something small at the end of the line. */
    void append(Node node) {
        line.getChildren().add(node);
    }

    /** Shows what the rig has. */
    final void show(RigFields fields) {
        boolean guess = fields.isGuess(path);
        if (!guess) {
            line.getChildren().remove(mark);
        } else if (!line.getChildren().contains(mark)) {
            line.getChildren().add(mark);
        }
        showValue(fields);
    }

    /** Shows the value that the rig has. */
    abstract void showValue(RigFields fields);

    /** Puts the focus where this field is edited. */
    abstract void focusControl();

    /** Hands a change to the session and says under the field when it was refused. */
    boolean commit(UnaryOperator<RigFields> change) {
        boolean accepted = context.change(editName(), change);
        say(accepted ? "" : context.refusal());
        return accepted;
    }

    /** Says something under the field; nothing takes the place away. */
    void say(String words) {
        message.setText(words);
        if (words.isEmpty()) {
            getChildren().remove(message);
        } else if (!getChildren().contains(message)) {
            getChildren().add(message);
        }
    }

    /** Remembers what an input holds that the rig holds too: keys for undo are then the rig's, else the input's own. */
    static void taken(TextInputControl input, String text) {
        input.getProperties().put(TAKEN, text);
    }

    /** Whether something is typed into an input that the rig does not hold yet. */
    public static boolean isTyping(TextInputControl input) {
        Object taken = input.getProperties().get(TAKEN);
        return taken == null || !taken.equals(input.getText());
    }

    /** What an edit of this field is called. */
    String editName() {
        return FieldTexts.title(field);
    }

    String path() {
        return path;
    }

    Field field() {
        return field;
    }

    PageContext context() {
        return context;
    }
}
