package boilwright.spread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import boilwright.Counts;
import boilwright.answers.CheckAnswer;
import boilwright.answers.Margin;
import boilwright.answers.MarginId;
import boilwright.answers.Model;
import boilwright.answers.RunAnswer;
import boilwright.answers.Stored;
import boilwright.answers.Trial;
import boilwright.answers.WarmupQuestion;
import boilwright.errors.CancelledException;
import boilwright.fluid.FluidLibrary;
import boilwright.fluid.WorkingFluid;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.numerics.SobolPoints;
import boilwright.report.SpreadJson;
import boilwright.rig.Rig;
import boilwright.rig.file.RigReader;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class SpreadTest {
    private static final FluidLibrary FLUIDS = FluidLibrary.builtIn();

    private static Rig demo(String name) {
        return RigReader.readDemo(name, FLUIDS.workingFluids(), Set.of());
    }

    private static WorkingFluid fluid(Rig rig) {
        return FLUIDS.find(rig.fluidId());
    }

    private static SpreadAnswer run(Rig rig, SpreadPlan plan) {
        return Model.COMPUTING.answer(
                new SpreadQuestion(Stored.asked(rig), plan), new CancelToken(), ProgressSink.NONE);
    }

    private static SpreadPlan plan(int runs, int threads, SpreadScope scope, SpreadRange... ranges) {
        return new SpreadPlan(runs, 7, threads, scope, List.of(ranges));
    }

    private static MarginSpread margin(SpreadAnswer answer, MarginId id) {
        return answer.margins().stream().filter(m -> m.id() == id).findFirst().orElseThrow();
    }

    static List<SpreadScope> scopes() {
        return Counts.firstOf(SpreadScope.REST, SpreadScope.CHECK, SpreadScope.WARMUP);
    }

    @ParameterizedTest
    @MethodSource("scopes")
    void anyNumberOfThreadsGivesTheSameBits(SpreadScope scope) {
        Rig rig = demo("teaching-lab");
        int runs = Counts.of(SpreadPlan.FEWEST_RUNS, 30);
        String one = SpreadJson.write(run(rig, plan(runs, 1, scope)));
        assertThat(Counts.firstOf(3, 2, 7))
                .allMatch(threads ->
                        SpreadJson.write(run(rig, plan(runs, threads, scope))).equals(one));
    }

    @Tag("deep")
    @ParameterizedTest
    @ValueSource(strings = {"mirror-club", "neon-workshop", "teaching-lab"})
    void twoThousandWholeSamplesHaveTheSameBitsWithOneThreadAndTwo(String name) {
        Rig rig = demo(name);
        assertThat(SpreadJson.write(run(rig, plan(2000, 2, SpreadScope.CHECK))))
                .isEqualTo(SpreadJson.write(run(rig, plan(2000, 1, SpreadScope.CHECK))));
    }

    /** The samples one by one, asked and sorted here. */
    @Test
    void bandsAndChancesAreThoseOfTheSamples() {
        Rig rig = demo("mirror-club");
        int n = 60;
        SpreadAnswer answer = run(rig, plan(n, 2, SpreadScope.REST));
        SpreadInputs inputs = new SpreadInputs(rig, List.of());
        SobolPoints points = new SobolPoints(inputs.list().size(), 7);
        for (MarginId id : List.of(MarginId.HEAT, MarginId.OIL_FILM, MarginId.BOILER_PRESSURE)) {
            double[] ratios = new double[n];
            for (int i = 0; i < n; i++) {
                SpreadInputs.Drawn drawn = inputs.draw(points.point(i));
                ratios[i] = Trial.atRest(Stored.asked(rig).with(drawn.rig(), drawn.values())).margins().stream()
                        .filter(m -> m.id() == id)
                        .mapToDouble(m -> m.ratio().orElseThrow())
                        .findFirst()
                        .orElseThrow();
            }
            Bands.MarginBand band = margin(answer, id).band();
            assertThat(band.failing().cases())
                    .isEqualTo(Arrays.stream(ratios).filter(r -> r < 1).count());
            Arrays.sort(ratios);
            assertThat(band.ratio().low()).hasValue(ratios[5]);
            assertThat(band.ratio().median()).hasValue(ratios[29]);
            assertThat(band.ratio().high()).hasValue(ratios[53]);
        }
    }

    @Test
    void theRigAsItStandsIsTheOneThatACheckFinds() {
        Rig rig = demo("teaching-lab");
        CheckAnswer check = Stored.check(rig);
        SpreadAnswer answer = run(rig, plan(20, 2, SpreadScope.CHECK));
        // but for what would help, which a sample is not asked
        assertThat(answer.margins().stream()
                        .map(m -> m.nominal().orElseThrow())
                        .limit(check.margins().size()))
                .usingRecursiveFieldByFieldElementComparatorIgnoringFields("cure")
                .containsExactlyElementsOf(check.margins());
        List<EventKey> keys = EventKey.of(check.warmup().events());
        Bands bands = answer.bands();
        assertThat(keys).allMatch(key -> bands.event(key).isPresent());
        assertThat(bands.samples()).isEqualTo(20);
        assertThat(bands.margin(MarginId.HEAT)).isPresent();
    }

    @Test
    void alongAWarmUpTheMarginsAreThoseOfTheWarmUp() {
        Rig rig = demo("teaching-lab");
        RunAnswer warmup = Stored.answer(new WarmupQuestion(Stored.asked(rig)));
        SpreadAnswer answer = run(rig, plan(20, 2, SpreadScope.WARMUP));
        assertThat(answer.margins().stream().map(m -> m.nominal().orElseThrow()))
                .containsExactlyElementsOf(warmup.margins());
    }

    @Test
    void whatIsStoppedIsTheAnswerOfFewerSamples() {
        Rig rig = demo("teaching-lab");
        CancelToken cancel = new CancelToken();
        SpreadAnswer stopped = Model.COMPUTING.answer(
                new SpreadQuestion(Stored.asked(rig), plan(100_000, 2, SpreadScope.REST)), cancel, (share, phase) -> {
                    if (share >= 60e-5) {
                        cancel.cancel();
                    }
                });
        assertThat(stopped.isPartial()).isTrue();
        assertThat(stopped.done()).isBetween(60, 600);
        assertThat(stopped.verdict()).startsWith("Stopped after " + stopped.done() + " of 100000 samples");
        SpreadAnswer fewer = run(rig, plan(stopped.done(), 1, SpreadScope.REST));
        assertThat(stopped.margins()).isEqualTo(fewer.margins());
        assertThat(stopped.failing()).isEqualTo(fewer.failing());
    }

    @Test
    void stoppedBeforeTheFirstSampleThereIsNoAnswer() {
        Rig rig = demo("teaching-lab");
        CancelToken cancel = new CancelToken();
        cancel.cancel();
        SpreadQuestion question = new SpreadQuestion(Stored.asked(rig), plan(50, 2, SpreadScope.CHECK));
        assertThatThrownBy(() -> Model.COMPUTING.answer(question, cancel, ProgressSink.NONE))
                .isInstanceOf(CancelledException.class);
    }

    @Test
    void impossibleRigsAreCountedByReason() {
        Rig rig = demo("mirror-club");
        SpreadAnswer answer = run(rig, plan(40, 2, SpreadScope.REST, new SpreadRange("stages[0].height", 0.1, 0.4)));
        assertThat(answer.rejections()).hasSize(2).allMatch(SpreadAnswer.Rejection::impossible);
        long left = answer.rejections().stream()
                .mapToLong(SpreadAnswer.Rejection::samples)
                .sum();
        assertThat(left).isBetween(8L, 25L);
        assertThat(answer.accepted() + left).isEqualTo(answer.done()).isEqualTo(40);
        assertThat(answer.verdict()).contains(left + " of 40 samples gave no answer");
        assertThat(margin(answer, MarginId.HEAT).band().failing().samples()).isEqualTo(answer.accepted());
    }

    @Test
    void aRunWithoutAnyAnswerSaysSo() {
        Rig rig = demo("mirror-club");
        SpreadAnswer answer = run(rig, plan(20, 2, SpreadScope.REST, new SpreadRange("stages[0].height", 0.21, 0.27)));
        assertThat(answer.accepted()).isZero();
        assertThat(answer.verdict()).contains("None of 20 samples");
        assertThat(answer.mostlyFails()).isFalse();
    }

    /** The plate's contact is what everybody suspects here: common practice, no source. */
    @Test
    void theContactOfTheWorkshopsPlateIsToBeMeasuredFirst() {
        Rig rig = demo("neon-workshop");
        SpreadAnswer answer = run(
                rig,
                plan(
                        200,
                        2,
                        SpreadScope.REST,
                        new SpreadRange("boiler.outsideArea", 0.5 * area(rig), 1.5 * area(rig)),
                        new SpreadRange("boiler.insulationThickness", 0, 0.03)));
        MarginSpread heat = margin(answer, MarginId.HEAT);
        assertThat(heat.shares().get(0).inputId()).isEqualTo("contact-domed-glass");
        assertThat(heat.shares().get(0).share()).isGreaterThan(0.4);
        assertThat(heat.shares()).hasSize(answer.inputs().size());
        Optional<Advice> advice = answer.advice().stream()
                .filter(a -> a.marginId() == MarginId.HEAT)
                .findFirst();
        assertThat(advice).isPresent();
    }

    private static double area(Rig rig) {
        return rig.boiler().outsideAreaM2();
    }

    @Test
    void whatCannotBeHelpedByMeasuringIsSaidSo() {
        SpreadAnswer answer = run(demo("neon-workshop"), plan(150, 2, SpreadScope.REST));
        Advice heat = answer.advice().stream()
                .filter(a -> a.marginId() == MarginId.HEAT)
                .findFirst()
                .orElseThrow();
        assertThat(heat.inputId()).isEmpty();
        assertThat(heat.sentence()).contains("fails in every sample", "contact");
        assertThat(answer.mostlyFails()).isTrue();
    }

    @Test
    void aMarginThatDecidesNamesItsInput() {
        SpreadAnswer answer = run(demo("mirror-club"), plan(200, 2, SpreadScope.REST));
        Advice film = answer.advice().stream()
                .filter(a -> a.marginId() == MarginId.OIL_FILM)
                .findFirst()
                .orElseThrow();
        assertThat(film.inputId()).hasValue("boiling-heat-transfer-factor");
        assertThat(margin(answer, MarginId.OIL_FILM).band().failing().share()).isBetween(0.05, 0.5);
        assertThat(answer.margins().stream().map(MarginSpread::side)).contains(Margin.Side.AT_LEAST);
    }

    @Test
    void fewSamplesSayThatTheyAreTooFewToRank() {
        SpreadAnswer answer = run(demo("mirror-club"), plan(30, 2, SpreadScope.REST));
        assertThat(margin(answer, MarginId.OIL_FILM).shares()).isEmpty();
        assertThat(answer.advice().stream().map(Advice::sentence)).anyMatch(s -> s.contains("too few samples"));
    }
}
