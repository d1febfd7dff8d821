package boilwright.answers;

import boilwright.units.Dimension;
import java.util.function.Supplier;

/** Every margin there is: what it is called and what its value and limit measure. */
public enum MarginId {
    HEAT("heat", Dimension.POWER, AnswerText.TITLE_HEAT::say),
    /** A count of jets. */
    JETS("jets", Dimension.FRACTION, AnswerText.TITLE_JETS::say),
    BOILER_PRESSURE("boiler-pressure", Dimension.PRESSURE, AnswerText.TITLE_BOILER_PRESSURE::say),
    OIL_BULK("oil-bulk", Dimension.TEMPERATURE, AnswerText.TITLE_OIL_BULK::say),
    /** The oil at the hottest face that it wets. */
    OIL_FILM("oil-film", Dimension.TEMPERATURE, AnswerText.TITLE_OIL_FILM::say),
    /** Share of the charge that is liquid in the boiler. */
    LIQUID("liquid", Dimension.FRACTION, AnswerText.TITLE_LIQUID::say),
    SOURCE("source", Dimension.TEMPERATURE, AnswerText.TITLE_SOURCE::say),
    GLASS_BOILER("glass-boiler", Dimension.PRESSURE, AnswerText.TITLE_GLASS_BOILER::say),
    GLASS_BODY("glass-body", Dimension.PRESSURE, AnswerText.TITLE_GLASS_BODY::say),
    COLUMN_MACH("column-mach", Dimension.FRACTION, AnswerText.TITLE_COLUMN_MACH::say),
    /** Hydrostatic superheat at the bottom of the oil. */
    SUPERHEAT("superheat", Dimension.TEMPERATURE_DIFFERENCE, AnswerText.TITLE_SUPERHEAT::say),
    FORELINE("foreline", Dimension.PRESSURE, AnswerText.TITLE_FORELINE::say),
    OIL_LOSS("oil-loss", Dimension.MASS_FLOW, AnswerText.TITLE_OIL_LOSS::say),
    /** The cartridge against what reaching full pumping takes. */
    FUEL("fuel", Dimension.MASS, AnswerText.TITLE_FUEL::say),
    /** How much colder than its vapour the film on the walls is. */
    FILM_MARGIN("film-margin", Dimension.TEMPERATURE_DIFFERENCE, AnswerText.TITLE_FILM_MARGIN::say),
    CAP("cap", Dimension.TEMPERATURE, AnswerText.TITLE_CAP::say),
    WATER_OUT("water-out", Dimension.TEMPERATURE, AnswerText.TITLE_WATER_OUT::say),
    WATER_FLOW("water-flow", Dimension.VOLUME_FLOW, AnswerText.TITLE_WATER_FLOW::say),
    WATER_IN("water-in", Dimension.TEMPERATURE, AnswerText.TITLE_WATER_IN::say),
    /** Duty of the supply against what it can carry away. */
    CHILLER("chiller", Dimension.POWER, AnswerText.TITLE_CHILLER::say),
    /** The chamber's pressure against what is wanted. */
    GAUGE("gauge", Dimension.PRESSURE, VacuumText.TITLE_GAUGE::say),
    OIL_VAPOUR("oil-vapour", Dimension.PRESSURE, VacuumText.TITLE_OIL_VAPOUR::say),
    THROUGHPUT("throughput", Dimension.GAS_FLOW, VacuumText.TITLE_THROUGHPUT::say),
    /** How long after crossover there is more gas than the jets carry. */
    OVERLOAD("overload", Dimension.TIME, VacuumText.TITLE_OVERLOAD::say),
    /** The reading against the nearer end of the gauge's range. */
    GAUGE_RANGE("gauge-range", Dimension.PRESSURE, VacuumText.TITLE_LOWEST_TRUSTED::say);

    private final String id;
    private final Dimension dimension;
    private final Supplier<String> title;

    MarginId(String id, Dimension dimension, Supplier<String> title) {
        this.id = id;
        this.dimension = dimension;
        this.title = title;
    }

    /** How files spell it. */
    public String id() {
        return id;
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
