package boilwright.dashboard;

import boilwright.answers.Model;
import boilwright.dashboard.fluids.FluidsPage;
import boilwright.dashboard.heat.ChoiceView;
import boilwright.dashboard.model.RunTimeline;
import boilwright.dashboard.pages.FieldRow;
import boilwright.dashboard.pages.HeatPage;
import boilwright.dashboard.pages.NewRigForm;
import boilwright.dashboard.pages.PageContext;
import boilwright.dashboard.pages.RigPage;
import boilwright.dashboard.pages.TimePage;
import boilwright.dashboard.run.RunPage;
import boilwright.dashboard.session.FluidShelf;
import boilwright.dashboard.session.Recovery;
import boilwright.dashboard.session.Remembered;
import boilwright.dashboard.session.RigFiles;
import boilwright.dashboard.session.RigFiles.Stored;
import boilwright.dashboard.session.RigSession;
import boilwright.dashboard.session.StateFolder;
import boilwright.dashboard.text.WindowText;
import boilwright.dashboard.vacuum.VacuumPage;
import boilwright.dashboard.water.WaterPage;
import boilwright.dashboard.work.Answering;
import boilwright.dashboard.work.BackgroundWork;
import boilwright.dashboard.work.FaultHandler;
import boilwright.errors.Message;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.application.Platform;
import javafx.beans.property.DoubleProperty;
import javafx.beans.value.ObservableValue;
import javafx.scene.Scene;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.DragEvent;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.Region;

/** One window's inside with everything behind it, from the session to the scene; a stage or a picture only has to show it. */
final class Window {
    /** Height of a window for which the type has its plain size, px; in a taller one it grows, more slowly than the window. */
    private static final double PLAIN_HEIGHT = 1080;

    private static final double PLAIN_TYPE = 13;

    private final RigSession session;
    private final BackgroundWork work;
    private final Answering answering;
    private final FaultHandler faults;
    private final Remembered remembered;
    private final Desk desk;
    private final FluidShelf shelf;
    private final FileAsker asker;
    private final RunDesk run;
    private final Spine spine;
    private final Frame frame;
    private final Scene scene;
    private Theme theme;

    Window(Opening opening, Model model, FileAsker asker) {
        this.asker = asker;
        shelf = new FluidShelf(opening.fluids());
        Optional<Path> state = StateFolder.find();
        remembered = Remembered.in(state);
        Recovery recovery = Recovery.in(state);
        faults = new FaultHandler(this::rescue, () -> reportFolders(state), this::tellFault);
        work = new BackgroundWork(Platform::runLater, faults::handle);
        answering = new Answering(work, shelf::library, model);
        Stored stored = opening.file()
                .map(file -> RigFiles.known(opening.rig(), file))
                .orElseGet(() -> Stored.nowhere(opening.rig()));
        session = new RigSession(stored);
        session.edit(WindowText.say("frame.edit.set"), before -> opening.edited());
        desk = new Desk(session, work, answering, model, shelf, recovery, remembered, asker, this::tell);
        run = new RunDesk(work, asker, this::tell, () -> scene().getWindow());
        PageContext context = new PageContext(session, answering, shelf, model);
        spine = new Spine(session, desk, remembered, this::act);
        frame = new Frame(context, work, spine, this::page);
        theme = opening.theme().or(() -> Theme.find(remembered.theme())).orElse(Theme.LIGHT);
        spine.show(theme);
        frame.show(opening.page());
        // The scene is dressed before anything stands in it: each sheet that comes later has all of it styled once
        // more.
        scene = new Scene(new Region());
        theme.dress(scene);
        theme.mark(frame);
        fitType();
        scene.setRoot(frame);
        scene.heightProperty().addListener((property, before, now) -> fitType());
        for (Action action : Action.values()) {
            scene.getAccelerators().put(action.keys(), () -> act(action));
        }
        scene.addEventFilter(KeyEvent.KEY_PRESSED, this::undoKeys);
        scene.setOnDragOver(this::dragged);
        scene.setOnDragDropped(this::dropped);
        spine.focusPage(opening.page());
        desk.begin();
    }

    private Region page(
            PageName name, PageContext context, ObservableValue<RunTimeline> timeline, DoubleProperty cursorS) {
        return switch (name) {
            case RIG -> new RigPage(context);
            case HEAT -> new HeatPage(context, timeline, cursorS, new ChoiceView(context, work));
            case TIME -> new TimePage(context, timeline, cursorS);
            case WATER -> new WaterPage(context, work, timeline, cursorS);
            case VACUUM -> new VacuumPage(context, work, asker::recordToOpen);
            case RUN -> new RunPage(context, work, timeline, cursorS, run::writeSheet, run::openCompanion);
            case FLUIDS -> new FluidsPage(context, work, asker::fluidToOpen);
        };
    }

    /** Sets the type's size for the height, and only when it is another one: all of the window is styled anew for it. */
    private void fitType() {
        String size = "-fx-font-size: " + typeSize(scene.getHeight()) + "px;";
        if (!size.equals(frame.getStyle())) {
            frame.setStyle(size);
        }
    }

    private static double typeSize(double height) {
        double more = Math.max(0, height / PLAIN_HEIGHT - 1);
        return Math.rint(2 * PLAIN_TYPE * (1 + 0.65 * more)) / 2;
    }

    private void rescue() {
        if (desk != null) {
            desk.rescue();
        }
    }

    private static List<Path> reportFolders(Optional<Path> state) {
        List<Path> folders = new ArrayList<>();
        state.ifPresent(folders::add);
        folders.add(Path.of(""));
        folders.add(Path.of(System.getProperty("java.io.tmpdir")));
        return folders;
    }

    private void tellFault(Message message) {
        Platform.runLater(() -> tell(new Notice(
                Notice.Kind.REFUSED, message.text(), List.of(WindowText.say("frame.fault.rig-safe")), List.of())));
    }

    private void tell(Notice notice) {
        frame.tell(notice);
    }

    /** Does what an action says. */
    void act(Action action) {
        Runnable what = switch (action) {
            case NEW -> this::askForNew;
            case OPEN -> desk::open;
            case SAVE -> desk::save;
            case SAVE_AS -> desk::saveAs;
            case UNDO -> session::undo;
            case REDO -> session::redo;
            case THEME -> this::changeTheme;
            case PLAY -> frame.band()::playOrPause;
            case EXPORT -> this::exportChart;
            case CLOSE -> () -> desk.whenFree(this::close);
            case PAGE_RIG -> () -> frame.show(PageName.RIG);
            case PAGE_HEAT -> () -> frame.show(PageName.HEAT);
            case PAGE_TIME -> () -> frame.show(PageName.TIME);
            case PAGE_WATER -> () -> frame.show(PageName.WATER);
            case PAGE_VACUUM -> () -> frame.show(PageName.VACUUM);
            case PAGE_RUN -> () -> frame.show(PageName.RUN);
            case PAGE_FLUIDS -> () -> frame.show(PageName.FLUIDS);
        };
        what.run();
    }

    private void exportChart() {
        frame.show(PageName.TIME);
        if (frame.pageShown() instanceof TimePage time) {
            time.exportChart();
        }
    }

    private void askForNew() {
        NewRigForm[] form = new NewRigForm[1];
        form[0] = new NewRigForm(
                shelf.library(),
                (measured, accepted) -> desk.estimate(measured, accepted, this::begun, form[0]::refused));
        frame.showInstead(form[0]);
    }

    private void begun() {
        frame.show(PageName.RIG);
    }

    private void changeTheme() {
        theme = theme.other();
        theme.dress(scene);
        spine.show(theme);
        Theme chosen = theme;
        work.request(
                BackgroundWork.Urgency.KEEPING,
                (cancel, progress) -> {
                    remembered.theme(chosen.id());
                    return chosen;
                },
                done -> {},
                why -> {});
    }

    /** An input would take these keys for itself, even when all that is in it was handed to the rig long ago. */
    private void undoKeys(KeyEvent event) {
        if (scene.getFocusOwner() instanceof TextInputControl input && !FieldRow.isTyping(input)) {
            for (Action action : List.of(Action.REDO, Action.UNDO)) {
                if (action.keys().match(event)) {
                    event.consume();
                    act(action);
                    return;
                }
            }
        }
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
            desk.open(event.getDragboard().getFiles().get(0).toPath());
        }
        event.setDropCompleted(has);
        event.consume();
    }

    private void close() {
        end();
        if (scene.getWindow() != null) {
            scene.getWindow().hide();
        }
    }

    /** Ends the work behind the window. */
    void end() {
        desk.end();
    }

    Scene scene() {
        return scene;
    }

    Frame frame() {
        return frame;
    }

    RigSession session() {
        return session;
    }

    Answering answering() {
        return answering;
    }

    Desk desk() {
        return desk;
    }

    FaultHandler faults() {
        return faults;
    }

    /** What a stage shows above the window. */
    ObservableValue<String> title() {
        return session.rigProperty().map(rig -> WindowText.say("frame.title", rig.name()));
    }
}
