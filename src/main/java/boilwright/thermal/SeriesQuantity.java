package boilwright.thermal;

import boilwright.thermal.TimeSeries.Kind;

/** Every quantity that a run records against time, in the order of its columns; those of stages that stand together stand stage by stage. */
public enum SeriesQuantity {
    TIME("timeS", "time", Kind.TIME),
    LIQUID_TEMPERATURE("liquidTemperatureK", "oil", Kind.TEMPERATURE),
    BOILER_WALL("boilerWallK", "boiler wall", Kind.TEMPERATURE),
    SOURCE_TEMPERATURE("sourceTemperatureK", "heat source", Kind.TEMPERATURE),
    COLUMN_FOOT("columnFootK", "column foot", Kind.TEMPERATURE),
    COLUMN_TOP("columnTopK", "column top", Kind.TEMPERATURE),
    STAGE_WALL("stage{}WallK", "wall at {}", Kind.TEMPERATURE),
    CAP("capK", "cap", Kind.TEMPERATURE),
    WATER_OUT("waterOutK", "water out", Kind.TEMPERATURE),
    BOILER_PRESSURE("boilerPressurePa", "boiler pressure", Kind.PRESSURE),
    VAPOUR_FLOW("vapourFlowKgPerS", "vapour", Kind.FLOW),
    STAGE_FLOW("stage{}FlowKgPerS", "jet {}", Kind.FLOW),
    STAGE_FULL_FLOW_FRACTION("stage{}FullFlowFraction", "jet {}", Kind.SHARE),
    STAGE_CONDENSED_SHARE("stage{}CondensedShare", "condensed at {}", Kind.SHARE),
    /** 1 while the jet works, else 0. */
    STAGE_LIT("stage{}Lit", "lit {}", Kind.SHARE),
    HEAT_DELIVERED("heatDeliveredW", "heat delivered", Kind.HEAT),
    SOURCE_INPUT("sourceInputW", "power taken", Kind.HEAT),
    HEAT_TO_WATER("heatToWaterW", "heat to water", Kind.HEAT),
    HEAT_TO_AIR("heatToAirW", "heat to air", Kind.HEAT),
    WATER_IN("waterInK", "water in", Kind.TEMPERATURE),
    CHILLER("chillerW", "chiller", Kind.HEAT),
    ICE("iceKg", "ice", Kind.MASS),
    DISSOLVED_GAS("dissolvedGasFraction", "gas left in the oil", Kind.GAS),
    FORELINE("forelinePa", "foreline", Kind.PRESSURE),
    OIL_MASS("oilMassKg", "oil", Kind.MASS),
    CARTRIDGE_TEMPERATURE("cartridgeTemperatureK", "cartridge", Kind.TEMPERATURE),
    FUEL_MASS("fuelMassKg", "fuel", Kind.MASS),
    /** The oil at the hottest face that it wets. */
    INNER_FACE("boilerInnerFaceK", "oil at the heated wall", Kind.JUDGED),
    /** Least of what the films of full jets are colder than their vapour. */
    LEAST_FILM_MARGIN("leastFilmMarginK", "condensing film", Kind.JUDGED),
    HOTTEST_WATER("hottestWaterK", "hottest water", Kind.JUDGED),
    BOILER_GLASS_STRESS("boilerGlassStressPa", "glass stress, boiler", Kind.JUDGED),
    BODY_GLASS_STRESS("bodyGlassStressPa", "glass stress, body", Kind.JUDGED),
    /** Hottest outside face that can be touched. */
    HOTTEST_OUTSIDE("hottestOutsideK", "hottest outside face", Kind.JUDGED);

    private static final String STAGE = "{}";

    private final String key;
    private final String title;
    private final Kind kind;

    SeriesQuantity(String key, String title, Kind kind) {
        this.key = key;
        this.title = title;
        this.kind = kind;
    }

    /** What it measures. */
    public Kind kind() {
        return kind;
    }

    /** Whether there is one for each stage. */
    public boolean isOfStage() {
        return key.contains(STAGE);
    }

    /** How files spell it where it is that of the whole pump, with the unit at its end. */
    public String key() {
        return key(0);
    }

    /**
     * How files spell it, with the unit at its end.
     *
     * @param stage number of the stage from 1; 0 for what is the whole pump's
     * @throws IllegalArgumentException for a stage where there is none, and without one where there is
     */
    public String key(int stage) {
        if (isOfStage() != stage > 0) {
            throw new IllegalArgumentException(this + " of stage " + stage);
        }
        return key.replace(STAGE, Integer.toString(stage));
    }

    /**
     * Name that people read.
     *
     * @param stage name of the stage; not used for what is the whole pump's
     */
    public String title(String stage) {
        return title.replace(STAGE, stage);
    }
}
