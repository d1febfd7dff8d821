package boilwright.dashboard.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import javafx.css.CssMetaData;
import javafx.css.SimpleStyleableObjectProperty;
import javafx.css.Styleable;
import javafx.css.StyleableProperty;
import javafx.css.converter.ColorConverter;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;

/**
 * The colours of a chart. None of them means anything: what must be told apart differs in dash, marker and words.
 *
 * @param ink curves, figures and the cursor
 * @param muted axes, events and words beside the curves
 * @param faint the grid
 * @param shade shaded ranges
 * @param paper the page
 */
record ChartColors(Color ink, Color muted, Color faint, Color shade, Color paper) {
    /** On white paper, for files. */
    static final ChartColors PRINTED = new ChartColors(
            Color.web("#1f2328"), Color.web("#59636e"), Color.web("#d8dce0"), Color.web("#e4e7eb"), Color.WHITE);

    /** The colours of a chart from the style sheet: -chart-ink, -chart-muted, -chart-faint, -chart-shade and -chart-paper. */
    static final class Properties {
        /** What has such colours. */
        interface Owner extends Styleable {
            Properties colors();
        }

        private static final ChartColors USUAL = ChartColors.PRINTED;
        private static final CssMetaData<Owner, Color> INK = data("-chart-ink", USUAL.ink(), p -> p.ink);
        private static final CssMetaData<Owner, Color> MUTED = data("-chart-muted", USUAL.muted(), p -> p.muted);
        private static final CssMetaData<Owner, Color> FAINT = data("-chart-faint", USUAL.faint(), p -> p.faint);
        private static final CssMetaData<Owner, Color> SHADE = data("-chart-shade", USUAL.shade(), p -> p.shade);
        private static final CssMetaData<Owner, Color> PAPER = data("-chart-paper", USUAL.paper(), p -> p.paper);
        private static final List<CssMetaData<? extends Styleable, ?>> ALL = all();

        private final SimpleStyleableObjectProperty<Color> ink;
        private final SimpleStyleableObjectProperty<Color> muted;
        private final SimpleStyleableObjectProperty<Color> faint;
        private final SimpleStyleableObjectProperty<Color> shade;
        private final SimpleStyleableObjectProperty<Color> paper;

        Properties(Region owner, Runnable changed) {
            ink = property(INK, owner, USUAL.ink(), changed);
            muted = property(MUTED, owner, USUAL.muted(), changed);
            faint = property(FAINT, owner, USUAL.faint(), changed);
            shade = property(SHADE, owner, USUAL.shade(), changed);
            paper = property(PAPER, owner, USUAL.paper(), changed);
        }

        static List<CssMetaData<? extends Styleable, ?>> cssMetaData() {
            return ALL;
        }

        ChartColors now() {
            return new ChartColors(ink.get(), muted.get(), faint.get(), shade.get(), paper.get());
        }

        private static List<CssMetaData<? extends Styleable, ?>> all() {
            List<CssMetaData<? extends Styleable, ?>> all = new ArrayList<>(Region.getClassCssMetaData());
            all.addAll(List.of(INK, MUTED, FAINT, SHADE, PAPER));
            return List.copyOf(all);
        }

        private static SimpleStyleableObjectProperty<Color> property(
                CssMetaData<Owner, Color> data, Region owner, Color usual, Runnable changed) {
            SimpleStyleableObjectProperty<Color> property =
                    new SimpleStyleableObjectProperty<>(data, owner, data.getProperty(), usual);
            property.addListener((observed, before, now) -> changed.run());
            return property;
        }

        private static CssMetaData<Owner, Color> data(
                String name, Color usual, Function<Properties, SimpleStyleableObjectProperty<Color>> which) {
            return new CssMetaData<>(name, ColorConverter.getInstance(), usual) {
                @Override
                public boolean isSettable(Owner owner) {
                    return !which.apply(owner.colors()).isBound();
                }

                @Override
                public StyleableProperty<Color> getStyleableProperty(Owner owner) {
                    return which.apply(owner.colors());
                }
            };
        }
    }
}
