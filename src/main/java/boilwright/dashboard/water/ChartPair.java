package boilwright.dashboard.water;

import javafx.geometry.Orientation;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;

/** Two charts beside one another where there is room for both, else one below the other; each may be left out. */
final class ChartPair extends Region {
    private static final double BESIDE_EMS = 84;
    private static final double HEIGHT_EMS = 24;
    private static final double GAP_EMS = 1.5;

    private final Region first;
    private final Region second;
    private final Label lettering = new Label("m");

    ChartPair(Region first, Region second) {
        this.first = first;
        this.second = second;
        lettering.setVisible(false);
        lettering.setManaged(false);
        getChildren().addAll(first, second, lettering);
        show(false, false);
    }

    /** Shows which of them are there. */
    void show(boolean withFirst, boolean withSecond) {
        first.setVisible(withFirst);
        second.setVisible(withSecond);
        requestLayout();
    }

    private double em() {
        return lettering.getFont().getSize();
    }

    private boolean both() {
        return first.isVisible() && second.isVisible();
    }

    private boolean beside(double width) {
        return both() && width >= BESIDE_EMS * em();
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected double computePrefHeight(double width) {
        if (!first.isVisible() && !second.isVisible()) {
            return 0;
        }
        boolean stacked = both() && !beside(width);
        return (stacked ? 2 * HEIGHT_EMS + GAP_EMS : HEIGHT_EMS) * em();
    }

    @Override
    protected double computeMinWidth(double height) {
        return 0;
    }

    @Override
    protected void layoutChildren() {
        double width = getWidth();
        double height = getHeight();
        double gap = GAP_EMS * em();
        if (beside(width)) {
            double half = (width - gap) / 2;
            first.resizeRelocate(0, 0, half, height);
            second.resizeRelocate(half + gap, 0, half, height);
        } else if (both()) {
            double half = (height - gap) / 2;
            first.resizeRelocate(0, 0, width, half);
            second.resizeRelocate(0, half + gap, width, half);
        } else {
            first.resizeRelocate(0, 0, width, height);
            second.resizeRelocate(0, 0, width, height);
        }
    }
}
