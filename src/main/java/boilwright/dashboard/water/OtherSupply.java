package boilwright.dashboard.water;

import boilwright.answers.WaterTrial;
import boilwright.dashboard.session.SupplyDefaults;
import boilwright.fluid.WorkingFluid;
import boilwright.numerics.CancelToken;
import boilwright.rig.Rig;
import boilwright.rig.SupplyKind;

/**
 * A rig's supply beside one of another kind.
 *
 * @param present the rig as it is
 * @param other the same rig behind the other supply
 * @param kind the other supply's kind
 */
record OtherSupply(WaterTrial present, WaterTrial other, SupplyKind kind) {
    /** Works both out; the other supply has the figures that one begins with in the rig's form. */
    static OtherSupply of(Rig rig, SupplyKind kind, WorkingFluid fluid, CancelToken cancel) {
        Rig changed = rig.withCooling(SupplyDefaults.of(kind, rig));
        return new OtherSupply(WaterTrial.of(rig, fluid, cancel), WaterTrial.of(changed, fluid, cancel), kind);
    }
}
