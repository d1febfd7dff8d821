package boilwright.rise;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.Counts;
import java.util.function.LongFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** How often the verdict is right, and how often the intervals hold the truth, in records whose truth is known. */
class VerdictsTest {
    private static final double VOLUME_M3 = 0.03;
    private static final int CASES = Counts.of(40, 100);
    private static final int DEEP_CASES = 500;

    @Test
    void leaksAreCalledLeaks() {
        assertThat(right(RiseCases::leak, Verdict.LEAK)).isGreaterThanOrEqualTo(95 * CASES / 100);
    }

    @Test
    void surfaceGasIsCalledSurfaceGas() {
        assertThat(right(RiseCases::surfaceGas, Verdict.SURFACE_GAS)).isGreaterThanOrEqualTo(95 * CASES / 100);
    }

    @Test
    void mixturesAreCalledMixtures() {
        assertThat(right(RiseCases::mixture, Verdict.MIXED)).isGreaterThanOrEqualTo(95 * CASES / 100);
    }

    @Test
    @Tag("deep")
    void intervalsOfALeakHoldIt() {
        assertThat(held(RiseCases::leak, RiseCurve.LEAK, 1, RiseCases::leakPaPerS))
                .isBetween(440L, 495L);
    }

    @Test
    @Tag("deep")
    void intervalsOfSurfaceGasHoldIt() {
        assertThat(held(RiseCases::surfaceGas, RiseCurve.SURFACE_GAS, 1, RiseCases::gasPaPerS))
                .isBetween(440L, 495L);
    }

    @Test
    @Tag("deep")
    void intervalsOfTheLeakInAMixtureHoldIt() {
        assertThat(held(RiseCases::mixture, RiseCurve.MIXED, 1, RiseCases::leakPaPerS))
                .isBetween(440L, 495L);
    }

    @Test
    @Tag("deep")
    void intervalsOfSurfaceGasInAMixtureHoldIt() {
        assertThat(held(RiseCases::mixture, RiseCurve.MIXED, 2, RiseCases::gasPaPerS))
                .isBetween(440L, 495L);
    }

    private static long right(LongFunction<RiseCases> cases, Verdict verdict) {
        return LongStream.rangeClosed(1, CASES)
                .filter(i -> RiseTest.of(cases.apply(i).record(), VOLUME_M3).verdict() == verdict)
                .count();
    }

    private static long held(
            LongFunction<RiseCases> cases, RiseCurve curve, int slope, ToDoubleFunction<RiseCases> truth) {
        return LongStream.rangeClosed(1, DEEP_CASES)
                .filter(i -> {
                    RiseCases one = cases.apply(i);
                    RiseAnswer.Rate rate = RiseTest.RateInterval.of(new RiseFits(one.record()), curve, slope);
                    double true1 = truth.applyAsDouble(one);
                    return rate.low() <= true1 && true1 <= rate.high();
                })
                .count();
    }
}
