package boilwright.rig;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The backing side: what holds the pressure below the pump while oil is heated. */
public sealed interface Foreline {
    /** Its kind. */
    ForelineKind kind();

    /** The pressure that was measured, Pa; empty where a backing pump's pressure follows the gas. */
    default OptionalDouble givenPa() {
        return OptionalDouble.empty();
    }

    /** The backing pump behind its line; empty where a pressure was measured. */
    default Optional<Backing> backing() {
        return Optional.empty();
    }

    /**
     * A pressure that was measured, whatever holds it; the pump's gas does not change it.
     *
     * @param pressurePa Pa
     */
    record GivenPressure(double pressurePa) implements Foreline {
        @Override
        public ForelineKind kind() {
            return ForelineKind.GIVEN_PRESSURE;
        }

        @Override
        public OptionalDouble givenPa() {
            return OptionalDouble.of(pressurePa);
        }
    }

    /**
     * A backing pump behind its line: the pressure follows the gas that arrives.
     *
     * @param line pieces from the pump's outlet to the backing pump
     * @param volumeM3 volume between outlet and backing pump, m3
     * @param pump the backing pump
     */
    record Backing(List<LinePiece> line, double volumeM3, BackingPump pump) implements Foreline {
        @Override
        public ForelineKind kind() {
            return ForelineKind.BACKING_PUMP;
        }

        @Override
        public Optional<Backing> backing() {
            return Optional.of(this);
        }

        public Backing {
            line = List.copyOf(line);
        }
    }

    /**
     * A backing pump.
     *
     * @param curve volume speed against inlet pressure, by rising pressure; one point at least
     * @param ultimatePa lowest pressure it reaches by itself without gas ballast, Pa
     * @param gasBallast whether its gas ballast is open while oil is heated
     * @param ballastUltimatePa lowest pressure it reaches with gas ballast, Pa
     */
    record BackingPump(List<SpeedPoint> curve, double ultimatePa, boolean gasBallast, double ballastUltimatePa) {
        public BackingPump {
            curve = List.copyOf(curve);
        }

        /** Lowest pressure it reaches as it is run, Pa. */
        public double presentUltimatePa() {
            return gasBallast ? ballastUltimatePa : ultimatePa;
        }
    }

    /** Whether a backing pump's gas ballast is open while oil is heated. */
    enum Ballast {
        CLOSED,
        OPEN
    }

    /**
     * A point of a backing pump's curve.
     *
     * @param pressurePa inlet pressure, Pa
     * @param speedM3PerS volume of gas at that pressure taken per second, m3/s
     */
    record SpeedPoint(double pressurePa, double speedM3PerS) {}
}
