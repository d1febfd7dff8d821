package boilwright.water;

import static boilwright.water.Plumbing.LITRE_PER_MINUTE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import boilwright.errors.InputRefusedException;
import boilwright.rig.Cooling;
import boilwright.rig.Rig;
import boilwright.rig.Supply;
import boilwright.rig.Supply.CapacityPoint;
import boilwright.thermal.TestRigs;
import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Passages, pump curves, chiller capacities. */
class WaterPartsTest {
    private static double head(Supply supply, double litresPerMinute) {
        return PumpCurve.of(((Supply.Pumped) supply).pump()).headM(litresPerMinute * LITRE_PER_MINUTE);
    }

    @Test
    void aPumpCurvePassesItsPointsAndFallsBetween() {
        Supply pump = Plumbing.tank(0, 10, 2, 9.9, 4, 4, 8, 3.5, 10, 0);
        assertThat(head(pump, 2)).isCloseTo(9.9, within(1e-12));
        assertThat(head(pump, 4)).isCloseTo(4, within(1e-12));
        assertThat(head(pump, 10)).isCloseTo(0, within(1e-12));
        double before = head(pump, 0);
        assertThat(before).isEqualTo(10);
        for (double q = 0.01; q < 14; q += 0.01) {
            double here = head(pump, q);
            assertThat(here).isLessThan(before);
            before = here;
        }
    }

    @Test
    void twoPointsMakeAStraightLine() {
        Supply pump = Plumbing.tank(0, 10, 8, 2);
        assertThat(head(pump, 2)).isCloseTo(8, within(1e-12));
        assertThat(head(pump, 5)).isCloseTo(5, within(1e-12));
    }

    /** Fritsch and Butland's slope by hand: equal steps, secants -1 and -3 give a harmonic mean of -1.5. */
    @Test
    void theSlopeAtAPointIsTheHarmonicMean() {
        Supply pump = Plumbing.tank(0, 8, 2, 6, 4, 0);
        double step = 1e-4;
        assertThat((head(pump, 2 + step) - head(pump, 2 - step)) / (2 * step)).isCloseTo(-1.5, within(1e-3));
    }

    @Test
    void outsideItsPointsACurveIsFlatBeforeAndFallsAfter() {
        Supply pump = Plumbing.tank(2, 8, 4, 6);
        assertThat(head(pump, 0)).isEqualTo(8);
        // down to nothing at twice the last flow is steeper here than the last piece
        assertThat(head(pump, 8)).isCloseTo(0, within(1e-12));
        assertThat(head(Plumbing.tank(0, 8, 4, 2), 5)).isCloseTo(0.5, within(1e-12));
    }

    @Test
    void turnsFollowWhatTheTubeIsSolderedTo() {
        Rig rig = TestRigs.metal150(2000);
        Passage cap = Passage.of(rig, new Cooling.CapCoil(0.008, 0.3, 20, Cooling.Place.PLAIN))
                .orElseThrow();
        Passage body = Passage.of(rig, new Cooling.SolderedCoil(List.of("top"), 0.008, 3, 20))
                .orElseThrow();
        Passage hose = Passage.of(rig, Plumbing.hose(0.01, 2, "")).orElseThrow();
        assertThat(cap.coilDiameterM()).isCloseTo(2 * Math.sqrt(0.008 / Math.PI), withinPercentage(1e-9));
        assertThat(body.coilDiameterM()).isCloseTo(0.154 + 0.006 + 0.008, withinPercentage(1e-9));
        assertThat(hose.coilDiameterM()).isInfinite();
        assertThat(Passage.of(rig, Plumbing.valve(3, ""))).isEmpty();
    }

    @Test
    void aJacketReachesThroughItsZones() {
        Rig rig = TestRigs.metal150(2000);
        Passage all = Passage.of(rig, new Cooling.Jacket(List.of("top", "lower"), 0.005, 0.003))
                .orElseThrow();
        assertThat(all.lengthM()).isCloseTo(0.08 + (0.12 - 0.06), within(1e-12));
        assertThat(all.hydraulicDiameterM()).isEqualTo(0.01);
        assertThat(all.areaM2()).isCloseTo(Math.PI / 4 * (0.17 * 0.17 - 0.16 * 0.16), withinPercentage(1e-9));
    }

    @Test
    void aRatedChillerFollowsItsSlopes() {
        ChillerCapacity chiller = ChillerCapacity.of(new Supply.RatedCapacity(1500, 288.15, 298.15, 40, 25));
        assertThat(chiller.wattsAt(288.15, 298.15)).isCloseTo(1500, within(1e-9));
        assertThat(chiller.wattsAt(293.15, 303.15)).isCloseTo(1500 + 200 - 125, within(1e-9));
        assertThat(chiller.covers(303.15, 298.15)).isTrue();
        assertThatThrownBy(() -> chiller.wattsAt(303.25, 298.15))
                .isInstanceOf(InputRefusedException.class)
                .hasMessageContaining("30.1 degC")
                .hasMessageContaining("0 degC to 30.0 degC")
                .hasMessageContaining("10.0 degC to 40.0 degC");
    }

    @Test
    void aChillerNeverWarmsTheWater() {
        ChillerCapacity weak = ChillerCapacity.of(new Supply.RatedCapacity(100, 288.15, 298.15, 20, 0));
        assertThat(weak.wattsAt(275.15, 298.15)).isZero();
    }

    @Test
    void aTableIsBilinearAndEndsAtItsEdges() {
        ChillerCapacity chiller = ChillerCapacity.of(new Supply.CapacityTable(List.of(
                new CapacityPoint(283.15, 293.15, 1000),
                new CapacityPoint(293.15, 293.15, 1400),
                new CapacityPoint(303.15, 293.15, 1600),
                new CapacityPoint(283.15, 303.15, 800),
                new CapacityPoint(293.15, 303.15, 1100),
                new CapacityPoint(303.15, 303.15, 1200))));
        assertThat(chiller.wattsAt(293.15, 303.15)).isCloseTo(1100, within(1e-9));
        assertThat(chiller.wattsAt(303.15, 303.15)).isCloseTo(1200, within(1e-9));
        assertThat(chiller.wattsAt(288.15, 298.15)).isCloseTo((1000 + 1400 + 800 + 1100) / 4.0, within(1e-9));
        assertThat(chiller.wattsAt(298.15, 293.15)).isCloseTo(1500, within(1e-9));
        assertThat(chiller.covers(283.15, 293.15)).isTrue();
        assertThat(chiller.covers(283.05, 293.15)).isFalse();
        assertThatThrownBy(() -> chiller.wattsAt(293.15, 308.15))
                .isInstanceOf(InputRefusedException.class)
                .hasMessageContaining("35.0 degC");
    }

    @Test
    void aTableOfOneRoomKnowsThatRoomOnly() {
        ChillerCapacity chiller = ChillerCapacity.of(new Supply.CapacityTable(
                List.of(new CapacityPoint(283.15, 293.15, 1000), new CapacityPoint(293.15, 293.15, 1400))));
        assertThat(chiller.wattsAt(288.15, 293.15)).isCloseTo(1200, within(1e-9));
        assertThat(chiller.covers(288.15, 294.15)).isFalse();
    }

    @Test
    void anOperatingPointCostsLittleMemory() {
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        Rig rig = Plumbing.twelveElements();
        for (int i = 0; i < 50; i++) {
            CircuitSolver.operatingPoint(rig);
        }
        long before = threads.getCurrentThreadAllocatedBytes();
        CircuitSolver.operatingPoint(rig);
        // What is built once for the circuit; thousands of losses are looked up besides.
        assertThat(threads.getCurrentThreadAllocatedBytes() - before).isLessThan(40_000);
    }
}
