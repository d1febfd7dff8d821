package boilwright.vacuum;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.gasflow.Gas;
import boilwright.numerics.CancelToken;
import boilwright.rig.Rig;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class SteadyVacuumTest {
    private static final JetAction FULL = new JetAction(0.97, 0.25, 1e-7, 1e-7, 0);

    private static VacuumState state(Rig rig) {
        return SteadyVacuum.of(rig, FULL, 7200, BuiltInRates.INSTANCE, Gas.AIR);
    }

    /** Common practice, no source: a narrow plastic hose can hold the gauge decades above the inlet while every jet is lit. */
    @Test
    void aNarrowPlasticHoseHoldsTheGaugeDecadesAboveTheInlet() {
        VacuumState state = state(VacuumRigs.hoseCase());
        assertThat(state.gaugePa() / state.inletPa()).isGreaterThan(1000);
        assertThat(state.sources().get(0).source().path()).isEqualTo("vacuum.line[0]");
        assertThat(state.pieces().get(0).shareOfLostSpeed()).isEqualTo(1);
        assertThat(state.closureRelative()).isLessThan(1e-9);
        assertThat(state.sources().stream().mapToDouble(SourceShare::share).sum())
                .isCloseTo(1, within(1e-9));
    }

    @Test
    void timeLineEndsWhereTheRestIs() {
        Rig rig = VacuumRigs.hoseCase();
        JetTimeline jets = new JetTimeline() {
            @Override
            public JetAction at(double timeS) {
                return timeS < 600 ? new JetAction(0, 0.25, 1e-7, 1e-7, 0) : FULL;
            }

            @Override
            public double[] jumpsS() {
                return new double[] {600};
            }

            @Override
            public OptionalDouble allFullS() {
                return OptionalDouble.of(600);
            }
        };
        VacuumTimeline line = PumpDown.of(rig, jets, BuiltInRates.INSTANCE, Gas.AIR, 14_400, new CancelToken());
        int last = line.timeS().length - 1;
        double since = 7200 + line.crossover().roughingS() + 14_400;
        VacuumState rest = SteadyVacuum.of(rig, FULL, since, BuiltInRates.INSTANCE, Gas.AIR);
        assertThat(line.chamberPa()[last] / rest.chamberPa()).isCloseTo(1, within(0.01));
        assertThat(line.balanceRelative()).isLessThan(1e-3);
    }
}
