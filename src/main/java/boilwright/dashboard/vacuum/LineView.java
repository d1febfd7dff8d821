package boilwright.dashboard.vacuum;

import boilwright.answers.VacuumAnswer;
import boilwright.dashboard.text.WindowText;
import boilwright.rig.GasSide;
import boilwright.rig.LinePiece;
import boilwright.rig.PieceKind;
import boilwright.rig.Rig;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import boilwright.vacuum.PieceCost;
import boilwright.vacuum.VacuumState;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;

/**
 * The way of the gas from the chamber to the backing pump, piece by piece. Heights go with the root of the bore, so that a
 * narrow hose beside a wide pump can still be seen.
 */
final class LineView extends Region {
    private static final double DRAWING_EM = 6;
    private static final double LEAST_HALF = 3;

    /** A piece that takes this share of the lost speed, or more, is pointed at. */
    private static final double WORST_SHARE = 0.5;

    private static final int HOSE_RINGS = 6;
    private static final int VANES = 5;

    /** A place along the way: a vessel or a piece. */
    private record Stop(
            String title, String lines, Optional<LinePiece> piece, double boreM, double outM, boolean worst) {}

    private final Canvas canvas = new Canvas();
    private final Label lettering = new Label("m");
    private final List<Stop> stops = new ArrayList<>();
    private final List<Label> labels = new ArrayList<>();

    LineView() {
        setId("vacuum-line");
        getStyleClass().add("vacuum-line");
        setAccessibleRole(AccessibleRole.PARENT);
        setAccessibleText(WindowText.say("vacuum.line.accessible"));
        canvas.setMouseTransparent(true);
        lettering.setVisible(false);
        lettering.setManaged(false);
        lettering.textFillProperty().addListener((property, before, now) -> requestLayout());
        getChildren().addAll(canvas, lettering);
    }

    void show(VacuumAnswer answer) {
        Rig rig = answer.check().rig();
        GasSide side = rig.vacuum().orElseThrow();
        VacuumState end = answer.end();
        stops.clear();
        double bore = rig.body().innerDiameterM();
        stops.add(new Stop(
                WindowText.say("vacuum.line.chamber"),
                pressure(end.chamberPa()),
                Optional.empty(),
                2 * bore,
                2 * bore,
                false));
        for (int i = 0; i < side.line().size(); i++) {
            LinePiece piece = side.line().get(i);
            PieceCost cost = end.pieces().get(i);
            boolean worst = cost.shareOfLostSpeed() >= WORST_SHARE;
            String share = WindowText.say(
                    worst ? "vacuum.line.worst" : "vacuum.line.share",
                    QuantityWriter.writeAuto(cost.shareOfLostSpeed(), Dimension.FRACTION));
            stops.add(stop(piece, bore(piece) + "\n" + share, worst));
        }
        stops.add(new Stop(
                WindowText.say("vacuum.line.pump"),
                WindowText.say("vacuum.line.inlet", pressure(end.inletPa())),
                Optional.empty(),
                bore,
                bore,
                false));
        rig.foreline()
                .backing()
                .ifPresent(backing -> backing.line().forEach(piece -> stops.add(stop(piece, bore(piece), false))));
        double last = stops.get(stops.size() - 1).outM();
        stops.add(new Stop(
                WindowText.say("vacuum.line.backing"),
                pressure(end.forelinePa()),
                Optional.empty(),
                last,
                last,
                false));
        labels.clear();
        for (int i = 0; i < stops.size(); i++) {
            labels.add(label(i, stops.get(i)));
        }
        getChildren().setAll(canvas, lettering);
        getChildren().addAll(labels);
        requestLayout();
    }

    private static Stop stop(LinePiece piece, String lines, boolean worst) {
        return new Stop(
                piece.name(),
                lines,
                Optional.of(piece),
                piece.shape().inletDiameterM(),
                piece.shape().outletDiameterM(),
                worst);
    }

    private static Label label(int index, Stop stop) {
        Label label = new Label(stop.title() + "\n" + stop.lines());
        label.setId("vacuum-stop-" + index);
        label.getStyleClass().add("vacuum-stop");
        if (stop.worst()) {
            label.getStyleClass().add("vacuum-worst");
        }
        label.setWrapText(true);
        label.setAlignment(Pos.TOP_CENTER);
        label.setFocusTraversable(true);
        label.setAccessibleText(stop.title() + ", " + stop.lines().replace('\n', ','));
        label.setTooltip(new Tooltip(stop.title() + "\n" + stop.lines()));
        return label;
    }

    private static String bore(LinePiece piece) {
        return QuantityWriter.writeAuto(piece.shape().inletDiameterM(), Dimension.LENGTH);
    }

    private static String pressure(double pa) {
        return QuantityWriter.writeAuto(pa, Dimension.PRESSURE);
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    private double em() {
        return lettering.getFont().getSize();
    }

    private double lettersHeight(double width) {
        double highest = 0;
        for (Label label : labels) {
            highest = Math.max(highest, label.prefHeight(width / Math.max(1, stops.size())));
        }
        return highest;
    }

    @Override
    protected double computePrefHeight(double width) {
        return (DRAWING_EM + 1) * em() + lettersHeight(width > 0 ? width : 50 * em());
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    protected double computeMinWidth(double height) {
        return 0;
    }

    @Override
    protected void layoutChildren() {
        if (stops.isEmpty() || getWidth() < 1) {
            return;
        }
        canvas.setWidth(snapSizeX(getWidth()));
        canvas.setHeight(snapSizeY(DRAWING_EM * em()));
        double each = getWidth() / stops.size();
        double top = (DRAWING_EM + 0.4) * em();
        for (int i = 0; i < labels.size(); i++) {
            labels.get(i).resizeRelocate(snapPositionX(i * each), top, snapSizeX(each), lettersHeight(getWidth()));
        }
        paint(each);
    }

    private void paint(double each) {
        GraphicsContext g = canvas.getGraphicsContext2D();
        g.clearRect(0, 0, canvas.getWidth(), canvas.getHeight());
        Color ink = (Color) lettering.getTextFill();
        g.setStroke(ink);
        g.setLineWidth(1.5);
        double middle = canvas.getHeight() / 2;
        double widest = stops.stream().mapToDouble(Stop::boreM).max().orElse(1);
        double scale = (canvas.getHeight() / 2 - 12) / Math.sqrt(widest);
        for (int i = 0; i < stops.size(); i++) {
            Stop stop = stops.get(i);
            double in = Math.max(LEAST_HALF, scale * Math.sqrt(stop.boreM()));
            double out = Math.max(LEAST_HALF, scale * Math.sqrt(stop.outM()));
            double x = i * each;
            g.setFill(ink.deriveColor(0, 1, 1, stop.worst() ? 0.35 : 0.08));
            if (stop.piece().isPresent()) {
                draw(g, stop.piece().get(), x, each, middle, in, out);
                if (stop.worst()) {
                    arrow(g, ink, x + each / 2, middle - in - 4);
                }
            } else {
                vessel(g, x, each, middle, in, i);
            }
        }
    }

    private void vessel(GraphicsContext g, double x, double width, double middle, double half, int index) {
        double inset = width * 0.12;
        g.fillRoundRect(x + inset, middle - half, width - 2 * inset, 2 * half, 12, 12);
        g.strokeRoundRect(x + inset, middle - half, width - 2 * inset, 2 * half, 12, 12);
        if (index > 0) {
            g.strokeLine(x, middle, x + inset, middle);
        }
        if (index < stops.size() - 1) {
            g.strokeLine(x + width - inset, middle, x + width, middle);
        }
    }

    private static void arrow(GraphicsContext g, Color ink, double x, double y) {
        g.setFill(ink);
        g.fillPolygon(new double[] {x, x - 6, x + 6}, new double[] {y, y - 9, y - 9}, 3);
    }

    /**
     * Draws a piece.
     *
     * @param g where; stroke and fill are set
     * @param piece what
     * @param x left edge
     * @param width width
     * @param middle height of the axis
     * @param in half height at the left
     * @param out half height at the right
     */
    private static void draw(
            GraphicsContext g, LinePiece piece, double x, double width, double middle, double in, double out) {
        double[] xs = {x, x + width, x + width, x};
        double[] ys = {middle - in, middle - out, middle + out, middle + in};
        g.fillPolygon(xs, ys, 4);
        g.strokeLine(x, middle - in, x + width, middle - out);
        g.strokeLine(x, middle + in, x + width, middle + out);
        if (piece.kind() == PieceKind.HOSE) {
            for (int i = 1; i < HOSE_RINGS; i++) {
                double at = x + width * i / HOSE_RINGS;
                g.strokeLine(at, middle - in, at, middle + in);
            }
        } else if (piece.kind() == PieceKind.VALVE) {
            g.strokeLine(x + width / 2, middle - in, x + width / 2, middle - in - 8);
            g.strokeLine(x + width / 2 - 6, middle - in - 8, x + width / 2 + 6, middle - in - 8);
            g.strokeLine(x, middle - in, x + width, middle + in);
            g.strokeLine(x, middle + in, x + width, middle - in);
        } else if (piece.kind() == PieceKind.APERTURE) {
            g.strokeLine(x + width / 2, middle - in - 7, x + width / 2, middle - in);
            g.strokeLine(x + width / 2, middle + in, x + width / 2, middle + in + 7);
        } else if (piece.kind() == PieceKind.ELBOW) {
            g.strokeArc(x + width / 2 - in, middle - in, 2 * in, 2 * in, 0, 90, javafx.scene.shape.ArcType.OPEN);
        } else if (piece.kind().isBaffle()) {
            vanes(g, piece.kind(), x, width, middle, in);
        }
    }

    private static void vanes(GraphicsContext g, PieceKind kind, double x, double width, double middle, double half) {
        double pitch = 2 * half / VANES;
        for (int i = 0; i < VANES; i++) {
            double top = middle - half + i * pitch;
            double centre = x + width / 2;
            if (kind == PieceKind.OPAQUE_COIL) {
                g.strokeOval(centre - pitch / 3 + (i % 2 == 0 ? -4 : 4), top + pitch / 6, 2 * pitch / 3, 2 * pitch / 3);
            } else {
                g.strokeLine(centre - pitch / 2, top, centre, top + pitch / 2);
                if (kind == PieceKind.CHEVRON) {
                    g.strokeLine(centre, top + pitch / 2, centre - pitch / 2, top + pitch);
                }
            }
        }
    }
}
