package boilwright.dashboard.water;

import boilwright.answers.Asked;
import boilwright.answers.WaterTrial;
import boilwright.dashboard.session.SupplyDefaults;
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
    static OtherSupply of(Asked asked, SupplyKind kind, CancelToken cancel) {
        Rig rig = asked.rig();
        Rig changed = rig.withCooling(SupplyDefaults.of(kind, rig));
        return new OtherSupply(WaterTrial.of(asked, cancel), WaterTrial.of(asked.with(changed), cancel), kind);
    }
}
