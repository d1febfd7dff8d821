package boilwright.thermal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.fluid.FluidLibrary;
import boilwright.fluid.TabulatedFluid;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.numerics.Rosenbrock;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import boilwright.rig.Schedule;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** How exactly runs are integrated: a second run at a tenth of the tolerance must tell the same story. */
class IntegrationErrorTest {
    private static final double EVENT_S = 0.2;
    private static final double TEMPERATURE_K = 0.1;
    private static final double MARK_S = 97;

    private final TabulatedFluid fluid =
            TabulatedFluid.of(FluidLibrary.builtIn().find("704-type"));

    static Stream<Rig> rigs() {
        return Stream.of(TestRigs.fourStageGlass(TestRigs.flame(1600)), TestRigs.metal150(2200));
    }

    @ParameterizedTest
    @MethodSource("rigs")
    void aWarmUpAtATenthOfTheToleranceTellsTheSame(Rig described) {
        Rig rig = marked(described);
        RunSimulator.Outcome usual = warmup(rig, 1);
        RunSimulator.Outcome fine = warmup(rig, 0.1);
        sameEvents(usual, fine);
        for (double t = MARK_S; t < 1900; t += MARK_S) {
            sameTemperatures(usual, fine, t);
        }
    }

    @ParameterizedTest
    @MethodSource("rigs")
    void aCoolDownAtATenthOfTheToleranceTellsTheSame(Rig rig) {
        RunSimulator.Outcome usual = cooldown(rig, 1);
        RunSimulator.Outcome fine = cooldown(rig, 0.1);
        sameEvents(usual, fine);
        for (int i = 0; i < usual.state().length; i++) {
            if (new PumpModel(rig, fluid, ParameterValues.of(rig), 60).layout.isTemperature(i)) {
                assertThat(usual.state()[i]).isCloseTo(fine.state()[i], within(TEMPERATURE_K));
            }
        }
    }

    /** The same level set again and again: the run stops there exactly, so that both runs can be compared at one time. */
    private static Rig marked(Rig rig) {
        List<Schedule.Step> steps = new ArrayList<>();
        for (double t = 0; t < 1900; t += MARK_S) {
            steps.add(new Schedule.Power(t, 1));
        }
        return new Rig(
                rig.name(),
                rig.note(),
                rig.fluidId(),
                rig.chargeM3(),
                rig.boiler(),
                rig.column(),
                rig.stages(),
                rig.body(),
                rig.topCap(),
                rig.heatSource(),
                new Schedule(steps),
                rig.foreline(),
                rig.cooling(),
                rig.room(),
                rig.limits(),
                rig.parameters());
    }

    private RunSimulator.Outcome warmup(Rig rig, double accuracy) {
        PumpModel model = new PumpModel(rig, fluid, ParameterValues.of(rig), 60);
        return RunSimulator.warmup(model, new CancelToken(), ProgressSink.NONE, accuracy, new Rosenbrock());
    }

    private RunSimulator.Outcome cooldown(Rig rig, double accuracy) {
        PumpModel model = new PumpModel(rig, fluid, ParameterValues.of(rig), 60);
        return RunSimulator.cooldown(model, new CancelToken(), ProgressSink.NONE, accuracy, new Rosenbrock());
    }

    private static void sameEvents(RunSimulator.Outcome usual, RunSimulator.Outcome fine) {
        List<TimeEvent> events = usual.result().events();
        assertThat(events).hasSameSizeAs(fine.result().events()).hasSizeGreaterThan(8);
        for (TimeEvent event : events) {
            TimeEvent other = fine.result().events().stream()
                    .filter(e -> e.kind() == event.kind() && e.stage().equals(event.stage()))
                    .findFirst()
                    .orElseThrow();
            String what = event.kind() + " " + event.stage();
            assertThat(event.timeS().isPresent())
                    .as(what)
                    .isEqualTo(other.timeS().isPresent());
            if (event.timeS().isPresent()) {
                assertThat(event.timeS().getAsDouble())
                        .as(what)
                        .isCloseTo(other.timeS().getAsDouble(), within(EVENT_S));
            }
        }
    }

    private static void sameTemperatures(RunSimulator.Outcome usual, RunSimulator.Outcome fine, double t) {
        List<TimeSeries.Column> columns = usual.result().series().columns();
        for (int c = 0; c < columns.size(); c++) {
            if (columns.get(c).kind() == TimeSeries.Kind.TEMPERATURE) {
                assertThat(valueAt(usual, c, t))
                        .as("%s at %s s", columns.get(c).key(), t)
                        .isCloseTo(valueAt(fine, c, t), within(TEMPERATURE_K));
            }
        }
    }

    private static double valueAt(RunSimulator.Outcome outcome, int column, double t) {
        List<TimeSeries.Column> columns = outcome.result().series().columns();
        double[] times = columns.get(0).values();
        for (int i = 0; i < times.length; i++) {
            if (times[i] == t) {
                return columns.get(column).values()[i];
            }
        }
        throw new AssertionError("no record at " + t);
    }
}
