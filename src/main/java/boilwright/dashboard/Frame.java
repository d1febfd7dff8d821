package boilwright.dashboard;

import boilwright.answers.RunAnswer;
import boilwright.dashboard.band.TimeBand;
import boilwright.dashboard.drawing.PumpDrawing;
import boilwright.dashboard.model.RunTimeline;
import boilwright.dashboard.pages.PageContext;
import boilwright.dashboard.parts.LedgerView;
import boilwright.dashboard.parts.VerdictBar;
import boilwright.dashboard.session.RigSession;
import boilwright.dashboard.text.WindowText;
import boilwright.dashboard.work.Answering;
import boilwright.dashboard.work.BackgroundWork;
import boilwright.dashboard.work.RigAnswer;
import boilwright.fluid.WorkingFluid;
import boilwright.rig.Rig;
import java.util.EnumMap;
import java.util.Map;
import javafx.animation.Animation;
import javafx.animation.PauseTransition;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/**
 * The frame of the window: the spine with the pages at the left, the verdict on top, the pump in the middle, ledger and page
 * beside it, the time band below, and a status bar at the foot. Everything in it follows the session and the answers.
 */
final class Frame extends StackPane {
    /** Where in the stretch at rest the cursor stands at first, as a share: clear of the words at its start. */
    private static final double SHOWN_AT_REST = 0.85;

    private final VerdictBar verdict = new VerdictBar();
    private final LedgerView ledger = new LedgerView();
    private final PumpDrawing drawing = new PumpDrawing();
    private final TimeBand band = new TimeBand();
    private final NoticeBar notices = new NoticeBar();
    private final WindowStatus status;
    private final BodyPane body;
    private final Map<PageName, Region> pages = new EnumMap<>(PageName.class);
    private final ReadOnlyObjectWrapper<PageName> page = new ReadOnlyObjectWrapper<>(this, "page");
    private final PauseTransition patience = new PauseTransition(WindowStatus.PATIENCE);
    private final PageContext context;
    private final PageMaker maker;
    private final ReadOnlyObjectWrapper<RunTimeline> timeline = new ReadOnlyObjectWrapper<>(this, "timeline");

    Frame(PageContext context, BackgroundWork work, Spine spine, FramePages pagesOf) {
        this.context = context;
        this.maker = name -> pagesOf.make(name, context, timeline, band.cursorSProperty());
        status = new WindowStatus(context, work);
        getStyleClass().add("frame");
        Label lettering = new Label("m");
        lettering.getStyleClass().add("lettering");
        body = new BodyPane(drawing, ledger, lettering);
        VBox top = new VBox(verdict, notices);
        top.getStyleClass().add("top");
        BorderPane right = new BorderPane(body);
        right.setTop(top);
        right.setBottom(band);
        BorderPane all = new BorderPane(right);
        all.setLeft(spine);
        all.setBottom(status);
        getChildren().add(all);
        page.addListener((property, before, now) -> spine.select(now));
        follow();
    }

    /** Makes a page when it is first shown. */
    private interface PageMaker {
        Region make(PageName name);
    }

    /** What the pages of a frame are. */
    interface FramePages {
        Region make(PageName name, PageContext context, ObservableValue<RunTimeline> timeline, DoubleProperty cursorS);
    }

    private void follow() {
        RigSession session = context.session();
        Answering answering = context.answering();
        session.rigProperty().addListener((property, before, now) -> {
            notices.clearTold();
            drawRig(now);
        });
        context.shelf().libraryProperty().addListener((property, before, now) -> drawRig(session.rig()));
        session.refusalProperty().addListener((property, before, now) -> sayVerdict());
        answering.answerProperty().addListener((property, before, now) -> answered(now));
        answering.refusalProperty().addListener((property, before, now) -> sayVerdict());
        answering.computingProperty().addListener((property, before, now) -> {
            if (now) {
                patience.playFromStart();
            } else {
                patience.stop();
                sayVerdict();
            }
        });
        patience.setOnFinished(event -> sayVerdict());
        band.cursorSProperty().addListener((property, before, now) -> drawMoment());
        drawRig(session.rig());
        sayVerdict();
    }

    private void drawRig(Rig rig) {
        WorkingFluid fluid = context.fluids().find(rig.fluidId());
        drawing.setRig(rig, fluid);
        drawing.setGuesses(rig.guesses());
    }

    private void answered(RigAnswer answer) {
        ledger.setMargins(answer.check().margins());
        drawing.setMargins(answer.check().margins());
        RunTimeline before = timeline.get();
        RunTimeline now = RunTimeline.of(
                answer.check().warmup(),
                answer.check().steady(),
                answer.cooldown().map(RunAnswer::run).orElse(null));
        double cursor = sameMoment(before, now);
        band.setTimeline(now);
        timeline.set(now);
        band.cursorSProperty().set(cursor);
        drawMoment();
        sayVerdict();
    }

    /** Where on a new axis the cursor stands for the moment at which it stood on the old one; at first the pump at rest. */
    private double sameMoment(RunTimeline before, RunTimeline now) {
        double rest = now.restStartS() + SHOWN_AT_REST * (now.cooldownStartS() - now.restStartS());
        if (before == null) {
            return rest;
        }
        double cursor = band.cursorSProperty().get();
        return switch (before.partAt(cursor)) {
            case WARMUP -> Math.min(cursor, now.restStartS());
            case REST -> rest;
            case COOLDOWN -> Math.min(now.endS(), now.cooldownStartS() + before.clockS(cursor));
        };
    }

    private void drawMoment() {
        if (timeline.get() != null) {
            drawing.setMoment(timeline.get().at(band.cursorSProperty().get()));
        }
    }

    private void sayVerdict() {
        Answering answering = context.answering();
        RigAnswer answer = answering.answerProperty().get();
        String why = staleWhy();
        boolean waiting = answering.computingProperty().get() && patience.getStatus() != Animation.Status.RUNNING;
        boolean stale = !why.isEmpty() || (waiting && answer != null);
        String words = answer != null
                ? answer.check().verdict()
                : WindowText.say(why.isEmpty() ? "frame.status.first" : "frame.status.none");
        verdict.setVerdict(words, stale, why);
        band.staleProperty().set(stale);
    }

    /** Why there is no newer answer than the one shown; that one is on its way is told by the status bar. */
    private String staleWhy() {
        return context.session().refusalProperty().get().isEmpty()
                ? context.answering().refusalProperty().get()
                : context.refusal();
    }

    /** Shows a page. */
    void show(PageName name) {
        body.stripProperty().set(name.hasStrip());
        body.ledgerShownProperty().set(name.hasLedger());
        body.pageProperty().set(pages.computeIfAbsent(name, maker::make));
        page.set(name);
    }

    /** Shows something in the place of the page until a page is chosen again. */
    void showInstead(Region other) {
        body.stripProperty().set(false);
        body.ledgerShownProperty().set(false);
        body.pageProperty().set(other);
    }

    /** The page that is shown. */
    ReadOnlyObjectProperty<PageName> pageProperty() {
        return page.getReadOnlyProperty();
    }

    /** The page that is shown, as it is. */
    Region pageShown() {
        return pages.get(page.get());
    }

    /** Tells something: a few words in the status bar, more of it or a question in a notice. */
    void tell(Notice notice) {
        if (notice.isShort()) {
            status.tell(notice.title());
        } else {
            notices.show(notice);
        }
    }

    /** Where notices stand. */
    NoticeBar notices() {
        return notices;
    }

    /** The pump drawn. */
    PumpDrawing drawing() {
        return drawing;
    }

    /** The run shown; null until there is an answer. */
    RunTimeline timelineShown() {
        return timeline.get();
    }

    /** The time band. */
    TimeBand band() {
        return band;
    }
}
