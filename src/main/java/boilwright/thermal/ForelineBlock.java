package boilwright.thermal;

import boilwright.gasflow.ChokedNozzle;
import boilwright.rig.Rig;
import boilwright.vacuum.BackingSide;

/**
 * The foreline: a given pressure without a state, or the pressure that follows from what arrives and what the backing pump
 * takes. Gas in the foreline takes the room's temperature.
 */
final class ForelineBlock {
    /** Bore of the opening through which air comes in when something fails, m: a slipped hose (engineering judgement). */
    static final double OPENING_M = 3e-3;
    /** Pressure up to which air that comes in is followed, Pa; far above it no jet works and no vapour leaves the oil. */
    static final double FOLLOWED_PA = 5000;

    private static final double AIR_KAPPA = 1.4;
    /** Specific gas constant of dry air, J/(kg K). */
    private static final double AIR_R = 287.05;

    private final BackingSide backing;
    private final double throughOpening;
    private boolean pumping = true;
    private boolean tight = true;
    /** Made when first asked for: a state at rest does without. */
    private BackingSide.Table taken;

    ForelineBlock(Rig rig) {
        backing = BackingSide.of(rig);
        double roomK = rig.room().temperatureK();
        double area = Math.PI / 4 * OPENING_M * OPENING_M;
        throughOpening =
                ChokedNozzle.chokedFactor(AIR_KAPPA) * rig.room().pressurePa() * area * Math.sqrt(AIR_R * roomK);
    }

    /**
     * Sets what works.
     *
     * @param pumps whether the backing pump takes gas
     * @param isTight whether no air comes in
     */
    void setState(boolean pumps, boolean isTight) {
        pumping = pumps;
        tight = isTight;
    }

    /** Number of states: the pressure, when a backing pump is followed. */
    int size() {
        return backing.follows() ? 1 : 0;
    }

    /** Pressure with no gas from the oil, Pa. */
    double restingPa() {
        return backing.restingPa();
    }

    /** Sets the state to that at the start. */
    void initial(double[] y, int at) {
        if (size() > 0) {
            y[at] = restingPa();
        }
    }

    /** Pressure of a state, Pa. */
    double pressurePa(double[] y, int at) {
        return size() > 0 ? y[at] : restingPa();
    }

    /** Sets the rate for gas from the oil, Pa m3/s. */
    void evaluate(double[] y, int at, double fromOil, double[] dydt) {
        if (size() == 0) {
            return;
        }
        if (taken == null) {
            taken = backing.table();
        }
        double gone = pumping ? taken.taken(y[at]) : -backing.ownLoad();
        double air = tight ? 0 : throughOpening;
        double below = pumping && tight ? 1 : Math.max(0, 1 - y[at] / FOLLOWED_PA);
        dydt[at] = ((backing.restingLoad() + fromOil + air) * below - gone) / backing.volumeM3();
    }
}
