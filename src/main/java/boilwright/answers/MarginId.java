package boilwright.answers;

import boilwright.units.Dimension;
import java.util.function.Supplier;

/** Every margin there is: what it is called and what its value and limit measure. */
public enum MarginId {
    HEAT("heat", Part.HEAT, Dimension.POWER, AnswerText.TITLE_HEAT::say),
    /** The weakest jet's flow over its full flow. */
    JETS("jets", Part.JETS, Dimension.FRACTION, AnswerText.TITLE_JETS::say),
    BOILER_PRESSURE("boiler-pressure", Part.JETS, Dimension.PRESSURE, AnswerText.TITLE_BOILER_PRESSURE::say),
    OIL_BULK("oil-bulk", Part.OIL, Dimension.TEMPERATURE, AnswerText.TITLE_OIL_BULK::say),
    /** The oil at the hottest face that it wets. */
    OIL_FILM("oil-film", Part.OIL, Dimension.TEMPERATURE, AnswerText.TITLE_OIL_FILM::say),
    /** Share of the charge that is liquid in the boiler. */
    LIQUID("liquid", Part.OIL, Dimension.FRACTION, AnswerText.TITLE_LIQUID::say),
    SOURCE("source", Part.HEAT, Dimension.TEMPERATURE, AnswerText.TITLE_SOURCE::say),
    GLASS_BOILER("glass-boiler", Part.GLASS, Dimension.PRESSURE, AnswerText.TITLE_GLASS_BOILER::say),
    GLASS_BODY("glass-body", Part.GLASS, Dimension.PRESSURE, AnswerText.TITLE_GLASS_BODY::say),
    COLUMN_MACH("column-mach", Part.JETS, Dimension.FRACTION, AnswerText.TITLE_COLUMN_MACH::say),
    /** Hydrostatic superheat at the bottom of the oil. */
    SUPERHEAT("superheat", Part.OIL, Dimension.TEMPERATURE_DIFFERENCE, AnswerText.TITLE_SUPERHEAT::say),
    FORELINE("foreline", Part.JETS, Dimension.PRESSURE, AnswerText.TITLE_FORELINE::say),
    OIL_LOSS("oil-loss", Part.OIL, Dimension.MASS_FLOW, AnswerText.TITLE_OIL_LOSS::say),
    /** The cartridge against what the session takes. */
    FUEL("fuel", Part.HEAT, Dimension.MASS, AnswerText.TITLE_FUEL::say),
    /** The cartridge's own temperature. */
    CARTRIDGE("cartridge-temperature", Part.HEAT, Dimension.TEMPERATURE, AnswerText.TITLE_CARTRIDGE::say),
    /** How much colder than its vapour the film on the walls is. */
    FILM_MARGIN("film-margin", Part.COOLING, Dimension.TEMPERATURE_DIFFERENCE, AnswerText.TITLE_FILM_MARGIN::say),
    CAP("cap", Part.COOLING, Dimension.TEMPERATURE, AnswerText.TITLE_CAP::say),
    WATER_OUT("water-out", Part.COOLING, Dimension.TEMPERATURE, AnswerText.TITLE_WATER_OUT::say),
    WATER_FLOW("water-flow", Part.COOLING, Dimension.VOLUME_FLOW, AnswerText.TITLE_WATER_FLOW::say),
    WATER_IN("water-in", Part.COOLING, Dimension.TEMPERATURE, AnswerText.TITLE_WATER_IN::say),
    /** Duty of the supply against what it can carry away. */
    CHILLER("chiller", Part.COOLING, Dimension.POWER, AnswerText.TITLE_CHILLER::say),
    /** The chamber's pressure against what is wanted. */
    GAUGE("gauge", Part.GAS, Dimension.PRESSURE, VacuumText.TITLE_GAUGE::say),
    OIL_VAPOUR("oil-vapour", Part.GAS, Dimension.PRESSURE, VacuumText.TITLE_OIL_VAPOUR::say),
    THROUGHPUT("throughput", Part.GAS, Dimension.GAS_FLOW, VacuumText.TITLE_THROUGHPUT::say),
    /** How long after crossover there is more gas than the jets carry. */
    OVERLOAD("overload", Part.GAS, Dimension.TIME, VacuumText.TITLE_OVERLOAD::say),
    /** The reading against the nearer end of the gauge's range. */
    GAUGE_RANGE("gauge-range", Part.GAS, Dimension.PRESSURE, VacuumText.TITLE_LOWEST_TRUSTED::say);

    private final String id;
    private final Part part;
    private final Dimension dimension;
    private final Supplier<String> title;

    MarginId(String id, Part part, Dimension dimension, Supplier<String> title) {
        this.id = id;
        this.part = part;
        this.dimension = dimension;
        this.title = title;
    }

    /** How files spell it. */
    public String id() {
        return id;
    }

    /** Which part of the rig it is about. */
    public Part part() {
        return part;
    }

    /** What value and limit measure. */
    public Dimension dimension() {
        return dimension;
    }

    /** Name that people read. */
    public String title() {
        return title.get();
    }
}
