package boilwright.vacuum;

import boilwright.gasflow.BackingCurve;
import boilwright.gasflow.Gas;
import boilwright.rig.Foreline;
import boilwright.rig.LinePiece;
import boilwright.rig.Rig;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/**
 * What holds the foreline: a given pressure, or a backing pump behind its line, whose pressure follows the gas that arrives,
 * p = Q/S(p) + ultimate. Immutable.
 */
public final class BackingSide {
    private static final double LEAST_FLOW = 1e-8;
    /** Entries of the table. */
    private static final int ENTRIES = 160;
    /** Highest pressure at the backing pump in the table, Pa. */
    private static final double HIGHEST_PA = 2e5;

    private final double givenPa;
    private final BackingCurve curve;
    private final LineFlow line;
    private final double volumeM3;
    private final double restingLoad;
    private final double ownLoad;
    /** Pressure without arriving gas, Pa. */
    private final double emptyPa;

    private final double restingPa;

    private BackingSide(double givenPa) {
        this.givenPa = givenPa;
        curve = null;
        line = null;
        volumeM3 = Double.NaN;
        restingLoad = 0;
        ownLoad = 0;
        emptyPa = givenPa;
        restingPa = givenPa;
    }

    private BackingSide(Foreline.Backing backing, double temperatureK, double arriving, double own) {
        givenPa = Double.NaN;
        Foreline.BackingPump pump = backing.pump();
        curve = new BackingCurve(
                pump.curve().stream()
                        .mapToDouble(Foreline.SpeedPoint::pressurePa)
                        .toArray(),
                pump.curve().stream()
                        .mapToDouble(Foreline.SpeedPoint::speedM3PerS)
                        .toArray(),
                pump.presentUltimatePa());
        List<LinePiece> pieces = backing.line();
        double last =
                pieces.isEmpty() ? 1 : pieces.get(pieces.size() - 1).shape().outletDiameterM();
        line = LineFlow.of(pieces, last, Gas.AIR, temperatureK);
        volumeM3 = backing.volumeM3();
        ownLoad = own;
        restingLoad = arriving;
        emptyPa = exactPressure(0);
        restingPa = pressureFor(restingLoad);
    }

    /** The backing side of a rig with the built-in outgassing data; otherwise as {@link #of(Rig, SurfaceRates)}. */
    public static BackingSide of(Rig rig) {
        return of(rig, BuiltInRates.INSTANCE);
    }

    /**
     * The backing side of a rig.
     *
     * @param rig the rig
     * @param rates what its materials give off
     * @return what holds its foreline, with the gas of chamber and line arriving as it does when the run begins
     */
    public static BackingSide of(Rig rig, SurfaceRates rates) {
        OptionalDouble given = rig.foreline().givenPa();
        if (given.isPresent()) {
            return new BackingSide(given.getAsDouble());
        }
        return new BackingSide(
                rig.foreline().backing().orElseThrow(),
                rig.room().temperatureK(),
                GasLoads.arriving(rig, rates),
                GasLoads.ofForeline(rig, rates));
    }

    /** Whether the pressure follows the gas that arrives. */
    public boolean follows() {
        return curve != null;
    }

    /** Foreline pressure with only the gas of chamber, line and foreline, Pa. */
    public double restingPa() {
        return restingPa;
    }

    /** Volume of the foreline, m3. */
    public double volumeM3() {
        return volumeM3;
    }

    /** Gas that arrives at rest from chamber and line, Pa m3/s. */
    public double restingLoad() {
        return restingLoad;
    }

    /** Gas that arises in the foreline itself, Pa m3/s. */
    public double ownLoad() {
        return ownLoad;
    }

    /** Foreline pressure at a throughput, found piece by piece, Pa. */
    private double exactPressure(double arriving) {
        double flow = arriving + ownLoad;
        double pressure = curve.pressureFor(flow);
        for (int i = line.count() - 1; i >= 0; i--) {
            pressure = line.before(i, pressure, flow);
        }
        return pressure;
    }

    /**
     * Foreline pressure at a throughput.
     *
     * @param arriving gas that the jets or the oil bring, Pa m3/s, at least 0
     * @return Pa
     */
    public double pressureFor(double arriving) {
        return follows() ? exactPressure(Math.max(0, arriving)) : givenPa;
    }

    /** Pressure at the backing pump itself, without its line, Pa; at a given pressure that. */
    double pumpAlone(double flow) {
        return follows() ? curve.pressureFor(flow) : givenPa;
    }

    /** Foreline pressure for an arriving flow as a quick function for one run; constant for a given pressure. */
    DoubleUnaryOperator quick() {
        if (!follows()) {
            return arriving -> givenPa;
        }
        Table table = table();
        return table::pressureFor;
    }

    /** What the backing pump takes, as a table for use inside a derivative. Belongs to one run. */
    public Table table() {
        return new Table(this);
    }

    /** A table of {@link #pressureFor}, read the other way round; reading it allocates nothing. */
    public static final class Table {
        private final double emptyPa;
        private final double[] logOver = new double[ENTRIES];
        /** Change of logOver from entry to entry at each entry: half of that over two. */
        private final double[] rise = new double[ENTRIES];

        private final double perLog;
        private final double leastOver;

        private Table(BackingSide side) {
            emptyPa = side.emptyPa;
            double span = Math.log(side.curve.throughput(HIGHEST_PA) / LEAST_FLOW);
            perLog = (ENTRIES - 1) / span;
            for (int i = 0; i < ENTRIES; i++) {
                logOver[i] = Math.log(side.exactPressure(LEAST_FLOW * Math.exp(i / perLog)) - emptyPa);
            }
            leastOver = Math.exp(logOver[0]);
            for (int i = 0; i < ENTRIES; i++) {
                int below = Math.max(0, i - 1);
                int above = Math.min(ENTRIES - 1, i + 1);
                rise[i] = (logOver[above] - logOver[below]) / (above - below);
            }
        }

        /**
         * Foreline pressure at a throughput, within 0.1 % of {@link BackingSide#pressureFor}.
         *
         * @param arriving gas that arrives, Pa m3/s
         * @return Pa
         */
        public double pressureFor(double arriving) {
            if (arriving <= LEAST_FLOW) {
                return emptyPa + Math.max(0, arriving) * leastOver / LEAST_FLOW;
            }
            double x = Math.min(ENTRIES - 1 - 1e-9, perLog * Math.log(arriving / LEAST_FLOW));
            int i = (int) x;
            return emptyPa + Math.exp(between(x - i, logOver[i], logOver[i + 1], rise[i], rise[i + 1]));
        }

        /**
         * Gas that the backing pump takes beyond the foreline's own.
         *
         * @param forelinePa pressure at the jets' outlet, Pa
         * @return Pa m3/s; straight through zero near the pressure without gas, so that pressures settle there
         */
        public double taken(double forelinePa) {
            double over = forelinePa - emptyPa;
            if (over <= leastOver) {
                return LEAST_FLOW * over / leastOver;
            }
            double x = Math.log(over);
            int low = 0;
            int high = logOver.length - 1;
            while (high - low > 1) {
                int middle = (low + high) >>> 1;
                if (logOver[middle] <= x) {
                    low = middle;
                } else {
                    high = middle;
                }
            }
            double width = logOver[low + 1] - logOver[low];
            double share = between((x - logOver[low]) / width, 0, 1, width / rise[low], width / rise[low + 1]);
            return LEAST_FLOW * Math.exp((low + share) / perLog);
        }

        /** Cubic with given values and slopes at 0 and 1. */
        private static double between(double d, double left, double right, double leftSlope, double rightSlope) {
            double up = right - left;
            double square = 3 * up - 2 * leftSlope - rightSlope;
            double cube = leftSlope + rightSlope - 2 * up;
            return left + d * (leftSlope + d * (square + d * cube));
        }
    }
}
