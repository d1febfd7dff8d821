package boilwright.dashboard.water;

import boilwright.answers.WaterAnswer;
import boilwright.dashboard.model.TemperatureScale;
import boilwright.dashboard.text.WindowText;
import boilwright.fluid.Water;
import boilwright.fluid.WorkingFluid;
import boilwright.rig.Rig;
import boilwright.rig.Supply;
import boilwright.rig.SupplyKind;
import boilwright.water.CurvePair;
import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.geometry.Rectangle2D;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;

/** The circuit as it is plumbed: the supply at the left, the elements in the order of the water, and the way back. */
final class CircuitView extends Region {
    private static final double DARK_INK = 0.5;

    private final Canvas canvas = new Canvas();
    private final Label lettering = new Label("m");
    private final Label drain = new Label(WindowText.say("water.circuit.drain"));
    private final List<ElementBox> boxes = new ArrayList<>();
    private Rig rig;
    private WorkingFluid fluid;
    private WaterAnswer answer;
    private ElementBox supply;

    CircuitView() {
        setId("water-circuit");
        getStyleClass().add("circuit");
        setAccessibleRole(AccessibleRole.PARENT);
        setAccessibleText(WindowText.say("water.circuit.accessible"));
        lettering.setVisible(false);
        lettering.setManaged(false);
        canvas.setMouseTransparent(true);
        drain.getStyleClass().add("circuit-drain");
        drain.setAlignment(Pos.CENTER_RIGHT);
        lettering.textFillProperty().addListener((property, before, now) -> requestLayout());
        getChildren().addAll(canvas, lettering);
    }

    /** Shows a rig's circuit with its figures. */
    void show(WaterAnswer water, CurvePair curves, WorkingFluid fluid) {
        answer = water;
        rig = water.check().rig();
        this.fluid = fluid;
        boxes.clear();
        for (int i = 0; i < water.elements().size(); i++) {
            boxes.add(ElementBox.of(
                    i, water.elements().get(i), Water.density(rig.cooling().inletTemperatureK())));
        }
        Supply from = rig.cooling().supply();
        List<String> lines = new ArrayList<>();
        lines.add(WaterWords.temperature(from.temperatureK()));
        if (!from.isAir()) {
            lines.add(WaterWords.flow(water.steady().flow().volumeFlowM3PerS()));
        }
        water.capacityW().ifPresent(w -> lines.add(WindowText.say("water.supply.capacity", WaterWords.power(w))));
        String about = WaterWords.about(from, curves);
        if (!about.isEmpty()) {
            lines.add(about);
        }
        supply = ElementBox.ofSupply(WaterWords.kind(from.kind()), lines);
        getChildren().setAll(canvas, lettering, supply);
        getChildren().addAll(boxes);
        if (drains()) {
            getChildren().add(drain);
        }
        requestLayout();
    }

    private boolean drains() {
        return rig.cooling().supply().kind() == SupplyKind.TAP && !boxes.isEmpty();
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    private double em() {
        return lettering.getFont().getSize();
    }

    private CircuitGeometry geometry(double width) {
        double em = em();
        double height = supply.prefHeight(-1);
        for (ElementBox box : boxes) {
            height = Math.max(height, box.prefHeight(-1));
        }
        CircuitPlan plan = CircuitPlan.of(rig.cooling().elements(), CircuitGeometry.mostColumns(width, em));
        return new CircuitGeometry(
                plan, answer.elements(), rig.cooling().inletTemperatureK(), width, snapSizeY(height), em);
    }

    @Override
    protected double computePrefHeight(double width) {
        return answer == null
                ? 8 * em()
                : geometry(width > 0 ? width : 50 * em()).height();
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    protected double computePrefWidth(double height) {
        return 50 * em();
    }

    @Override
    protected double computeMinWidth(double height) {
        return 0;
    }

    @Override
    protected void layoutChildren() {
        if (answer == null || getWidth() < 1) {
            return;
        }
        CircuitGeometry places = geometry(getWidth());
        canvas.setWidth(snapSizeX(getWidth()));
        canvas.setHeight(snapSizeY(getHeight()));
        put(supply, places.supply());
        for (int i = 0; i < boxes.size(); i++) {
            put(boxes.get(i), places.box(i));
        }
        if (drains()) {
            put(drain, places.end());
        }
        paint(places);
    }

    private void put(Region node, Rectangle2D place) {
        node.resizeRelocate(
                snapPositionX(place.getMinX()),
                snapPositionY(place.getMinY()),
                snapSizeX(place.getWidth()),
                snapSizeY(place.getHeight()));
    }

    private void paint(CircuitGeometry places) {
        GraphicsContext g = canvas.getGraphicsContext2D();
        g.clearRect(0, 0, canvas.getWidth(), canvas.getHeight());
        Color ink = (Color) lettering.getTextFill();
        TemperatureScale scale = TemperatureScale.of(
                rig,
                fluid,
                ink.getBrightness() < DARK_INK ? TemperatureScale.Look.ON_LIGHT : TemperatureScale.Look.ON_DARK);
        List<CircuitGeometry.Pipe> pipes = new ArrayList<>(places.pipes());
        if (drains()) {
            pipes.set(pipes.size() - 1, places.toDrain());
        }
        g.setLineJoin(StrokeLineJoin.ROUND);
        g.setLineCap(StrokeLineCap.ROUND);
        double wide = Math.max(6, 0.55 * em());
        g.setStroke(ink);
        g.setLineWidth(wide);
        pipes.forEach(pipe -> stroke(g, pipe));
        g.setLineWidth(wide - 2);
        for (CircuitGeometry.Pipe pipe : pipes) {
            g.setStroke(scale.at(pipe.temperatureK()));
            stroke(g, pipe);
        }
        g.setFill(ink);
        pipes.stream().filter(pipe -> !pipe.idle()).forEach(pipe -> arrow(g, pipe));
    }

    private static void stroke(GraphicsContext g, CircuitGeometry.Pipe pipe) {
        g.setLineDashes(pipe.idle() ? new double[] {6, 8} : null);
        g.strokePolyline(pipe.xs(), pipe.ys(), pipe.xs().length);
    }

    /** Which way the water runs: a small arrow in the middle of the longest straight piece. */
    private void arrow(GraphicsContext g, CircuitGeometry.Pipe pipe) {
        int longest = 0;
        double length = 0;
        for (int i = 0; i + 1 < pipe.xs().length; i++) {
            double piece = Math.abs(pipe.xs()[i + 1] - pipe.xs()[i]) + Math.abs(pipe.ys()[i + 1] - pipe.ys()[i]);
            if (piece > length) {
                length = piece;
                longest = i;
            }
        }
        double size = 0.42 * em();
        if (length < 2.6 * size) {
            return;
        }
        double dx = Math.signum(pipe.xs()[longest + 1] - pipe.xs()[longest]) * size;
        double dy = Math.signum(pipe.ys()[longest + 1] - pipe.ys()[longest]) * size;
        double x = (pipe.xs()[longest + 1] + pipe.xs()[longest]) / 2;
        double y = (pipe.ys()[longest + 1] + pipe.ys()[longest]) / 2;
        g.fillPolygon(
                new double[] {x + dx, x - dx + dy, x - dx - dy}, new double[] {y + dy, y - dy - dx, y - dy + dx}, 3);
    }
}
