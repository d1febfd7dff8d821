package boilwright.dashboard.water;

/**
 * A piece of pipe in the drawing, along the water.
 *
 * @param xs places, px
 * @param ys heights, px
 * @param temperatureK of the water in it, K
 * @param idle whether nothing flows in it
 */
record Pipe(double[] xs, double[] ys, double temperatureK, boolean idle) {
    static Pipe of(double temperatureK, boolean idle, double... xy) {
        double[] xs = new double[xy.length / 2];
        double[] ys = new double[xs.length];
        for (int i = 0; i < xs.length; i++) {
            xs[i] = xy[2 * i];
            ys[i] = xy[2 * i + 1];
        }
        return new Pipe(xs, ys, temperatureK, idle);
    }
}
