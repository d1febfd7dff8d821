package boilwright.report;

import boilwright.answers.MarginId;
import boilwright.spread.Bands;
import boilwright.spread.Bands.MarginBand;
import boilwright.spread.Percent;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * How far the heat margin of one or of several sources spreads, by the source's id. Immutable.
 *
 * @param bySource bands of each source's rig at rest
 */
public record HeatSpread(Map<String, Bands> bySource) {
    /** None was asked for. */
    public static final HeatSpread NONE = new HeatSpread(Map.of());

    public HeatSpread {
        bySource = new LinkedHashMap<>(bySource);
    }

    /** Of one rig. */
    public static HeatSpread of(Bands bands) {
        return bands.isEmpty() ? NONE : new HeatSpread(Map.of("", bands));
    }

    boolean isEmpty() {
        return bySource.isEmpty();
    }

    long samples() {
        return bySource.values().stream().mapToLong(Bands::samples).max().orElse(0);
    }

    private Optional<MarginBand> heat(String source) {
        return Optional.ofNullable(bySource.get(source))
                .flatMap(bands -> bands.margin(MarginId.HEAT))
                .filter(band -> !band.ratio().isEmpty());
    }

    /** " (0.91-1.34)" for a table; empty without a band. */
    String inTable(String source) {
        return heat(source).map(band -> " (" + range(band, "-") + ")").orElse("");
    }

    /** A whole sentence; empty without a band. */
    String sentence(String source) {
        return heat(source)
                .map(band -> "Over " + samples() + " samples of what is uncertain the heat is " + range(band, " to ")
                        + " times what full jets need, and too little in "
                        + Percent.of(band.failing().share()) + ".")
                .orElse("");
    }

    private static String range(MarginBand band, String between) {
        return String.format(
                Locale.ROOT,
                "%.2f%s%.2f",
                band.ratio().low().orElseThrow(),
                between,
                band.ratio().high().orElseThrow());
    }

    /** Adds low, median, high and the chance of too little heat. */
    void put(JsonTree json, String source) {
        heat(source)
                .ifPresent(band -> json.object("heatSpread")
                        .put("low", band.ratio().low())
                        .put("median", band.ratio().median())
                        .put("high", band.ratio().high())
                        .put("chanceOfFailing", band.failing().share()));
    }
}
