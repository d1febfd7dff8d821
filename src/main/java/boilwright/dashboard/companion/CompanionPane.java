package boilwright.dashboard.companion;

import boilwright.companion.Companion;
import boilwright.companion.Outcome;
import boilwright.companion.RunView;
import boilwright.companion.Sight;
import boilwright.dashboard.parts.OnOffSwitch;
import boilwright.dashboard.text.WindowText;
import boilwright.sequence.Clock;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import java.util.function.Supplier;
import javafx.beans.binding.Bindings;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ComboBoxBase;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The companion's inside: the clock, the step of now, readings, what was computed against what came, and what calls. */
final class CompanionPane extends BorderPane {
    /** Height of a window for each px of the plain type. */
    private static final double HEIGHT_FOR_TYPE = 48;

    private static final double LEAST_TYPE = 13;
    private static final double LARGEST_TYPE = 26;

    private final Companion run;
    private final InstantSource now;
    private final ZoneId zone;
    private final AheadBox ahead = new AheadBox();
    private final NowBox step = new NowBox();
    private final RunTable table = new RunTable();
    private final Label outcome = Says.label("companion-message");
    private final Label logLine = new Label();
    private final OnOffSwitch sound = new OnOffSwitch(WindowText.say("companion.sound"));
    private final Label silent = new Label();
    private final Button tick = button("tick", this::tick);
    private final Button firstJet = button("first-jet", () -> see(Sight.FIRST_JET));
    private final Button topJet = button("top-jet", () -> see(Sight.TOP_JET));
    private final Button full = button("full", () -> see(Sight.FULL));
    private final Button stop = button("stop", () -> tell(this.run().start(Clock.FROM_HOT)));
    private final Button back = button("back", () -> tell(this.run().takeBack()));
    private final Button end = button("end", this::end);
    private final Button elsewhere = button("elsewhere", () -> {});
    private final CallBar alarm = new CallBar("companion-alarm", "!", button("acknowledge", this::acknowledge));
    private final CallBar trouble = new CallBar("companion-trouble", "x", elsewhere);
    private final VBox bars = new VBox(trouble, alarm);
    private final TextField note = new TextField();
    private final ReadingRow readings;
    private RunView view;
    /** The step that was warned of: doing it once more does it all the same. */
    private int warned;

    private boolean endAsked;
    private boolean held;

    CompanionPane(Companion run, InstantSource now, ZoneId zone) {
        this.run = run;
        this.now = now;
        this.zone = zone;
        readings = new ReadingRow(
                (kind, text, allTheSame) -> {
                    forget();
                    Outcome read = run.read(kind, text, allTheSame);
                    refresh();
                    return read;
                },
                tick::requestFocus);
        setId("companion");
        getStyleClass().addAll("frame", "companion");
        getStylesheets()
                .add(Objects.requireNonNull(CompanionPane.class.getResource("/boilwright/css/companion.css"))
                        .toString());
        sound.setSelected(true);
        sound.setId("companion-sound");
        outcome.setId("companion-outcome");
        tick.getStyleClass().add("accent");
        note.setId("companion-note");
        note.setPromptText(WindowText.say("companion.note.prompt"));
        note.setAccessibleText(WindowText.say("companion.note"));
        note.setOnAction(event -> note());
        silent.setId("companion-silent");
        logLine.setId("companion-log");
        Says.show(outcome, "");
        Says.show(silent, "");
        bars.getStyleClass().add("companion-bars");
        setTop(new VBox(bars, ahead));
        setCenter(middle());
        setBottom(foot());
        addEventFilter(KeyEvent.KEY_PRESSED, this::keys);
        sceneProperty().addListener((property, before, scene) -> {
            if (scene != null) {
                styleProperty()
                        .bind(Bindings.createStringBinding(
                                () -> "-fx-font-size: " + typeSize(scene.getHeight()) + "px;", scene.heightProperty()));
            }
        });
        refresh();
    }

    private Companion run() {
        return run;
    }

    private static double typeSize(double height) {
        return Math.rint(2 * Math.min(LARGEST_TYPE, Math.max(LEAST_TYPE, height / HEIGHT_FOR_TYPE))) / 2;
    }

    private static Button button(String name, Runnable action) {
        Button button = new Button(WindowText.say("companion.do." + name));
        button.setId("companion-" + name);
        button.setOnAction(event -> action.run());
        button.setMnemonicParsing(false);
        return button;
    }

    private Node middle() {
        FlowPane sights = new FlowPane(tick, topJet, firstJet, full, back, stop);
        sights.getStyleClass().add("companion-buttons");
        // below what scrolls: the keys' buttons keep their place whatever the step has to say
        ScrollPane stepScroll = scrolled(step);
        VBox.setVgrow(stepScroll, Priority.ALWAYS);
        VBox left = new VBox(stepScroll, outcome, sights);
        left.getStyleClass().add("companion-left");
        Label title = Says.label("companion-head");
        title.setText(WindowText.say("companion.readings"));
        ScrollPane lines = scrolled(table);
        VBox.setVgrow(lines, Priority.ALWAYS);
        VBox right = new VBox(title, readings, note, lines);
        right.getStyleClass().add("companion-right");
        right.setMinWidth(Region.USE_PREF_SIZE);
        HBox.setHgrow(left, Priority.ALWAYS);
        return new HBox(left, right);
    }

    private static ScrollPane scrolled(Region inside) {
        ScrollPane scroll = new ScrollPane(inside);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setFocusTraversable(false);
        return scroll;
    }

    private Node foot() {
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        end.setMinWidth(Region.USE_PREF_SIZE);
        HBox foot = new HBox(logLine, gap, silent, sound, end);
        foot.getStyleClass().add("companion-foot");
        return foot;
    }

    /** Shows the run as it is at this moment. */
    void refresh() {
        RunView before = view;
        view = run.look();
        ahead.show(view, now.instant(), zone);
        // every second but a few only time has passed: then nothing else is worded and laid out anew
        if (before == null || !view.isLike(before)) {
            showAll();
        }
    }

    private void showAll() {
        step.show(view);
        table.show(view);
        alarm.say(view.alarms().stream()
                .filter(a -> !a.acknowledged())
                .map(RunView.AlarmView::sentence)
                .toList());
        String next = "companion.do.tick";
        if (view.clock().isEmpty()) {
            next = startsClock() ? "companion.do.start" : next;
        } else if (startsClock()) {
            next = "companion.do.begin-stop";
        }
        tick.setText(WindowText.say(next));
        boolean nothingLeft = view.ended() || view.current().isEmpty();
        tick.setDisable(nothingLeft);
        boolean stopping = view.clock().filter(c -> c == Clock.FROM_HOT).isPresent();
        for (Button button : List.of(firstJet, topJet, full, stop)) {
            button.setDisable(view.ended() || stopping);
        }
        back.setDisable(view.ended());
        end.setDisable(view.ended());
    }

    /** Whether the step of now waits for its clock. */
    private boolean startsClock() {
        return view.current()
                .filter(now -> switch (now.step().action()) {
                    case FILL, AIR_ROOM -> false;
                    default ->
                        !view.clock()
                                .equals(java.util.Optional.of(
                                        now.step().moment().clock()));
                })
                .isPresent();
    }

    boolean calls() {
        return alarm.isCalling();
    }

    boolean wantsSound() {
        return sound.isSelected();
    }

    /** Why nothing can be heard; empty when it can. */
    void silent(String why) {
        Says.show(silent, why.isEmpty() ? "" : WindowText.say("companion.sound.silent", why));
    }

    /** How the log stands, and what stands against it. */
    void log(LogKeeper.Standing standing) {
        logLine.setText(standing.file()
                .map(file -> WindowText.say(
                        "companion.log", file.getFileName().toString(), Integer.toString(standing.lines())))
                .orElseGet(() -> WindowText.say("companion.log.none")));
        // the name is enough at a glance; where it lies is asked for with the mouse
        logLine.setTooltip(standing.file()
                .map(file -> new Tooltip(file.toAbsolutePath().toString()))
                .orElse(null));
        trouble.say(standing.trouble().map(t -> t.message().text()).stream().toList());
    }

    /** What happens when somebody wants the log elsewhere. */
    void onElsewhere(Runnable ask) {
        elsewhere.setOnAction(event -> ask.run());
    }

    /** Another bar above all. */
    void addBar(CallBar bar) {
        bars.getChildren().add(0, bar);
    }

    /** Says something that no button was pressed for. */
    void tell(Outcome what) {
        Says.show(outcome, Marks.marked(what));
        refresh();
    }

    private void forget() {
        warned = 0;
        endAsked = false;
    }

    private void tick() {
        int number = view.current().map(RunView.StepView::number).orElse(0);
        boolean allTheSame = number > 0 && warned == number;
        forget();
        Outcome done = run.tickNext(allTheSame);
        warned = done.kind() == Outcome.Kind.WARNED ? number : 0;
        tell(done);
    }

    private void see(Sight sight) {
        act(() -> run.see(sight));
    }

    private void note() {
        Outcome noted = run.note(note.getText());
        if (noted.isDone()) {
            note.clear();
            tick.requestFocus();
        }
        act(() -> noted);
    }

    private void acknowledge() {
        act(run::acknowledge);
        tick.requestFocus();
    }

    private void act(Supplier<Outcome> what) {
        forget();
        tell(what.get());
    }

    /** Ends the run when it is asked for twice: nothing can be entered after it. */
    private void end() {
        if (endAsked || view.current().isEmpty()) {
            act(run::end);
        } else {
            forget();
            endAsked = true;
            Says.show(outcome, "^  " + WindowText.say("companion.end-asked"));
        }
    }

    /** Lets nothing be entered until a question above was answered. */
    void hold(boolean until) {
        held = until;
        getCenter().setDisable(until);
        getBottom().setDisable(until);
    }

    private void keys(KeyEvent event) {
        Node owner = getScene().getFocusOwner();
        if (held) {
            if (event.getCode() == KeyCode.ENTER && owner instanceof Button asked) {
                asked.fire();
                event.consume();
            }
            return;
        }
        boolean typing = owner instanceof TextInputControl || owner instanceof ComboBoxBase;
        if (typing && event.getCode() == KeyCode.ESCAPE) {
            tick.requestFocus();
            event.consume();
            return;
        }
        if (typing && !event.isShortcutDown()) {
            return;
        }
        if (event.isAltDown() || event.isMetaDown()) {
            return;
        }
        Button pressed = switch (event.getCode()) {
            case SPACE, ENTER -> forButton(owner, event);
            case T -> topJet;
            case F -> firstJet;
            case J -> full;
            case S -> stop;
            case BACK_SPACE -> typing ? null : back;
            default -> null;
        };
        if (pressed != null) {
            pressed.fire();
            event.consume();
        } else if (event.getCode() == KeyCode.A && !typing && calls()) {
            acknowledge();
            event.consume();
        } else if (event.getCode() == KeyCode.R) {
            readings.begin();
            event.consume();
        } else if (event.getCode() == KeyCode.N) {
            note.requestFocus();
            event.consume();
        } else if (event.getCode() == KeyCode.M && !typing) {
            sound.setSelected(!sound.isSelected());
            event.consume();
        }
    }

    /** The button that a press of space or enter is meant for: the one with the focus, or the step's. */
    private Button forButton(Node owner, KeyEvent event) {
        if (owner instanceof Button button) {
            return button;
        }
        boolean other = (owner instanceof ButtonBase || owner == sound) && event.getCode() == KeyCode.SPACE;
        return other ? null : tick;
    }

    /** Puts the focus where the next key does the next step. */
    void begin() {
        tick.requestFocus();
    }
}
