package boilwright.dashboard.vacuum;

import boilwright.answers.Fix;
import boilwright.answers.VacuumAnswer;
import boilwright.answers.VacuumStage;
import boilwright.answers.VacuumWords;
import boilwright.dashboard.pages.PageContext;
import boilwright.dashboard.text.WindowText;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;

/** What each single change would do to the gauge, the best first; a button makes it an edit of the rig. */
final class FixList extends GridPane {
    private final PageContext context;

    FixList(PageContext context) {
        this.context = context;
        setId("vacuum-fixes");
        getStyleClass().addAll("figures", "vacuum-fixes");
        ColumnConstraints titles = new ColumnConstraints();
        titles.setHgrow(Priority.ALWAYS);
        getColumnConstraints().setAll(titles, new ColumnConstraints(), new ColumnConstraints());
    }

    void show(VacuumAnswer answer) {
        getChildren().clear();
        if (answer.fixes().isEmpty()) {
            addRow(0, new Label(WindowText.say("vacuum.fix.none")));
        }
        int row = 0;
        int number = 0;
        for (VacuumStage stage : answer.stages()) {
            if (stage.step() == VacuumStage.Step.JETS_FULL) {
                // what keeps the jets from it comes before any change of the gas side; the verdict says what it is
                Label title = new Label(stage.step().title());
                title.setId("vacuum-jets-full");
                Label gauge = new Label(QuantityWriter.writeAuto(stage.gaugePa(), Dimension.PRESSURE));
                gauge.getStyleClass().add("figure");
                addRow(row++, title, gauge);
            }
        }
        for (Fix fix : answer.fixes()) {
            Label title = new Label(fix.title());
            title.setWrapText(true);
            Label gain = new Label(WindowText.say(
                    "vacuum.fix.gain",
                    QuantityWriter.writeAuto(fix.gaugePa(), Dimension.PRESSURE),
                    VacuumWords.factor(fix.factor())));
            gain.getStyleClass().add("figure");
            gain.setMinWidth(USE_PREF_SIZE);
            Button take = new Button(WindowText.say("vacuum.fix.take"));
            take.setId("vacuum-fix-" + number++);
            take.getStyleClass().addAll("small", "flat");
            take.setMinWidth(USE_PREF_SIZE);
            take.setAccessibleText(WindowText.say("vacuum.fix.take") + ", " + fix.title());
            take.setOnAction(event -> context.session().edit(fix.title(), rig -> fix.rig()));
            title.setLabelFor(take);
            addRow(row++, title, gain, take);
        }
    }
}
