package boilwright.choice;

import boilwright.rig.Rig;
import boilwright.thermal.NeededState;
import boilwright.units.Dimension;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How much of a heat source is enough for a rig: an immutable value.
 *
 * @param rig the rig as described
 * @param fluidTitle its fluid's name
 * @param margin heat available over heat needed that is asked for
 * @param ratio the same as the rig is now, at the level that its schedule ends with
 * @param verdict a few sentences
 * @param level share of the rated power that the schedule ends with
 * @param needed the state in which the weakest jet is just full
 * @param least the least of each figure, the others left as they are
 * @param pairs two figures changed together
 * @param window powers between full jets and the first limit
 * @param settings what to set for warm-up and once hot; empty when no setting makes every jet full
 * @param saved what the second setting saves against the first; empty without settings
 * @param curves source and pump against wall temperature
 * @param cautions what can hurt someone, whole sentences
 * @param notes assumptions, whole sentences
 * @param programVersion version of the program
 * @param dataVersion version of the fluid data
 */
public record SizeAnswer(
        Rig rig,
        String fluidTitle,
        double margin,
        double ratio,
        String verdict,
        double level,
        NeededState needed,
        List<Least> least,
        List<Pair> pairs,
        PowerWindow window,
        List<Setting> settings,
        Optional<Saved> saved,
        HeatCurves curves,
        List<String> cautions,
        List<String> notes,
        String programVersion,
        String dataVersion) {
    public SizeAnswer {
        least = List.copyOf(least);
        pairs = List.copyOf(pairs);
        settings = List.copyOf(settings);
        cautions = List.copyOf(cautions);
        notes = List.copyOf(notes);
    }

    /** Whether the rig as it is has the margin asked for. */
    public boolean isEnough() {
        return ratio >= margin;
    }

    /** What of a source or boiler can be made more. */
    public enum Figure {
        RATED_POWER("rated-power", "heatSource.ratedPower", Dimension.POWER),
        CONTACT("contact-conductance", "heatSource.contactConductance", Dimension.HEAT_TRANSFER_COEFFICIENT),
        TEMPERATURE("source-temperature", "heatSource.limit", Dimension.TEMPERATURE),
        CONTACT_AREA("contact-area", "heatSource.contactArea", Dimension.AREA),
        WRAPPED_AREA("contact-area", "heatSource.wrappedArea", Dimension.AREA),
        HEATED_AREA("heated-area", "boiler.heatedArea", Dimension.AREA);

        private final String id;
        private final String path;
        private final Dimension dimension;

        Figure(String id, String path, Dimension dimension) {
            this.id = id;
            this.path = path;
            this.dimension = dimension;
        }

        /** Stable id. */
        public String id() {
            return id;
        }

        /** The field of a rig file that holds it. */
        public String path() {
            return path;
        }

        /** What it measures. */
        public Dimension dimension() {
            return dimension;
        }
    }

    /**
     * The least of one figure that gives the margin.
     *
     * @param figure which figure
     * @param present what it is now, SI
     * @param value the least, SI; empty when no value of this figure alone is enough
     */
    public record Least(Figure figure, double present, OptionalDouble value) {}

    /**
     * For some values of one figure the least of another that gives the margin.
     *
     * @param given the figure that is chosen
     * @param found the figure that follows
     * @param rows one for each choice
     */
    public record Pair(Figure given, Figure found, List<PairRow> rows) {
        public Pair {
            rows = List.copyOf(rows);
        }
    }

    /**
     * One choice.
     *
     * @param given value chosen, SI
     * @param found the least of the other figure, SI; empty when none is enough
     */
    public record PairRow(double given, OptionalDouble found) {}

    /**
     * A power to set, and the rig at rest there.
     *
     * @param id "warm-up" or "holding"
     * @param powerW power set, W
     * @param share the same over the rated power
     * @param ratio heat available there over heat needed
     * @param oilK oil temperature at rest, K
     * @param inputW power taken at rest, W
     * @param toWaterW heat into the water at rest, W
     */
    public record Setting(
            String id, double powerW, double share, double ratio, double oilK, double inputW, double toWaterW) {}

    /**
     * What holding saves against staying at the setting of the warm-up.
     *
     * @param inputW power, W
     * @param toWaterW heat into the water, W
     * @param flowM3PerS water flow at the same outlet temperature, m3/s; empty without water flow
     */
    public record Saved(double inputW, double toWaterW, OptionalDouble flowM3PerS) {}
}
