package boilwright.dashboard.run;

import boilwright.dashboard.text.WindowText;
import boilwright.report.PlanTexts;
import boilwright.sequence.RuleFinding;
import boilwright.sequence.RuleFinding.Status;
import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.control.TitledPane;
import javafx.scene.layout.VBox;

/** Which rules a plan keeps, with what was found; breaches and what is not proven stand open. */
final class RuleRows extends VBox {
    private final VBox open = new VBox();
    private final VBox rest = new VBox();
    private final TitledPane kept = new TitledPane("", rest);

    RuleRows() {
        setId("run-rules");
        getStyleClass().add("plan-rules");
        open.getStyleClass().add("plan-rules");
        rest.getStyleClass().add("plan-rules");
        kept.setExpanded(false);
        kept.setAnimated(false);
        kept.setId("run-rules-kept");
        getChildren().addAll(open, kept);
    }

    void show(List<RuleFinding> findings) {
        open.getChildren().clear();
        rest.getChildren().clear();
        int keeps = 0;
        for (RuleFinding finding : findings) {
            boolean quiet = finding.status() == Status.KEPT || finding.status() == Status.NOT_ASKED;
            keeps += finding.status() == Status.KEPT ? 1 : 0;
            (quiet ? rest : open).getChildren().addAll(row(finding));
        }
        kept.setText(WindowText.say("run.rules.kept", Integer.toString(keeps), Integer.toString(findings.size())));
        kept.setVisible(!findings.isEmpty());
        kept.setManaged(!findings.isEmpty());
    }

    private static List<Label> row(RuleFinding finding) {
        Status status = finding.status();
        String mark = WindowText.say("run.rules.mark." + status.id());
        String found =
                status == Status.BROKEN ? finding.sentence() : finding.rule().sentence() + " " + finding.sentence();
        Label what = label(mark + " " + PlanTexts.status(finding) + ": " + found);
        what.getStyleClass().add("rule-" + status.id());
        Label basis = label(finding.rule().basis());
        basis.getStyleClass().add("basis");
        return List.of(what, basis);
    }

    private static Label label(String words) {
        Label label = new Label(words);
        label.setWrapText(true);
        label.setMinHeight(USE_PREF_SIZE);
        return label;
    }
}
