package boilwright.dashboard.band;

import boilwright.dashboard.model.RunTimeline;
import boilwright.dashboard.text.WindowText;
import javafx.animation.AnimationTimer;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;

/**
 * A run on one axis of time, with the cursor that all else follows: stretches with their names, marks of what happens, a clock,
 * and a way to let it play. Keys on the band: left and right one step, Page Up and Page Down to the next mark, Home and End, Space
 * to play or pause.
 */
public final class TimeBand extends VBox {
    private static final PseudoClass STALE = PseudoClass.getPseudoClass("stale");
    private static final PseudoClass PLAYING = PseudoClass.getPseudoClass("playing");

    private final BandModel model = new BandModel();
    private final Button play = new Button();
    private final ComboBox<PlaySpeed> speed = new ComboBox<>();

    /** A band that waits for its first run. */
    public TimeBand() {
        getStyleClass().add("time-band");
        new Player(model);
        Readout readout = new Readout(model);
        HBox.setHgrow(readout, Priority.ALWAYS);
        HBox controls = new HBox(play, speed, readout);
        controls.getStyleClass().add("band-controls");
        controls.setAlignment(Pos.CENTER_LEFT);
        BandTrack track = new BandTrack(model);
        track.setId("band-track");
        getChildren().addAll(controls, track);
        setMinHeight(USE_PREF_SIZE);
        setUpPlay();
        setUpSpeed();
        controls.disableProperty().bind(model.axisProperty().isNull());
        track.disableProperty().bind(model.axisProperty().isNull());
        model.staleProperty().addListener((property, before, now) -> pseudoClassStateChanged(STALE, now));
    }

    private void setUpPlay() {
        Region icon = new Region();
        icon.getStyleClass().add("play-icon");
        play.setId("band-play");
        play.getStyleClass().add("band-play");
        play.setGraphic(icon);
        play.setMinWidth(Region.USE_PREF_SIZE);
        play.setOnAction(event -> model.playOrPause());
        play.setTooltip(new Tooltip(WindowText.say("band.play.explanation")));
        sayPlay(false);
        model.playingProperty().addListener((property, before, now) -> sayPlay(now));
    }

    private void sayPlay(boolean playing) {
        play.setText(WindowText.say(playing ? "band.pause" : "band.play"));
        play.setAccessibleText(play.getText() + ". " + WindowText.say("band.play.explanation"));
        play.pseudoClassStateChanged(PLAYING, playing);
    }

    private void setUpSpeed() {
        speed.setId("band-speed");
        speed.getStyleClass().add("band-speed");
        speed.getItems().setAll(PlaySpeed.values());
        speed.setConverter(new SpeedWords());
        speed.valueProperty().bindBidirectional(model.speedProperty());
        speed.setMinWidth(Region.USE_PREF_SIZE);
        speed.setTooltip(new Tooltip(WindowText.say("band.speed.explanation")));
        speed.setAccessibleText(WindowText.say("band.speed.explanation"));
        speed.addEventFilter(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.ENTER && !speed.isShowing()) {
                speed.show();
                event.consume();
            }
        });
    }

    /** Shows another run; the cursor keeps its place as far as the axis has it. */
    public void setTimeline(RunTimeline line) {
        model.setTimeline(line);
    }

    /** Where the cursor stands on the axis, s; never beyond its ends once there is a run. */
    public DoubleProperty cursorSProperty() {
        return model.cursorSProperty();
    }

    /** Lets it run, or stops it. */
    public void playOrPause() {
        model.playOrPause();
    }

    /** Whether it runs. */
    public ReadOnlyBooleanProperty playingProperty() {
        return model.playingProperty();
    }

    /** Whether the run shown is of an earlier rig, since the answer for the rig as it is now is not there. */
    public BooleanProperty staleProperty() {
        return model.staleProperty();
    }

    /** The speeds in words; they are chosen from a list, never typed. */
    private static final class SpeedWords extends StringConverter<PlaySpeed> {
        @Override
        public String toString(PlaySpeed speed) {
            return speed == null ? "" : speed.words();
        }

        @Override
        public PlaySpeed fromString(String words) {
            throw new UnsupportedOperationException(words);
        }
    }

    /** Moves the cursor with the frames of the screen while the band plays; stopped it costs nothing. */
    private static final class Player extends AnimationTimer {
        /** A frame that took longer than this, as after a pause of the machine, moves the cursor no further, s. */
        private static final double LONGEST_S = 0.25;

        private static final double NANO = 1e-9;

        private final BandModel model;
        private long lastNs;

        Player(BandModel model) {
            this.model = model;
            model.playingProperty().addListener((property, before, now) -> {
                if (now) {
                    lastNs = 0;
                    start();
                } else {
                    stop();
                }
            });
        }

        @Override
        public void handle(long nowNs) {
            if (lastNs != 0) {
                model.tick(Math.min(LONGEST_S, (nowNs - lastNs) * NANO));
            }
            lastNs = nowNs;
        }
    }
}
