package boilwright.dashboard.chart;

import javafx.scene.Cursor;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;

/**
 * Mouse and keys of a chart. A click leads the cursor there and the cursor's line can be dragged; a box drawn elsewhere is zoomed
 * into; a double click shows the whole again. The wheel zooms while the chart has the focus or Ctrl is held, so that a page can
 * still be scrolled past a chart. Keys: + - 0 zoom, left and right move the cursor (with Shift the view), up and down the view.
 */
final class ChartGestures {
    private static final double NEAR_PX = 6;
    private static final double LEAST_BOX_PX = 8;
    private static final double LEAST_HEIGHT_PX = 24;
    private static final double ZOOM = 1.25;
    private static final double PAN = 0.15;
    private static final double KEY_PX = 2;
    /** Zooming ends at this share of the whole. */
    private static final double CLOSEST = 1e-5;

    private enum Drag {
        NONE,
        CURSOR,
        BOX
    }

    private final ChartPane pane;
    private Drag drag = Drag.NONE;
    private double fromX;
    private double fromY;

    ChartGestures(ChartPane pane) {
        this.pane = pane;
        pane.setOnMousePressed(this::pressed);
        pane.setOnMouseDragged(this::dragged);
        pane.setOnMouseReleased(this::released);
        pane.setOnMouseMoved(this::moved);
        pane.setOnScroll(this::scrolled);
        pane.setOnKeyPressed(this::key);
    }

    private void moved(MouseEvent event) {
        ChartPlan plan = pane.plan();
        boolean near = plan != null && isNearCursor(plan, event.getX());
        boolean inside = plan != null && plan.plot().holds(event.getX(), event.getY());
        pane.setCursor(near && inside ? Cursor.H_RESIZE : inside ? Cursor.CROSSHAIR : Cursor.DEFAULT);
    }

    private boolean isNearCursor(ChartPlan plan, double px) {
        return Math.abs(plan.x().px(pane.cursorXProperty().get()) - px) <= NEAR_PX;
    }

    private void pressed(MouseEvent event) {
        pane.requestFocus();
        ChartPlan plan = pane.plan();
        if (plan == null
                || event.getButton() != MouseButton.PRIMARY
                || !plan.plot().holds(event.getX(), event.getY())) {
            return;
        }
        event.consume();
        fromX = event.getX();
        fromY = event.getY();
        drag = isNearCursor(plan, fromX) ? Drag.CURSOR : Drag.BOX;
    }

    private void dragged(MouseEvent event) {
        ChartPlan plan = pane.plan();
        if (plan == null || drag == Drag.NONE) {
            return;
        }
        event.consume();
        if (drag == Drag.CURSOR) {
            leadTo(plan, event.getX());
        } else {
            pane.select(box(plan, event));
        }
    }

    private void released(MouseEvent event) {
        ChartPlan plan = pane.plan();
        Drag done = drag;
        drag = Drag.NONE;
        pane.select(null);
        if (plan == null || done == Drag.NONE) {
            return;
        }
        event.consume();
        if (event.getClickCount() == 2 && event.isStillSincePress()) {
            whole();
            return;
        }
        if (done == Drag.CURSOR) {
            return;
        }
        Box box = box(plan, event);
        if (Math.abs(event.getX() - fromX) < LEAST_BOX_PX) {
            leadTo(plan, event.getX());
            return;
        }
        View view = pane.viewProperty().get();
        if (Math.abs(event.getY() - fromY) >= LEAST_HEIGHT_PX) {
            view = view.withY(plan.y().si(box.bottom()), plan.y().si(box.top()));
        }
        pane.viewProperty().set(view.withX(plan.x().si(box.left()), plan.x().si(box.right())));
    }

    /** The box from where the button went down; as high as the plot while it is drawn to the side. */
    private Box box(ChartPlan plan, MouseEvent event) {
        Box plot = plan.plot();
        double x = Math.max(plot.left(), Math.min(plot.right(), event.getX()));
        double y = Math.max(plot.top(), Math.min(plot.bottom(), event.getY()));
        boolean high = Math.abs(event.getY() - fromY) >= LEAST_HEIGHT_PX;
        return new Box(
                Math.min(x, fromX),
                high ? Math.min(y, fromY) : plot.top(),
                Math.max(x, fromX),
                high ? Math.max(y, fromY) : plot.bottom());
    }

    private void leadTo(ChartPlan plan, double px) {
        double within = Math.max(plan.plot().left(), Math.min(plan.plot().right(), px));
        pane.cursorXProperty().set(plan.x().si(within));
    }

    private void scrolled(ScrollEvent event) {
        ChartPlan plan = pane.plan();
        boolean meant = pane.isFocused() || event.isControlDown();
        double turn = event.getDeltaY() != 0 ? event.getDeltaY() : event.getDeltaX();
        if (plan == null || !meant || turn == 0) {
            return;
        }
        double factor = Math.pow(ZOOM, -Math.signum(turn));
        boolean upwards = event.isShiftDown();
        boolean changed = upwards
                ? zoomY(plan, factor, plan.y().tOfPx(event.getY()))
                : zoomX(plan, factor, plan.x().tOfPx(event.getX()));
        if (changed) {
            event.consume();
        }
    }

    private void key(KeyEvent event) {
        ChartPlan plan = pane.plan();
        if (plan == null || event.isControlDown() || event.isAltDown() || event.isMetaDown()) {
            return;
        }
        boolean taken = true;
        switch (event.getCode()) {
            case PLUS, ADD, EQUALS -> zoom(1 / ZOOM);
            case MINUS, SUBTRACT -> zoom(ZOOM);
            case DIGIT0, NUMPAD0 -> whole();
            case LEFT -> sideways(plan, -1, event.isShiftDown());
            case RIGHT -> sideways(plan, 1, event.isShiftDown());
            case UP -> panY(plan, PAN);
            case DOWN -> panY(plan, -PAN);
            case HOME -> pane.cursorXProperty().set(lowest(plan));
            case END -> pane.cursorXProperty().set(highest(plan));
            default -> taken = false;
        }
        if (taken) {
            event.consume();
        }
    }

    private static double lowest(ChartPlan plan) {
        Scale all = Extent.x(plan.data(), plan.choice().xScale());
        return all.ofT(all.lowT());
    }

    private static double highest(ChartPlan plan) {
        Scale all = Extent.x(plan.data(), plan.choice().xScale());
        return all.ofT(all.highT());
    }

    /** Zooms about the cursor, or about the middle when that is not in view. */
    void zoom(double factor) {
        ChartPlan plan = pane.plan();
        if (plan == null) {
            return;
        }
        double at = plan.x().t(pane.cursorXProperty().get());
        boolean inView = at >= plan.x().lowT() && at <= plan.x().highT();
        zoomX(plan, factor, inView ? at : (plan.x().lowT() + plan.x().highT()) / 2);
    }

    /** Zooms one step in. */
    void zoomIn() {
        zoom(1 / ZOOM / ZOOM);
    }

    /** Zooms one step out. */
    void zoomOut() {
        zoom(ZOOM * ZOOM);
    }

    /** Shows everything again. */
    void whole() {
        pane.viewProperty().set(View.WHOLE);
    }

    private void sideways(ChartPlan plan, int direction, boolean view) {
        if (view) {
            panX(plan, direction * PAN);
            return;
        }
        Scale x = plan.x();
        double cursor = pane.cursorXProperty().get();
        double px = Double.isFinite(x.px(cursor)) ? x.px(cursor) : plan.plot().left();
        Scale all = Extent.x(plan.data(), plan.choice().xScale());
        double t = Math.max(all.lowT(), Math.min(all.highT(), x.tOfPx(px + direction * KEY_PX)));
        pane.cursorXProperty().set(x.ofT(t));
        if (t < x.lowT() || t > x.highT()) {
            panX(
                    plan,
                    direction
                            * Math.max(
                                    PAN, Math.abs(t - (t < x.lowT() ? x.lowT() : x.highT())) / (x.highT() - x.lowT())));
        }
    }

    private void panX(ChartPlan plan, double share) {
        Scale all = Extent.x(plan.data(), plan.choice().xScale());
        double[] moved = moved(plan.x(), all, share);
        pane.viewProperty()
                .set(pane.viewProperty()
                        .get()
                        .withX(plan.x().ofT(moved[0]), plan.x().ofT(moved[1])));
    }

    private void panY(ChartPlan plan, double share) {
        Scale all = Extent.y(plan.data(), plan.choice().yScale());
        double[] moved = moved(plan.y(), all, share);
        pane.viewProperty()
                .set(pane.viewProperty()
                        .get()
                        .withY(plan.y().ofT(moved[0]), plan.y().ofT(moved[1])));
    }

    private static double[] moved(Scale now, Scale all, double share) {
        double range = now.highT() - now.lowT();
        double by = share * range;
        by = Math.min(by, Math.max(0, all.highT() - now.highT()));
        by = Math.max(by, Math.min(0, all.lowT() - now.lowT()));
        return new double[] {now.lowT() + by, now.highT() + by};
    }

    private boolean zoomX(ChartPlan plan, double factor, double aroundT) {
        double[] to = zoomed(plan.x(), Extent.x(plan.data(), plan.choice().xScale()), factor, aroundT);
        if (to == null) {
            return false;
        }
        View view = pane.viewProperty().get();
        pane.viewProperty().set(view.withX(si(plan.x(), to[0]), si(plan.x(), to[1])));
        return true;
    }

    private boolean zoomY(ChartPlan plan, double factor, double aroundT) {
        double[] to = zoomed(plan.y(), Extent.y(plan.data(), plan.choice().yScale()), factor, aroundT);
        if (to == null) {
            return false;
        }
        View view = pane.viewProperty().get();
        pane.viewProperty().set(view.withY(si(plan.y(), to[0]), si(plan.y(), to[1])));
        return true;
    }

    private static double si(Scale scale, double t) {
        return Double.isNaN(t) ? Double.NaN : scale.ofT(t);
    }

    /** New ends; not numbers where that shows the whole again; null when nothing changes. */
    private static double[] zoomed(Scale now, Scale all, double factor, double around) {
        double low = around - factor * (around - now.lowT());
        double high = around + factor * (now.highT() - around);
        double whole = all.highT() - all.lowT();
        boolean isWhole = now.lowT() <= all.lowT() && now.highT() >= all.highT();
        if (factor < 1 && high - low < CLOSEST * whole || factor > 1 && isWhole) {
            return null;
        }
        low = Math.max(low, all.lowT());
        high = Math.min(high, all.highT());
        return high - low >= whole * (1 - 1e-9) ? new double[] {Double.NaN, Double.NaN} : new double[] {low, high};
    }
}
