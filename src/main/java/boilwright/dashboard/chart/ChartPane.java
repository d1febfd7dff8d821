package boilwright.dashboard.chart;

import boilwright.dashboard.text.Lettering;
import boilwright.dashboard.text.WindowText;
import java.util.List;
import java.util.stream.Collectors;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.css.CssMetaData;
import javafx.css.Styleable;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;

/** The picture of a chart: curves on one canvas, the cursor on another over it, so that moving the cursor redraws no curve. */
final class ChartPane extends Region implements ChartColors.Properties.Owner {
    private final ObjectProperty<ChartData> data = new SimpleObjectProperty<>(this, "data");
    private final ObjectProperty<Choice> choice = new SimpleObjectProperty<>(this, "choice");
    private final ObjectProperty<View> view = new SimpleObjectProperty<>(this, "view", View.WHOLE);
    private final DoubleProperty cursor = new SimpleDoubleProperty(this, "cursorX", Double.NaN);
    private final Canvas curves = new Canvas();
    private final Canvas over = new Canvas();
    private final Label type = new Label();
    private final ChartColors.Properties colors = new ChartColors.Properties(this, this::stale);
    private Lettering lettering;
    private ChartPlan plan;
    private Box selection;
    private boolean stale = true;
    private boolean cursorStale = true;

    ChartPane() {
        getStyleClass().add("chart-pane");
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        type.setManaged(false);
        type.setVisible(false);
        getChildren().addAll(curves, over, type);
        curves.setManaged(false);
        over.setManaged(false);
        over.setMouseTransparent(true);
        curves.setMouseTransparent(true);
        type.fontProperty().addListener((property, before, now) -> {
            lettering = null;
            stale();
        });
        data.addListener((property, before, now) -> stale());
        choice.addListener((property, before, now) -> stale());
        view.addListener((property, before, now) -> stale());
        cursor.addListener((property, before, now) -> cursorMoved());
    }

    ObjectProperty<ChartData> dataProperty() {
        return data;
    }

    ObjectProperty<Choice> choiceProperty() {
        return choice;
    }

    ObjectProperty<View> viewProperty() {
        return view;
    }

    DoubleProperty cursorXProperty() {
        return cursor;
    }

    /** Shows a box being drawn with the mouse; null for none. */
    void select(Box box) {
        selection = box;
        cursorMoved();
    }

    /** Where everything stands, once it was laid out with some data. */
    ChartPlan plan() {
        ready();
        return plan;
    }

    /** The family of the type. */
    String family() {
        return type.getFont().getFamily();
    }

    private void stale() {
        stale = true;
        requestLayout();
    }

    /** At once, and not with the next layout: that would lay the whole window out for every step of the cursor. */
    private void cursorMoved() {
        if (stale || plan == null || getScene() == null || !isVisible()) {
            cursorStale = true;
            requestLayout();
        } else {
            paintOver();
        }
    }

    @Override
    protected void layoutChildren() {
        ready();
        if (cursorStale) {
            cursorStale = false;
            paintOver();
        }
    }

    private void ready() {
        if (lettering == null) {
            lettering = new Lettering(type.getFont());
        }
        boolean resized = curves.getWidth() != getWidth() || curves.getHeight() != getHeight();
        if (!stale && !resized || !(getWidth() > 0) || !(getHeight() > 0)) {
            return;
        }
        stale = false;
        cursorStale = true;
        for (Canvas canvas : List.of(curves, over)) {
            canvas.setWidth(getWidth());
            canvas.setHeight(getHeight());
        }
        paint();
    }

    private void paint() {
        GraphicsContext g = cleared(curves);
        if (data.get() == null || choice.get() == null) {
            plan = null;
            return;
        }
        plan = ChartPlan.of(data.get(), choice.get(), view.get(), getWidth(), getHeight(), 0, lettering);
        new ChartPainter(plan, colors.now(), new CanvasSurface(g, lettering)).paint();
    }

    private void paintOver() {
        GraphicsContext g = cleared(over);
        if (plan == null) {
            return;
        }
        new CursorPainter(plan, colors.now(), new CanvasSurface(g, lettering)).paint(cursor.get());
        if (selection != null) {
            g.setStroke(colors.now().ink());
            g.setLineWidth(1);
            g.setLineDashes(4, 3);
            g.strokeRect(
                    Math.floor(selection.left()) + 0.5,
                    Math.floor(selection.top()) + 0.5,
                    selection.width(),
                    selection.height());
            g.setLineDashes();
        }
    }

    private GraphicsContext cleared(Canvas canvas) {
        GraphicsContext g = canvas.getGraphicsContext2D();
        g.clearRect(0, 0, canvas.getWidth(), canvas.getHeight());
        return g;
    }

    @Override
    public Object queryAccessibleAttribute(AccessibleAttribute attribute, Object... parameters) {
        if (attribute == AccessibleAttribute.TEXT && data.get() != null) {
            return words();
        }
        return super.queryAccessibleAttribute(attribute, parameters);
    }

    /** What is plotted and what stands at the cursor, in whole sentences. */
    String words() {
        String all = ChartWords.describe(data.get(), choice.get());
        ChartPlan now = plan();
        if (now == null || !Double.isFinite(cursor.get())) {
            return all;
        }
        String readings = now.data().series().stream()
                .map(s -> WindowText.say(
                        "chart.describe.reading",
                        s.title(),
                        ChartWords.value(
                                now.reading(s, cursor.get()), now.choice().yUnit())))
                .collect(Collectors.joining(", "));
        String place = ChartWords.place(cursor.get(), now.data(), now.choice().xUnit());
        return all + " " + WindowText.say("chart.describe.cursor", place, readings);
    }

    @Override
    public ChartColors.Properties colors() {
        return colors;
    }

    @Override
    public List<CssMetaData<? extends Styleable, ?>> getCssMetaData() {
        return ChartColors.Properties.cssMetaData();
    }

    /** The style sheet's properties. */
    public static List<CssMetaData<? extends Styleable, ?>> getClassCssMetaData() {
        return ChartColors.Properties.cssMetaData();
    }

    @Override
    protected double computeMinWidth(double height) {
        return 12 * type.getFont().getSize();
    }

    @Override
    protected double computeMinHeight(double width) {
        return 10 * type.getFont().getSize();
    }

    @Override
    protected double computePrefWidth(double height) {
        return 40 * type.getFont().getSize();
    }

    @Override
    protected double computePrefHeight(double width) {
        return 20 * type.getFont().getSize();
    }
}
