package boilwright.dashboard.drawing;

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

/** The four colours of the page, from the style sheet: -drawing-ink, -drawing-muted, -drawing-faint and -drawing-paper. */
final class PaletteProperties {
    /** What has such colours. */
    interface Owner extends Styleable {
        PaletteProperties colors();
    }

    private static final CssMetaData<Owner, Color> INK = data("-drawing-ink", Color.BLACK, p -> p.ink);
    private static final CssMetaData<Owner, Color> MUTED = data("-drawing-muted", Color.DIMGRAY, p -> p.muted);
    private static final CssMetaData<Owner, Color> FAINT = data("-drawing-faint", Color.LIGHTGRAY, p -> p.faint);
    private static final CssMetaData<Owner, Color> PAPER = data("-drawing-paper", Color.WHITE, p -> p.paper);
    private static final List<CssMetaData<? extends Styleable, ?>> ALL = all();

    private final SimpleStyleableObjectProperty<Color> ink;
    private final SimpleStyleableObjectProperty<Color> muted;
    private final SimpleStyleableObjectProperty<Color> faint;
    private final SimpleStyleableObjectProperty<Color> paper;

    PaletteProperties(Region owner, Runnable changed) {
        ink = property(INK, owner, Color.BLACK, changed);
        muted = property(MUTED, owner, Color.DIMGRAY, changed);
        faint = property(FAINT, owner, Color.LIGHTGRAY, changed);
        paper = property(PAPER, owner, Color.WHITE, changed);
    }

    static List<CssMetaData<? extends Styleable, ?>> cssMetaData() {
        return ALL;
    }

    Palette palette() {
        return new Palette(ink.get(), muted.get(), faint.get(), paper.get());
    }

    private static List<CssMetaData<? extends Styleable, ?>> all() {
        List<CssMetaData<? extends Styleable, ?>> all = new ArrayList<>(Region.getClassCssMetaData());
        all.addAll(List.of(INK, MUTED, FAINT, PAPER));
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
            String name, Color usual, Function<PaletteProperties, SimpleStyleableObjectProperty<Color>> which) {
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
