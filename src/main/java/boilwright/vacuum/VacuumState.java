package boilwright.vacuum;

import java.util.List;

/**
 * Pressures of a rig at rest and what makes them.
 *
 * @param gaugePa pressure where the gauge sits, Pa
 * @param readingPa what a gauge of its kind and gas factor shows, Pa
 * @param chamberPa pressure in the chamber, Pa
 * @param inletPa pressure at the pump's inlet, Pa
 * @param forelinePa pressure at the pump's outlet, Pa
 * @param junctionPa pressures from the chamber along the line to the pump's inlet, Pa
 * @param gasPaM3PerS gas of all sources, Pa m3/s
 * @param pumpSpeedM3PerS speed at the pump's inlet, m3/s
 * @param chamberSpeedM3PerS speed that is left in the chamber, m3/s
 * @param overloaded whether more gas arrives than the jets take
 * @param sources what each source adds at the gauge, largest first; they add up to the pressure there
 * @param pieces what each piece costs, from the chamber
 * @param closureRelative gas that flows into the pump less what the sources give, over the latter
 */
public record VacuumState(
        double gaugePa,
        double readingPa,
        double chamberPa,
        double inletPa,
        double forelinePa,
        List<Double> junctionPa,
        double gasPaM3PerS,
        double pumpSpeedM3PerS,
        double chamberSpeedM3PerS,
        boolean overloaded,
        List<SourceShare> sources,
        List<PieceCost> pieces,
        double closureRelative) {
    public VacuumState {
        junctionPa = List.copyOf(junctionPa);
        sources = List.copyOf(sources);
        pieces = List.copyOf(pieces);
    }
}
