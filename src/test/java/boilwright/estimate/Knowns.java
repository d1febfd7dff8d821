package boilwright.estimate;

import boilwright.estimate.OutsideMeasurements.Known;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What a person may know besides the outside of a pump, with one thing more. */
public final class Knowns {
    private Knowns() {}

    /** With measured throat gaps, bottom to top, m. */
    public static Known withThroatGaps(Known known, List<Double> gapsM) {
        return with(known, gapsM, known.worksAtW());
    }

    /** With the power of this source at which the pump is known to work, W. */
    public static Known withWorksAt(Known known, double powerW) {
        return with(known, known.throatGapsM(), OptionalDouble.of(powerW));
    }

    private static Known with(Known known, List<Double> gapsM, OptionalDouble worksAtW) {
        return new Known(
                known.contact(),
                known.sourceLimitK(),
                known.insulationM(),
                known.airCooled(),
                known.waterInletK(),
                known.waterFlowM3PerS(),
                known.forelinePa(),
                gapsM,
                worksAtW,
                known.nameplate());
    }

    /** With a nameplate. */
    public static Known withNameplate(Known known, OutsideMeasurements.Nameplate plate) {
        return new Known(
                known.contact(),
                known.sourceLimitK(),
                known.insulationM(),
                known.airCooled(),
                known.waterInletK(),
                known.waterFlowM3PerS(),
                known.forelinePa(),
                known.throatGapsM(),
                known.worksAtW(),
                Optional.of(plate));
    }
}
