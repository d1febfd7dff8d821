package boilwright.dashboard.drawing;

import boilwright.dashboard.model.TemperatureScale;
import boilwright.dashboard.text.Lettering;
import boilwright.dashboard.text.WindowText;
import boilwright.fluid.WorkingFluid;
import boilwright.rig.Rig;
import java.util.List;
import javafx.css.CssMetaData;
import javafx.css.Styleable;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;

/** The colours of temperatures with their figures, for views that show them without the drawing's own legend. */
public final class ScaleLegend extends Region implements PaletteProperties.Owner {
    private static final double EMS = 20;

    private final Canvas canvas = new Canvas();
    private final Label lettering = new Label("m");
    private final PaletteProperties colors = new PaletteProperties(this, this::requestLayout);
    private Rig rig;
    private WorkingFluid fluid;

    public ScaleLegend() {
        getStyleClass().add("scale-legend");
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setAccessibleText(WindowText.say("drawing.legend"));
        lettering.setVisible(false);
        lettering.setManaged(false);
        getChildren().addAll(canvas, lettering);
    }

    /** Shows the scale that suits a rig. */
    public void setRig(Rig rig, WorkingFluid fluid) {
        this.rig = rig;
        this.fluid = fluid;
        requestLayout();
    }

    @Override
    public PaletteProperties colors() {
        return colors;
    }

    @Override
    protected void layoutChildren() {
        double width = snapSizeX(getWidth());
        double height = snapSizeY(getHeight());
        canvas.setWidth(width);
        canvas.setHeight(height);
        canvas.getGraphicsContext2D().clearRect(0, 0, width, height);
        if (rig != null && width > 2) {
            Lettering type = type();
            Palette palette = colors.palette();
            double x = 3.2 * type.size();
            SheetEdge.legend(
                    canvas.getGraphicsContext2D(),
                    palette,
                    TemperatureScale.of(rig, fluid, palette.look()),
                    type,
                    x,
                    2,
                    width - 1.2 * x);
        }
    }

    private Lettering type() {
        return new Lettering(
                lettering.getFont().getFamily(), lettering.getFont().getSize());
    }

    @Override
    protected double computePrefWidth(double height) {
        return EMS * lettering.getFont().getSize();
    }

    @Override
    protected double computePrefHeight(double width) {
        return 2.6 * lettering.getFont().getSize();
    }

    @Override
    public List<CssMetaData<? extends Styleable, ?>> getCssMetaData() {
        return PaletteProperties.cssMetaData();
    }
}
