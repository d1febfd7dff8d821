package boilwright.dashboard.water;

import boilwright.answers.Cautions.Place;
import boilwright.answers.WaterAnswer;
import boilwright.answers.WaterQuestion;
import boilwright.dashboard.chart.ChartData;
import boilwright.dashboard.chart.SeriesChart;
import boilwright.dashboard.model.RunTimeline;
import boilwright.dashboard.pages.CautionList;
import boilwright.dashboard.pages.PageContext;
import boilwright.dashboard.pages.RunChartData;
import boilwright.dashboard.text.WindowText;
import boilwright.dashboard.work.Answering;
import boilwright.dashboard.work.BackgroundWork;
import boilwright.dashboard.work.BackgroundWork.Urgency;
import boilwright.dashboard.work.Latest;
import boilwright.dashboard.work.RigAnswer;
import boilwright.water.CircuitSolver;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.DoubleProperty;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Is the cooling enough: the circuit with its figures, pump and chiller, what else could be done, and what it would bring. */
public final class WaterPage extends ScrollPane {
    private static final int POINTS = 80;

    private final PageContext context;
    private final BackgroundWork work;
    private final ObservableValue<RunTimeline> timeline;
    private final Label verdict = new Label();
    private final CircuitView circuit = new CircuitView();
    private final CautionList cautions = new CautionList(Place.WATER);
    private final Tryout tryout;
    private final TryoutView tryoutView;
    private final OtherSupplyView other;
    private final SeriesChart pump = new SeriesChart();
    private final SeriesChart duty = new SeriesChart();
    private final ChartPair charts = new ChartPair(pump, duty);
    private final NeedsGrid needs = new NeedsGrid();

    /** The last good answer; null until there is one. */
    private WaterFound found;

    /**
     * A page that follows the answers while it is shown.
     *
     * @param work where the water's own questions are answered
     * @param timeline the axis of the last answer; null until there is one
     * @param cursorS where the time cursor stands, s
     */
    public WaterPage(
            PageContext context, BackgroundWork work, ObservableValue<RunTimeline> timeline, DoubleProperty cursorS) {
        this.context = context;
        this.timeline = timeline;
        this.work = work;
        tryout = new Tryout(context, new Latest(work));
        tryoutView = new TryoutView(tryout);
        other = new OtherSupplyView(new Latest(work));
        getStyleClass().addAll("page", "water-page", "edge-to-edge");
        verdict.setId("water-verdict");
        verdict.setWrapText(true);
        verdict.setMinHeight(USE_PREF_SIZE);
        verdict.getStyleClass().add("limiter");
        pump.setId("water-pump-chart");
        duty.setId("water-duty-chart");
        duty.cursorXProperty().bindBidirectional(cursorS);
        VBox all = new VBox(
                verdict,
                circuit,
                cautions,
                title("water.try"),
                tryoutView,
                charts,
                title("water.other"),
                other,
                title("water.needs"),
                needs);
        all.getStyleClass().add("page-content");
        for (Node node : all.getChildren()) {
            if (node instanceof Region region && region != circuit) {
                region.setMinHeight(USE_PREF_SIZE);
            }
        }
        setContent(all);
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        context.answering().answerProperty().addListener((property, before, now) -> request());
        context.answering().computingProperty().addListener((property, before, now) -> requestAgain(now));
        timeline.addListener((property, before, now) -> draw());
        sceneProperty().addListener((property, before, now) -> request());
    }

    /** Has the newest answer's water worked out, if anybody sees it; a newer rig stops that. */
    private void request() {
        RigAnswer answer = context.answering().answerProperty().get();
        if (answer == null || getScene() == null) {
            return;
        }
        cautions.show(answer);
        if (isOf(answer)) {
            verdict.setText(found.water().verdict());
            return;
        }
        work.request(
                Urgency.AFTERWARDS,
                (cancel, progress) -> new WaterFound(
                        context.model().answer(new WaterQuestion(answer.asked()), cancel, progress),
                        CircuitSolver.curves(answer.asked().rig(), POINTS)),
                this::show,
                why -> verdict.setText(Answering.words(why)));
    }

    /** Whether what is shown belongs to an answer. */
    private boolean isOf(RigAnswer answer) {
        return found != null && found.water().check().asked().equals(answer.asked());
    }

    /** A check stops the trials that wait; when it found nothing new they are asked once more. */
    private void requestAgain(boolean computing) {
        if (!computing && getScene() != null) {
            request();
            tryout.request();
            other.request();
        }
    }

    private void show(WaterFound now) {
        found = now;
        WaterAnswer water = found.water();
        verdict.setText(water.verdict());
        circuit.show(water, found.curves(), water.check().asked().fluid());
        tryoutView.begin(found);
        other.begin(found);
        needs.show(water);
        Optional<ChartData> curves = PumpChart.of(found.curves(), water.steady().flow());
        curves.ifPresent(pump::setData);
        charts.show(curves.isPresent(), water.steady().waterOutK().isPresent());
        draw();
    }

    private void draw() {
        RigAnswer answer = context.answering().answerProperty().get();
        // The timeline is the newest answer's: curves of an older one would not fit it.
        if (found == null || timeline.getValue() == null || answer == null || !isOf(answer)) {
            return;
        }
        RunChartData data = new RunChartData(timeline.getValue(), answer);
        WaterAnswer water = found.water();
        List<ChartData> offered = new ArrayList<>();
        offered.add(data.duty(water.pumpHeatW(), water.capacityW()));
        offered.add(data.water());
        data.chiller(water.pumpHeatW(), water.capacityW()).ifPresent(offered::add);
        duty.setData(offered);
    }

    private static Label title(String key) {
        Label label = new Label(WindowText.say(key));
        label.getStyleClass().add("section-title");
        return label;
    }
}
