package boilwright.dashboard.pages;

import boilwright.answers.Cautions.Place;
import boilwright.answers.CheckAnswer;
import boilwright.answers.Margin;
import boilwright.answers.MarginId;
import boilwright.dashboard.chart.SeriesChart;
import boilwright.dashboard.model.RunTimeline;
import boilwright.dashboard.text.WindowText;
import boilwright.dashboard.work.RigAnswer;
import boilwright.rig.Rig;
import boilwright.rig.Schedule;
import boilwright.thermal.SteadyState;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.beans.property.DoubleProperty;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;

/** Is the heat enough: what is needed against what reaches the boiler, where the watts go, and what holds them back. */
public final class HeatPage extends ScrollPane {
    /** Share of its power from which what a thermostat holds back is shown. */
    private static final double WORTH_A_BAR = 0.01;

    private final WattBars need = new WattBars();
    private final WattBars flow = new WattBars();
    private final FigureGrid figures = new FigureGrid();
    private final Label limiter = text("limiter");
    private final Label basis = text("basis");
    private final SeriesChart chart = new SeriesChart();
    private final CautionList cautions = new CautionList(Place.HEAT);

    /**
     * A page that follows the answers.
     *
     * @param timeline the axis of the last answer; null until there is one
     * @param cursorS where the time cursor stands, s
     * @param choice the choice of a heat source, which ends the page
     */
    public HeatPage(PageContext context, ObservableValue<RunTimeline> timeline, DoubleProperty cursorS, Node choice) {
        getStyleClass().addAll("page", "heat-page", "edge-to-edge");
        VBox all = new VBox(
                title("pages.heat.need"),
                need,
                limiter,
                basis,
                cautions,
                chart,
                title("pages.heat.flow"),
                flow,
                title("pages.heat.figures"),
                figures,
                choice);
        all.getStyleClass().add("page-content");
        setContent(all);
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        context.answering().answerProperty().addListener((property, before, now) -> show(now));
        show(context.answering().answerProperty().get());
        chart.setId("heat-chart");
        chart.cursorXProperty().bindBidirectional(cursorS);
        timeline.addListener((property, before, now) ->
                draw(now, context.answering().answerProperty().get()));
        draw(timeline.getValue(), context.answering().answerProperty().get());
    }

    private void draw(RunTimeline timeline, RigAnswer answer) {
        if (timeline != null && answer != null) {
            chart.setData(new RunChartData(timeline, answer).heat());
        }
    }

    private void show(RigAnswer answer) {
        if (answer == null) {
            return;
        }
        CheckAnswer check = answer.check();
        SteadyState steady = check.steady();
        Optional<Margin> heat =
                check.margins().stream().filter(m -> m.id() == MarginId.HEAT).findFirst();
        double needed = check.needed().heatNeededW();
        double available = check.needed().heatAvailableW();
        need.show(List.of(
                new WattBars.Bar(WindowText.say("pages.heat.available"), available, "available"),
                new WattBars.Bar(WindowText.say("pages.heat.needed"), needed, "needed")));
        limiter.setText(heat.map(Margin::cure)
                .filter(cure -> !cure.isEmpty())
                .orElseGet(() -> WindowText.say("pages.heat.enough")));
        basis.setText(heat.map(Margin::basis).orElse(""));
        flow.show(flow(steady, setW(check.rig())));
        figures(steady);
        cautions.show(answer);
    }

    /** Power set at the end of the schedule, W; a schedule that ends holding the oil sets none. */
    private static double setW(Rig rig) {
        List<Schedule.Step> steps = rig.schedule().steps();
        return steps.get(steps.size() - 1) instanceof Schedule.Power power
                ? power.fraction() * rig.heatSource().ratedPowerW()
                : 0;
    }

    private static List<WattBars.Bar> flow(SteadyState steady, double setW) {
        List<WattBars.Bar> bars = new ArrayList<>();
        bars.add(new WattBars.Bar(WindowText.say("pages.heat.taken"), steady.sourceInputW(), "taken"));
        double heldBack = setW - steady.sourceInputW();
        if (heldBack > WORTH_A_BAR * setW) {
            bars.add(new WattBars.Bar(WindowText.say("pages.heat.held-back"), heldBack, "lost"));
        }
        bars.add(new WattBars.Bar(WindowText.say("pages.heat.lost"), steady.sourceLossW(), "lost"));
        bars.add(new WattBars.Bar(WindowText.say("pages.heat.delivered"), steady.heatDeliveredW(), "delivered"));
        bars.add(new WattBars.Bar(WindowText.say("pages.heat.to-water"), steady.heatToWaterW(), "part"));
        bars.add(new WattBars.Bar(WindowText.say("pages.heat.to-air"), steady.heatToAirW(), "part"));
        bars.add(new WattBars.Bar(WindowText.say("pages.heat.to-foreline"), steady.heatToForelineW(), "part"));
        return bars;
    }

    private void figures(SteadyState steady) {
        figures.clear();
        temperature("pages.heat.source-temperature", steady.sourceK());
        temperature("pages.heat.outer-face", OptionalDouble.of(steady.outerFaceK()));
        temperature("pages.heat.inner-face", OptionalDouble.of(steady.innerFaceK()));
        temperature("pages.heat.oil", OptionalDouble.of(steady.liquidTemperatureK()));
        figures.add(
                WindowText.say("pages.heat.boiler-pressure"),
                QuantityWriter.writeAuto(steady.boilerPressurePa(), Dimension.PRESSURE));
        figures.add(
                WindowText.say("pages.heat.vapour"),
                QuantityWriter.writeAuto(steady.vapourFlowKgPerS(), Dimension.MASS_FLOW));
        temperature("pages.heat.water-out", steady.waterOutK());
        temperature("pages.heat.hottest", OptionalDouble.of(steady.hottestOutsideK()));
    }

    private void temperature(String key, OptionalDouble kelvin) {
        kelvin.ifPresent(k -> figures.add(WindowText.say(key), QuantityWriter.writeAuto(k, Dimension.TEMPERATURE)));
    }

    private static Label title(String key) {
        Label label = new Label(WindowText.say(key));
        label.getStyleClass().add("section-title");
        return label;
    }

    private static Label text(String style) {
        Label label = new Label();
        label.setWrapText(true);
        label.getStyleClass().add(style);
        return label;
    }
}
