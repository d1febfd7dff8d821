package boilwright.rise;

import boilwright.units.UnitSpelling;
import java.util.List;

/**
 * The pressure in a chamber after the valve to its pump was closed.
 *
 * @param readings at least {@value #FEWEST}, each later than the one before, pressures greater than zero
 * @param timeUnit the unit in which the times were written, for showing
 * @param pressureUnit the unit in which the pressures were written, for showing
 */
public record RiseRecord(List<Reading> readings, UnitSpelling timeUnit, UnitSpelling pressureUnit) {
    /** Fewest readings of a record. */
    public static final int FEWEST = 5;

    /** @throws IllegalArgumentException when the readings are not as described */
    public RiseRecord {
        readings = List.copyOf(readings);
        if (readings.size() < FEWEST) {
            throw new IllegalArgumentException("a record has at least " + FEWEST + " readings");
        }
        double before = Double.NEGATIVE_INFINITY;
        for (Reading reading : readings) {
            if (!(reading.timeS() > before && Double.isFinite(reading.timeS()))) {
                throw new IllegalArgumentException("every reading is later than the one before");
            }
            if (!(reading.pressurePa() > 0 && Double.isFinite(reading.pressurePa()))) {
                throw new IllegalArgumentException("a pressure is greater than zero");
            }
            before = reading.timeS();
        }
    }

    /** Time of the first reading, s. */
    public double startS() {
        return readings.get(0).timeS();
    }

    /** From the first reading to the last, s. */
    public double spanS() {
        return readings.get(readings.size() - 1).timeS() - startS();
    }

    /** Times from the first reading, s. */
    double[] elapsedS() {
        return readings.stream().mapToDouble(r -> r.timeS() - startS()).toArray();
    }

    /** Pressures, Pa. */
    double[] pressuresPa() {
        return readings.stream().mapToDouble(Reading::pressurePa).toArray();
    }

    /**
     * One reading of the gauge.
     *
     * @param timeS when, s
     * @param pressurePa what it showed, Pa, &gt; 0
     */
    public record Reading(double timeS, double pressurePa) {}
}
