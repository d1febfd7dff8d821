package boilwright.dashboard;

import boilwright.dashboard.parts.LedgerView;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Node;
import javafx.scene.layout.Region;

/**
 * The middle of the window: the drawing, the page and the ledger. Side by side where there is room; in a narrower window the
 * ledger stands above the page. On a page that needs the width the drawing shrinks to a strip and stays in view.
 */
final class BodyPane extends Region {
    /** Width from which all three stand side by side, in widths of the letter m. */
    private static final double WIDE_EMS = 112;

    private static final double HERO_SHARE = 0.43;
    private static final double STRIP_SHARE = 0.28;
    private static final double STRIP_SHARE_BESIDE_TABLE = 0.26;
    private static final double LEDGER_SHARE = 0.42;
    /** Beside a strip stands a page that needs the room. */
    private static final double LEDGER_SHARE_OF_STRIP = 0.32;

    private static final double GAP = 12;

    private final Region drawing;
    private final LedgerView ledger;
    private final Region lettering;
    private final ObjectProperty<Region> page = new SimpleObjectProperty<>(this, "page");
    private final BooleanProperty strip = new SimpleBooleanProperty(this, "strip");
    private final BooleanProperty ledgerShown = new SimpleBooleanProperty(this, "ledgerShown", true);

    /**
     * @param drawing the drawing
     * @param ledger the ledger
     * @param lettering anything as wide as one letter m of the window's type
     */
    BodyPane(Region drawing, LedgerView ledger, Region lettering) {
        this.drawing = drawing;
        this.ledger = ledger;
        this.lettering = lettering;
        lettering.setVisible(false);
        getStyleClass().add("body-pane");
        ledger.lineHeightProperty().addListener((property, before, now) -> requestLayout());
        page.addListener((property, before, now) -> {
            getChildren().setAll(drawing, now, ledger, lettering);
            requestLayout();
        });
        strip.addListener((property, before, now) -> requestLayout());
        ledgerShown.addListener((property, before, now) -> {
            ledger.setVisible(now);
            requestLayout();
        });
    }

    /** The page that is shown. */
    ObjectProperty<Region> pageProperty() {
        return page;
    }

    /** Whether the drawing is a strip. */
    BooleanProperty stripProperty() {
        return strip;
    }

    /** Whether the ledger is there. */
    BooleanProperty ledgerShownProperty() {
        return ledgerShown;
    }

    @Override
    protected void layoutChildren() {
        double left = snappedLeftInset();
        double top = snappedTopInset();
        double width = getWidth() - left - snappedRightInset();
        double height = getHeight() - top - snappedBottomInset();
        boolean wide = width > WIDE_EMS * em();
        boolean withLedger = ledgerShown.get();
        double share = !strip.get() ? HERO_SHARE : withLedger ? STRIP_SHARE : STRIP_SHARE_BESIDE_TABLE;
        double first = snapSizeX(width * (wide ? 0.9 * share : share));
        place(drawing, left, top, first, height);
        double at = left + first + GAP;
        double rest = width - first - GAP;
        if (!withLedger) {
            place(page.get(), at, top, rest, height);
        } else if (wide) {
            double last = snapSizeX(rest * (strip.get() ? 0.36 : 0.46));
            place(page.get(), at, top, rest - last - GAP, height);
            place(ledger, left + width - last, top, last, height);
        } else {
            double most = height * (strip.get() ? LEDGER_SHARE_OF_STRIP : LEDGER_SHARE);
            double upper = snapSizeY(ledger.wholeLines(most));
            place(ledger, at, top, rest, upper);
            place(page.get(), at, top + upper + GAP, rest, height - upper - GAP);
        }
    }

    private void place(Node node, double x, double y, double width, double height) {
        node.resizeRelocate(snapPositionX(x), snapPositionY(y), Math.max(0, width), Math.max(0, height));
    }

    private double em() {
        return Math.max(1, lettering.prefWidth(-1));
    }

    @Override
    protected double computeMinWidth(double height) {
        return 0;
    }

    @Override
    protected double computeMinHeight(double width) {
        return 0;
    }
}
