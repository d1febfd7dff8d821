package boilwright.estimate;

import boilwright.rig.TypicalValues;

/**
 * The heat into the oil that a pump of some size works with. It follows from the pump alone, never from the heater that stands under it
 * now: that heater is what is in question.
 *
 * <p>Trade figures, all from memory: metal pumps of 100 to 400 mm bore are sold with 0.3 to 0.6 kW for each inch of bore, small
 * glass pumps of about 50 mm with 0.2 to 0.45 kW, so 0.1 to 0.225 kW for each inch. Four fifths of an electric heater's power reach
 * the oil. A nameplate, the rating of the heater that the maker sold with the pump, says more: full jets take 0.4 to 1.0 of it, times
 * the share that its kind of heater delivers (engineering judgement).
 *
 * @param lowW least heat into the oil, W
 * @param highW greatest, W
 */
record WorkingPower(double lowW, double highW) {
    private static final double INCH = 0.0254;
    private static final double[] METAL = {300, 600};
    private static final double[] GLASS = {100, 225};
    /** Share of a pump's own electric heater that reaches the oil. */
    private static final double TRADE_SHARE = 0.8;

    /** What is usual for a pump of this size, or what its nameplate leaves open. */
    static WorkingPower usual(OutsideMeasurements measured) {
        if (measured.known().nameplate().isPresent()) {
            OutsideMeasurements.Nameplate plate = measured.known().nameplate().get();
            double[] shares = SourceDraft.shares(plate.kind(), measured.material());
            double delivered = plate.powerW() * Math.sqrt(shares[0] * shares[1]);
            return new WorkingPower(TypicalValues.NAMEPLATE_LEAST_SHARE * delivered, delivered);
        }
        double[] perInch = measured.material().isGlass() ? GLASS : METAL;
        double inches = measured.boreM() / INCH;
        return new WorkingPower(TRADE_SHARE * perInch[0] * inches, TRADE_SHARE * perInch[1] * inches);
    }

    /** The middle of it, W. */
    double netHeatW() {
        return Math.sqrt(lowW * highW);
    }

    /** Rating of an electric heater that gives the middle of it, W. */
    double ratingW() {
        return netHeatW() / TRADE_SHARE;
    }
}
