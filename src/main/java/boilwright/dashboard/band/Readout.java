package boilwright.dashboard.band;

import boilwright.dashboard.text.WindowText;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;

/**
 * What the clock shows, which clock it is, and what happens at the cursor or is pointed at. Its labels are no part of the layout
 * around them, so that a running clock lays nothing else out.
 */
final class Readout extends Region {
    private static final double GAP_EMS = 0.8;
    private static final String WIDEST_CLOCK = "00:00:00";

    private final BandModel model;
    private final Label clock = new Label(WIDEST_CLOCK);
    private final Label which = new Label();
    private final Label words = new Label();

    Readout(BandModel model) {
        this.model = model;
        getStyleClass().add("band-readout");
        clock.getStyleClass().add("band-clock");
        which.getStyleClass().add("band-which");
        words.getStyleClass().add("band-words");
        words.setWrapText(true);
        getChildren().addAll(clock, which, words);
        getChildren().forEach(label -> label.setManaged(false));
        model.axisProperty().addListener((property, before, now) -> arrange());
        model.staleProperty().addListener((property, before, now) -> arrange());
        model.cursorSProperty().addListener((property, before, now) -> tell());
        model.pointedProperty().addListener((property, before, now) -> tell());
        clock.fontProperty().addListener((property, before, now) -> requestLayout());
        tell();
    }

    private void arrange() {
        tell();
        requestLayout();
    }

    private void tell() {
        boolean otherClock = !which.getText().equals(whichText());
        clock.setText(model.clock());
        which.setText(whichText());
        words.setText(model.words());
        if (otherClock) {
            requestLayout();
        }
    }

    private String whichText() {
        boolean stale = model.staleProperty().get() && model.axis() != null;
        return stale ? WindowText.say("band.stale", model.clockName()) : model.clockName();
    }

    @Override
    protected double computePrefHeight(double width) {
        return snapSizeY(2.4 * words.getFont().getSize());
    }

    @Override
    protected double computePrefWidth(double height) {
        return 0;
    }

    @Override
    protected void layoutChildren() {
        double em = words.getFont().getSize();
        double gap = GAP_EMS * em;
        double x = 0;
        if (model.axis() != null) {
            String shown = clock.getText();
            clock.setText(WIDEST_CLOCK);
            x = place(clock, x, clock.prefWidth(-1)) + 0.5 * gap;
            clock.setText(shown);
            x = place(which, x, Math.min(which.prefWidth(-1), 0.4 * getWidth())) + 2 * gap;
        }
        place(words, x, getWidth() - x);
    }

    private double place(Label label, double x, double width) {
        double wide = snapSizeX(Math.max(0, width));
        label.resizeRelocate(snapPositionX(x), 0, wide, getHeight());
        return x + wide;
    }
}
