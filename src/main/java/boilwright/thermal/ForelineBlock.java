package boilwright.thermal;

import boilwright.rig.Rig;
import boilwright.vacuum.BackingSide;

/**
 * The foreline: a given pressure without a state, or the pressure that follows from what arrives and what the backing pump
 * takes. Gas in the foreline takes the room's temperature.
 */
final class ForelineBlock {
    private final BackingSide backing;
    /** Made when first asked for: a state at rest does without. */
    private BackingSide.Table taken;

    ForelineBlock(Rig rig) {
        backing = BackingSide.of(rig);
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
        dydt[at] = (backing.restingLoad() + fromOil - taken.taken(y[at])) / backing.volumeM3();
    }
}
