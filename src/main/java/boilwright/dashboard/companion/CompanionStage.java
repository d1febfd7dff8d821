package boilwright.dashboard.companion;

import boilwright.companion.Companion;
import boilwright.companion.LogHead;
import boilwright.companion.Outcome;
import boilwright.companion.RunRecord;
import boilwright.dashboard.text.WindowText;
import boilwright.sequence.PlanAnswer;
import java.io.File;
import java.nio.file.Path;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import javafx.application.Platform;
import javafx.beans.binding.Bindings;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.stage.FileChooser;
import javafx.stage.Stage;
import javafx.stage.Window;
import javafx.stage.WindowEvent;

/**
 * The companion's window. It looks at the clock once a second, keeps the log of the run, and on opening offers to take up a run of
 * the same plan that was not ended.
 */
public final class CompanionStage extends Stage {
    private static final double WIDTH = 1280;
    private static final double HEIGHT = 720;
    private static final double LEAST_WIDTH = 960;
    private static final double LEAST_HEIGHT = 600;
    private static final long LOOK_MS = 1000;
    /** A call is heard again after so many looks. */
    private static final int RING_EVERY = 8;
    /** A log in trouble is tried again after so many looks. */
    private static final int RETRY_EVERY = 10;

    private final ScheduledExecutorService beat = Executors.newSingleThreadScheduledExecutor(CompanionStage::named);
    private final LogKeeper keeper;
    private final Companion run;
    private final CompanionPane pane;
    private final Bell bell;
    private final AtomicBoolean ringing = new AtomicBoolean();
    private final Button goOn = choice("go-on");
    private final Button anew = choice("anew");
    private final CallBar offer = new CallBar("companion-offer", "?", goOn, anew);
    private int looks;
    private int calledSince = -1;
    private boolean closeAsked;

    /**
     * A window that is not shown yet.
     *
     * @param answer there must be a plan in it
     * @param folder where logs lie; it is made when it is not there
     * @param now tells the time
     * @param zone for times of the day
     * @param bell makes itself heard
     * @param asker asks where else the log may go
     * @throws java.util.NoSuchElementException when there is no plan
     */
    public CompanionStage(PlanAnswer answer, Path folder, InstantSource now, ZoneId zone, Bell bell, PlaceAsker asker) {
        this.bell = bell;
        keeper = new LogKeeper(LogHead.of(answer, now.instant()), folder, now);
        run = new Companion(answer, now, keeper::record);
        pane = new CompanionPane(run, now, zone);
        pane.addBar(offer);
        pane.log(keeper.standingProperty().get());
        keeper.standingProperty().addListener((property, before, standing) -> {
            closeAsked = closeAsked && standing.trouble().isPresent();
            pane.log(standing);
        });
        pane.onElsewhere(() -> keeper.standingProperty()
                .get()
                .file()
                .flatMap(file -> asker.elsewhere(file.getFileName().toString()))
                .ifPresent(keeper::continueIn));
        setTitle(WindowText.say("companion.title", answer.check().rig().name()));
        setScene(new Scene(pane, WIDTH, HEIGHT));
        setMinWidth(LEAST_WIDTH);
        setMinHeight(LEAST_HEIGHT);
        addEventHandler(WindowEvent.WINDOW_CLOSE_REQUEST, this::closing);
        setOnHidden(event -> over());
        setOnShown(event -> begin(zone));
    }

    /**
     * Opens the companion beside another window, in that one's dress. It stays open on its own.
     *
     * @param owner whose theme it takes; its scene must be there
     * @param answer there must be a plan in it
     * @param folder where logs lie; it is made when it is not there
     * @throws java.util.NoSuchElementException when there is no plan
     */
    public static CompanionStage open(Window owner, PlanAnswer answer, Path folder) {
        CompanionStage[] stage = new CompanionStage[1];
        stage[0] = new CompanionStage(
                answer,
                folder,
                InstantSource.system(),
                ZoneId.systemDefault(),
                new ToneBell(),
                suggested -> ask(stage[0], suggested));
        Bindings.bindContent(
                stage[0].getScene().getStylesheets(), owner.getScene().getStylesheets());
        stage[0].show();
        return stage[0];
    }

    private static Optional<Path> ask(Stage owner, String suggested) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(WindowText.say("companion.elsewhere.title"));
        chooser.setInitialFileName(suggested);
        chooser.getExtensionFilters()
                .add(new FileChooser.ExtensionFilter(WindowText.say("companion.elsewhere.logs"), "*.csv"));
        File file = chooser.showSaveDialog(owner);
        return Optional.ofNullable(file).map(File::toPath);
    }

    private static Thread named(Runnable work) {
        Thread made = new Thread(work, "boilwright-companion");
        made.setDaemon(true);
        return made;
    }

    private static Button choice(String name) {
        Button button = new Button(WindowText.say("companion.do." + name));
        button.setId("companion-" + name);
        return button;
    }

    private void begin(ZoneId zone) {
        pane.begin();
        keeper.look(found -> offer(found, zone));
        // Not by an animation of the toolkit: while one runs, the toolkit redraws sixty times a second.
        beat.scheduleAtFixedRate(() -> Platform.runLater(this::look), LOOK_MS, LOOK_MS, TimeUnit.MILLISECONDS);
    }

    private void offer(List<RunRecord> found, ZoneId zone) {
        // a run that was begun in the meantime is the run
        if (found.isEmpty() || keeper.standingProperty().get().file().isPresent()) {
            return;
        }
        RunRecord last = found.get(0);
        offer.say(List.of(WindowText.say(
                "companion.offer",
                Says.day(last.head().begun(), zone),
                Says.day(last.lastTime(), zone),
                last.file().getFileName().toString())));
        goOn.setOnAction(event -> {
            goOn.setDisable(true);
            keeper.resume(last.file(), this::takenUp, this::notTakenUp);
        });
        anew.setOnAction(event -> offerIsOver());
        pane.hold(true);
        goOn.requestFocus();
    }

    private void takenUp(RunRecord record) {
        run.takeUp(record);
        offerIsOver();
        pane.refresh();
    }

    private void notTakenUp(String why) {
        offer.say(List.of(why));
        goOn.setDisable(false);
        anew.requestFocus();
    }

    private void offerIsOver() {
        offer.say(List.of());
        pane.hold(false);
        pane.begin();
    }

    /** The run that the window shows. */
    Companion run() {
        return run;
    }

    /** What happens every second. */
    void look() {
        looks++;
        pane.refresh();
        if (!pane.calls()) {
            calledSince = -1;
        } else {
            calledSince++;
            if (calledSince % RING_EVERY == 0 && pane.wantsSound()) {
                ring();
            }
        }
        if (looks % RETRY_EVERY == 0
                && keeper.standingProperty().get().trouble().isPresent()) {
            keeper.retry();
        }
    }

    private void ring() {
        if (ringing.compareAndSet(false, true)) {
            beat.execute(() -> {
                Optional<String> silent = bell.ring();
                ringing.set(false);
                Platform.runLater(() -> pane.silent(silent.orElse("")));
            });
        }
    }

    /** Closing leaves the run open to be taken up again; lines that are nowhere but here are asked about first. */
    private void closing(WindowEvent event) {
        boolean kept = keeper.standingProperty()
                .get()
                .trouble()
                .filter(t -> t.kept() > 0)
                .isPresent();
        if (kept && !closeAsked) {
            closeAsked = true;
            event.consume();
            pane.tell(new Outcome(Outcome.Kind.WARNED, WindowText.say("companion.close-asked")));
        }
    }

    private void over() {
        beat.shutdownNow();
        keeper.close();
    }

    /** Asks a person where else a log may go. */
    @FunctionalInterface
    public interface PlaceAsker {
        /**
         * Where the log shall go on.
         *
         * @param suggested name of the file
         * @return a file that is not there yet; empty for nowhere else
         */
        Optional<Path> elsewhere(String suggested);
    }
}
