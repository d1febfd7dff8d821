package boilwright.answers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.fluid.FluidLibrary;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.rig.ContactBody;
import boilwright.rig.HeatSource;
import boilwright.rig.Rig;
import boilwright.rig.file.RigReader;
import boilwright.thermal.EventKind;
import boilwright.thermal.SteadySolver;
import boilwright.thermal.TestRigs;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class QuestionsTest {
    private static final FluidLibrary FLUIDS = FluidLibrary.builtIn();

    private static Rig demo(String name) {
        return RigReader.readDemo(name, FLUIDS.ids(), Set.of());
    }

    private static CheckAnswer check(Rig rig) {
        return Stored.check(rig);
    }

    private static Margin margin(CheckAnswer answer, MarginId id) {
        return answer.margins().stream().filter(m -> m.id() == id).findFirst().orElseThrow();
    }

    private static Rig withFluid(Rig r, String fluid) {
        return new Rig(
                r.name(),
                r.note(),
                fluid,
                r.chargeM3(),
                r.boiler(),
                r.column(),
                r.stages(),
                r.body(),
                r.topCap(),
                r.heatSource(),
                r.schedule(),
                r.foreline(),
                r.cooling(),
                r.room(),
                r.limits(),
                r.parameters());
    }

    @Test
    void theNeonWorkshopFailsByTheContactOfItsPlate() {
        CheckAnswer answer = check(demo("neon-workshop"));
        Margin heat = margin(answer, MarginId.HEAT);
        assertThat(heat.status()).isEqualTo(Margin.Status.FAILS);
        assertThat(heat.ratio().getAsDouble()).isBetween(0.2, 0.9);
        assertThat(answer.verdict()).contains("hot plate").contains("domed glass contact");
        assertThat(heat.cure()).contains("contact of").contains("tried on this rig");
        assertThat(answer.anyFails()).isTrue();
        // the plumbing is not to blame, and is not blamed
        assertThat(margin(answer, MarginId.FORELINE).status()).isEqualTo(Margin.Status.HOLDS);
    }

    @ParameterizedTest
    @ValueSource(strings = {"mirror-club", "teaching-lab"})
    void theOtherDemosPump(String name) {
        CheckAnswer answer = check(demo(name));
        assertThat(answer.anyFails()).as(answer.verdict()).isFalse();
        assertThat(answer.steady().stages()).allMatch(s -> s.full());
        assertThat(answer.warmup().events())
                .anyMatch(e -> e.kind() == EventKind.FULL_PUMPING && e.timeS().isPresent());
    }

    @Test
    void aHeavierFluidBoilsHotter() {
        Rig rig = demo("neon-workshop");
        double oil704 = check(rig).needed().state().liquidTemperatureK();
        CheckAnswer heavier = check(withFluid(rig, "705-type"));
        assertThat(heavier.needed().state().liquidTemperatureK()).isGreaterThan(oil704 + 15);
    }

    @ParameterizedTest
    @ValueSource(strings = {"neon-workshop", "mirror-club", "teaching-lab"})
    void heatFlowsOfEveryDemoCloseAtRestAndOverTheRun(String name) {
        CheckAnswer answer = check(demo(name));
        double out = answer.steady().heatToWaterW()
                + answer.steady().heatToAirW()
                + answer.steady().heatToForelineW();
        assertThat(Math.abs(answer.steady().heatDeliveredW() - out) / out).isLessThan(SteadySolver.CLOSURE_LIMIT);
        assertThat(answer.warmup().balance().closureRelative()).isLessThan(1e-3);
    }

    @Test
    void marginsStandWorstFirst() {
        List<Margin> margins = check(demo("neon-workshop")).margins();
        for (int i = 1; i < margins.size(); i++) {
            Margin before = margins.get(i - 1);
            Margin after = margins.get(i);
            assertThat(before.status().ordinal())
                    .isLessThanOrEqualTo(after.status().ordinal());
            if (before.status() == after.status() && before.ratio().isPresent()) {
                assertThat(before.ratio().getAsDouble())
                        .isLessThanOrEqualTo(after.ratio().getAsDouble());
            }
        }
    }

    @Test
    void inductionWithoutAnythingFerrousHeatsNothingAndSaysSo() {
        HeatSource induction = new HeatSource.Induction(
                1800,
                HeatSource.Susceptor.NONE,
                0.9,
                new ContactBody(
                        HeatSource.Contact.FLAT_GLASS,
                        0.015,
                        OptionalDouble.empty(),
                        500,
                        550,
                        HeatSource.Thermostat.PROPORTIONAL,
                        0.03,
                        0.8,
                        0,
                        1));
        CheckAnswer answer = check(TestRigs.fourStageGlass(induction));
        assertThat(answer.steady().heatDeliveredW()).isCloseTo(0, within(1e-6));
        assertThat(answer.verdict()).contains("nothing ferrous");
        assertThat(answer.steady().liquidTemperatureK()).isBetween(292.5, 293.5);
    }

    @Test
    void cooldownNamesTheOrderInWhichThingsMayStop() {
        Rig rig = demo("teaching-lab");
        RunAnswer answer = Stored.answer(new CooldownQuestion(Stored.asked(rig)));
        Map<EventKind, OptionalDouble> times = answer.run().events().stream()
                .filter(e -> e.stage().isEmpty())
                .collect(java.util.stream.Collectors.toMap(e -> e.kind(), e -> e.timeS()));
        assertThat(times.get(EventKind.JETS_GONE).getAsDouble())
                .isLessThan(times.get(EventKind.FLOW_ZERO).getAsDouble());
        assertThat(times.get(EventKind.FLOW_ZERO).getAsDouble())
                .isLessThan(times.get(EventKind.AIR_ALLOWED).getAsDouble());
        assertThat(times.get(EventKind.AIR_ALLOWED).getAsDouble())
                .isLessThan(times.get(EventKind.WATER_MAY_STOP).getAsDouble());
        assertThat(times.get(EventKind.WATER_MAY_STOP)).isEqualTo(times.get(EventKind.BACKING_MAY_STOP));
    }

    @Test
    void theSameRigGivesTheSameBits() {
        Rig rig = demo("teaching-lab");
        CheckAnswer first = check(rig);
        CheckAnswer second =
                Model.COMPUTING.answer(new CheckQuestion(Stored.asked(rig)), new CancelToken(), ProgressSink.NONE);
        assertThat(second.steady()).isEqualTo(first.steady());
        assertThat(second.needed()).isEqualTo(first.needed());
        assertThat(second.margins()).isEqualTo(first.margins());
        assertThat(second.warmup().events()).isEqualTo(first.warmup().events());
    }
}
