package boilwright.estimate;

import boilwright.rig.SourceKind;

/**
 * The heat that a pump of some size works with.
 *
 * <p>Trade figures, all from memory: metal pumps of 100 to 400 mm bore are sold with 0.3 to 0.6 kW for each inch of bore,
 * small glass pumps of about 50 mm with 0.2 to 0.45 kW, so 0.1 to 0.225 kW for each inch. Four fifths of an electric
 * heater's power reach the oil.
 *
 * @param powerW the power that is usual, W
 * @param lowW least usual power, W
 * @param highW greatest usual power, W
 */
record WorkingPower(double powerW, double lowW, double highW) {
    private static final double INCH = 0.0254;
    private static final double[] METAL = {300, 600};
    private static final double[] GLASS = {100, 225};
    /** Share of a pump's own electric heater that reaches the oil. */
    static final double TRADE_SHARE = 0.8;

    /** What is usual for a pump of this size. A heater that is part of the pump says it itself, within what is usual. */
    static WorkingPower usual(OutsideMeasurements measured) {
        double[] perInch = measured.material().isGlass() ? GLASS : METAL;
        double inches = measured.boreM() / INCH;
        double low = perInch[0] * inches;
        double high = perInch[1] * inches;
        boolean ownHeater = measured.source().mounting() == SourceKind.Mounting.BUILT_IN;
        double power = ownHeater ? Math.max(low, Math.min(high, measured.ratedPowerW())) : Math.sqrt(low * high);
        return new WorkingPower(power, low, high);
    }

    /** Heat into the oil when the pump works with its usual power, W. */
    double netHeatW() {
        return TRADE_SHARE * powerW;
    }
}
