package boilwright.dashboard.fluids;

import boilwright.answers.Cautions;
import boilwright.dashboard.chart.SeriesChart;
import boilwright.dashboard.pages.PageContext;
import boilwright.dashboard.text.WindowText;
import boilwright.dashboard.work.BackgroundWork;
import boilwright.dashboard.work.BackgroundWork.Urgency;
import boilwright.dashboard.work.RigAnswer;
import boilwright.fluid.FluidLibrary;
import boilwright.fluid.PropertyLine;
import boilwright.rig.Rig;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import java.io.File;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Tooltip;
import javafx.scene.input.DragEvent;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Every working fluid side by side, one of them in full, and the way to put it into the rig or to bring one of one's own. */
public final class FluidsPage extends ScrollPane {
    /** Boiler pressure at which fluids are compared until it is known what this pump needs, Pa. */
    private static final double USUAL_PA = 100;

    /** Height below which the table gives way to what is below it, in letters. */
    private static final double LOW_EMS = 42;

    private final PageContext context;
    private final BackgroundWork work;
    private final FluidTable table = new FluidTable();
    private final Label basis = new Label();
    private final OwnFluids own;
    private final FluidCard card;
    private final SeriesChart chart = new SeriesChart();
    private Map<String, Known> known = Map.of();
    private String wanted;

    private record Known(List<PropertyLine> lines, VapourCurve curve) {}

    /**
     * A page that follows the session, the answers and the shelf of fluids.
     *
     * @param work reads and checks files
     * @param asker asks for a fluid file of the person's own
     */
    public FluidsPage(PageContext context, BackgroundWork work, Supplier<Optional<Path>> asker) {
        this.context = context;
        this.work = work;
        wanted = context.session().rig().fluidId();
        own = new OwnFluids(context, work, id -> wanted = id);
        card = new FluidCard(chart, this::use);
        getStyleClass().addAll("page", "fluids-page", "edge-to-edge");
        chart.setId("fluids-chart");
        basis.getStyleClass().add("fluid-basis");
        basis.setWrapText(true);
        basis.setMinHeight(USE_PREF_SIZE);
        HBox.setHgrow(basis, Priority.ALWAYS);
        basis.setMaxWidth(Double.MAX_VALUE);
        letters(basis.getFont().getSize());
        basis.fontProperty().addListener((property, before, now) -> letters(now.getSize()));
        VBox all = new VBox(own, table, head(asker), card);
        all.getStyleClass().add("fluids-content");
        // As tall as the page where that is enough; in a low window, or while much is said, one scrolls.
        setContent(all);
        setFitToWidth(true);
        setFitToHeight(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        VBox.setVgrow(card, Priority.ALWAYS);
        setOnDragOver(this::dragged);
        setOnDragDropped(this::dropped);
        table.getSelectionModel().selectedItemProperty().addListener((property, before, now) -> showCard(now));
        context.session().rigProperty().addListener((property, before, now) -> rigChanged(now));
        context.answering().answerProperty().addListener((property, before, now) -> fill());
        context.shelf().libraryProperty().addListener((property, before, now) -> load());
        heightProperty()
                .addListener((property, before, now) -> letters(basis.getFont().getSize()));
        table.mark(wanted);
        load();
    }

    private void letters(double em) {
        table.letters(em, getHeight() - own.getHeight() > LOW_EMS * em);
    }

    private Region head(Supplier<Optional<Path>> asker) {
        Button open = new Button(WindowText.say("fluids.own.open"));
        open.setId("fluids-open");
        open.setMinWidth(USE_PREF_SIZE);
        open.getStyleClass().add("small");
        String explanation = WindowText.say("fluids.own.explanation");
        open.setTooltip(new Tooltip(explanation));
        open.setAccessibleHelp(explanation);
        open.setOnAction(event -> asker.get().ifPresent(file -> own.open(List.of(file))));
        HBox head = new HBox(basis, open);
        head.getStyleClass().add("fluid-head");
        head.setMinHeight(USE_PREF_SIZE);
        return head;
    }

    /** Reads every fluid where reading may take its time, then shows them. */
    private void load() {
        FluidLibrary library = context.fluids();
        work.request(
                Urgency.FILES,
                (cancel, progress) -> {
                    Map<String, Known> all = new LinkedHashMap<>();
                    for (String id : library.workingFluids()) {
                        List<PropertyLine> lines = library.lines(id);
                        all.put(id, new Known(lines, VapourCurve.of(library.find(id), lines)));
                    }
                    return all;
                },
                all -> {
                    known = all;
                    fill();
                },
                why -> {});
    }

    private double boilerPa() {
        RigAnswer answer = context.answering().answerProperty().get();
        return answer == null ? USUAL_PA : answer.check().needed().state().boilerPressurePa();
    }

    private void fill() {
        if (known.isEmpty()) {
            return;
        }
        RigAnswer answer = context.answering().answerProperty().get();
        String pressure = QuantityWriter.writeAuto(boilerPa(), Dimension.PRESSURE);
        basis.setText(WindowText.say(answer == null ? "fluids.basis.usual" : "fluids.basis.needed", pressure));
        table.show(FluidRow.all(context.fluids(), boilerPa()), pressure);
        if (wanted != null) {
            table.choose(wanted);
            wanted = null;
        }
    }

    private void showCard(FluidRow row) {
        // A file may be on the shelf and not yet read through.
        if (row == null || !known.containsKey(row.id())) {
            return;
        }
        List<VapourCurve> curves = known.values().stream().map(Known::curve).toList();
        chart.setData(VapourChart.of(
                curves, row, boilerPa(), context.session().rig().room().temperatureK()));
        card.show(
                row,
                known.get(row.id()).lines(),
                Cautions.ofFluid(context.fluids().find(row.id())).sentence(),
                row.id().equals(context.session().rig().fluidId()));
    }

    private void rigChanged(Rig rig) {
        table.mark(rig.fluidId());
        showCard(table.getSelectionModel().getSelectedItem());
    }

    private void use(FluidRow row) {
        boolean accepted = context.change(
                WindowText.say("fluids.use.edit", row.title()), fields -> fields.with("fluid", row.id()));
        card.say(accepted ? "" : context.refusal());
    }

    private void dragged(DragEvent event) {
        if (event.getDragboard().hasFiles()) {
            event.acceptTransferModes(TransferMode.COPY);
        }
        event.consume();
    }

    private void dropped(DragEvent event) {
        boolean has = event.getDragboard().hasFiles();
        if (has) {
            own.open(event.getDragboard().getFiles().stream().map(File::toPath).toList());
        }
        event.setDropCompleted(has);
        event.consume();
    }
}
