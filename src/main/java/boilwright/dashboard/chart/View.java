package boilwright.dashboard.chart;

/**
 * The part of a chart that is in view, SI.
 *
 * @param xLow NaN: from the start
 * @param xHigh NaN: to the end
 * @param yLow NaN: as low as anything reaches
 * @param yHigh NaN: as high as anything reaches
 */
record View(double xLow, double xHigh, double yLow, double yHigh) {
    static final View WHOLE = new View(Double.NaN, Double.NaN, Double.NaN, Double.NaN);

    View withX(double low, double high) {
        return new View(low, high, yLow, yHigh);
    }

    View withY(double low, double high) {
        return new View(xLow, xHigh, low, high);
    }
}
