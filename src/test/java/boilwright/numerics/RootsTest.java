package boilwright.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import boilwright.errors.ComputationException;
import boilwright.errors.MessageKey;
import java.util.concurrent.atomic.AtomicInteger;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class RootsTest {
    @Test
    void findsTheRootsOfWrittenOutFunctions() {
        assertThat(Roots.bracketed(x -> x * x - 2, 0, 2, 1e-15, 0, "x")).isCloseTo(Math.sqrt(2), within(4e-16));
        assertThat(Roots.bracketed(x -> x * x - 2, 2, 0, 1e-15, 0, "x")).isCloseTo(Math.sqrt(2), within(4e-16));
        assertThat(Roots.bracketed(x -> Math.cos(x) - x, 0, 1, 1e-14, 0, "x"))
                .isCloseTo(0.7390851332151607, within(1e-14));
        assertThat(Roots.bracketed(x -> x * x * x, -1, 3, 0, 1e-12, "x")).isCloseTo(0, within(1e-12));
        assertThat(Roots.bracketed(Math::expm1, -700, 700, 1e-12, 1e-13, "x")).isCloseTo(0, within(1e-13));
        assertThat(Roots.bracketed(x -> x - 1e-200, -1e-300, 1e300, 1e-10, 0, "x"))
                .isCloseTo(1e-200, within(1e-210));
    }

    @Test
    void givesBackAnEndThatIsExactlyARoot() {
        assertThat(Roots.bracketed(x -> x, 0, 5, 0, 0, "x")).isZero();
        assertThat(Roots.bracketed(x -> x - 5, 0, 5, 0, 0, "x")).isEqualTo(5);
    }

    @Test
    void findsAJumpAndCopesWithInfiniteValues() {
        double jump = Roots.bracketed(x -> x < 0.3 ? -1 : 1, 0, 1, 1e-15, 0, "x");
        assertThat(jump).isCloseTo(0.3, within(1e-15));
        double pole =
                Roots.bracketed(x -> x < 0.5 ? Double.NEGATIVE_INFINITY : Math.log(x - 0.5) + 2, 0, 1, 1e-14, 0, "x");
        assertThat(pole).isCloseTo(0.5 + Math.exp(-2), within(1e-14));
    }

    @Test
    void needsFewCallsForASmoothFunction() {
        AtomicInteger calls = new AtomicInteger();
        Roots.bracketed(
                x -> {
                    calls.incrementAndGet();
                    return Math.exp(x) - 5;
                },
                0,
                10,
                1e-11,
                0,
                "x");
        assertThat(calls.get()).isLessThan(20);
    }

    @Test
    void saysWhatHasNoRootAndWhere() {
        assertThatThrownBy(() -> Roots.bracketed(x -> x * x + 1, -1, 2, 1e-9, 0, "the liquid temperature"))
                .isInstanceOfSatisfying(ComputationException.class, e -> {
                    assertThat(e.reason().key()).isEqualTo(MessageKey.ROOT_NOT_BRACKETED);
                    assertThat(e.reason().arguments())
                            .containsExactly("the liquid temperature", "-1.0", "2.0", "2.0", "5.0");
                    assertThat(e.getMessage()).contains("the liquid temperature");
                });
        assertThatThrownBy(() -> Roots.bracketed(x -> x > 0.4 ? Double.NaN : -1 + x, 0, 1, 1e-9, 0, "x"))
                .isInstanceOfSatisfying(
                        ComputationException.class,
                        e -> assertThat(e.reason().key()).isEqualTo(MessageKey.ROOT_VALUE_NOT_A_NUMBER));
        assertThatThrownBy(() -> Roots.bracketed(x -> x, Double.NEGATIVE_INFINITY, 1, 0, 0, "x"))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void theAnswerFromAboveIsBeyondTheCrossing() {
        for (int i = 1; i < 50; i++) {
            double root = i * 0.137;
            double found =
                    Roots.fromAbove(x -> Math.sinh(root - x), 0, Math.sinh(root), 10, Math.sinh(root - 10), 1e-3, "x");
            assertThat(found).isBetween(root, root + 1e-3);
        }
    }

    @Property(tries = 100, seed = "20260101")
    void theLastBracketHoldsTheRoot(
            @ForAll @DoubleRange(min = -1e3, max = 1e3) double root,
            @ForAll @DoubleRange(min = 0.01, max = 1e3) double below,
            @ForAll @DoubleRange(min = 0.01, max = 1e3) double above,
            @ForAll @DoubleRange(min = 1, max = 7) double power) {
        double found = Roots.bracketed(
                x -> Math.signum(x - root) * Math.pow(Math.abs(x - root), power),
                root - below,
                root + above,
                1e-11,
                1e-13,
                "x");
        assertThat(Math.abs(found - root)).isLessThanOrEqualTo(1.0001e-11 * Math.abs(root) + 1.0001e-13);
    }
}
