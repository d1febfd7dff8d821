package boilwright.rise;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;

/** Whatever a record holds, there is an answer in finite numbers. */
class AnyRecordTest {
    @Property(seed = "55")
    void hasAnAnswer(
            @ForAll @Size(min = 5, max = 40) List<@DoubleRange(min = -8, max = 5) Double> decades,
            @ForAll @Size(min = 40, max = 40) List<@DoubleRange(min = -3, max = 4) Double> intervals,
            @ForAll @DoubleRange(min = 0, max = 1) double wildness) {
        List<RiseRecord.Reading> readings = new ArrayList<>();
        double t = 0;
        for (int i = 0; i < decades.size(); i++) {
            readings.add(new RiseRecord.Reading(t, Math.pow(10, wildness * decades.get(i))));
            t += Math.pow(10, intervals.get(i));
        }
        RiseAnswer answer = RiseTest.of(RiseCases.si(readings), 0.03);
        assertThat(answer.sentence()).isNotBlank().doesNotContain("NaN", "Infinity");
        answer.leak().ifPresent(AnyRecordTest::inOrder);
        answer.surfaceGas().ifPresent(gas -> inOrder(gas.initialRate()));
        answer.initialRise().ifPresent(AnyRecordTest::inOrder);
        assertThat(readings)
                .allSatisfy(r -> assertThat(answer.line().pressureAt(r.timeS())).isFinite());
        assertThat(answer.leak().isPresent() || answer.surfaceGas().isPresent())
                .isEqualTo(answer.verdict() != Verdict.UNDECIDED);
    }

    private static void inOrder(RiseAnswer.Rate rate) {
        assertThat(rate.low()).isBetween(0.0, rate.value());
        assertThat(rate.high()).isFinite().isGreaterThanOrEqualTo(rate.value());
    }
}
