package boilwright.thermal;

import boilwright.gasflow.BurnerOrifice;
import boilwright.gasflow.ButaneProperties;
import boilwright.rig.HeatSource;
import boilwright.rig.Material;
import boilwright.rig.Parameter;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import boilwright.units.PhysicalConstants;

/**
 * An open gas burner. Heat into the face: P eta (T_flame - T_face)/(T_flame - 373 K), with eta = eta_max (Ps/P)(1 -
 * exp(-P/Ps)) because a flame larger than the base licks past it; this follows pot tests on gas burners (Gonzalez 2010).
 * An unregulated cartridge is a block of its own: fuel and can at one temperature, cooled by evaporation.
 */
final class FlameSource implements SourceBlock {
    /** Vessel of the pot tests, K: boiling water. */
    static final double REFERENCE_VESSEL_K = 373.15;

    private static final double REFERENCE_CARTRIDGE_K = 293.15;

    private final double ratedW;
    private final double bestEfficiency;
    private final double saturationW;
    private final double flameK;
    private final double halfResistance;
    private final HeatSource.Cartridge cartridge;
    private final double roomK;
    private final double roomPa;
    private double fraction = 1;
    private double holdK = Double.POSITIVE_INFINITY;
    private boolean empty;
    private boolean held = true;
    private double delivered;
    private double faceK;
    private double input;

    FlameSource(Rig rig, HeatSource.GasBurner burner, ParameterValues parameters, double halfResistance) {
        ratedW = burner.ratedPowerW();
        bestEfficiency = parameters.get(Parameter.BURNER_BEST_EFFICIENCY);
        saturationW =
                parameters.get(Parameter.BURNER_SATURATION_FLUX) * rig.boiler().heatedAreaM2();
        flameK = parameters.get(Parameter.FLAME_TEMPERATURE);
        this.halfResistance = halfResistance;
        cartridge = burner.cartridge().orElse(null);
        roomK = rig.room().temperatureK();
        roomPa = rig.room().pressurePa();
    }

    /** Share of the fuel power that reaches a vessel near 100 C. */
    static double efficiency(double fuelW, double best, double saturationW) {
        if (fuelW <= 0) {
            return best;
        }
        double r = fuelW / saturationW;
        return best * -Math.expm1(-r) / r;
    }

    @Override
    public int size() {
        return cartridge == null ? 0 : 2;
    }

    @Override
    public String stateName(int i) {
        return i == 0 ? SeriesQuantity.CARTRIDGE_TEMPERATURE.key() : SeriesQuantity.FUEL_MASS.key();
    }

    @Override
    public void initial(double[] y, int start, double room) {
        if (cartridge != null) {
            y[start] = room;
            y[start + 1] = cartridge.fuelMassKg();
        }
    }

    @Override
    public void evaluate(double[] y, int start, double wallK, double oilK, double[] dydt) {
        double power = ratedW * asked(oilK);
        if (cartridge != null) {
            double cartridgeK = y[start];
            power = empty ? 0 : power * orificeShare(cartridgeK);
            double fuelFlow = power / ButaneProperties.GROSS_HEATING_VALUE;
            double capacity = Math.max(0, y[start + 1]) * ButaneProperties.LIQUID_SPECIFIC_HEAT
                    + cartridge.metalMassKg() * Material.MILD_STEEL.specificHeat();
            dydt[start] = (-fuelFlow * ButaneProperties.latentHeat(cartridgeK)
                            + cartridge.airConductance() * (roomK - cartridgeK)
                            + cartridge.heatReturnFraction() * power)
                    / capacity;
            dydt[start + 1] = -fuelFlow;
        }
        input = power;
        deliver(power, wallK);
    }

    private void deliver(double power, double wallK) {
        if (power <= 0) {
            delivered = 0;
            faceK = wallK;
            return;
        }
        double perKelvin = power * efficiency(power, bestEfficiency, saturationW) / (flameK - REFERENCE_VESSEL_K);
        delivered = perKelvin * (flameK - wallK) / (1 + perKelvin * halfResistance);
        faceK = wallK + delivered * halfResistance;
    }

    private double asked(double oilK) {
        return fraction * (held ? HeatedBody.proportional(holdK, oilK) : 1);
    }

    private double orificeShare(double cartridgeK) {
        return BurnerOrifice.relativeFlow(
                ButaneProperties.vapourPressure(cartridgeK),
                roomPa,
                ButaneProperties.vapourPressure(REFERENCE_CARTRIDGE_K),
                PhysicalConstants.STANDARD_ATMOSPHERE_PA);
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
    public boolean flameOn() {
        return fraction > 0 && !empty;
    }

    @Override
    public boolean coversHeatedArea() {
        return flameOn();
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
    public void setFuelEmpty(boolean isEmpty) {
        empty = isEmpty;
    }

    @Override
    public double steadyDeliveredW(double outerFaceK, double oilK) {
        double power = ratedW * asked(oilK);
        if (cartridge != null) {
            power *= orificeShare(roomK);
        }
        input = power;
        delivered = power
                * efficiency(power, bestEfficiency, saturationW)
                * (flameK - outerFaceK)
                / (flameK - REFERENCE_VESSEL_K);
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
    public void steadyStates(double[] y, int start, double room) {
        initial(y, start, room);
    }
}
