package boilwright.dashboard.vacuum;

import boilwright.answers.VacuumAnswer;
import boilwright.answers.VacuumQuestion;
import boilwright.dashboard.chart.SeriesChart;
import boilwright.dashboard.pages.PageContext;
import boilwright.dashboard.parts.LedgerView;
import boilwright.dashboard.text.WindowText;
import boilwright.dashboard.work.Answering;
import boilwright.dashboard.work.BackgroundWork;
import boilwright.dashboard.work.BackgroundWork.Urgency;
import boilwright.dashboard.work.RigAnswer;
import boilwright.gasflow.Gas;
import boilwright.rig.TypicalValues;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** What the gauge should read, where the speed is lost and the gas comes from, and what would help. */
public final class VacuumPage extends ScrollPane {

    private final PageContext context;
    private final BackgroundWork work;
    /** The last answer about the gas; null until there is one. */
    private VacuumAnswer found;

    private final Label verdict = new Label();
    private final LineView line = new LineView();
    private final Label crossover = new Label();
    private final VBox cautions = new VBox();
    private final SourceBars sources = new SourceBars();
    private final FixList fixes;
    private final SeriesChart along = new SeriesChart();
    private final SeriesChart course = new SeriesChart();
    private final LedgerView ledger = new LedgerView();
    private final RiseView rise;
    private final NoChamber none;
    private final VBox answered;
    private RigAnswer wanted;

    /**
     * A page that follows the answers while it is shown.
     *
     * @param work where the question about the gas is answered
     * @param recordToOpen asks which record of a rise test to open
     */
    public VacuumPage(PageContext context, BackgroundWork work, Supplier<Optional<Path>> recordToOpen) {
        this.context = context;
        this.work = work;
        fixes = new FixList(context);
        none = new NoChamber(context);
        rise = new RiseView(context, work, recordToOpen);
        getStyleClass().addAll("page", "vacuum-page", "edge-to-edge");
        verdict.setId("vacuum-verdict");
        verdict.setWrapText(true);
        verdict.getStyleClass().add("limiter");
        crossover.setId("vacuum-crossover");
        crossover.setWrapText(true);
        cautions.getStyleClass().add("cautions");
        along.setId("vacuum-along");
        course.setId("vacuum-course");
        answered = new VBox(
                verdict,
                line,
                title("vacuum.sources"),
                sources,
                title("vacuum.fixes"),
                fixes,
                title("vacuum.crossover"),
                crossover,
                cautions,
                along,
                course,
                title("vacuum.margins"),
                ledger);
        answered.getStyleClass().add("page-part");
        VBox all = new VBox(none, answered, title("vacuum.rise"), rise);
        all.getStyleClass().add("page-content");
        for (Node node : answered.getChildren()) {
            if (node instanceof Region region && region != line && region != along && region != course) {
                region.setMinHeight(USE_PREF_SIZE);
            }
        }
        for (Region part : List.of(none, answered)) {
            part.managedProperty().bind(part.visibleProperty());
        }
        setContent(all);
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        context.answering().answerProperty().addListener((property, before, now) -> request());
        context.answering().computingProperty().addListener((property, before, now) -> request());
        sceneProperty().addListener((property, before, now) -> request());
        sort();
    }

    private void sort() {
        boolean chamber = context.session().rig().vacuum().isPresent();
        none.setVisible(!chamber);
        answered.setVisible(chamber && found != null);
    }

    private void request() {
        RigAnswer answer = context.answering().answerProperty().get();
        sort();
        if (answer == null
                || getScene() == null
                || answer == wanted
                || context.answering().computingProperty().get()
                || answer.check().rig().vacuum().isEmpty()) {
            return;
        }
        wanted = answer;
        work.request(
                Urgency.AFTERWARDS,
                (cancel, progress) -> context.model()
                        .answer(new VacuumQuestion(answer.asked(), Gas.AIR, TypicalValues.PUMPED_S), cancel, progress),
                this::show,
                why -> {
                    wanted = null;
                    verdict.setText(Answering.words(why));
                });
    }

    private void show(VacuumAnswer answer) {
        found = answer;
        sort();
        verdict.setText(answer.verdict());
        line.show(answer);
        sources.show(answer);
        fixes.show(answer);
        crossover.setText(answer.crossover());
        cautions.getChildren().clear();
        List<String> own = answer.cautions();
        own.subList(answer.check().cautions().size(), own.size()).forEach(sentence -> {
            Label label = new Label(WindowText.say("pages.caution", sentence));
            label.setWrapText(true);
            label.getStyleClass().add("caution");
            cautions.getChildren().add(label);
        });
        boolean hasLine = answer.end().junctionPa().size() > 1;
        along.setVisible(hasLine);
        along.setManaged(hasLine);
        if (hasLine) {
            along.setData(VacuumCharts.along(answer));
        }
        course.setData(VacuumCharts.course(answer));
        ledger.setMargins(answer.margins());
    }

    private static Label title(String key) {
        Label label = new Label(WindowText.say(key));
        label.getStyleClass().add("section-title");
        return label;
    }
}
