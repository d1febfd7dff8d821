package boilwright.errors;

/** The sentences of the gas side: chamber, line, backing pump, outgassing data. The comment of each lists its values. */
public enum GasMessage implements MessageId {
    /** {0} place, {1} path, {2} found, {3} diameter of the ring. */
    RIG_CORD_TOO_THICK(4),
    /** {0} place, {1} path, {2} lowest, {3} highest. */
    RIG_GAUGE_RANGE(4),
    /** {0} place, {1} path, {2} with ballast, {3} without. */
    RIG_BALLAST_BETTER(4),
    /** {0} place, {1} path, {2} found, {3} pressure before. */
    RIG_CURVE_ORDER(4),
    /** {0} place, {1} path, {2} name, {3} what has it already. */
    RIG_PIECE_NAME_TAKEN(4),
    /** {0} place, {1} path, {2} found. */
    RIG_TUBE_WITHOUT_LENGTH(3),
    /** {0} place, {1} path, {2} found. */
    RIG_REDUCER_STRAIGHT(3),
    /** {0} place, {1} path, {2} found, {3} most that the bore passes. */
    RIG_VALVE_TOO_GOOD(4),
    /** {0} place, {1} path, {2} found, {3} widest pitch that hides what lies behind. */
    RIG_BAFFLE_OPEN(4),
    /** {0} balance found, {1} balance allowed. */
    GAS_NOT_CLOSED(2),
    /** {0} material asked for, {1} materials known. */
    MATERIAL_UNKNOWN(2),
    /** {0} rig. */
    RIG_WITHOUT_VACUUM(1),
    /** {0} gas asked for, {1} gases known. */
    GAS_UNKNOWN(2);

    private final int argumentCount;

    GasMessage(int argumentCount) {
        this.argumentCount = argumentCount;
    }

    @Override
    public int argumentCount() {
        return argumentCount;
    }
}
