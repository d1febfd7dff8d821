package boilwright.dashboard.chart;

import boilwright.units.UnitSpelling;

/**
 * From SI values to pixels and back. Every unit of the table is a factor and an offset, which is quicker than its converter.
 *
 * @param unit the unit in which the axis is numbered
 * @param logarithmic whether equal steps are equal ratios of the number shown
 * @param factor number shown for one SI unit more
 * @param offset number shown for zero SI
 * @param lowT place of the lower end: the number shown, or its decimal logarithm
 * @param highT place of the upper end
 * @param lowPx pixel of the lower end
 * @param highPx pixel of the upper end
 */
record Scale(
        UnitSpelling unit,
        boolean logarithmic,
        double factor,
        double offset,
        double lowT,
        double highT,
        double lowPx,
        double highPx) {

    /** A scale not laid out yet: only {@link #t} and {@link #ofT} mean something. */
    static Scale of(UnitSpelling unit, boolean logarithmic) {
        double zero = unit.fromSi(0);
        return new Scale(unit, logarithmic, unit.fromSi(1) - zero, zero, 0, 1, 0, 1);
    }

    Scale from(double low, double high) {
        return new Scale(unit, logarithmic, factor, offset, low, high, lowPx, highPx);
    }

    Scale onto(double low, double high) {
        return new Scale(unit, logarithmic, factor, offset, lowT, highT, low, high);
    }

    /** The place of an SI value; NaN where it has none. */
    double t(double si) {
        double shown = factor * si + offset;
        if (!logarithmic) {
            return shown;
        }
        return shown > 0 ? Math.log10(shown) : Double.NaN;
    }

    /** The SI value of a place. */
    double ofT(double t) {
        return ((logarithmic ? Math.pow(10, t) : t) - offset) / factor;
    }

    /** The place of a number in the unit shown. */
    double tOfShown(double shown) {
        return logarithmic ? Math.log10(shown) : shown;
    }

    /** The number shown at a place. */
    double shownOfT(double t) {
        return logarithmic ? Math.pow(10, t) : t;
    }

    double pxOfT(double t) {
        return lowPx + (t - lowT) / (highT - lowT) * (highPx - lowPx);
    }

    double px(double si) {
        return pxOfT(t(si));
    }

    double tOfPx(double px) {
        return lowT + (px - lowPx) / (highPx - lowPx) * (highT - lowT);
    }

    /** The SI value at a pixel. */
    double si(double px) {
        return ofT(tOfPx(px));
    }
}
