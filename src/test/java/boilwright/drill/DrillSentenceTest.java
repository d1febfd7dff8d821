package boilwright.drill;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.rig.Protection.Load;
import boilwright.rig.Protection.TripKind;
import boilwright.thermal.DrillLimit;
import boilwright.thermal.Fault;
import java.util.EnumSet;
import org.junit.jupiter.api.Test;

class DrillSentenceTest {
    @Test
    void faultsLimitsTripsAndLoadsHaveTheirWords() {
        for (Fault fault : Fault.values()) {
            assertThat(DrillWords.title(fault)).isNotBlank();
        }
        for (DrillLimit limit : DrillLimit.values()) {
            assertThat(DrillWords.title(limit)).isNotBlank();
        }
        for (TripKind kind : TripKind.values()) {
            assertThat(DrillWords.title(kind)).isNotBlank();
        }
        assertThat(DrillWords.kept(EnumSet.allOf(Load.class))).isEqualTo("water, backing pump, fan");
    }
}
