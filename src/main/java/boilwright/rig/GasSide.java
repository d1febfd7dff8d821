package boilwright.rig;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The side of the experiment: chamber, line to the pump, gauge and the way around the pump.
 *
 * @param chamber the vessel that is pumped
 * @param line pieces from the chamber to the pump's inlet; empty when the chamber stands on the pump
 * @param gauge where the pressure is read and by what, when there is a gauge
 * @param roughing the way from the chamber to the backing pump past the cold jets, when the chamber is roughed apart from the
 *     pump; empty when the backing pump draws through the pump
 * @param targetPa pressure at the gauge that the work needs, Pa, when known
 */
public record GasSide(
        Chamber chamber,
        List<LinePiece> line,
        Optional<Gauge> gauge,
        List<LinePiece> roughing,
        OptionalDouble targetPa) {
    public GasSide {
        line = List.copyOf(line);
        roughing = List.copyOf(roughing);
    }

    /**
     * The vessel that is pumped.
     *
     * @param volumeM3 its volume with all that hangs on it, m3
     * @param sinceAirS time since its surfaces last stood in air at the moment the run begins, s
     * @param exposure what it was filled with before
     * @param surfaces what its inside is made of
     * @param seals its rings
     * @param leakPaM3PerS a known leak, Pa m3/s of air; 0 for none
     */
    public record Chamber(
            double volumeM3,
            double sinceAirS,
            Exposure exposure,
            List<Surface> surfaces,
            List<Seal> seals,
            double leakPaM3PerS) {
        public Chamber {
            surfaces = List.copyOf(surfaces);
            seals = List.copyOf(seals);
        }
    }

    /** Whether a surface was baked under vacuum since it last stood in air. */
    public enum Treatment {
        UNBAKED,
        BAKED
    }

    /** What surfaces stood in before they were pumped. */
    public enum Exposure {
        /** Room air, with its water. */
        HUMID_AIR,
        /** Dry air or nitrogen, for a short time. */
        DRY_GAS
    }

    /**
     * A surface inside.
     *
     * @param material id in the outgassing data
     * @param areaM2 m2
     * @param baked whether it was baked under vacuum since it last stood in air
     */
    public record Surface(String material, double areaM2, boolean baked) {}

    /**
     * A ring between two flanges.
     *
     * @param material id in the outgassing data
     * @param ringDiameterM diameter of the ring, m
     * @param cordDiameterM thickness of its cord, m
     */
    public record Seal(String material, double ringDiameterM, double cordDiameterM) {}

    /**
     * A gauge.
     *
     * @param at {@link #AT_CHAMBER}, {@link #AT_INLET} or the name of a piece of the line, at whose chamber side it sits
     * @param kind how it works
     * @param lowestPa lowest pressure at which it is trusted, Pa
     * @param highestPa highest pressure at which it is trusted, Pa
     * @param gasFactor its reading over the true pressure for the gas that is there; 1 for air, which it is calibrated for
     */
    public record Gauge(String at, GaugeKind kind, double lowestPa, double highestPa, double gasFactor) {
        /** Word for a gauge on the chamber. */
        public static final String AT_CHAMBER = "chamber";
        /** Word for a gauge at the pump's inlet. */
        public static final String AT_INLET = "pump-inlet";
    }

    /** How a gauge works, with the range in which its kind is usually trusted, Pa (common practice, no source). */
    public enum GaugeKind {
        PIRANI(0.1, 1e4),
        THERMOCOUPLE(0.1, 200),
        CAPACITANCE(0.01, 1.3e5),
        COLD_CATHODE(1e-6, 1),
        HOT_CATHODE(1e-8, 0.1),
        MCLEOD(1e-3, 1e3);

        private final double lowestPa;
        private final double highestPa;

        GaugeKind(double lowestPa, double highestPa) {
            this.lowestPa = lowestPa;
            this.highestPa = highestPa;
        }

        /** Lowest pressure usually trusted, Pa. */
        public double lowestPa() {
            return lowestPa;
        }

        /** Highest pressure usually trusted, Pa. */
        public double highestPa() {
            return highestPa;
        }
    }
}
