package boilwright.thermal;

import boilwright.fluid.Water;
import boilwright.rig.Parameter;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import boilwright.rig.Supply;
import boilwright.water.ChillerCapacity;

/**
 * What stands behind the circuit's inlet. A measured flow and a tap bring water of one temperature for ever; a chiller's and a
 * plain tank's temperature is a state, with the ice in it as a second one. Ice melts as fast as the water above freezing warms
 * it and keeps the tank within a fraction of a kelvin of freezing until it is gone.
 */
final class SupplyBlock {
    /** Ice below which melting dies away, as a share of the ice at the start. */
    private static final double LAST_ICE = 0.02;
    /** Water with ice starts this much above freezing, so that no trial state is frozen, K. */
    private static final double ABOVE_FREEZING_K = 0.05;

    private final Supply supply;
    private final double roomK;
    private final double waterKg;
    private final double iceKg;
    private final double pumpW;
    private final double airConductance;
    /** Heat that melting ice takes per kelvin above freezing while there is much of it, W/K. */
    private final double meltingConductance;
    /** Null without a chiller. */
    private final Supply.Chiller chiller;

    /** Null without a chiller. */
    private final ChillerCapacity capacity;

    private boolean cooling = true;
    private boolean runs = true;

    // of the last evaluation
    private double removedW;
    private double gainedW;

    SupplyBlock(Rig rig, ParameterValues parameters) {
        meltingConductance = parameters.get(Parameter.ICE_MELTING_CONDUCTANCE);
        supply = rig.cooling().supply();
        roomK = rig.room().temperatureK();
        waterKg = supply.pumped()
                .map(pumped -> pumped.volumeM3() * Water.density(supply.temperatureK()))
                .orElse(0.0);
        pumpW = supply.pumped().map(pumped -> pumped.pump().heatW()).orElse(0.0);
        chiller = supply.chiller().orElse(null);
        capacity = chiller == null ? null : ChillerCapacity.of(chiller.capacity());
        iceKg = supply.tank().map(Supply.Tank::iceKg).orElse(0.0);
        airConductance = supply.tank().map(Supply.Tank::airConductance).orElse(0.0);
    }

    /** Number of states: temperature of the tank, and ice when there was some. */
    int size() {
        if (supply.pumped().isEmpty()) {
            return 0;
        }
        return iceKg > 0 ? 2 : 1;
    }

    /** Sets the states to those at the start. */
    void initial(double[] y, int at) {
        if (size() > 0) {
            y[at] = startK();
        }
        if (size() > 1) {
            y[at + 1] = iceKg;
        }
    }

    private double startK() {
        return iceKg > 0 ? Math.max(supply.temperatureK(), Water.FREEZING_K + ABOVE_FREEZING_K) : supply.temperatureK();
    }

    /** Temperature of the water that enters the circuit, K. */
    double enteringK(double[] y, int at) {
        return size() > 0 ? y[at] : supply.temperatureK();
    }

    /** True for a chiller that is all on or all off. */
    boolean switches() {
        return chiller != null && chiller.control() == Supply.Control.ON_OFF;
    }

    /** Rises through zero when the chiller has to switch, K; counted from the half of the band it is in. */
    double switchExcess(double[] y, int at) {
        double above = y[at] - chiller.temperatureK();
        return cooling ? -chiller.hysteresisK() / 2 - above : above - chiller.hysteresisK() / 2;
    }

    /** Sets whether a chiller cools at all. */
    void setChillerRuns(boolean on) {
        runs = on;
    }

    /** Switches the chiller's cooling. */
    void toggle() {
        cooling = !cooling;
    }

    /** Heat that the chiller removes at this tank temperature, W; beyond what is known of it, as at the end of that. */
    double chillerW(double tankK) {
        if (chiller == null || !runs) {
            return 0;
        }
        double known = Math.max(capacity.lowestWaterK(), Math.min(capacity.highestWaterK(), tankK));
        double watts = capacity.wattsAt(known, roomK);
        if (chiller.control() == Supply.Control.ON_OFF) {
            return cooling ? watts : 0;
        }
        double demand = 0.5 + (tankK - chiller.temperatureK()) / chiller.hysteresisK();
        return watts * Math.max(0, Math.min(1, demand));
    }

    /**
     * Adds the rates of the supply.
     *
     * @param y state
     * @param at index of its first state
     * @param streamW heat that the circuit brings back, W
     * @param running whether the pump runs
     * @param dydt receives the rates
     */
    void evaluate(double[] y, int at, double streamW, boolean running, double[] dydt) {
        removedW = 0;
        gainedW = 0;
        if (size() == 0) {
            return;
        }
        double tankK = y[at];
        removedW = chillerW(tankK);
        gainedW = (running ? pumpW : 0) + airConductance * (roomK - tankK);
        double ice = size() > 1 ? Math.max(0, y[at + 1]) : 0;
        double melting = 0;
        if (ice > 0) {
            double share = Math.min(1, ice / (LAST_ICE * iceKg));
            double heat = meltingConductance * share * Math.max(0, tankK - Water.FREEZING_K);
            melting = heat / (Water.FUSION_HEAT + Water.enthalpy(tankK));
            dydt[at + 1] = -melting;
            dydt[at] = (streamW + gainedW - removedW - heat) / heatCapacity(tankK, ice);
        } else {
            if (size() > 1) {
                dydt[at + 1] = 0;
            }
            dydt[at] = (streamW + gainedW - removedW) / heatCapacity(tankK, 0);
        }
    }

    /** Melted ice adds to the water; what melts enters at 0 C, where the enthalpy of water is zero. */
    private double heatCapacity(double tankK, double ice) {
        return (waterKg + iceKg - ice) * Water.specificHeat(tankK);
    }

    /** Heat stored, J, from liquid water at 0 C. */
    double storedJ(double[] y, int at) {
        if (size() == 0) {
            return 0;
        }
        double ice = size() > 1 ? Math.max(0, y[at + 1]) : 0;
        return (waterKg + iceKg - ice) * Water.enthalpy(y[at]) - ice * Water.FUSION_HEAT;
    }

    /** Heat removed by a chiller at the last evaluation, W. */
    double removedW() {
        return removedW;
    }

    /** Heat gained from pump and room at the last evaluation, W. */
    double gainedW() {
        return gainedW;
    }

    /** Name of a state for messages. */
    String stateName(int i) {
        return i == 0 ? "temperature of the water supply" : "ice in the water supply";
    }
}
