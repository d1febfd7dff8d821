package boilwright.dashboard.run;

import boilwright.dashboard.model.RunTimeline;
import boilwright.dashboard.pages.PageContext;
import boilwright.dashboard.text.WindowText;
import boilwright.dashboard.work.Answering;
import boilwright.dashboard.work.BackgroundWork;
import boilwright.dashboard.work.BackgroundWork.Urgency;
import boilwright.dashboard.work.Latest;
import boilwright.dashboard.work.RigAnswer;
import boilwright.drill.DrillQuestion;
import boilwright.drill.DrillSet;
import boilwright.sequence.Clock;
import boilwright.sequence.PlanAnswer;
import boilwright.sequence.PlanQuestion;
import boilwright.sequence.PlanStep;
import boilwright.sequence.Variant;
import boilwright.thermal.Fault;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import javafx.beans.property.DoubleProperty;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;

/** The order of work with its proof, what faults do, and which interlocks would catch them. */
public final class RunPage extends ScrollPane {
    private final PageContext context;
    private final BackgroundWork work;
    private final Latest plans;
    private final ObservableValue<RunTimeline> timeline;
    private final DoubleProperty cursorS;

    private final ComboBox<Variant> variant = new ComboBox<>();
    private final Button sheet = new Button(WindowText.say("run.sheet"));
    private final Button companion = new Button(WindowText.say("run.companion"));
    private final Label verdict = new Label();
    private final PlanStrip strip = new PlanStrip();
    private final StepRows steps = new StepRows();
    private final VBox unproven = new VBox();
    private final RuleRows rules = new RuleRows();
    private final Label waiting = new Label(WindowText.say("run.drill.waits"));
    private final DrillView drills = new DrillView();
    private final InterlockGrid interlocks = new InterlockGrid();
    private final VBox faults;
    private RigAnswer wanted;
    private PlanAnswer plan;

    /**
     * A page that follows the answers while it is shown.
     *
     * @param work where plans and drills are worked out
     * @param timeline the time band's axis
     * @param cursorS its cursor, which goes to the step that is chosen
     * @param toSheet writes a plan as a sheet for the bench
     * @param toCompanion opens the companion of a plan
     */
    public RunPage(
            PageContext context,
            BackgroundWork work,
            ObservableValue<RunTimeline> timeline,
            DoubleProperty cursorS,
            Consumer<PlanAnswer> toSheet,
            Consumer<PlanAnswer> toCompanion) {
        this.context = context;
        this.work = work;
        this.timeline = timeline;
        this.cursorS = cursorS;
        plans = new Latest(work);
        getStyleClass().addAll("page", "run-page", "edge-to-edge");
        sheet.setId("run-sheet");
        sheet.setOnAction(event -> toSheet.accept(plan));
        companion.setId("run-companion");
        companion.setOnAction(event -> toCompanion.accept(plan));
        verdict.setId("run-verdict");
        verdict.setWrapText(true);
        verdict.getStyleClass().add("limiter");
        unproven.getStyleClass().add("plan-rules");
        strip.onChosen(this::choose);
        steps.onChosen(this::choose);
        waiting.setId("run-drill-waits");
        faults = new VBox(drills, title("run.interlocks"), interlocks);
        faults.getStyleClass().add("page-part");
        VBox all = new VBox(
                choices(),
                verdict,
                strip,
                steps,
                unproven,
                title("run.rules"),
                rules,
                title("run.drills"),
                waiting,
                faults);
        all.getStyleClass().add("page-content");
        for (Node node : all.getChildren()) {
            if (node instanceof Region region) {
                region.setMinHeight(USE_PREF_SIZE);
            }
        }
        for (Node node : List.of(waiting, faults, unproven)) {
            node.managedProperty().bind(node.visibleProperty());
        }
        faults.setVisible(false);
        setContent(all);
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        hold();
        context.answering().answerProperty().addListener((property, before, now) -> request());
        context.answering().computingProperty().addListener((property, before, now) -> request());
        sceneProperty().addListener((property, before, now) -> request());
    }

    private HBox choices() {
        variant.setId("run-variant");
        variant.getItems().setAll(Variant.values());
        variant.setValue(Variant.NORMAL);
        variant.setConverter(new StringConverter<>() {
            @Override
            public String toString(Variant one) {
                return one == null ? "" : WindowText.say("run.variant." + one.id());
            }

            @Override
            public Variant fromString(String words) {
                return null;
            }
        });
        variant.valueProperty().addListener((property, before, now) -> plan());
        Label name = new Label(WindowText.say("run.variant"));
        name.setLabelFor(variant);
        HBox row = new HBox(name, variant, sheet, companion);
        row.getStyleClass().add("run-row");
        return row;
    }

    private void request() {
        RigAnswer answer = context.answering().answerProperty().get();
        if (answer == null
                || getScene() == null
                || answer == wanted
                || context.answering().computingProperty().get()) {
            return;
        }
        boolean sameCheck = wanted != null && wanted.check() == answer.check();
        wanted = answer;
        if (sameCheck) {
            return;
        }
        plan();
        work.request(
                Urgency.AFTERWARDS,
                (cancel, progress) -> context.model()
                        .answer(
                                new DrillQuestion(
                                        answer.asked(),
                                        List.of(Fault.values()),
                                        OptionalDouble.empty(),
                                        DrillQuestion.LATE_S),
                                cancel,
                                progress),
                this::show,
                why -> {
                    wanted = null;
                    waiting.setText(Answering.words(why));
                    waiting.setVisible(true);
                });
    }

    private void plan() {
        if (wanted == null) {
            return;
        }
        RigAnswer answer = wanted;
        Variant now = variant.getValue();
        plans.request(
                (cancel, progress) -> context.model().answer(new PlanQuestion(answer.asked(), now), cancel, progress),
                this::show,
                words -> {
                    wanted = null;
                    verdict.setText(words);
                });
    }

    private void show(PlanAnswer now) {
        plan = now;
        verdict.setText(now.verdict());
        boolean there = now.plan().isPresent();
        strip.setVisible(there);
        strip.setManaged(there);
        steps.setVisible(there);
        steps.setManaged(there);
        now.plan().ifPresent(p -> {
            strip.show(p);
            steps.show(p);
        });
        unproven.getChildren()
                .setAll(now.unproven().stream().map(RunPage::unproven).toList());
        unproven.setVisible(!now.unproven().isEmpty());
        rules.show(now.findings());
        hold();
    }

    private static Label unproven(String sentence) {
        Label label = new Label(WindowText.say("run.unproven", sentence));
        label.setWrapText(true);
        label.setMinHeight(USE_PREF_SIZE);
        return label;
    }

    private void hold() {
        boolean none = plan == null || plan.plan().isEmpty();
        sheet.setDisable(none);
        companion.setDisable(none);
    }

    private void show(DrillSet set) {
        waiting.setVisible(false);
        faults.setVisible(true);
        drills.show(set);
        interlocks.show(set.interlocks());
    }

    /** Opens a step, marks it on the strip, and puts the time band's cursor where it comes. */
    private void choose(int step) {
        strip.select(step);
        steps.select(step);
        if (step >= 0 && timeline.getValue() != null) {
            moment(plan.plan().orElseThrow().steps().get(step)).ifPresent(cursorS::set);
        }
    }

    private OptionalDouble moment(PlanStep step) {
        RunTimeline axis = timeline.getValue();
        double at = step.moment().atS();
        if (step.moment().clock() == Clock.FROM_HOT) {
            return OptionalDouble.of(Math.min(axis.endS(), axis.cooldownStartS() + at));
        }
        return OptionalDouble.of(Math.max(0, Math.min(axis.restStartS(), at - plan.runStartsS())));
    }

    private static Label title(String key) {
        Label label = new Label(WindowText.say(key));
        label.getStyleClass().add("section-title");
        return label;
    }
}
