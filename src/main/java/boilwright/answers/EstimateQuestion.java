package boilwright.answers;

import boilwright.estimate.OutsideMeasurements;
import boilwright.estimate.RigEstimate;
import boilwright.estimate.RigEstimator;
import boilwright.fluid.WorkingFluid;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import java.util.Set;

/**
 * What is a pump like of which only the outside was measured?
 *
 * @param measured what was measured
 * @param fluid the fluid that it names
 * @param acceptedFields paths of the fields whose unusual values are meant as they are
 */
public record EstimateQuestion(OutsideMeasurements measured, WorkingFluid fluid, Set<String> acceptedFields)
        implements Question<RigEstimate> {
    public EstimateQuestion {
        acceptedFields = Set.copyOf(acceptedFields);
    }

    @Override
    public RigEstimate answer(Model model, CancelToken cancel, ProgressSink progress) {
        return RigEstimator.estimate(measured, fluid, acceptedFields);
    }
}
