package boilwright.dashboard.chart;

import boilwright.dashboard.text.WindowText;
import boilwright.errors.OutputNotWrittenException;
import boilwright.files.AtomicFile;
import java.io.File;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;

/**
 * A chart to read, to zoom and to take away: curves that can be told apart without colour, one cursor with what each of them reads
 * there, the same numbers as a table, and PNG, SVG and CSV files.
 */
public final class SeriesChart extends VBox {
    private final ChartPane pane = new ChartPane();
    private final ChartGestures gestures = new ChartGestures(pane);
    private final ChartTable table = new ChartTable();
    private final ChartBar bar = new ChartBar(this::show, this::choose, gestures, this::export);
    private final Label notes = new Label();
    private final Label told = new Label();
    private final ObjectProperty<FileChoice> files =
            new SimpleObjectProperty<>(this, "files", new SystemFileChoice(this));
    private List<ChartData> offered = List.of();
    private boolean chosenByHand;

    /** A chart with nothing in it yet. */
    public SeriesChart() {
        getStyleClass().add("series-chart");
        StackPane middle = new StackPane(pane, table);
        VBox.setVgrow(middle, Priority.ALWAYS);
        table.visibleProperty().bind(bar.table().selectedProperty());
        pane.visibleProperty().bind(bar.table().selectedProperty().not());
        bar.table().selectedProperty().addListener((property, before, now) -> fillTable());
        for (Label label : List.of(notes, told)) {
            label.setWrapText(true);
            label.managedProperty().bind(label.textProperty().isNotEmpty());
        }
        notes.getStyleClass().add("series-notes");
        told.getStyleClass().add("series-told");
        getChildren().addAll(bar, middle, notes, told);
    }

    /**
     * Offers several charts in the place of one: the title becomes a choice. The one chosen before stays chosen.
     *
     * @param several at least one, each with a title of its own
     */
    public void setData(List<ChartData> several) {
        offered = List.copyOf(several);
        String shown = data() == null ? "" : data().title();
        setShown(offered.stream()
                .filter(one -> one.title().equals(shown))
                .findFirst()
                .orElse(offered.get(0)));
    }

    /**
     * Shows this in place of what was there. Units chosen by a person stay as long as the axes measure the same; so does the part
     * in view as long as the axes keep their meaning.
     */
    public void setData(ChartData data) {
        setData(List.of(data));
    }

    /** Shows the chart with this title of those offered. */
    private void show(String title) {
        offered.stream().filter(one -> one.title().equals(title)).findFirst().ifPresent(this::setShown);
    }

    private void setShown(ChartData data) {
        ChartData before = pane.dataProperty().get();
        boolean same = before != null
                && before.x().dimension() == data.x().dimension()
                && before.y().dimension() == data.y().dimension()
                && before.title().equals(data.title());
        Choice choice = same && chosenByHand ? pane.choiceProperty().get() : Choice.suiting(data);
        if (!same) {
            chosenByHand = false;
            pane.viewProperty().set(View.WHOLE);
        }
        pane.choiceProperty().set(choice);
        pane.dataProperty().set(data);
        refresh();
    }

    /** What is shown; null before the first. */
    public ChartData data() {
        return pane.dataProperty().get();
    }

    private void choose(Choice choice) {
        chosenByHand = true;
        Choice before = pane.choiceProperty().get();
        if (before.yLog() != choice.yLog() || before.xLog() != choice.xLog()) {
            pane.viewProperty().set(View.WHOLE);
        }
        pane.choiceProperty().set(choice);
        refresh();
    }

    private void refresh() {
        ChartData data = pane.dataProperty().get();
        Choice choice = pane.choiceProperty().get();
        bar.show(offered.stream().map(ChartData::title).toList(), data, choice);
        notes.setText(String.join(" ", new ArrayList<>(ChartWords.leftOut(data, choice))));
        fillTable();
    }

    private void fillTable() {
        if (bar.table().isSelected() && data() != null) {
            table.show(data(), pane.choiceProperty().get());
            table.lead(cursorXProperty().get());
        }
    }

    /** Where the cursor stands, SI of the x axis; NaN for no cursor. May be bound in both directions. */
    public DoubleProperty cursorXProperty() {
        return pane.cursorXProperty();
    }

    /** Who asks for the file of an export; the system's own dialogue unless someone else is put there. */
    public ObjectProperty<FileChoice> filesProperty() {
        return files;
    }

    /** Asks for a file and writes the chart to it; what came of it is said below the chart. */
    public void export(ChartFormat format) {
        if (data() == null) {
            told.setText(WindowText.say("chart.nothing"));
            return;
        }
        files.get().fileFor(fileName(format), format).ifPresent(file -> write(format, withEnding(file, format)));
    }

    private void write(ChartFormat format, Path file) {
        ChartExport export = new ChartExport(
                data(),
                pane.choiceProperty().get(),
                pane.viewProperty().get(),
                cursorXProperty().get(),
                pane.family());
        Supplier<byte[]> content = export.content(format);
        // Not on the window's thread: a disk may be slow or far away.
        CompletableFuture.runAsync(() -> AtomicFile.write(file, content.get()))
                .whenComplete((done, fault) -> Platform.runLater(() -> tell(file, fault)));
    }

    private void tell(Path file, Throwable fault) {
        Throwable why = fault instanceof CompletionException wrapped ? wrapped.getCause() : fault;
        if (why == null) {
            told.setText(WindowText.say("chart.export.done", file.toString()));
        } else if (why instanceof OutputNotWrittenException refused) {
            told.setText(refused.reason().text());
        } else {
            // Nothing that a person could mend: the handler for unexpected faults reports it.
            throw new IllegalStateException("a chart was not written", why);
        }
    }

    private String fileName(ChartFormat format) {
        String plain = data().title().strip().toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
        String trimmed = plain.replaceAll("^-+|-+$", "");
        return (trimmed.isEmpty() ? "chart" : trimmed) + "." + format.ending();
    }

    private static Path withEnding(Path file, ChartFormat format) {
        Path name = file.getFileName();
        return name == null || name.toString().contains(".") ? file : file.resolveSibling(name + "." + format.ending());
    }

    /** The system's own dialogue; it begins in the folder where it ended last. */
    private static final class SystemFileChoice implements FileChoice {
        private final Node owner;
        private File folder;

        SystemFileChoice(Node owner) {
            this.owner = owner;
        }

        @Override
        public Optional<Path> fileFor(String suggestedName, ChartFormat format) {
            FileChooser chooser = new FileChooser();
            chooser.setTitle(WindowText.say("chart.export.title"));
            chooser.setInitialFileName(suggestedName);
            chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter(format.title(), "*." + format.ending()));
            if (folder != null && folder.isDirectory()) {
                chooser.setInitialDirectory(folder);
            }
            File file = chooser.showSaveDialog(owner.getScene().getWindow());
            if (file == null) {
                return Optional.empty();
            }
            folder = file.getParentFile();
            return Optional.of(file.toPath());
        }
    }

    /** Asks a person which file a chart goes to. */
    public interface FileChoice {
        /**
         * The file, or nothing when the person thought better of it.
         *
         * @param suggestedName name with the ending of the kind of file
         */
        Optional<Path> fileFor(String suggestedName, ChartFormat format);
    }
}
