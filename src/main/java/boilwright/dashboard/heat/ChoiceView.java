package boilwright.dashboard.heat;

import boilwright.answers.Asked;
import boilwright.answers.MarginId;
import boilwright.choice.CompareAnswer;
import boilwright.choice.CompareQuestion;
import boilwright.choice.SizeAnswer;
import boilwright.choice.SizeQuestion;
import boilwright.choice.SourceRow;
import boilwright.dashboard.chart.SeriesChart;
import boilwright.dashboard.pages.PageContext;
import boilwright.dashboard.text.WindowText;
import boilwright.dashboard.work.Answering;
import boilwright.dashboard.work.BackgroundWork;
import boilwright.dashboard.work.BackgroundWork.Urgency;
import boilwright.dashboard.work.RigAnswer;
import boilwright.rig.file.SourceLibrary;
import boilwright.spread.Advice;
import boilwright.spread.Bands.MarginBand;
import boilwright.spread.SpreadAnswer;
import boilwright.spread.SpreadPlan;
import boilwright.spread.SpreadQuestion;
import boilwright.spread.SpreadScope;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/**
 * Sources side by side for the rig, what each delivers, the powers that work, and how sure that is. Everything is worked out in the
 * background after the check, only while somebody looks; a newer rig stops it.
 */
public final class ChoiceView extends VBox {
    /** As many as the ranking of inputs asks for. */
    private static final int SAMPLES = 128;

    private final PageContext context;
    private final BackgroundWork work;
    private final Label powers = words("heat-powers");
    private final PowerStrip strip = new PowerStrip();
    private final Label verdict = words("heat-verdict");
    private final SourceTable table = new SourceTable();
    private final Label sentence = words("heat-sentence");
    private final SeriesChart chart = new SeriesChart();
    private final Label first = words("heat-measure-first");
    private final Map<String, MarginBand> bands = new HashMap<>();
    private ChoiceFound found;
    private RigAnswer wanted;

    /**
     * A part of the Heat page that follows the answers while it is shown.
     *
     * @param work where its questions are answered
     */
    public ChoiceView(PageContext context, BackgroundWork work) {
        this.context = context;
        this.work = work;
        setId("heat-choice");
        getStyleClass().add("heat-choice");
        chart.setId("source-chart");
        getChildren()
                .addAll(
                        title("heat.powers"),
                        strip,
                        powers,
                        title("heat.compare"),
                        verdict,
                        table,
                        sentence,
                        chart,
                        title("heat.first"),
                        first);
        first.setText(WindowText.say("heat.first.waits"));
        table.getSelectionModel().selectedItemProperty().addListener((property, before, now) -> look(now));
        context.answering().answerProperty().addListener((property, before, now) -> request());
        context.answering().computingProperty().addListener((property, before, now) -> request());
        sceneProperty().addListener((property, before, now) -> request());
    }

    private void request() {
        RigAnswer answer = context.answering().answerProperty().get();
        if (answer == null
                || getScene() == null
                || answer == wanted
                || context.answering().computingProperty().get()) {
            return;
        }
        wanted = answer;
        work.request(
                Urgency.AFTERWARDS,
                (cancel, progress) -> new ChoiceFound(
                        context.model().answer(compare(answer.asked()), cancel, progress),
                        context.model()
                                .answer(new SizeQuestion(answer.asked(), SizeQuestion.USUAL_MARGIN), cancel, progress)),
                this::show,
                why -> {
                    wanted = null;
                    verdict.setText(Answering.words(why));
                });
    }

    private static CompareQuestion compare(Asked asked) {
        return new CompareQuestion(asked, SourceLibrary.builtIn().sources(), CompareQuestion.RoomAir.USUAL, 1);
    }

    private void show(ChoiceFound now) {
        found = now;
        bands.clear();
        strip.show(now.sized().window());
        powers.setText(now.sized().window().sentence());
        verdict.setText(now.compared().verdict());
        table.show(now.compared());
        first.setText(WindowText.say("heat.first.waits"));
        spread(now.compared().rows().iterator());
    }

    private void look(SourceRow row) {
        if (row == null || found == null) {
            return;
        }
        String condition = row.condition().isEmpty() ? "" : " " + row.condition();
        sentence.setText(row.title() + ": " + row.verdict() + condition);
        chart.setData(SourceChart.of(found.compared(), row, Optional.ofNullable(bands.get(row.id()))));
    }

    /** One source after the other, the present one first, as long as nothing newer is asked. */
    private void spread(Iterator<SourceRow> rows) {
        if (!rows.hasNext()) {
            return;
        }
        ChoiceFound asked = found;
        SourceRow row = rows.next();
        work.request(
                Urgency.AFTERWARDS,
                (cancel, progress) -> context.model()
                        .answer(
                                new SpreadQuestion(
                                        row.check().asked(),
                                        new SpreadPlan(SAMPLES, 1, 1, SpreadScope.REST, List.of())),
                                cancel,
                                progress),
                answer -> {
                    if (asked == found) {
                        take(row, answer);
                        spread(rows);
                    }
                },
                why -> {
                    if (asked == found) {
                        spread(rows);
                    }
                });
    }

    private void take(SourceRow row, SpreadAnswer answer) {
        answer.bands().margin(MarginId.HEAT).ifPresent(band -> {
            bands.put(row.id(), band);
            table.spread(row.id(), band);
        });
        if (row.id().equals(CompareQuestion.PRESENT)) {
            List<String> sentences =
                    answer.advice().stream().map(Advice::sentence).distinct().toList();
            first.setText(sentences.isEmpty() ? WindowText.say("heat.first.nothing") : String.join("\n", sentences));
        }
        SourceRow chosen = table.getSelectionModel().getSelectedItem();
        if (chosen != null && chosen.id().equals(row.id())) {
            look(chosen);
        }
    }

    private static Label title(String key) {
        Label label = new Label(WindowText.say(key));
        label.getStyleClass().add("section-title");
        return label;
    }

    private static Label words(String id) {
        Label label = new Label();
        label.setId(id);
        label.setWrapText(true);
        label.setMinHeight(USE_PREF_SIZE);
        return label;
    }

    /**
     * What is shown of one rig.
     *
     * @param compared heat sources side by side
     * @param sized how much of the present one is enough
     */
    private record ChoiceFound(CompareAnswer compared, SizeAnswer sized) {}
}
