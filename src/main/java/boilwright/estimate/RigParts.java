package boilwright.estimate;

import boilwright.rig.HeatSource;
import boilwright.rig.Limits;
import boilwright.rig.Rig;
import boilwright.rig.Stage;
import java.util.ArrayList;
import java.util.List;

/** A rig with those parts changed that an estimate tries. */
final class RigParts {
    private RigParts() {}

    /** The rig with other gaps (bottom to top, m), another heat source and other limits. */
    static Rig with(Rig rig, List<Double> gapsM, HeatSource source, Limits limits) {
        List<Stage> stages = new ArrayList<>();
        for (int i = 0; i < gapsM.size(); i++) {
            Stage stage = rig.stages().get(i);
            stages.add(new Stage(stage.name(), stage.heightM(), stage.throatDiameterM(), gapsM.get(i)));
        }
        return new Rig(
                rig.name(),
                rig.note(),
                rig.fluidId(),
                rig.chargeM3(),
                rig.boiler(),
                rig.column(),
                stages,
                rig.body(),
                rig.topCap(),
                source,
                rig.schedule(),
                rig.foreline(),
                rig.cooling(),
                rig.room(),
                limits,
                rig.vacuum(),
                rig.protection(),
                rig.parameters(),
                rig.sessionS(),
                rig.guesses());
    }
}
