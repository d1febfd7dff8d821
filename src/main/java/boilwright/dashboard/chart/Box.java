package boilwright.dashboard.chart;

/** A rectangle, px, y downwards. */
record Box(double left, double top, double right, double bottom) {
    double width() {
        return right - left;
    }

    double height() {
        return bottom - top;
    }

    boolean holds(double x, double y) {
        return x >= left && x <= right && y >= top && y <= bottom;
    }

    boolean meets(Box other) {
        return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
    }
}
