package boilwright.vacuum;

/**
 * What the jets do with gas at one moment.
 *
 * @param speedM3PerS volume speed at the pump's inlet while the gas is little, m3/s of air; 0 while the top jet is dark
 * @param throughput most gas that they take, Pa m3/s
 * @param backDiffusionPa pressure of light gas that comes back through them, Pa
 * @param oilVapourPa pressure of the oil's vapour that chamber and inlet see, Pa
 * @param gasOfOil gas that the charge gives off into the foreline, Pa m3/s
 */
public record JetAction(
        double speedM3PerS, double throughput, double backDiffusionPa, double oilVapourPa, double gasOfOil) {
    /** The same with every jet dark. */
    JetAction dark() {
        return new JetAction(0, throughput, backDiffusionPa, oilVapourPa, gasOfOil);
    }
}
