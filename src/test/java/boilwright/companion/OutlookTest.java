package boilwright.companion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.companion.Outlook.Evidence;
import boilwright.sequence.Clock;
import java.util.List;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class OutlookTest {
    private static final double HEAT = 600;
    private static final double FULL = 1200;

    private static Outlook outlook(double heatS, Evidence... seen) {
        return Outlook.of(
                Clock.FROM_COLD, HEAT, OptionalDouble.of(heatS), 0, FULL, List.of(seen), OptionalDouble.empty());
    }

    @Property(tries = 100, seed = "7")
    void whatCameAsComputedLeavesTheRestAsComputed(
            @ForAll @DoubleRange(min = 0, max = 4000) double heatS,
            @ForAll @DoubleRange(min = 602, max = 1199) double planS) {
        Outlook same = outlook(heatS, new Evidence(heatS + planS - HEAT, planS, "The first jet"));
        assertThat(same.factor()).isCloseTo(1, within(1e-9));
        assertThat(same.expectedS(FULL)).isCloseTo(heatS + FULL - HEAT, within(1e-6));
        assertThat(same.expectedS(FULL + 500)).isCloseTo(heatS + FULL + 500 - HEAT, within(1e-6));
        assertThat(same.why()).contains("as computed");
    }

    @Property(tries = 100, seed = "8")
    void whatIsSeenLaterNeverBringsTheEndNearer(
            @ForAll @DoubleRange(min = 602, max = 1199) double planS,
            @ForAll @DoubleRange(min = 601, max = 20_000) double seenS,
            @ForAll @DoubleRange(min = 0, max = 5000) double laterS,
            @ForAll @DoubleRange(min = 600, max = 9000) double stepS) {
        double early = outlook(HEAT, new Evidence(seenS, planS, "It")).expectedS(stepS);
        double late = outlook(HEAT, new Evidence(seenS + laterS, planS, "It")).expectedS(stepS);
        assertThat(late).isGreaterThanOrEqualTo(early - 1e-9);
    }

    @Property(tries = 100, seed = "9")
    void laterStepsAreNeverExpectedBeforeEarlierOnesAndTheFactorStaysWithinBelief(
            @ForAll @DoubleRange(min = 602, max = 1199) double planS,
            @ForAll @DoubleRange(min = 601, max = 20_000) double seenS,
            @ForAll @DoubleRange(min = 0, max = 9000) double one,
            @ForAll @DoubleRange(min = 0, max = 9000) double more) {
        Outlook outlook = outlook(HEAT, new Evidence(seenS, planS, "It"));
        assertThat(outlook.factor()).isBetween(Outlook.LEAST, Outlook.GREATEST);
        assertThat(outlook.expectedS(one + more)).isGreaterThanOrEqualTo(outlook.expectedS(one) - 1e-9);
        assertThat(outlook.expectedS(planS)).isCloseTo(seenS, within(1e-9));
    }

    /** 580 s against 459 s are 1.264; 141 s of 600 s are left, and the 300 s behind them are no matter of the heat. */
    @Test
    void whatRemainsIsStretchedAndSaysHow() {
        Outlook outlook = outlook(HEAT, new Evidence(HEAT + 580, HEAT + 459, "The first jet"));
        assertThat(outlook.why())
                .isEqualTo(
                        "The first jet came 9 min 40 s after heat-on, computed 7 min 39 s: what remains is taken 1.26 times"
                                + " as long.");
        assertThat(outlook.expectedS(FULL)).isCloseTo(HEAT + 580 + 580.0 / 459 * 141, within(1e-9));
        assertThat(outlook.expectedS(FULL + 300)).isCloseTo(outlook.expectedS(FULL) + 300, within(1e-9));
    }

    @Test
    void theLastThingSeenCountsWhateverItsOrder() {
        Evidence first = new Evidence(1000, 900, "The first jet");
        Evidence boiler = new Evidence(1100, 1000, "A boiler at 180 degC");
        assertThat(outlook(HEAT, boiler, first).why()).startsWith("A boiler at 180 degC");
        // what is computed for before the heat, or was seen before it, tells nothing of the heat
        assertThat(outlook(HEAT, new Evidence(700, 570, "The end of degassing")).factor())
                .isEqualTo(1);
        assertThat(outlook(900, new Evidence(800, 700, "It")).why()).contains("Nothing was seen yet");
    }

    @Test
    void nobodyBelievesEveryFactor() {
        Outlook slow = outlook(HEAT, new Evidence(HEAT + 5000, HEAT + 100, "The first jet"));
        assertThat(slow.factor()).isEqualTo(4);
        assertThat(slow.why()).contains("taken 4.00 times as long", "4.00 times is as far as it goes");
        assertThat(outlook(HEAT, new Evidence(HEAT + 10, HEAT + 500, "It")).factor())
                .isEqualTo(0.25);
    }

    @Test
    void weakPowerIsTheLikelyReasonOfADelayOnly() {
        List<Evidence> late = List.of(new Evidence(HEAT + 580, HEAT + 459, "The first jet"));
        List<Evidence> early = List.of(new Evidence(HEAT + 400, HEAT + 459, "The first jet"));
        assertThat(why(late, 0.84)).contains("84 % of the computed ones");
        assertThat(why(late, 0.97)).doesNotContain("%");
        assertThat(why(early, 0.84)).doesNotContain("%");
    }

    private static String why(List<Evidence> seen, double power) {
        return Outlook.of(Clock.FROM_COLD, HEAT, OptionalDouble.of(HEAT), 0, FULL, seen, OptionalDouble.of(power))
                .why();
    }

    @Test
    void heatThatIsLateMovesEverythingByAsMuch() {
        Outlook waiting =
                Outlook.of(Clock.FROM_COLD, HEAT, OptionalDouble.empty(), 700, FULL, List.of(), OptionalDouble.empty());
        assertThat(waiting.expectedS(FULL)).isEqualTo(FULL + 100);
        Outlook inTime =
                Outlook.of(Clock.FROM_COLD, HEAT, OptionalDouble.empty(), 60, FULL, List.of(), OptionalDouble.empty());
        assertThat(inTime.expectedS(FULL)).isEqualTo(FULL);
    }
}
