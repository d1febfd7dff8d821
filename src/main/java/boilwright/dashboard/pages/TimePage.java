package boilwright.dashboard.pages;

import boilwright.answers.Cautions.Place;
import boilwright.dashboard.chart.ChartFormat;
import boilwright.dashboard.chart.SeriesChart;
import boilwright.dashboard.model.RunTimeline;
import boilwright.dashboard.text.WindowText;
import boilwright.dashboard.work.RigAnswer;
import boilwright.thermal.RunResult;
import boilwright.thermal.TimeEvent;
import java.util.ArrayList;
import java.util.List;
import javafx.beans.property.DoubleProperty;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** From cold to pumping and back to cold: temperatures, jets and pressure as curves, and what happens when. */
public final class TimePage extends ScrollPane {
    private final PageContext context;
    private final SeriesChart temperatures = new SeriesChart();
    private final SeriesChart jets = new SeriesChart();
    private final EventList events;

    /**
     * A page that follows answers and timeline.
     *
     * @param timeline the axis of the last answer; null until there is one
     * @param cursorS where the time cursor stands, s
     */
    public TimePage(PageContext context, ObservableValue<RunTimeline> timeline, DoubleProperty cursorS) {
        this.context = context;
        getStyleClass().addAll("page", "time-page", "edge-to-edge");
        events = new EventList(cursorS::set);
        Label heading = new Label(WindowText.say("pages.time.events"));
        heading.getStyleClass().add("section-title");
        heading.setLabelFor(events);
        CautionList cautions = new CautionList(Place.OPENING, Place.WATER);
        cautions.setMinHeight(USE_PREF_SIZE);
        events.setMinHeight(USE_PREF_SIZE);
        temperatures.setId("time-temperatures");
        jets.setId("time-jets");
        VBox all = new VBox(temperatures, jets, heading, events, cautions);
        all.getStyleClass().add("page-content");
        for (SeriesChart chart : List.of(temperatures, jets)) {
            chart.cursorXProperty().bindBidirectional(cursorS);
            chart.setMinHeight(USE_PREF_SIZE);
            VBox.setVgrow(chart, Priority.ALWAYS);
        }
        setContent(all);
        setFitToWidth(true);
        // In a tall window the charts take the room that is left; in a low one the page scrolls.
        setFitToHeight(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        context.answering().answerProperty().addListener((property, before, now) -> cautions.show(now));
        timeline.addListener((property, before, now) -> show(now));
        cautions.show(context.answering().answerProperty().get());
        show(timeline.getValue());
    }

    /** Asks for a file and writes the temperatures to it as a picture; other kinds of file are in the chart's own menu. */
    public void exportChart() {
        temperatures.export(ChartFormat.PNG);
    }

    private void show(RunTimeline timeline) {
        RigAnswer answer = context.answering().answerProperty().get();
        if (timeline == null || answer == null) {
            return;
        }
        List<EventList.Line> lines = new ArrayList<>(lines(answer.check().warmup(), 0, "pages.time.warmup"));
        answer.cooldown()
                .ifPresent(run -> lines.addAll(lines(run.run(), timeline.cooldownStartS(), "pages.time.cooldown")));
        events.show(lines);
        RunChartData charts = new RunChartData(timeline, answer);
        temperatures.setData(charts.temperatures());
        jets.setData(List.of(charts.jets(), charts.pressure()));
    }

    private static List<EventList.Line> lines(RunResult run, double startS, String key) {
        List<EventList.Line> lines = new ArrayList<>();
        for (TimeEvent event : run.events()) {
            double at = event.timeS().isPresent() ? startS + event.timeS().getAsDouble() : Double.NaN;
            lines.add(new EventList.Line(event, at, WindowText.say(key)));
        }
        return lines;
    }
}
