package boilwright.dashboard.vacuum;

import boilwright.dashboard.chart.Axis;
import boilwright.dashboard.chart.ChartData;
import boilwright.dashboard.chart.Series;
import boilwright.dashboard.chart.SeriesChart;
import boilwright.dashboard.pages.PageContext;
import boilwright.dashboard.text.WindowText;
import boilwright.dashboard.work.Answering;
import boilwright.dashboard.work.BackgroundWork;
import boilwright.dashboard.work.BackgroundWork.Urgency;
import boilwright.rise.RiseAnswer;
import boilwright.rise.RiseFile;
import boilwright.rise.RiseRecord;
import boilwright.rise.RiseTest;
import boilwright.rise.RiseVolume;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.DragEvent;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** The rise test: a record of the pressure of a shut-off chamber is dropped here or chosen, and judged. */
final class RiseView extends VBox {
    /** Names of what may look like a slip of units and be meant. */
    private static final Set<String> EVERY_SLIP = Set.of("time", "pressure", "volume");

    private final PageContext context;
    private final BackgroundWork work;
    private final Supplier<Optional<Path>> chooser;
    private final TextField volume = new TextField();
    private final Label sentence = new Label(WindowText.say("vacuum.rise.drop"));
    private final Button asWritten = new Button(WindowText.say("vacuum.rise.as-written"));
    private final SeriesChart chart = new SeriesChart();
    private Path file;

    RiseView(PageContext context, BackgroundWork work, Supplier<Optional<Path>> chooser) {
        this.context = context;
        this.work = work;
        this.chooser = chooser;
        setId("rise");
        getStyleClass().addAll("section", "rise-drop");
        sentence.setId("rise-sentence");
        sentence.setWrapText(true);
        volume.setId("rise-volume");
        volume.setPrefColumnCount(8);
        Label title = new Label(WindowText.say("vacuum.rise.volume"));
        title.setLabelFor(volume);
        volume.setAccessibleText(WindowText.say("vacuum.rise.volume"));
        volume.setOnAction(event -> ask(Set.of()));
        Button choose = new Button(WindowText.say("vacuum.rise.choose"));
        choose.setId("rise-choose");
        choose.setOnAction(event -> chooser.get().ifPresent(this::judge));
        asWritten.setId("rise-as-written");
        asWritten.setOnAction(event -> ask(EVERY_SLIP));
        asWritten.setVisible(false);
        asWritten.managedProperty().bind(asWritten.visibleProperty());
        HBox row = new HBox(title, volume, choose, asWritten);
        row.getStyleClass().add("rise-row");
        chart.setId("rise-chart");
        chart.setVisible(false);
        chart.managedProperty().bind(chart.visibleProperty());
        getChildren().addAll(row, sentence, chart);
        setOnDragOver(this::dragged);
        setOnDragDropped(this::dropped);
        context.session().rigProperty().addListener((property, before, now) -> volumeOfRig());
        volumeOfRig();
    }

    /** The chamber's own volume, until a person writes another. */
    private void volumeOfRig() {
        context.session()
                .rig()
                .vacuum()
                .filter(side -> volume.getText().isBlank())
                .ifPresent(side ->
                        volume.setText(QuantityWriter.writeAuto(side.chamber().volumeM3(), Dimension.VOLUME)));
    }

    private void dragged(DragEvent event) {
        if (event.getDragboard().hasFiles()) {
            event.acceptTransferModes(TransferMode.COPY);
            event.consume();
        }
    }

    private void dropped(DragEvent event) {
        if (event.getDragboard().hasFiles()) {
            judge(event.getDragboard().getFiles().get(0).toPath());
            event.setDropCompleted(true);
            event.consume();
        }
    }

    /** Reads and judges a record in the background. */
    void judge(Path record) {
        file = record;
        ask(Set.of());
    }

    private void ask(Set<String> accepted) {
        if (file == null) {
            return;
        }
        Path asked = file;
        String size = volume.getText();
        work.ask(
                Urgency.AFTERWARDS,
                (cancel, progress) -> RiseTest.of(RiseFile.read(asked, accepted), RiseVolume.read(size, accepted)),
                this::show,
                why -> {
                    sentence.setText(Answering.words(why));
                    chart.setVisible(false);
                    asWritten.setVisible(accepted.isEmpty());
                });
    }

    private void show(RiseAnswer answer) {
        asWritten.setVisible(false);
        String notes = String.join(" ", answer.notes());
        sentence.setText(answer.sentence() + (notes.isEmpty() ? "" : "\n" + notes));
        List<RiseRecord.Reading> readings = answer.record().readings();
        double[] time = readings.stream().mapToDouble(RiseRecord.Reading::timeS).toArray();
        double[] read =
                readings.stream().mapToDouble(RiseRecord.Reading::pressurePa).toArray();
        double[] fitted = new double[time.length];
        for (int i = 0; i < time.length; i++) {
            fitted[i] = answer.line().pressureAt(time[i]);
        }
        chart.setData(ChartData.of(
                WindowText.say("vacuum.rise.chart"),
                Axis.time(WindowText.say("vacuum.rise.time")),
                Axis.of(WindowText.say("vacuum.chart.pressure"), Dimension.PRESSURE),
                List.of(
                        new Series(WindowText.say("vacuum.rise.read"), time, read),
                        new Series(WindowText.say("vacuum.rise.fitted"), time, fitted))));
        chart.setVisible(true);
    }
}
