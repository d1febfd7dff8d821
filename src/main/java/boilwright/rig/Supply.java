package boilwright.rig;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** Where the cooling comes from. A coolant that circulates is water. */
public sealed interface Supply {
    /** Temperature at which the cooling enters the circuit as long as the supply keeps up, K. */
    double temperatureK();

    /** Its kind. */
    SupplyKind kind();

    /** The same supply with its cooling entering at another temperature, K. */
    Supply withTemperature(double k);

    /** The measured flow; empty for every other kind. */
    default Optional<GivenFlow> givenFlow() {
        return Optional.empty();
    }

    /** The chiller; empty for every other kind. */
    default Optional<Chiller> chiller() {
        return Optional.empty();
    }

    /** The tap; empty for every other kind. */
    default Optional<Tap> tap() {
        return Optional.empty();
    }

    /** The tank; empty for every other kind. */
    default Optional<Tank> tank() {
        return Optional.empty();
    }

    /** The fins with their fan; empty for every other kind. */
    default Optional<FinsAndFan> fins() {
        return Optional.empty();
    }

    /** The supply with its own water and pump; empty for one that has none. */
    default Optional<Pumped> pumped() {
        return Optional.empty();
    }

    /** Whether it is air that cools. */
    default boolean isAir() {
        return kind() == SupplyKind.FINS_AND_FAN;
    }

    /** A supply that moves water by a pump with a curve of its own. */
    sealed interface Pumped extends Supply permits Chiller, Tank {
        @Override
        default Optional<Pumped> pumped() {
            return Optional.of(this);
        }

        /** What lifts the water. */
        Pump pump();

        /** Water in its tank, m3. */
        double volumeM3();
    }

    /** A flow that was measured, whatever drives it; the circuit's resistance is not asked. */
    record GivenFlow(double temperatureK, double flowM3PerS, OptionalDouble capacityW) implements Supply {
        @Override
        public SupplyKind kind() {
            return SupplyKind.GIVEN_FLOW;
        }

        @Override
        public GivenFlow withTemperature(double k) {
            return new GivenFlow(k, flowM3PerS, capacityW);
        }

        @Override
        public Optional<GivenFlow> givenFlow() {
            return Optional.of(this);
        }

        /**
         * @param temperatureK water temperature at the inlet, K
         * @param flowM3PerS water flow, m3/s; 0 for standing water
         * @param capacityW what a chiller behind it carries away at this temperature, W, when there is one
         */
        public GivenFlow {}
    }

    /**
     * A recirculating chiller.
     *
     * @param temperatureK set point, K
     * @param capacity what it carries away
     * @param control how it holds the set point
     * @param hysteresisK width of the band in which it holds the set point, K
     * @param volumeM3 water in its tank, m3
     * @param pump its pump
     */
    record Chiller(
            double temperatureK, Capacity capacity, Control control, double hysteresisK, double volumeM3, Pump pump)
            implements Pumped {
        @Override
        public SupplyKind kind() {
            return SupplyKind.CHILLER;
        }

        @Override
        public Chiller withTemperature(double k) {
            return new Chiller(k, capacity, control, hysteresisK, volumeM3, pump);
        }

        @Override
        public Optional<Chiller> chiller() {
            return Optional.of(this);
        }
    }

    /**
     * A tap on the mains; the water runs off after the circuit.
     *
     * @param temperatureK water temperature, K
     * @param staticPressurePa pressure above the room's when nothing flows, Pa
     * @param lineFlowAtOneBarM3PerS flow that line and cock pass at 1 bar of pressure drop, m3/s
     */
    record Tap(double temperatureK, double staticPressurePa, double lineFlowAtOneBarM3PerS) implements Supply {
        @Override
        public SupplyKind kind() {
            return SupplyKind.TAP;
        }

        @Override
        public Tap withTemperature(double k) {
            return new Tap(k, staticPressurePa, lineFlowAtOneBarM3PerS);
        }

        @Override
        public Optional<Tap> tap() {
            return Optional.of(this);
        }
    }

    /**
     * A tank, bucket or barrel with a pump, to which the water returns.
     *
     * @param temperatureK temperature at the start, K; freezing point when there is ice
     * @param volumeM3 water in it at the start, m3
     * @param iceKg ice in it at the start, kg; 0 for none
     * @param airConductance heat exchanged with the room per kelvin, W/K
     * @param pump its pump
     */
    record Tank(double temperatureK, double volumeM3, double iceKg, double airConductance, Pump pump)
            implements Pumped {
        @Override
        public SupplyKind kind() {
            return SupplyKind.TANK;
        }

        @Override
        public Tank withTemperature(double k) {
            return new Tank(k, volumeM3, iceKg, airConductance, pump);
        }

        @Override
        public Optional<Tank> tank() {
            return Optional.of(this);
        }

        /**
         * Conductance of an open bucket over its volume to the power 2/3, W/(m2 K): a cylinder as high as wide has 5.5 times
         * that as its surface, with 10 W/(m2 K) on it; engineering judgement.
         */
        private static final double BUCKET_TO_AIR = 55;

        /**
         * Heat that an open bucket exchanges with the room per kelvin, W/K, to two figures: more would only look exact.
         *
         * @param volumeM3 water in it, m3; NaN gives NaN
         */
        public static double bucketToAir(double volumeM3) {
            double all = BUCKET_TO_AIR * Math.pow(volumeM3, 2.0 / 3);
            return Double.isNaN(all)
                    ? all
                    : new BigDecimal(all).round(new MathContext(2)).doubleValue();
        }
    }

    /**
     * A fan that blows across fins on the body; no water.
     *
     * @param temperatureK temperature of the air that reaches the fins, K
     * @param airSpeedMPerS mean speed between the fins, m/s; 0 for still air
     * @param finPitchM distance from one fin to the next, m
     * @param finHeightM how far the fins stand out of the body, m
     * @param finThicknessM thickness, m
     * @param finMaterial what the fins are made of
     */
    record FinsAndFan(
            double temperatureK,
            double airSpeedMPerS,
            double finPitchM,
            double finHeightM,
            double finThicknessM,
            Material finMaterial)
            implements Supply {
        @Override
        public SupplyKind kind() {
            return SupplyKind.FINS_AND_FAN;
        }

        @Override
        public FinsAndFan withTemperature(double k) {
            return new FinsAndFan(k, airSpeedMPerS, finPitchM, finHeightM, finThicknessM, finMaterial);
        }

        @Override
        public Optional<FinsAndFan> fins() {
            return Optional.of(this);
        }
    }

    /** How a chiller holds its set point. */
    enum Control {
        /** Its power follows the demand. */
        MODULATING,
        /** All or nothing. */
        ON_OFF
    }

    /**
     * A pump that moves water.
     *
     * @param curve head against flow, by rising flow and falling head; two points at least
     * @param heatW heat that the pump puts into the water, W
     */
    record Pump(List<CurvePoint> curve, double heatW) {
        public Pump {
            curve = List.copyOf(curve);
        }
    }

    /**
     * A point of a pump's curve.
     *
     * @param flowM3PerS flow, m3/s
     * @param headM head, m of water
     */
    record CurvePoint(double flowM3PerS, double headM) {}

    /** What a chiller carries away. */
    sealed interface Capacity permits RatedCapacity, CapacityTable {
        /** Turns it into something else, by what it is. */
        <T> T match(Function<RatedCapacity, T> rated, Function<CapacityTable, T> table);
    }

    /**
     * A capacity at one rating, with its slopes. Straight lines, used within 15 K of the rating.
     *
     * @param ratedW capacity at the rating, W
     * @param waterK water temperature of the rating, K
     * @param roomK room temperature of the rating, K
     * @param perWaterKelvin gain per kelvin of warmer water, W/K
     * @param perRoomKelvin loss per kelvin of warmer room, W/K; positive
     */
    record RatedCapacity(double ratedW, double waterK, double roomK, double perWaterKelvin, double perRoomKelvin)
            implements Capacity {
        @Override
        public <T> T match(Function<RatedCapacity, T> rated, Function<CapacityTable, T> table) {
            return rated.apply(this);
        }
    }

    /**
     * Capacities from a data sheet. Every room temperature has the same water temperatures; between them straight lines, never
     * beyond them.
     *
     * @param points by rising room temperature, and by rising water temperature within it
     */
    record CapacityTable(List<CapacityPoint> points) implements Capacity {
        @Override
        public <T> T match(Function<RatedCapacity, T> rated, Function<CapacityTable, T> table) {
            return table.apply(this);
        }

        public CapacityTable {
            points = List.copyOf(points);
        }
    }

    /**
     * One entry of a chiller's table.
     *
     * @param waterK water temperature, K
     * @param roomK room temperature, K
     * @param capacityW capacity, W
     */
    record CapacityPoint(double waterK, double roomK, double capacityW) {}
}
