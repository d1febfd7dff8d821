package boilwright.dashboard.drawing;

import boilwright.answers.Margin;
import boilwright.dashboard.model.MomentState;
import boilwright.dashboard.model.TemperatureScale;
import boilwright.dashboard.text.Lettering;
import boilwright.dashboard.text.WindowText;
import boilwright.fluid.WorkingFluid;
import boilwright.rig.Rig;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javafx.application.Platform;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.css.CssMetaData;
import javafx.css.Styleable;
import javafx.geometry.Bounds;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Region;
import javafx.util.Duration;

/**
 * The pump, drawn to scale from the rig's own numbers and cut open, at one moment of its run. Its parts can be pointed at, and
 * walked through with Tab and the arrow keys; each tells its figures. A click, Enter or Space opens a part's card beside it; while
 * it is open it goes along with the focus.
 */
public final class PumpDrawing extends Region implements PaletteProperties.Owner {
    private static final double USUAL_SIZE = 580;
    private static final double GROWTH = 1900;
    private static final double SMALLEST = 0.88;
    private static final double LARGEST = 1.75;
    private static final Duration TIP_AFTER = Duration.millis(250);

    private final Canvas canvas = new Canvas();
    private final Label lettering = new Label("m");
    private final PartCard card = new PartCard();
    private final Tooltip tip = new Tooltip();
    private final PaletteProperties colors = new PaletteProperties(this, this::recolour);
    private final Map<Part, PartSpot> spots = new HashMap<>();
    private final ReadOnlyObjectWrapper<PartReading> focusedPart = new ReadOnlyObjectWrapper<>(this, "focusedPart");
    private final Set<Part> guesses = new HashSet<>();
    private Rig rig;
    private WorkingFluid fluid;
    private PumpShape shape;
    private MomentState moment;
    private List<Margin> margins = List.of();
    private TemperatureScale scale;
    private Lettering type;
    private Picture picture;
    private Map<Part, Bounds> places = Map.of();
    private Part hovered;
    private Part focused;
    private Part carded;

    public PumpDrawing() {
        getStyleClass().add("pump-drawing");
        setAccessibleRole(AccessibleRole.PARENT);
        setAccessibleText(WindowText.say("drawing.accessible"));
        lettering.setVisible(false);
        lettering.setManaged(false);
        canvas.setMouseTransparent(true);
        getChildren().addAll(canvas, lettering);
        tip.setShowDelay(TIP_AFTER);
        tip.setShowDuration(Duration.INDEFINITE);
        card.setOnHidden(event -> carded(null));
        sceneProperty().addListener((property, before, now) -> card.hide());
        lettering.fontProperty().addListener((property, before, now) -> refit());
        addEventHandler(KeyEvent.KEY_PRESSED, this::walk);
    }

    /**
     * Draws another rig.
     *
     * @param rig the rig
     * @param fluid its fluid
     */
    public void setRig(Rig rig, WorkingFluid fluid) {
        if (this.rig != null && this.rig.stages().size() != rig.stages().size()) {
            moment = null;
        }
        this.rig = rig;
        this.fluid = fluid;
        shape = PumpShape.of(rig);
        recolour();
    }

    /** Draws another moment of the rig's run. */
    public void setMoment(MomentState moment) {
        this.moment = moment;
        requestLayout();
    }

    /** Marks the parts to which these fields belong as guessed, such as {@code stages[0].throatGap}. */
    public void setGuesses(Set<String> fieldPaths) {
        guesses.clear();
        guesses.addAll(Part.ofFields(fieldPaths));
        requestLayout();
    }

    /** The margins of the rig; each shows in the reading of the part where it lives. */
    public void setMargins(List<Margin> margins) {
        this.margins = List.copyOf(margins);
        requestLayout();
    }

    /** What the part under the mouse, or else the one with the focus, reads; null for none. */
    public PartReading focusedPart() {
        return focusedPart.get();
    }

    @Override
    public PaletteProperties colors() {
        return colors;
    }

    private void recolour() {
        if (rig != null) {
            scale = TemperatureScale.of(rig, fluid, colors.palette().look());
        }
        refit();
    }

    private void refit() {
        picture = null;
        type = null;
        requestLayout();
    }

    @Override
    protected void layoutChildren() {
        double width = snapSizeX(getWidth());
        double height = snapSizeY(getHeight());
        if (shape == null || width < 1 || height < 1) {
            return;
        }
        if (canvas.getWidth() != width || canvas.getHeight() != height) {
            card.hide();
            canvas.setWidth(width);
            canvas.setHeight(height);
            picture = null;
            type = null;
        }
        if (picture == null) {
            fit(width, height);
        }
        if (moment == null || moment.jets().size() != shape.jets.size()) {
            canvas.getGraphicsContext2D().clearRect(0, 0, width, height);
        } else {
            List<Bounds> guessed = guesses.stream()
                    .filter(places::containsKey)
                    .map(places::get)
                    .toList();
            picture.paint(moment, guesses, guessed);
        }
        read();
    }

    private void fit(double width, double height) {
        if (type == null) {
            double least = Math.min(width, height);
            double factor = Math.max(SMALLEST, Math.min(LARGEST, 0.95 + (least - USUAL_SIZE) / GROWTH));
            type = new Lettering(
                    lettering.getFont().getFamily(),
                    Math.round(2 * factor * lettering.getFont().getSize()) / 2.0);
        }
        picture = new Picture(canvas.getGraphicsContext2D(), shape, colors.palette(), scale, type, width, height);
        places = picture.places();
        placeSpots();
    }

    private void placeSpots() {
        List<Part> gone = spots.keySet().stream()
                .filter(part -> !places.containsKey(part))
                .toList();
        for (Part part : gone) {
            getChildren().remove(spots.remove(part));
            if (part.equals(carded)) {
                card.hide();
            }
        }
        List<javafx.scene.Node> order = new ArrayList<>();
        places.forEach((part, bounds) -> {
            PartSpot spot = spots.computeIfAbsent(part, this::spot);
            spot.setAccessibleText(Readings.name(shape, part));
            spot.resizeRelocate(bounds.getMinX(), bounds.getMinY(), bounds.getWidth(), bounds.getHeight());
            order.add(spot);
        });
        // the spots above the canvas; set anew only when they changed, since that moves the focus
        List<javafx.scene.Node> wanted = new ArrayList<>();
        wanted.add(canvas);
        wanted.add(lettering);
        wanted.addAll(order);
        if (!getChildren().equals(wanted)) {
            getChildren().setAll(wanted);
        }
    }

    private PartSpot spot(Part part) {
        PartSpot spot = new PartSpot(part, this::pointed, this::open);
        Tooltip.install(spot, tip);
        return spot;
    }

    private void open(PartSpot spot) {
        PartReading reading = reading(spot.part());
        card.show(spot, reading);
        carded(spot.part());
    }

    /** A part whose card is open needs no tip beside it. */
    private void carded(Part part) {
        if (spots.containsKey(carded)) {
            Tooltip.install(spots.get(carded), tip);
        }
        carded = part;
        if (part != null) {
            Tooltip.uninstall(spots.get(part), tip);
        }
    }

    private void pointed(PartSpot spot) {
        if (spot.isHover()) {
            hovered = spot.part();
        } else if (spot.part().equals(hovered)) {
            hovered = null;
        }
        if (spot.isFocused()) {
            focused = spot.part();
        } else if (spot.part().equals(focused)) {
            focused = null;
        }
        if (card.isShowing() && spot.isFocused() && !spot.part().equals(carded)) {
            open(spot);
        } else if (getScene() == null || !(getScene().getFocusOwner() instanceof PartSpot)) {
            card.hide();
        }
        read();
    }

    /** The reading of the part that is pointed at, if any, and what an open card tells. */
    private void read() {
        if (carded != null && places.containsKey(carded)) {
            tellCard(carded);
        }
        Part part = hovered != null ? hovered : focused;
        if (part == null || !places.containsKey(part)) {
            focusedPart.set(null);
            return;
        }
        PartReading reading = reading(part);
        focusedPart.set(reading);
        spots.get(part).setAccessibleText(reading.spoken());
        tip.setText(reading.name() + "\n" + String.join("\n", reading.lines()));
    }

    /** What an open card tells now; one that needs another height is set beside the part anew, after this layout. */
    private void tellCard(Part part) {
        PartReading reading = reading(part);
        if (card.isAsHighFor(reading)) {
            card.tell(reading);
        } else {
            Platform.runLater(() -> {
                if (part.equals(carded)) {
                    open(spots.get(part));
                }
            });
        }
    }

    private PartReading reading(Part part) {
        return new Readings(shape, moment, margins, guesses).of(part);
    }

    /** The card of a part; showing while it is open. */
    PartCard card() {
        return card;
    }

    /** The picture as it is fitted into the sheet; null before the first layout. */
    Picture picture() {
        return picture;
    }

    /** Arrow keys go to the nearest part that way. */
    private void walk(KeyEvent event) {
        if (focused == null) {
            return;
        }
        double[] way = switch (event.getCode()) {
            case UP -> new double[] {0, -1};
            case DOWN -> new double[] {0, 1};
            case LEFT -> new double[] {-1, 0};
            case RIGHT -> new double[] {1, 0};
            default -> null;
        };
        if (way != null) {
            Part next = nearest(places, focused, way[0], way[1]);
            if (next != null) {
                spots.get(next).requestFocus();
            }
            event.consume();
        }
    }

    @Override
    protected double computePrefWidth(double height) {
        return USUAL_SIZE;
    }

    @Override
    protected double computePrefHeight(double width) {
        return USUAL_SIZE;
    }

    @Override
    protected double computeMinWidth(double height) {
        return 0;
    }

    @Override
    protected double computeMinHeight(double width) {
        return 0;
    }

    @Override
    public List<CssMetaData<? extends Styleable, ?>> getCssMetaData() {
        return PaletteProperties.cssMetaData();
    }

    /** How much a step aside counts against a step ahead. */
    private static final double ASIDE = 2.5;

    /** The nearest in a direction, or null when none lies there. */
    static Part nearest(Map<Part, Bounds> places, Part from, double dx, double dy) {
        Bounds here = places.get(from);
        Part best = null;
        double least = Double.MAX_VALUE;
        for (Map.Entry<Part, Bounds> entry : places.entrySet()) {
            double x = entry.getValue().getCenterX() - here.getCenterX();
            double y = entry.getValue().getCenterY() - here.getCenterY();
            double ahead = x * dx + y * dy;
            double aside = Math.abs(x * dy - y * dx);
            double cost = ahead + ASIDE * aside;
            if (!entry.getKey().equals(from) && ahead > 1 && cost < least) {
                least = cost;
                best = entry.getKey();
            }
        }
        return best;
    }
}
