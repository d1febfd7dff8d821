package boilwright.rise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is found in records of every kind, and that units, clocks and volumes only scale it. */
class RiseTestTest {
    private static final double VOLUME_M3 = 0.03;
    private static final double SPAN_S = 600;

    /** Readings of a pressure with a scatter of some share of them. */
    private static RiseRecord record(int count, double share, DoubleUnaryOperator pressurePa) {
        SplittableRandom random = new SplittableRandom(20);
        List<RiseRecord.Reading> readings = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double t = SPAN_S * i / (count - 1);
            double scatter = 1 + share * Math.sqrt(3) * (2 * random.nextDouble() - 1);
            readings.add(new RiseRecord.Reading(t, pressurePa.applyAsDouble(t) * scatter));
        }
        return RiseCases.si(readings);
    }

    private static RiseAnswer answer(double share, DoubleUnaryOperator pressurePa) {
        return RiseTest.of(record(40, share, pressurePa), VOLUME_M3);
    }

    @Test
    void aLeakWithoutScatterIsFoundExactly() {
        RiseAnswer answer = answer(0, t -> 1 + 2e-3 * t);
        assertThat(answer.verdict()).isEqualTo(Verdict.LEAK);
        assertThat(answer.leak().orElseThrow().value()).isCloseTo(6e-5, within(1e-11));
        assertThat(answer.surfaceGas()).isEmpty();
        assertThat(answer.initialRise()).isEqualTo(answer.leak());
        assertThat(answer.sentence()).startsWith("A steady leak of 6.00e-5 Pa m3/s (");
        assertThat(answer.notes()).anyMatch(note -> note.contains("10 min of the record looks just like a leak"));
    }

    @Test
    void surfaceGasWithoutScatterIsFoundExactly() {
        RiseAnswer answer = answer(0, t -> 1 + 2e-2 * 120 * (1 - Math.exp(-t / 120)));
        assertThat(answer.verdict()).isEqualTo(Verdict.SURFACE_GAS);
        RiseAnswer.SurfaceGas gas = answer.surfaceGas().orElseThrow();
        assertThat(gas.initialRate().value()).isCloseTo(6e-4, within(1e-9));
        assertThat(gas.timeConstantS()).isCloseTo(120, within(1e-3));
        assertThat(gas.byPowerLaw()).isFalse();
        assertThat(answer.leak()).isEmpty();
        assertThat(answer.notes()).anyMatch(note -> note.startsWith("A leak of more than"));
    }

    @Test
    void aMixtureWithoutScatterIsFoundExactly() {
        RiseAnswer answer = answer(0, t -> 1 + 4e-3 * t + 2e-2 * 120 * (1 - Math.exp(-t / 120)));
        assertThat(answer.verdict()).isEqualTo(Verdict.MIXED);
        assertThat(answer.leak().orElseThrow().value()).isCloseTo(1.2e-4, within(1e-9));
        assertThat(answer.surfaceGas().orElseThrow().initialRate().value()).isCloseTo(6e-4, within(1e-8));
        assertThat(answer.initialRise().orElseThrow().value()).isCloseTo(7.2e-4, within(1e-8));
    }

    @Test
    void releaseByAPowerLawIsSurfaceGas() {
        RiseAnswer answer = answer(0.003, t -> 0.1 + 1e-2 * 60 * Math.log1p(t / 60));
        assertThat(answer.verdict()).isEqualTo(Verdict.SURFACE_GAS);
        RiseAnswer.SurfaceGas gas = answer.surfaceGas().orElseThrow();
        assertThat(gas.byPowerLaw()).isTrue();
        assertThat(gas.timeConstantS()).isCloseTo(60, within(6.0));
        assertThat(gas.initialRate().value()).isCloseTo(3e-4, within(1.5e-5));
    }

    @Test
    void aPowerLawThatScattersMoreIsNamedBesideAMixture() {
        RiseAnswer answer = answer(0.012, t -> 1 + 1e-2 * 150 * Math.log1p(t / 150));
        assertThat(answer.verdict()).isEqualTo(Verdict.MIXED);
        assertThat(answer.notes()).anyMatch(note -> note.startsWith("Surfaces without any leak would describe"));
    }

    @Test
    void aPartThatHardlyMattersIsNoVerdict() {
        RiseAnswer answer = answer(0, t -> 1 + 2e-2 * t + 2e-2 * 15 * (1 - Math.exp(-t / 100)));
        assertThat(answer.verdict()).isEqualTo(Verdict.LEAK);
        assertThat(answer.surfaceGas()).isPresent();
        RiseAnswer other = answer(0, t -> 1 + 1e-4 * t + 2e-2 * 100 * (1 - Math.exp(-t / 100)));
        assertThat(other.verdict()).isEqualTo(Verdict.SURFACE_GAS);
        assertThat(other.leak().orElseThrow().value()).isCloseTo(3e-6, within(1e-8));
    }

    @Test
    void noRiseIsUndecidedWithALimit() {
        RiseAnswer answer = answer(0.015, t -> 5);
        assertThat(answer.verdict()).isEqualTo(Verdict.UNDECIDED);
        assertThat(answer.sentence()).matches("No rise stands out .* give less than [1-9].*e-6 Pa m3/s\\.");
        assertThat(answer.leak()).isEmpty();
        assertThat(answer.surfaceGas()).isEmpty();
    }

    @Test
    void aDisplayThatStandsStillIsNoRise() {
        assertThat(answer(0, t -> 5).sentence()).startsWith("No rise stands out");
    }

    @Test
    void aFallIsSaid() {
        RiseAnswer answer = answer(0.015, t -> 5 - 3e-3 * t);
        assertThat(answer.verdict()).isEqualTo(Verdict.UNDECIDED);
        assertThat(answer.sentence()).startsWith("The pressure falls");
        assertThat(answer.initialRise()).isEmpty();
    }

    @Test
    void aRiseThatGrowsIsSaid() {
        RiseAnswer answer = answer(0.01, t -> 1 + 1e-5 * t * t);
        assertThat(answer.verdict()).isEqualTo(Verdict.UNDECIDED);
        assertThat(answer.sentence()).startsWith("The pressure rises faster and faster");
    }

    @Test
    void aRiseThatTurnsBackIsSaid() {
        RiseAnswer answer = answer(0.01, t -> 1 + 2e-2 * 100 * (1 - Math.exp(-t / 100)) - 2e-3 * t);
        assertThat(answer.verdict()).isEqualTo(Verdict.UNDECIDED);
        assertThat(answer.sentence()).startsWith("The rise bends over more than surfaces make it");
    }

    @Test
    void aBendSlowerThanTheRecordIsUndecided() {
        RiseAnswer answer = answer(0.005, t -> 1 + 1e-2 * 1200 * (1 - Math.exp(-t / 1200)));
        assertThat(answer.verdict()).isEqualTo(Verdict.UNDECIDED);
        assertThat(answer.sentence()).contains("too slowly for this record", "record for at least");
        assertThat(answer.initialRise()).isPresent();
    }

    @Test
    void fiveReadingsAreTooFew() {
        RiseAnswer answer = RiseTest.of(record(5, 0, t -> 1 + 1e-2 * t), VOLUME_M3);
        assertThat(answer.verdict()).isEqualTo(Verdict.UNDECIDED);
        assertThat(answer.sentence()).contains("too few readings, 5");
    }

    @Test
    void scatterAsLargeAsTheRiseIsUndecided() {
        RiseAnswer answer = answer(0.06, t -> 1 + 4e-4 * t);
        assertThat(answer.verdict()).isEqualTo(Verdict.UNDECIDED);
        assertThat(answer.sentence()).startsWith("The readings scatter too much");
    }

    @Test
    void wavesAreNoCurve() {
        RiseAnswer answer = answer(0.002, t -> 1 + 1e-3 * t + 0.1 * Math.sin(t / 60));
        assertThat(answer.verdict()).isEqualTo(Verdict.UNDECIDED);
        assertThat(answer.sentence()).startsWith("The readings stray from every curve");
        assertThat(answer.notes()).anyMatch(note -> note.startsWith("The readings follow one another"));
    }

    /** A mean over five readings says no more than a fifth of them, so its interval must not be narrower. */
    @Test
    void readingsThatHangTogetherCountForFewer() {
        SplittableRandom random = new SplittableRandom(3);
        double[] noise = random.doubles(64).toArray();
        List<RiseRecord.Reading> readings = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            double mean = (noise[i] + noise[i + 1] + noise[i + 2] + noise[i + 3] + noise[i + 4]) / 5;
            readings.add(new RiseRecord.Reading(10 * i, (1 + 0.01 * i) * (1 + 0.1 * (mean - 0.5))));
        }
        Evidence evidence = new RiseFits(RiseCases.si(readings)).evidence();
        assertThat(evidence.isCorrelated()).isTrue();
        assertThat(evidence.effective()).isBetween(4.0, 30.0);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e-6, 1e-3, 1e3})
    void pressuresOnlyScaleTheRates(double factor) {
        RiseRecord one = RiseCases.mixture(5).record();
        RiseRecord other = RiseCases.si(one.readings().stream()
                .map(r -> new RiseRecord.Reading(r.timeS(), r.pressurePa() * factor))
                .toList());
        RiseAnswer before = RiseTest.of(one, VOLUME_M3);
        RiseAnswer after = RiseTest.of(other, VOLUME_M3);
        assertThat(after.verdict()).isEqualTo(before.verdict());
        assertThat(after.leak().orElseThrow().low())
                .isCloseTo(before.leak().orElseThrow().low() * factor, within(1e-8 * factor));
    }

    @Test
    void theClockMayStartAnywhereAndTheVolumeScales() {
        RiseRecord one = RiseCases.surfaceGas(5).record();
        RiseRecord other = RiseCases.si(one.readings().stream()
                .map(r -> new RiseRecord.Reading(r.timeS() - 4000, r.pressurePa()))
                .toList());
        RiseAnswer.Rate before = RiseTest.of(one, VOLUME_M3).initialRise().orElseThrow();
        RiseAnswer after = RiseTest.of(other, 2 * VOLUME_M3);
        assertThat(after.initialRise().orElseThrow().value() / before.value()).isCloseTo(2, within(1e-6));
        assertThat(after.line().pressureAt(-4000))
                .isCloseTo(
                        one.readings().get(0).pressurePa(),
                        within(0.1 * one.readings().get(0).pressurePa()));
    }

    @Test
    void theSameRecordGivesTheSameBits() {
        assertThat(RiseTest.of(RiseCases.mixture(9).record(), VOLUME_M3))
                .isEqualTo(RiseTest.of(RiseCases.mixture(9).record(), VOLUME_M3));
    }

    @Test
    void refusesWhatIsNoVolumeAndNoRecord() {
        RiseRecord record = RiseCases.leak(1).record();
        for (double volume : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatIllegalArgumentException().isThrownBy(() -> RiseTest.of(record, volume));
        }
        List<RiseRecord.Reading> good = record.readings();
        assertThatIllegalArgumentException().isThrownBy(() -> RiseCases.si(good.subList(0, 4)));
        assertThatIllegalArgumentException().isThrownBy(() -> RiseCases.si(with(good, new RiseRecord.Reading(0, 1))));
        assertThatIllegalArgumentException().isThrownBy(() -> RiseCases.si(with(good, new RiseRecord.Reading(1e4, 0))));
    }

    private static List<RiseRecord.Reading> with(List<RiseRecord.Reading> readings, RiseRecord.Reading last) {
        List<RiseRecord.Reading> all = new ArrayList<>(readings);
        all.add(last);
        return all;
    }
}
