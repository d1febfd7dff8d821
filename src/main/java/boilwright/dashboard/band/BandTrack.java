package boilwright.dashboard.band;

import boilwright.dashboard.text.WindowText;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javafx.scene.AccessibleAction;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.shape.LineTo;
import javafx.scene.shape.MoveTo;
import javafx.scene.shape.Path;
import javafx.scene.shape.PathElement;

/**
 * The band itself: what happens to the pump above, what happens to single jets below, the stretches between, and the cursor over
 * all of it. A move of the cursor shifts two nodes, hides the words they lie over, and lays nothing out.
 */
final class BandTrack extends Region {
    private static final double LEADER_EMS = 0.65;
    private static final double STRIP_EMS = 1.75;
    private static final double GAP_EMS = 0.35;

    private final BandModel model;
    private final Label lettering = new Label("m");
    private final Region frame = new Region();
    private final Path leaders = new Path();
    private final Region line = new Region();
    private final Region knob = new Region();
    private final List<StretchBox> stretches = new ArrayList<>();
    private final List<MarkChip> chips = new ArrayList<>();
    private final Map<BandMark, MarkChip> chipOf = new HashMap<>();
    private double left;
    private double width;

    BandTrack(BandModel model) {
        this.model = model;
        getStyleClass().add("band-track");
        frame.getStyleClass().add("strip-frame");
        leaders.getStyleClass().add("leaders");
        line.getStyleClass().add("cursor-line");
        knob.getStyleClass().add("cursor-knob");
        for (javafx.scene.Node node : List.of(frame, leaders, line, knob, lettering)) {
            node.setManaged(false);
            node.setMouseTransparent(true);
        }
        lettering.setVisible(false);
        lettering.fontProperty().addListener((property, before, now) -> requestLayout());
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.SLIDER);
        model.axisProperty().addListener((property, before, now) -> build());
        model.cursorSProperty().addListener((property, before, now) -> moveCursor());
        addEventHandler(MouseEvent.MOUSE_PRESSED, this::press);
        addEventHandler(MouseEvent.MOUSE_DRAGGED, this::drag);
        addEventHandler(KeyEvent.KEY_PRESSED, this::key);
        build();
    }

    private void build() {
        boolean chipHadFocus = chips.stream().anyMatch(MarkChip::isFocused);
        stretches.clear();
        chips.clear();
        chipOf.clear();
        BandAxis axis = model.axis();
        if (axis != null) {
            axis.stretches().forEach(stretch -> stretches.add(new StretchBox(stretch)));
            axis.marks().forEach(mark -> chips.add(chip(mark)));
        }
        getChildren().setAll(stretches);
        getChildren().addAll(frame, leaders, line);
        getChildren().addAll(chips);
        getChildren().addAll(knob, lettering);
        line.setVisible(axis != null);
        knob.setVisible(axis != null);
        if (chipHadFocus) {
            requestFocus();
        }
        requestLayout();
    }

    private MarkChip chip(BandMark mark) {
        MarkChip chip = new MarkChip(mark);
        chip.setOnMousePressed(event -> {
            if (event.getButton() == MouseButton.PRIMARY) {
                chip.requestFocus();
                model.seek(chip.marks().get(0).axisS());
            }
            event.consume();
        });
        chip.hoverProperty().addListener((property, before, now) -> point());
        chip.focusedProperty().addListener((property, before, now) -> point());
        chipOf.put(mark, chip);
        return chip;
    }

    /** The label under the mouse, or else the one with the focus, is the one that is told. */
    private void point() {
        model.pointedProperty()
                .set(chips.stream()
                        .filter(MarkChip::isHover)
                        .findFirst()
                        .or(() -> chips.stream().filter(MarkChip::isFocused).findFirst())
                        .map(MarkChip::marks)
                        .orElse(List.of()));
        offerToTab();
    }

    /** Of all labels only one is a stop for the Tab key: the focused one, or else the one nearest to the cursor. */
    private void offerToTab() {
        MarkChip stop = chips.stream().filter(MarkChip::isFocused).findFirst().orElseGet(this::nearestToCursor);
        chips.forEach(chip -> chip.setFocusTraversable(chip == stop));
    }

    private MarkChip nearestToCursor() {
        double cursor = model.cursorShare();
        return chips.stream()
                .filter(MarkChip::isVisible)
                .min(Comparator.comparingDouble(chip ->
                        Math.abs(model.axis().scale().share(chip.own().get(0).axisS()) - cursor)))
                .orElse(null);
    }

    private double em() {
        return lettering.getFont().getSize();
    }

    private double laneHeight() {
        return chips.isEmpty() ? snapSizeY(1.4 * em()) : snapSizeY(chips.get(0).prefHeight(-1));
    }

    @Override
    protected double computePrefHeight(double forWidth) {
        return snappedTopInset() + snappedBottomInset() + 2 * (laneHeight() + leader()) + strip();
    }

    @Override
    protected double computeMinHeight(double forWidth) {
        return computePrefHeight(forWidth);
    }

    @Override
    protected double computeMinWidth(double height) {
        return 0;
    }

    private double leader() {
        return snapSizeY(LEADER_EMS * em());
    }

    private double strip() {
        return snapSizeY(STRIP_EMS * em());
    }

    @Override
    protected void layoutChildren() {
        left = snappedLeftInset();
        width = Math.max(1, getWidth() - left - snappedRightInset());
        double lane = laneHeight();
        double top = snappedTopInset() + lane + leader();
        double bottom = top + strip();
        frame.resizeRelocate(left, top, width, bottom - top);
        if (model.axis() != null) {
            AxisScale scale = model.axis().scale();
            for (StretchBox box : stretches) {
                double from =
                        snapPositionX(left + width * scale.share(box.stretch().startS()));
                double to =
                        snapPositionX(left + width * scale.share(box.stretch().endS()));
                box.place(from, top, to - from, bottom - top);
            }
            List<PathElement> lines = new ArrayList<>();
            placeChips(false, snappedTopInset(), top, lines);
            placeChips(true, bottom + leader(), bottom, lines);
            leaders.getElements().setAll(lines);
        }
        double thick = snapSizeX(Math.max(1, em() / 8));
        line.resizeRelocate(-thick / 2, snappedTopInset(), thick, bottom - top + 2 * (lane + leader()));
        double size = strip() * 1.05;
        knob.resizeRelocate(-size / 4, (top + bottom - size) / 2, size / 2, size);
        moveCursor();
    }

    private void placeChips(boolean ofJets, double laneTop, double edge, List<PathElement> lines) {
        List<BandMark> marks = model.axis().marks().stream()
                .filter(mark -> mark.sign().isOfJet() == ofJets)
                .toList();
        double gap = snapSizeX(GAP_EMS * em());
        List<ChipRow.Chip> row = ChipRow.place(
                marks,
                model.axis().scale(),
                left,
                left + width,
                gap,
                group -> chipOf.get(group.get(0)).widthFor(group));
        marks.forEach(mark -> chipOf.get(mark).setVisible(false));
        double lane = laneHeight();
        for (ChipRow.Chip place : row) {
            MarkChip chip = chipOf.get(place.marks().get(0));
            chip.show(place.marks());
            chip.setVisible(true);
            chip.resizeRelocate(snapPositionX(place.left()), laneTop, place.width(), lane);
            double half = Math.min(place.width() / 2, 0.8 * em());
            double near = Math.max(place.left() + half, Math.min(place.left() + place.width() - half, place.x()));
            double at = Math.floor(place.x()) + 0.5;
            lines.add(new MoveTo(near, ofJets ? laneTop : laneTop + lane));
            lines.add(new LineTo(at, edge + (ofJets ? 1 : -1) * leader() / 3));
            lines.add(new LineTo(at, edge));
        }
    }

    private void moveCursor() {
        double x = left + width * model.cursorShare();
        line.setTranslateX(snapPositionX(x));
        knob.setTranslateX(x);
        double half = knob.getWidth() / 2;
        stretches.forEach(box -> box.clear(x - half, x + half));
        offerToTab();
        notifyAccessibleAttributeChanged(AccessibleAttribute.VALUE);
    }

    private void press(MouseEvent event) {
        if (event.getButton() == MouseButton.PRIMARY) {
            requestFocus();
            model.seekShare((event.getX() - left) / width);
            event.consume();
        }
    }

    private void drag(MouseEvent event) {
        if (event.getButton() == MouseButton.PRIMARY) {
            model.seekShare((sceneToLocal(event.getSceneX(), event.getSceneY()).getX() - left) / width);
            event.consume();
        }
    }

    private void key(KeyEvent event) {
        if (model.axis() == null || event.isShortcutDown() || event.isAltDown()) {
            return;
        }
        MarkChip focused =
                chips.stream().filter(MarkChip::isFocused).findFirst().orElse(null);
        if (focused != null && keyOnChip(focused, event.getCode()) || keyOnBand(event.getCode())) {
            event.consume();
        }
    }

    /** On a label left and right go from label to label; Enter leads the cursor to it. */
    private boolean keyOnChip(MarkChip focused, KeyCode code) {
        switch (code) {
            case LEFT -> focusFrom(focused, -1);
            case RIGHT -> focusFrom(focused, 1);
            case ENTER -> model.seek(focused.marks().get(0).axisS());
            default -> {
                return false;
            }
        }
        return true;
    }

    private void focusFrom(MarkChip from, int way) {
        List<MarkChip> seen = chips.stream().filter(MarkChip::isVisible).toList();
        int to = seen.indexOf(from) + way;
        if (to >= 0 && to < seen.size()) {
            seen.get(to).setFocusTraversable(true);
            seen.get(to).requestFocus();
        }
    }

    private boolean keyOnBand(KeyCode code) {
        switch (code) {
            case LEFT -> model.stepBack();
            case RIGHT -> model.stepForward();
            case PAGE_UP -> model.previousMark();
            case PAGE_DOWN -> model.nextMark();
            case HOME -> model.toStart();
            case END -> model.toEnd();
            case SPACE -> model.playOrPause();
            default -> {
                return false;
            }
        }
        return true;
    }

    @Override
    public Object queryAccessibleAttribute(AccessibleAttribute attribute, Object... parameters) {
        return switch (attribute) {
            case VALUE -> model.cursorSProperty().get();
            case MIN_VALUE -> 0.0;
            case MAX_VALUE -> model.axis() == null ? 0.0 : model.axis().endS();
            case TEXT -> WindowText.say("band.accessible", model.clock(), model.clockName(), model.words());
            default -> super.queryAccessibleAttribute(attribute, parameters);
        };
    }

    @Override
    public void executeAccessibleAction(AccessibleAction action, Object... parameters) {
        switch (action) {
            case INCREMENT -> model.stepForward();
            case DECREMENT -> model.stepBack();
            case SET_VALUE -> {
                if (parameters.length > 0 && parameters[0] instanceof Double s) {
                    model.seek(s);
                }
            }
            default -> super.executeAccessibleAction(action, parameters);
        }
    }

    /** A stretch with its name and its length, as far as they fit in. */
    private static final class StretchBox extends HBox {
        private final Stretch stretch;
        private final Label name = new Label();
        private final Label length = new Label();

        StretchBox(Stretch stretch) {
            this.stretch = stretch;
            getStyleClass().addAll("stretch", stretch.id());
            if (stretch.plateau()) {
                getStyleClass().add("plateau");
            }
            name.getStyleClass().add("stretch-name");
            length.getStyleClass().add("stretch-length");
            name.setText(stretch.name());
            length.setText(stretch.length());
            name.setMinWidth(USE_PREF_SIZE);
            length.setMinWidth(USE_PREF_SIZE);
            setMouseTransparent(true);
            setManaged(false);
            getChildren().addAll(name, length);
        }

        Stretch stretch() {
            return stretch;
        }

        /** Takes a place, and leaves out what would not fit. */
        void place(double x, double y, double width, double height) {
            double edges = snappedLeftInset() + snappedRightInset();
            double named = edges + name.prefWidth(-1);
            show(name, named <= width);
            show(length, !length.getText().isEmpty() && named + getSpacing() + length.prefWidth(-1) <= width);
            resizeRelocate(x, y, width, height);
        }

        /** Lets words go that something lies over, from one x to another in the band; half a word says nothing. */
        void clear(double from, double to) {
            double start = getLayoutX() + snappedLeftInset();
            double nameEnd = start + name.prefWidth(-1);
            double lengthStart = nameEnd + getSpacing();
            name.setOpacity(from < nameEnd && to > start ? 0 : 1);
            length.setOpacity(from < lengthStart + length.prefWidth(-1) && to > lengthStart ? 0 : 1);
        }

        private static void show(Label label, boolean shown) {
            label.setVisible(shown);
            label.setManaged(shown);
        }
    }
}
