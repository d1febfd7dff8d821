package boilwright.dashboard.band;

import boilwright.dashboard.model.RunPart;
import boilwright.dashboard.text.WindowText;
import java.util.Arrays;
import java.util.List;
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
        clock.setText(model.clock());
        which.setText(which(model.clockName()));
        words.setText(model.words());
    }

    private String which(String clockName) {
        return model.staleProperty().get() && model.axis() != null
                ? WindowText.say("band.stale", clockName)
                : clockName;
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
            x = place(clock, x, widest(clock, List.of(WIDEST_CLOCK))) + 0.5 * gap;
            List<String> names = Arrays.stream(RunPart.values())
                    .map(part -> which(BandAxis.clockName(part)))
                    .toList();
            x = place(which, x, Math.min(widest(which, names), 0.4 * getWidth())) + 2 * gap;
        }
        place(words, x, getWidth() - x);
    }

    /** Room for any of these texts, so that what stands beside them stays where it is. */
    private static double widest(Label label, List<String> texts) {
        String shown = label.getText();
        double most = 0;
        for (String text : texts) {
            label.setText(text);
            most = Math.max(most, label.prefWidth(-1));
        }
        label.setText(shown);
        return most;
    }

    private double place(Label label, double x, double width) {
        double wide = snapSizeX(Math.max(0, width));
        label.resizeRelocate(snapPositionX(x), 0, wide, getHeight());
        return x + wide;
    }
}
