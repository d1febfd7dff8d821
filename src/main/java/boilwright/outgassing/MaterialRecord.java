package boilwright.outgassing;

import java.util.Optional;

/**
 * What is known of a material in a vacuum.
 *
 * @param id how rig files spell it
 * @param title what people call it
 * @param kind metal, glass, elastomer or plastic
 * @param mainSpecies what most of the gas is
 * @param afterOneHour gas given off after an hour of pumping, counted from room air, Pa m3/s per m2
 * @param exponent how it falls from there: the power of the time
 * @param baked gas given off after a bake under vacuum, Pa m3/s per m2, when a figure is known
 * @param dryGasShare share of the rate that is left after dry gas instead of room air
 * @param airPermeability air let through, m2/s, when a figure is known
 */
public record MaterialRecord(
        String id,
        String title,
        String kind,
        String mainSpecies,
        Figure afterOneHour,
        Figure exponent,
        Optional<Figure> baked,
        Figure dryGasShare,
        Optional<Figure> airPermeability) {
    /** Its title for the middle of a sentence: small first letter unless it is an abbreviation. */
    public String inWords() {
        boolean word = title.length() > 1 && Character.isLowerCase(title.charAt(1));
        return word ? Character.toLowerCase(title.charAt(0)) + title.substring(1) : title;
    }

    /**
     * A published figure with its range.
     *
     * @param value SI
     * @param low low end of what is believed possible, SI
     * @param high high end, SI
     * @param source key of the source
     * @param where table, page or method
     * @param fromMemory true when the source was not seen by those who wrote the figure down
     */
    public record Figure(double value, double low, double high, String source, String where, boolean fromMemory) {}
}
