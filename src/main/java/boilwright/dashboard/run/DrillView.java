package boilwright.dashboard.run;

import boilwright.answers.Say;
import boilwright.dashboard.chart.SeriesChart;
import boilwright.dashboard.parts.ChoiceBoxes;
import boilwright.dashboard.text.WindowText;
import boilwright.drill.DrillAnswer;
import boilwright.drill.DrillSet;
import boilwright.drill.DrillSet.NotPlayed;
import boilwright.thermal.DrillRun.LimitTime;
import boilwright.thermal.Fault;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The faults of a rig: all of them in a table, and the chosen one with what to do and its curves. */
final class DrillView extends VBox {
    /** How long after the failure something counts as at once, s. */
    private static final double AT_ONCE_S = 1;

    private final Label verdict = label("");
    private final GridPane table = new GridPane();
    private final ComboBox<Fault> chooser = ChoiceBoxes.searched(DrillAnswer::title);
    private final Label sentence = label("");
    private final VBox advice = new VBox();
    private final SeriesChart temperatures = new SeriesChart();
    private final SeriesChart foreline = new SeriesChart();
    /** All but the verdict: there is nothing of it where no fault was played. */
    private final List<Node> details;

    private DrillSet set;
    private Fault chosen;
    private boolean filling;

    DrillView() {
        setId("run-drills");
        getStyleClass().add("drill-view");
        verdict.setId("run-drills-verdict");
        sentence.setId("run-drill-sentence");
        sentence.getStyleClass().add("limiter");
        advice.getStyleClass().add("drill-advice");
        temperatures.setId("run-drill-temperatures");
        foreline.setId("run-drill-foreline");
        table.getStyleClass().addAll("figures", "drill-table");
        ColumnConstraints first = new ColumnConstraints();
        first.setHgrow(Priority.ALWAYS);
        table.getColumnConstraints().setAll(first);
        chooser.setId("run-drill-chooser");
        ChoiceBoxes.onChosen(chooser, this::choose);
        Label name = new Label(WindowText.say("run.drill.choose"));
        name.setLabelFor(chooser);
        HBox choice = new HBox(name, chooser);
        choice.getStyleClass().add("run-row");
        details = List.of(table, choice, sentence, advice, temperatures, foreline);
        getChildren().add(verdict);
        getChildren().addAll(details);
    }

    /** Shows another set; the fault that was chosen stays chosen where the rig can still have it. */
    void show(DrillSet drills) {
        set = drills;
        verdict.setText(drills.verdict());
        boolean played = !drills.isWithheld();
        for (Node detail : details) {
            detail.setVisible(played);
            detail.setManaged(played);
        }
        if (!played) {
            return;
        }
        fillTable();
        List<Fault> faults = drills.played().stream().map(DrillAnswer::fault).toList();
        Fault now = faults.contains(chosen) ? chosen : faults.get(0);
        filling = true;
        ChoiceBoxes.offer(chooser, faults, now);
        filling = false;
        choose(now);
    }

    private void fillTable() {
        table.getChildren().clear();
        int row = 0;
        table.addRow(
                row++,
                head("run.drill.fault"),
                head("run.drill.harm"),
                head("run.drill.jet"),
                head("run.drill.itself"),
                head("run.drill.within"));
        for (DrillAnswer drill : set.played()) {
            Button name = new Button(DrillAnswer.title(drill.fault()));
            name.setId("run-drill-" + drill.fault().id());
            name.getStyleClass().addAll("flat", "drill-name");
            name.setOnAction(event -> chooser.setValue(drill.fault()));
            table.addRow(
                    row++,
                    name,
                    figure(harm(drill)),
                    figure(time(drill.heatOn().firstJetLostS())),
                    figure(
                            drill.heatEnds()
                                    ? WindowText.say("run.drill.ends")
                                    : time(drill.byItself()
                                            .map(r -> r.heatCutAfterS())
                                            .orElse(OptionalDouble.empty()))),
                    figure(within(drill)));
        }
        for (NotPlayed other : set.notPlayed()) {
            Label why = label(other.reason());
            why.getStyleClass().add("basis");
            Label name = new Label(DrillAnswer.title(other.fault()));
            name.getStyleClass().add("drill-name");
            table.addRow(row, name, why);
            GridPane.setColumnSpan(why, 4);
            row++;
        }
    }

    private static String harm(DrillAnswer drill) {
        Optional<LimitTime> harm = DrillAnswer.firstHarm(drill.heatOn());
        return harm.map(l -> DrillAnswer.title(l.limit()) + ", " + time(l.passedS()))
                .orElse(WindowText.say("run.drill.nothing"));
    }

    private static String within(DrillAnswer drill) {
        if (drill.heatEnds()) {
            return "-";
        }
        if (drill.longestTripDelayS().isPresent()) {
            return time(drill.longestTripDelayS());
        }
        return WindowText.say(drill.notKept().isEmpty() ? "run.drill.any-time" : "run.drill.no-cut");
    }

    private static String time(OptionalDouble seconds) {
        if (seconds.isEmpty()) {
            return WindowText.say("run.drill.never");
        }
        double s = seconds.getAsDouble();
        return s < AT_ONCE_S ? WindowText.say("run.drill.at-once") : Say.time(s);
    }

    /** Closed without a choice, the list shows the fault again that stands below it. */
    private void choose(Fault fault) {
        if (filling) {
            return;
        }
        if (fault == null) {
            chooser.setValue(chosen);
        } else if (set != null) {
            chosen = fault;
            set.played().stream().filter(d -> d.fault() == fault).findFirst().ifPresent(this::show);
        }
    }

    private void show(DrillAnswer drill) {
        sentence.setText(drill.verdict());
        advice.getChildren().clear();
        drill.acts().forEach(s -> advice.getChildren().add(label(WindowText.say("run.drill.acts", s))));
        drill.thereIsSentence().ifPresent(s -> advice.getChildren().add(label(WindowText.say("run.drill.acts", s))));
        drill.batterySentence().ifPresent(s -> advice.getChildren().add(label(WindowText.say("run.drill.acts", s))));
        int step = 1;
        for (String first : drill.first()) {
            Label line = label(WindowText.say("run.drill.do", Integer.toString(step++), first));
            line.getStyleClass().add("drill-do");
            advice.getChildren().add(line);
        }
        drill.cautions().stream()
                .filter(c -> !drill.check().cautions().contains(c))
                .forEach(c -> {
                    Label caution = label(WindowText.say("pages.caution", c));
                    caution.getStyleClass().add("caution");
                    advice.getChildren().add(caution);
                });
        var charts = new DrillCharts(drill).list();
        temperatures.setData(charts.get(0));
        boolean followed = charts.size() > 1;
        show(foreline, followed);
        if (followed) {
            foreline.setData(charts.get(1));
        }
    }

    private static void show(Node node, boolean shown) {
        node.setVisible(shown);
        node.setManaged(shown);
    }

    private static Label head(String key) {
        Label label = new Label(WindowText.say(key));
        label.getStyleClass().add("figure-name");
        return label;
    }

    private static Label figure(String words) {
        Label label = new Label(words);
        label.getStyleClass().add("figure");
        label.setWrapText(true);
        return label;
    }

    private static Label label(String words) {
        Label label = new Label(words);
        label.setWrapText(true);
        label.setMinHeight(USE_PREF_SIZE);
        return label;
    }
}
