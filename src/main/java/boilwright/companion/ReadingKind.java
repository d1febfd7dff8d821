package boilwright.companion;

import boilwright.errors.Sentences;
import boilwright.units.Dimension;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What is read off during a run, with the range in which a value is taken at all. Names in files are the constants' names in
 * lower case with hyphens.
 */
public enum ReadingKind {
    FORELINE(CompanionText.READING_FORELINE, Dimension.PRESSURE, "Pa", 1e-4, 1.2e5),
    CHAMBER(CompanionText.READING_CHAMBER, Dimension.PRESSURE, "Pa", 1e-10, 1.2e5),
    /** Measured at the boiler; compared with the oil. */
    BOILER(CompanionText.READING_BOILER, Dimension.TEMPERATURE, "degC", 223.15, 1000),
    POWER(CompanionText.READING_POWER, Dimension.POWER, "W", 0, 1e5),
    WATER_IN(CompanionText.READING_WATER_IN, Dimension.TEMPERATURE, "degC", 253.15, 373.15),
    WATER_OUT(CompanionText.READING_WATER_OUT, Dimension.TEMPERATURE, "degC", 253.15, 423.15),
    WATER_FLOW(CompanionText.READING_WATER_FLOW, Dimension.VOLUME_FLOW, "L/min", 0, 0.01),
    CHARGE(CompanionText.READING_CHARGE, Dimension.VOLUME, "mL", 1e-7, 0.1);

    private final CompanionText title;
    private final Dimension dimension;
    private final String unit;
    private final double least;
    private final double greatest;

    ReadingKind(CompanionText title, Dimension dimension, String unit, double least, double greatest) {
        this.title = title;
        this.dimension = dimension;
        this.unit = unit;
        this.least = least;
        this.greatest = greatest;
    }

    /** Name in files. */
    public String id() {
        return Sentences.bundleKey(this);
    }

    /** Name that people read. */
    public String title() {
        return title.say();
    }

    public Dimension dimension() {
        return dimension;
    }

    /** The unit in which people usually write it. */
    public String unit() {
        return unit;
    }

    /** Least value that is taken, SI. */
    public double least() {
        return least;
    }

    /** Greatest value that is taken, SI. */
    public double greatest() {
        return greatest;
    }

    /** The quantity of this name. */
    public static Optional<ReadingKind> of(String id) {
        return Arrays.stream(values()).filter(k -> k.id().equals(id)).findFirst();
    }

    static String ids() {
        return Arrays.stream(values()).map(ReadingKind::id).collect(Collectors.joining(", "));
    }
}
