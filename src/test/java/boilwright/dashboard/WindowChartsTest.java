package boilwright.dashboard;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.dashboard.chart.ChartData;
import boilwright.dashboard.chart.Limit;
import boilwright.dashboard.chart.Mark;
import boilwright.dashboard.chart.Series;
import boilwright.dashboard.chart.SeriesChart;
import boilwright.dashboard.model.RunTimeline;
import boilwright.dashboard.work.RigAnswer;
import boilwright.thermal.RunResult;
import boilwright.thermal.SeriesQuantity;
import boilwright.thermal.SteadyState;
import java.nio.file.Path;
import java.util.Optional;
import javafx.beans.property.DoubleProperty;
import javafx.scene.control.ComboBox;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The charts of the pages: what they plot, and that they go along with the time band. */
class WindowChartsTest extends AtTheWindow {
    private RigAnswer answer;

    @BeforeEach
    void begin() {
        share("teaching-lab", PageName.TIME);
        answer = open.answer();
    }

    @Test
    void theCursorOfBandAndChartsIsOne() {
        SeriesChart temperatures = open.find("time-temperatures", SeriesChart.class);
        SeriesChart jets = open.find("time-jets", SeriesChart.class);
        DoubleProperty band = open.window().frame().band().cursorSProperty();
        open.onWindowsThread(() -> band.set(500));
        assertThat(temperatures.cursorXProperty().get()).isEqualTo(500);
        assertThat(jets.cursorXProperty().get()).isEqualTo(500);
        open.onWindowsThread(() -> temperatures.cursorXProperty().set(1234));
        assertThat(band.get()).isEqualTo(1234);
        assertThat(jets.cursorXProperty().get()).isEqualTo(1234);
        open.act(Action.PAGE_HEAT);
        SeriesChart heat = open.find("heat-chart", SeriesChart.class);
        assertThat(heat.cursorXProperty().get()).isEqualTo(1234);
        open.onWindowsThread(() -> heat.cursorXProperty().set(80));
        assertThat(band.get()).isEqualTo(80);
    }

    @Test
    void anEventChosenInTheListLeadsTheCursorsThere() {
        SeriesChart temperatures = open.find("time-temperatures", SeriesChart.class);
        ListView<?> events = (ListView<?>) open.window().frame().lookup(".event-list");
        open.onWindowsThread(() -> {
            events.getSelectionModel().select(0);
            events.requestFocus();
        });
        robot.push(KeyCode.ENTER);
        open.onWindowsThread(() -> {});
        double first = answer.check().warmup().events().get(0).timeS().orElseThrow();
        assertThat(temperatures.cursorXProperty().get()).isEqualTo(first);
    }

    @Test
    void theCurvesAreTheRecordsOfBothRunsWithTheStateAtRestBetween() {
        ChartData data = open.find("time-temperatures", SeriesChart.class).data();
        RunResult warm = answer.check().warmup();
        RunResult cool = answer.cooldown().orElseThrow().run();
        RunTimeline line = RunTimeline.of(warm, answer.check().steady(), cool);
        Series oil = data.series().get(0);
        double[] warmK = warm.series().column(SeriesQuantity.LIQUID_TEMPERATURE).values();
        double[] coolK = cool.series().column(SeriesQuantity.LIQUID_TEMPERATURE).values();
        double[] coolS = cool.series().column(SeriesQuantity.TIME).values();
        assertThat(oil.title()).isEqualTo("oil");
        assertThat(oil.x()).hasSize(warmK.length + 2 + coolK.length);
        for (int i = 0; i < warmK.length; i++) {
            assertThat(oil.y()[i]).isEqualTo(warmK[i]);
            assertThat(oil.x()[i])
                    .isEqualTo(warm.series().column(SeriesQuantity.TIME).values()[i]);
        }
        assertThat(oil.y()[warmK.length]).isEqualTo(answer.check().steady().liquidTemperatureK());
        assertThat(oil.x()[warmK.length + 1]).isEqualTo(line.cooldownStartS());
        for (int i = 0; i < coolK.length; i++) {
            assertThat(oil.y()[warmK.length + 2 + i]).isEqualTo(coolK[i]);
            assertThat(oil.x()[warmK.length + 2 + i]).isEqualTo(line.cooldownStartS() + coolS[i]);
        }
        assertThat(data.series().stream().map(Series::title))
                .containsExactly("oil", "boiler wall", "heat source", "column top", "water out");
        assertThat(data.limits().stream().map(Limit::title)).containsExactly("oil", "water out");
        assertThat(data.marks().stream().map(Mark::title)).contains("heat on", "heat off", "air may be let in");
    }

    @Test
    void theHeatNeededIsALimitAndTheWattsAddUpAtRest() {
        open.act(Action.PAGE_HEAT);
        ChartData data = open.find("heat-chart", SeriesChart.class).data();
        SteadyState steady = answer.check().steady();
        assertThat(data.limits()).hasSize(1);
        assertThat(data.limits().get(0).si()).isEqualTo(answer.check().needed().heatNeededW());
        assertThat(data.limits().get(0).side()).isEqualTo(Limit.Side.AT_LEAST);
        int rest = answer.check().warmup().series().column(SeriesQuantity.TIME).values().length;
        double[] atRest = data.series().stream().mapToDouble(s -> s.y()[rest]).toArray();
        assertThat(atRest).containsExactly(steady.heatDeliveredW(), steady.heatToWaterW(), steady.heatToAirW());
    }

    @Test
    void theChartChosenStaysWhenTheRigChanges() {
        SeriesChart jets = open.find("time-jets", SeriesChart.class);
        assertThat(jets.data().title()).isEqualTo("Jets, share of full flow");
        ComboBox<?> titles = (ComboBox<?>) jets.lookup(".series-titles");
        open.onWindowsThread(() -> titles.getSelectionModel().select(1));
        ChartData before = jets.data();
        assertThat(before.title()).isEqualTo("Boiler pressure");
        open.onWindowsThread(() -> open.window().session().edit("weaker", rig -> OpenWindow.demo("neon-workshop")));
        open.answer();
        assertThat(jets.data().title()).isEqualTo("Boiler pressure");
        assertThat(jets.data()).isNotSameAs(before);
        assertThat(jets.data().limits())
                .singleElement()
                .satisfies(limit -> assertThat(limit.si()).isEqualTo(65));
    }

    @Test
    void exportToAFolderThatIsNotThereIsRefusedInWords() {
        SeriesChart temperatures = open.find("time-temperatures", SeriesChart.class);
        Path nowhere = folder.resolve("gone").resolve("run.png");
        open.onWindowsThread(() -> temperatures.filesProperty().set((name, format) -> Optional.of(nowhere)));
        open.act(Action.PAGE_HEAT);
        open.act(Action.EXPORT);
        open.until(
                "the refusal",
                () -> OpenWindow.words(temperatures).stream().anyMatch(words -> words.contains(nowhere.toString())));
        assertThat(open.window().frame().pageProperty().get()).isEqualTo(PageName.TIME);
    }
}
