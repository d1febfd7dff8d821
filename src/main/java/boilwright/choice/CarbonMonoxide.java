package boilwright.choice;

/**
 * Carbon monoxide of one burner in a room that the air leaves evenly mixed: c = E/(n V) (1 - exp(-n t)) from clean air, with
 * E the emission, n the air changes and V the volume.
 *
 * <p>Emissions: 5 to 140 mL/min were measured on camping burners under pots (FFI report 2010/01888). They do not scale
 * surely with the burner's power and are taken as they are. What people bear: WHO guidelines for indoor air quality (2010,
 * from memory), 100 mg/m3 for 15 minutes, 35 mg/m3 for one hour, 10 mg/m3 for eight hours.
 *
 * @param roomM3 volume of the room, m3
 * @param airChangesPerH air changes, 1/h
 * @param hours how long the burner burns, h
 * @param lowPpm share of carbon monoxide at the end with the least emission, ppm by volume
 * @param highPpm the same with the greatest emission
 * @param lowSteadyPpm share that comes about in the end with the least emission
 * @param highSteadyPpm the same with the greatest emission
 * @param airChangesForOneHour air changes that keep the greatest emission at the guideline for one hour, 1/h
 */
public record CarbonMonoxide(
        double roomM3,
        double airChangesPerH,
        double hours,
        double lowPpm,
        double highPpm,
        double lowSteadyPpm,
        double highSteadyPpm,
        double airChangesForOneHour) {
    /** Least emission, m3/h. */
    public static final double LOW_M3_PER_H = 5e-6 * 60;

    /** Greatest emission, m3/h. */
    public static final double HIGH_M3_PER_H = 140e-6 * 60;

    /** Guideline for one hour, ppm: 35 mg/m3 at 25 degC. */
    public static final double ONE_HOUR_PPM = 30.6;

    private static final double PPM = 1e6;

    /**
     * What a burner does to a room.
     *
     * @param roomM3 volume, m3, above 0
     * @param airChangesPerH air changes, 1/h, above 0
     * @param seconds how long it burns, s
     */
    public static CarbonMonoxide of(double roomM3, double airChangesPerH, double seconds) {
        double hours = seconds / 3600;
        double reached = -Math.expm1(-airChangesPerH * hours);
        double low = PPM * LOW_M3_PER_H / (airChangesPerH * roomM3);
        double high = PPM * HIGH_M3_PER_H / (airChangesPerH * roomM3);
        return new CarbonMonoxide(
                roomM3,
                airChangesPerH,
                hours,
                low * reached,
                high * reached,
                low,
                high,
                PPM * HIGH_M3_PER_H / (ONE_HOUR_PPM * roomM3));
    }
}
