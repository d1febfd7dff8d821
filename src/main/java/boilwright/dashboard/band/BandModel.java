package boilwright.dashboard.band;

import boilwright.dashboard.model.RunTimeline;
import boilwright.dashboard.text.WindowText;
import java.util.List;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.beans.property.SimpleObjectProperty;

/** What the band shows and what can be done with it, without a control. */
final class BandModel {
    /** A mark this near to the cursor is told, as a share of the band's width. */
    private static final double NEAR = 0.003;

    private final ReadOnlyObjectWrapper<BandAxis> axis = new ReadOnlyObjectWrapper<>(this, "axis");
    private final ReadOnlyBooleanWrapper playing = new ReadOnlyBooleanWrapper(this, "playing");
    private final ObjectProperty<PlaySpeed> speed = new SimpleObjectProperty<>(this, "speed", PlaySpeed.ALL_IN_1_MIN);
    private final BooleanProperty stale = new SimpleBooleanProperty(this, "stale");
    private final ObjectProperty<List<BandMark>> pointed = new SimpleObjectProperty<>(this, "pointed", List.of());
    private final DoubleProperty cursorS = new SimpleDoubleProperty(this, "cursorS") {
        @Override
        public void set(double s) {
            super.set(within(s));
        }
    };

    private double within(double s) {
        double end = axis.get() == null ? Double.MAX_VALUE : axis.get().endS();
        return Double.isNaN(s) ? 0 : Math.max(0, Math.min(end, s));
    }

    /** Shows another run; the cursor keeps its place as far as the axis has it. */
    void setTimeline(RunTimeline line) {
        axis.set(BandAxis.of(line));
        pointed.set(List.of());
        cursorS.set(cursorS.get());
    }

    /** The run as it is laid out; null until there is one. */
    ReadOnlyObjectProperty<BandAxis> axisProperty() {
        return axis.getReadOnlyProperty();
    }

    BandAxis axis() {
        return axis.get();
    }

    /** Where the cursor stands on the axis, s; never beyond its ends. */
    DoubleProperty cursorSProperty() {
        return cursorS;
    }

    ObjectProperty<PlaySpeed> speedProperty() {
        return speed;
    }

    /** Whether the run shown is of an earlier rig. */
    BooleanProperty staleProperty() {
        return stale;
    }

    /** The marks that are pointed at with mouse or focus; empty for none. */
    ObjectProperty<List<BandMark>> pointedProperty() {
        return pointed;
    }

    ReadOnlyBooleanProperty playingProperty() {
        return playing.getReadOnlyProperty();
    }

    /** Lets the cursor run; from the end, it begins anew. Nothing happens without a run. */
    void play() {
        if (axis.get() == null) {
            return;
        }
        if (cursorS.get() >= axis.get().endS()) {
            cursorS.set(0);
        }
        playing.set(true);
    }

    void pause() {
        playing.set(false);
    }

    void playOrPause() {
        if (playing.get()) {
            pause();
        } else {
            play();
        }
    }

    /** Moves the cursor on while it plays; at the end it stops. */
    void tick(double byS) {
        if (!playing.get()) {
            return;
        }
        cursorS.set(speed.get().advance(axis.get(), cursorS.get(), byS));
        if (cursorS.get() >= axis.get().endS()) {
            pause();
        }
    }

    /** Puts the cursor by hand at a place from 0 to 1 along the band. */
    void seekShare(double share) {
        if (axis.get() != null) {
            seek(axis.get().scale().axisS(share));
        }
    }

    /** Puts the cursor by hand at a time, s; a hand on it stops playing. */
    void seek(double axisS) {
        pause();
        cursorS.set(axisS);
    }

    void stepForward() {
        if (axis.get() != null) {
            seek(axis.get().stepAfter(cursorS.get()));
        }
    }

    void stepBack() {
        if (axis.get() != null) {
            seek(axis.get().stepBefore(cursorS.get()));
        }
    }

    void nextMark() {
        if (axis.get() != null) {
            seek(axis.get().markAfter(cursorS.get()));
        }
    }

    void previousMark() {
        if (axis.get() != null) {
            seek(axis.get().markBefore(cursorS.get()));
        }
    }

    void toStart() {
        seek(0);
    }

    void toEnd() {
        if (axis.get() != null) {
            seek(axis.get().endS());
        }
    }

    /** Where the cursor stands, 0 to 1 along the band. */
    double cursorShare() {
        return axis.get() == null ? 0 : axis.get().scale().share(cursorS.get());
    }

    /** What the clock shows. */
    String clock() {
        return axis.get() == null ? "" : axis.get().clock(cursorS.get());
    }

    /** Which clock it is. */
    String clockName() {
        return axis.get() == null ? "" : axis.get().clockName(cursorS.get());
    }

    /** What is pointed at, or else what happens at the cursor, in whole sentences. */
    String words() {
        if (axis.get() == null) {
            return WindowText.say("band.waiting");
        }
        List<BandMark> told = pointed.get().isEmpty() ? axis.get().marksAt(cursorS.get(), NEAR) : pointed.get();
        return told.isEmpty() ? axis.get().stretchAt(cursorS.get()).sentence() : BandMark.words(told);
    }
}
