package boilwright.choice;

import java.util.List;
import java.util.Optional;

/**
 * A source and the pump that it heats: what the one delivers and the other takes, against the temperature of the boiler's
 * heated outer face. At rest both agree.
 *
 * @param delivered what the source delivers at full power, by rising temperature
 * @param need what the pump takes at rest, by rising temperature
 * @param fullJets the point of the need at which the weakest jet just has its full flow
 * @param crossing where the rig comes to rest at full power, the point common to both curves; empty where its oil would
 *     leave every known range first
 */
public record HeatCurves(
        List<WallPoint> delivered, List<WallPoint> need, WallPoint fullJets, Optional<WallPoint> crossing) {
    public HeatCurves {
        delivered = List.copyOf(delivered);
        need = List.copyOf(need);
    }
}
