package boilwright.spread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import boilwright.errors.InputRefusedException;
import boilwright.errors.MessageKey;
import boilwright.fluid.FluidLibrary;
import boilwright.rig.Parameter;
import boilwright.rig.Rig;
import boilwright.rig.file.RigFields;
import boilwright.rig.file.RigReader;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class SpreadInputsTest {
    private static final FluidLibrary FLUIDS = FluidLibrary.builtIn();
    private static final Rig RIG = RigReader.readDemo("mirror-club", FLUIDS.workingFluids(), Set.of());

    private static Rig withParameters(Rig rig, Map<String, Double> parameters) {
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
                rig.schedule(),
                rig.foreline(),
                rig.cooling(),
                rig.room(),
                rig.limits(),
                parameters);
    }

    private static double[] all(SpreadInputs inputs, double share) {
        double[] point = new double[inputs.list().size()];
        Arrays.fill(point, share);
        return point;
    }

    private static MessageKey refusal(SpreadRange... ranges) {
        try {
            new SpreadInputs(RIG, List.of(ranges));
        } catch (InputRefusedException e) {
            return e.faults().get(0).key();
        }
        throw new AssertionError("accepted");
    }

    @Test
    void everyDefaultThatTheRigDoesNotSetIsVaried() {
        assertThat(new SpreadInputs(RIG, List.of()).list().stream().map(SpreadInput::id))
                .containsExactlyElementsOf(
                        Arrays.stream(Parameter.values()).map(Parameter::id).toList());
        Rig measured = withParameters(RIG, Map.of("discharge-coefficient", 0.8));
        SpreadInputs inputs = new SpreadInputs(measured, List.of());
        assertThat(inputs.list().stream().map(SpreadInput::id)).doesNotContain("discharge-coefficient");
        assertThat(inputs.draw(all(inputs, 0.9)).values().get(Parameter.DISCHARGE_COEFFICIENT))
                .isEqualTo(0.8);
    }

    @Test
    void pointsBecomeValuesByShapeAndRange() {
        SpreadInputs inputs = new SpreadInputs(RIG, List.of(new SpreadRange("supply-power-factor", 0.98, 1.02)));
        SpreadInputs.Drawn drawn = inputs.draw(all(inputs, 0.5));
        assertThat(drawn.values().get(Parameter.SUPPLY_POWER_FACTOR)).isCloseTo(1, within(1e-12));
        assertThat(drawn.values().get(Parameter.STAGE_COMPRESSION)).isCloseTo(10, within(1e-12));
        assertThat(inputs.draw(all(inputs, 0)).values().get(Parameter.SUPPLY_POWER_FACTOR))
                .isEqualTo(0.98);
        assertThat(drawn.rig()).isSameAs(RIG);
    }

    @Test
    void guessesOfOneKindMoveTogetherAroundTheGuess() {
        Rig guessed = RIG.withGuesses(Set.of("stages[0].throatGap", "stages[1].throatGap", "boiler.wallThickness"));
        SpreadInputs inputs = new SpreadInputs(guessed, List.of());
        List<SpreadInput> guesses =
                inputs.list().stream().filter(i -> !i.fields().isEmpty()).toList();
        assertThat(guesses.stream().map(SpreadInput::id))
                .containsExactlyInAnyOrder("stages[].throatGap", "boiler.wallThickness");
        assertThat(guesses)
                .extracting(SpreadInput::shape)
                .containsExactlyInAnyOrder(Shape.LOG_UNIFORM, Shape.TRIANGULAR);
        assertThat(guesses).allMatch(i -> i.low() < i.nominal());
        Rig widest = inputs.draw(all(inputs, 1)).rig();
        for (int k = 0; k < 2; k++) {
            String path = "stages[" + k + "].throatGap";
            assertThat(RigFields.of(widest).quantity(path).getAsDouble())
                    .isCloseTo(2 * RigFields.of(RIG).quantity(path).getAsDouble(), within(1e-12));
        }
        assertThat(RigFields.of(widest).quantity("stages[2].throatGap"))
                .isEqualTo(RigFields.of(RIG).quantity("stages[2].throatGap"));
    }

    @Test
    void aRangeMayBeGivenForAnyQuantityOfTheRig() {
        SpreadInputs inputs = new SpreadInputs(RIG, List.of(new SpreadRange("heatSource.ratedPower", 2000, 2400)));
        assertThat(inputs.draw(all(inputs, 0.25)).rig().heatSource().ratedPowerW())
                .isCloseTo(2100, within(1e-9));
    }

    @Test
    void rangesThatMakeNoSenseAreRefused() {
        assertThat(refusal(new SpreadRange("supply-power-factor", 1.05, 0.95)))
                .isEqualTo(MessageKey.SPREAD_RANGE_REVERSED);
        assertThat(refusal(new SpreadRange("supply-power-factor", 1, 1))).isEqualTo(MessageKey.SPREAD_RANGE_REVERSED);
        assertThat(refusal(new SpreadRange("supply-power-factor", 0.5, 1))).isEqualTo(MessageKey.SPREAD_RANGE_OUTSIDE);
        assertThat(refusal(new SpreadRange("boiler.wallThickness", -1, 1))).isEqualTo(MessageKey.SPREAD_RANGE_OUTSIDE);
        assertThat(refusal(new SpreadRange("stages[7].throatGap", 1e-3, 2e-3)))
                .isEqualTo(MessageKey.SPREAD_RANGE_UNKNOWN);
        assertThat(refusal(new SpreadRange("stages[].throatGap", 1e-3, 2e-3)))
                .isEqualTo(MessageKey.SPREAD_RANGE_UNKNOWN);
        assertThat(refusal(new SpreadRange("name", 0, 1))).isEqualTo(MessageKey.SPREAD_RANGE_UNKNOWN);
        assertThat(refusal(
                        new SpreadRange("supply-power-factor", 0.95, 1),
                        new SpreadRange("supply-power-factor", 0.95, 1)))
                .isEqualTo(MessageKey.SPREAD_RANGE_TWICE);
    }

    @Test
    void valuesThatDoNotFitOneAnotherAreRefusedWhenDrawn() {
        SpreadInputs inputs = new SpreadInputs(RIG, List.of(new SpreadRange("stages[0].height", 0.1, 0.27)));
        assertThatThrownBy(() -> inputs.draw(all(inputs, 0.9))).isInstanceOf(InputRefusedException.class);
    }

    @Test
    void plansOutOfReachAreNotMade() {
        assertThatThrownBy(() -> SpreadPlan.of(0, 1, SpreadScope.REST)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new SpreadPlan(100, 1, 0, SpreadScope.REST, List.of()))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new SpreadPlan(100, 1, 1000, SpreadScope.REST, List.of()))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
