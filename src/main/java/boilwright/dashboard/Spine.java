package boilwright.dashboard;

import boilwright.dashboard.parts.OnOffSwitch;
import boilwright.dashboard.session.Remembered;
import boilwright.dashboard.session.RigSession;
import boilwright.dashboard.text.WindowText;
import boilwright.rig.file.RigReader;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Label;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The spine of the notebook at the left: which rig this is, its file menu, the pages, the way back, and the theme. */
final class Spine extends VBox {
    private final Map<PageName, ToggleButton> pages = new EnumMap<>(PageName.class);
    private final ToggleGroup group = new ToggleGroup();
    private final MenuButton file = new MenuButton(WindowText.say("frame.spine.file"));
    private final Menu recent = new Menu(WindowText.say("frame.spine.recent"));
    private final OnOffSwitch dark = new OnOffSwitch(Action.THEME.title());
    private final Consumer<Action> act;
    private final Remembered remembered;
    private final Desk desk;
    private Theme shown = Theme.LIGHT;

    Spine(RigSession session, Desk desk, Remembered remembered, Consumer<Action> act) {
        this.act = act;
        this.remembered = remembered;
        this.desk = desk;
        getStyleClass().add("spine");
        Label name = new Label();
        name.getStyleClass().add("rig-name");
        name.setWrapText(true);
        name.textProperty().bind(session.rigProperty().map(rig -> rig.name()));
        fileMenu();
        VBox list = new VBox();
        list.getStyleClass().add("page-list");
        for (PageName page : PageName.values()) {
            list.getChildren().add(pageButton(page));
        }
        Region room = new Region();
        VBox.setVgrow(room, Priority.ALWAYS);
        Button undo = button(Action.UNDO);
        undo.disableProperty().bind(session.undoNameProperty().isEmpty());
        undo.getTooltip()
                .textProperty()
                .bind(session.undoNameProperty().map(edit -> tip(Action.UNDO, "frame.spine.undo", edit)));
        Button redo = button(Action.REDO);
        redo.disableProperty().bind(session.redoNameProperty().isEmpty());
        redo.getTooltip()
                .textProperty()
                .bind(session.redoNameProperty().map(edit -> tip(Action.REDO, "frame.spine.redo", edit)));
        setUpDark();
        HBox steps = new HBox(undo, redo);
        steps.getStyleClass().add("steps");
        getChildren().addAll(name, file, list, room, steps, dark);
    }

    private void setUpDark() {
        dark.setId("action-theme");
        dark.setTooltip(tooltip(Action.THEME));
        dark.setAccessibleHelp(Action.THEME.explanation());
        dark.selectedProperty().addListener((property, before, now) -> {
            if (now != (shown == Theme.DARK)) {
                act.accept(Action.THEME);
            }
        });
    }

    /** Shows which theme the window has. */
    void show(Theme theme) {
        shown = theme;
        dark.setSelected(theme == Theme.DARK);
    }

    /** Shows which page is there. */
    void select(PageName page) {
        group.selectToggle(pages.get(page));
    }

    /** Puts the focus on the page that is shown. */
    void focusPage(PageName page) {
        pages.get(page).requestFocus();
    }

    private ToggleButton pageButton(PageName page) {
        Action action = page.action();
        ToggleButton button = new ToggleButton(page.title());
        button.setToggleGroup(group);
        pages.put(page, button);
        button.setId("page-" + page.id());
        button.setOnAction(event -> {
            button.setSelected(true);
            act.accept(action);
        });
        return dress(button, action);
    }

    private Button button(Action action) {
        Button button = new Button(action.title());
        button.setId("action-" + action.name().toLowerCase(Locale.ROOT));
        button.setOnAction(event -> act.accept(action));
        return dress(button, action);
    }

    private static <B extends ButtonBase> B dress(B button, Action action) {
        button.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(button, Priority.ALWAYS);
        button.setTooltip(tooltip(action));
        button.setAccessibleHelp(action.explanation());
        return button;
    }

    private static Tooltip tooltip(Action action) {
        return new Tooltip(action.explanation() + " (" + action.keys().getDisplayText() + ")");
    }

    private void fileMenu() {
        file.setId("file-menu");
        file.setMaxWidth(Double.MAX_VALUE);
        file.setAccessibleHelp(WindowText.say("frame.spine.file-help"));
        Menu demos = new Menu(WindowText.say("frame.spine.demos"));
        for (String demo : RigReader.demoNames()) {
            MenuItem item = new MenuItem(demo);
            item.setOnAction(event -> desk.openDemo(demo));
            demos.getItems().add(item);
        }
        file.getItems()
                .addAll(
                        item(Action.NEW),
                        item(Action.OPEN),
                        recent,
                        demos,
                        new SeparatorMenuItem(),
                        item(Action.SAVE),
                        item(Action.SAVE_AS),
                        item(Action.EXPORT),
                        new SeparatorMenuItem(),
                        item(Action.CLOSE));
        file.setOnShowing(event -> fillRecent());
    }

    private void fillRecent() {
        recent.getItems().clear();
        for (Path path : remembered.recentFiles()) {
            MenuItem item = new MenuItem(path.toString());
            item.setMnemonicParsing(false);
            item.setOnAction(event -> desk.open(path));
            recent.getItems().add(item);
        }
        recent.setDisable(recent.getItems().isEmpty());
    }

    private MenuItem item(Action action) {
        MenuItem item = new MenuItem(action.title() + "   " + action.keys().getDisplayText());
        item.setOnAction(event -> act.accept(action));
        return item;
    }

    private static String tip(Action action, String key, String edit) {
        return edit.isEmpty()
                ? action.explanation()
                : WindowText.say(key, edit) + " (" + action.keys().getDisplayText() + ")";
    }
}
