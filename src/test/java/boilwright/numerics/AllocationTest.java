package boilwright.numerics;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Roots and integrators run in the innermost loops: what they allocate must not grow with the calls. */
class AllocationTest {
    private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

    static Stream<Supplier<OdeIntegrator>> methods() {
        return Stream.of(StabilizedExplicit::new, Rosenbrock::new);
    }

    private static long allocated() {
        return THREADS.getCurrentThreadAllocatedBytes();
    }

    @Test
    void aRootCostsNoMemory() {
        DoubleUnaryOperator f = x -> Math.exp(x) - 5;
        double sum = 0;
        for (int i = 0; i < 2000; i++) {
            sum += Roots.bracketed(f, 0, 10, 1e-11, 0, "x");
        }
        long before = allocated();
        for (int i = 0; i < 2000; i++) {
            sum += Roots.bracketed(f, 0, 10, 1e-11, 0, "x");
        }
        long used = allocated() - before;
        assertThat(used).isLessThan(2000);
        assertThat(sum).isPositive();
    }

    @ParameterizedTest
    @MethodSource("methods")
    void aStepCostsNoMemory(Supplier<OdeIntegrator> method) {
        OdeDriver driver = new OdeDriver(Problems.protheroRobinson(-500), method.get(), new Tolerances(1e-6, 1e-6))
                .largestStep(0.01);
        driver.run(0, new double[] {1}, 20);
        long before = allocated();
        OdeOutcome outcome = driver.run(0, new double[] {1}, 20);
        long used = allocated() - before;
        // The working arrays of one run take some thousand bytes; a byte for each derivative would already exceed this.
        assertThat(outcome.statistics().derivatives()).isGreaterThan(6000);
        assertThat(used).isLessThan(6000);
    }
}
