package boilwright.thermal;

import boilwright.rig.HeatSource;
import boilwright.rig.Parameter;
import boilwright.rig.ParameterValues;

/**
 * Heat that arises where it is wanted: an element immersed in the oil, the ferrous base of a boiler in an induction field,
 * or an induction field that finds nothing ferrous and heats nothing.
 */
final class DirectSource implements SourceBlock {
    private final double ratedW;
    private final double efficiency;
    private final boolean inLiquid;
    private final double limitK;
    private double fraction = 1;
    private double holdK = Double.POSITIVE_INFINITY;
    private boolean held = true;
    private double delivered;
    private double faceK;
    private double input;

    private DirectSource(double ratedW, double efficiency, boolean inLiquid, double limitK) {
        this.ratedW = ratedW;
        this.efficiency = efficiency;
        this.inLiquid = inLiquid;
        this.limitK = limitK;
    }

    static DirectSource immersed(HeatSource.ImmersedElement element, ParameterValues values) {
        double rated = element.ratedPowerW() * values.get(Parameter.SUPPLY_POWER_FACTOR);
        return new DirectSource(rated, 1, true, Double.POSITIVE_INFINITY);
    }

    /** Induction straight into a ferrous base, or into nothing. */
    static DirectSource induction(HeatSource.Induction induction, boolean ferrous, ParameterValues values) {
        double rated = induction.ratedPowerW() * values.get(Parameter.SUPPLY_POWER_FACTOR);
        return new DirectSource(rated, ferrous ? induction.efficiency() : 0, false, induction.limitK());
    }

    @Override
    public int size() {
        return 0;
    }

    @Override
    public String stateName(int i) {
        throw new IndexOutOfBoundsException(i);
    }

    @Override
    public void initial(double[] y, int start, double roomK) {
        // no states
    }

    @Override
    public void evaluate(double[] y, int start, double wallK, double oilK, double[] dydt) {
        steadyDeliveredW(wallK, oilK);
    }

    @Override
    public double deliveredW() {
        return delivered;
    }

    @Override
    public double inputW() {
        return input;
    }

    @Override
    public double lossW() {
        return input - delivered;
    }

    @Override
    public boolean heatsLiquid() {
        return inLiquid;
    }

    @Override
    public void setLevel(double share, double holdOilK) {
        fraction = share;
        holdK = holdOilK;
    }

    @Override
    public void setHeld(boolean isHeld) {
        held = isHeld;
    }

    @Override
    public double steadyDeliveredW(double outerFaceK, double oilK) {
        // a field that heats nothing draws nothing worth counting
        double share = held ? HeatedBody.proportional(holdK, oilK) * HeatedBody.proportional(limitK, outerFaceK) : 1;
        input = efficiency > 0 ? ratedW * fraction * share : 0;
        delivered = input * efficiency;
        faceK = outerFaceK;
        return delivered;
    }

    @Override
    public double steadyBodyK() {
        return Double.NaN;
    }

    @Override
    public double bodyK(double[] y, int start) {
        return Double.NaN;
    }

    @Override
    public double touchK(double[] y, int start) {
        return 0;
    }

    @Override
    public void steadyStates(double[] y, int start, double roomK) {
        // no states
    }
}
