package boilwright.rig;

import boilwright.rig.HeatSource.Contact;

/**
 * Typical values of a rig, each once: what a file's reader takes when a field is left out, what an estimate assumes, what a
 * form offers to start from, and the usual limits where a rig sets none. Uncertain parameters of the model itself are in
 * {@link Parameter}, figures of wall materials in {@link Material}. All are SI; where no source is named no publication was
 * found and the figure is engineering judgement, from memory.
 */
public final class TypicalValues {
    // -- the pump
    // ------------------------------------------------------------------------------------------------------

    /** Wetted over heated area of a metal boiler, whose inside has fins; 1 to 2.5. */
    public static final double METAL_WETTED_RATIO = 1.5;

    /**
     * Conductivity of insulation around a boiler, W/(m K): mineral wool at a mean of about 130 degC, between oil at 200 to 250
     * degC and a jacket at 40 to 60; 0.04 to 0.06 (limits of ASTM C547 for pipe sections of mineral fibre, from memory).
     */
    public static final double BOILER_INSULATION_CONDUCTIVITY = 0.05;

    // -- heat sources
    // --------------------------------------------------------------------------------------------------

    /**
     * Conductivity of insulation around a heater, W/(m K): mineral wool or glass cloth at a mean of about 200 degC, between an
     * element at 350 to 450 degC and a jacket at 50 to 80; 0.05 to 0.08 (limits of ASTM C547, from memory).
     */
    public static final double HEATER_INSULATION_CONDUCTIVITY = 0.06;

    /** Insulation around a mantle or a clamped heater, m; 20 to 50 mm. */
    public static final double HEATER_INSULATION_M = 0.025;

    /** Emissivity of the faces of a source that lose heat: oxidised or painted metal, cloth; 0.6 to 0.95. */
    public static final double LOSS_EMISSIVITY = 0.8;

    /** Area of contact over the heated area; 0.85 to 1. */
    public static final double CONTACT_SHARE = 0.93;

    /** Area of a plate, mantle or clamped heater that loses heat over the heated area: rim, sides and back; 1.6 to 2. */
    public static final double LOSS_SHARE = 1.75;

    /** The same of a susceptor plate, which lies on the hob: its rim and what stands out; 1.1 to 1.3. */
    public static final double SUSCEPTOR_LOSS_SHARE = 1.2;

    /** Heat capacity of a hot plate over its rating, J/(K W): 0.6 to 0.8. */
    public static final double PLATE_HEAT_CAPACITY_PER_W = 0.6;

    /** Heat capacity of a heating mantle over its rating, J/(K W): 0.8 to 1. */
    public static final double MANTLE_HEAT_CAPACITY_PER_W = 0.8;

    /** Heat capacity of a clamped heater over its rating, J/(K W): 0.5 to 0.56. */
    public static final double CLAMPED_HEAT_CAPACITY_PER_W = 0.5;

    /**
     * Heat capacity of a susceptor over the hob's rating, J/(K W): a steel plate 5 to 6 mm thick and as wide as a hob of 2 kW,
     * about 600 J/K; 0.2 to 0.4.
     */
    public static final double SUSCEPTOR_HEAT_CAPACITY_PER_W = 0.3;

    /** Temperature at which the thermostat of a hot plate holds it at most, K (450 degC); 400 to 500 degC. */
    public static final double PLATE_LIMIT_K = 723.15;

    /** Highest temperature of a heating mantle with glass cloth, K (450 degC); 380 to 480 degC. */
    public static final double MANTLE_LIMIT_K = 723.15;

    /** Temperature at which a clamped heater is held at most, K (420 degC); 350 to 500 degC. */
    public static final double CLAMPED_LIMIT_K = 693.15;

    /** Temperature at which an induction hob cuts out because the plate on it is too hot, K (300 degC); 240 to 350 degC. */
    public static final double INDUCTION_LIMIT_K = 573.15;

    /**
     * Share of an induction hob's power that reaches the plate: 0.84 (M. Sweeney and others, Induction cooking technology design
     * and assessment, ACEEE summer study 2014); 0.80 to 0.90.
     */
    public static final double INDUCTION_EFFICIENCY = 0.84;

    /** Least share of what a pump's own heater delivers that full jets take: heaters are sold with a reserve; 0.4 to 1. */
    public static final double NAMEPLATE_LEAST_SHARE = 0.4;

    /** Surface load of an element immersed in oil, W/m2 (3 W/cm2); 2 to 4 W/cm2. */
    public static final double ELEMENT_LOAD = 3e4;

    // -- cooling
    // -------------------------------------------------------------------------------------------------------

    /** Temperature of water that enters, K (18 degC); 8 to 25 degC. */
    public static final double WATER_INLET_K = 291.15;

    /** Water flow for each watt of the rating, m3/s: 1 L/min for 1 kW; 0.5 to 2 L/min. */
    public static final double FLOW_PER_WATT = 1e-3 / 60 / 1000;

    /** Least water flow that a small pump gets, m3/s (0.8 L/min). */
    public static final double LEAST_FLOW_M3_PER_S = 0.8e-3 / 60;

    /** Gap of a water jacket, m; 3 to 12 mm. */
    public static final double JACKET_GAP_M = 0.006;

    /** Bore of a cooling coil's tube, m; 4 to 12 mm. */
    public static final double COIL_BORE_M = 0.008;

    /** Distance from one turn of a coil on the body to the next, m; 20 to 50 mm. */
    public static final double COIL_PITCH_M = 0.03;

    /** Conductance of a soldered joint, W/(m K): a fillet a few millimetres wide; 5 to 100. */
    public static final double BOND_CONDUCTANCE = 20;

    /** Heat that a baffle or trap exchanges with the room per kelvin, W/K; 0.05 to 1. */
    public static final double PART_TO_AIR = 0.2;

    /** Heat that a bare hose exchanges with the room per metre and kelvin, W/(m K); 0.2 to 1. */
    public static final double HOSE_TO_AIR = 0.5;

    /** Heat that the pump of a chiller puts into the water, W; 20 to 200. */
    public static final double CHILLER_PUMP_HEAT_W = 60;

    /** The same of a small pump that lies in a tank, W; 5 to 40. */
    public static final double TANK_PUMP_HEAT_W = 20;

    /** Capacity of a chiller gained per kelvin of warmer water over the rated one, 1/K: compressors draw denser vapour. */
    public static final double CAPACITY_PER_WATER_K = 0.025;

    /** Capacity of a chiller lost per kelvin of a warmer room over the rated one, 1/K. */
    public static final double CAPACITY_PER_ROOM_K = 0.01;

    /** Band of a chiller whose power follows the demand, K. */
    public static final double CHILLER_BAND_MODULATING_K = 1;

    /** Band of a chiller that goes on and off, K. */
    public static final double CHILLER_BAND_ON_OFF_K = 2;

    // -- gas side, room and use
    // ----------------------------------------------------------------------------------------

    /** Lowest pressure of a backing pump with gas ballast open over that without; 5 to 50. */
    public static final double BALLAST_FACTOR = 10;

    /** Angle of a baffle's vanes to the axis, rad (45 degrees). */
    public static final double VANE_ANGLE = Math.PI / 4;

    /** Time since a chamber last stood in air when nobody says it, s. */
    public static final double SINCE_AIR_S = 3600;

    /** Temperature to which the data sheets of vacuum parts refer, K (20 degC): common practice. */
    public static final double DATA_SHEET_K = 293.15;

    /** Temperature of the room, K (20 degC); 15 to 30 degC. */
    public static final double ROOM_K = 293.15;

    /** Length of a session, from heat-on to heat-off, s (4 h); half an hour to a working day. */
    public static final double SESSION_S = 4 * 3600;

    /** Time after full pumping at which the chamber's pressure is asked for, s. */
    public static final double PUMPED_S = 4 * 3600;

    /** Volume of a workroom, m3. */
    public static final double WORKROOM_M3 = 30;

    /** Air changes in an hour of a room with doors and windows shut, 1/h; 0.2 to 1. */
    public static final double AIR_CHANGES_PER_H = 0.5;

    // -- limits
    // --------------------------------------------------------------------------------------------------------

    /** Highest water outlet temperature, K (52 degC): furnace maintenance article, July 2017. */
    public static final double WATER_OUT_LIMIT_K = 325.15;

    /** Temperature at which a top cap stops working, K (93 degC): abstract on condensation in oil diffusion pumps. */
    public static final double CAP_LIMIT_K = 366.15;

    /** Oil temperature below which water and backing pump may stop, K: upper end of the 50 to 60 degC of common practice. */
    public static final double LEAVE_OIL_K = 333.15;

    /**
     * Face of any material that does not burn a hand resting on it for up to 10 min, K (48 degC): burn threshold of ISO 13732-1
     * for contact of 10 min. It is what "safe to touch" means everywhere.
     */
    public static final double TOUCH_K = 321.15;

    /** Nearer to the room than this a wall or oil counts as being at its temperature, K. */
    public static final double AT_ROOM_K = 5;

    private TypicalValues() {}

    /** Wetted over heated area of a boiler: glass is smooth inside. */
    public static double wettedRatio(Material material) {
        return material.isGlass() ? 1 : METAL_WETTED_RATIO;
    }

    /** How a plate touches a boiler: a blown flask has a domed bottom, a metal base is machined. */
    public static Contact contact(Material material) {
        return material.isGlass() ? Contact.DOMED_GLASS : Contact.MACHINED_METAL;
    }

    /** Water flow for a rating, m3/s. */
    public static double waterFlowM3PerS(double ratedPowerW) {
        return Math.max(LEAST_FLOW_M3_PER_S, FLOW_PER_WATT * ratedPowerW);
    }
}
