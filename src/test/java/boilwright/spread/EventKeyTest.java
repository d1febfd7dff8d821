package boilwright.spread;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.thermal.EventKind;
import boilwright.thermal.TimeEvent;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class EventKeyTest {
    private static TimeEvent event(EventKind kind, String stage, String reason) {
        return new TimeEvent(kind, stage, OptionalDouble.of(1), reason);
    }

    @Test
    void theSameEventHasTheSameKeyWhateverItsTimeAndReason() {
        assertThat(EventKey.of(List.of(event(EventKind.JET_LIT, "top", "It is lit."))))
                .isEqualTo(EventKey.of(
                        List.of(new TimeEvent(EventKind.JET_LIT, "top", OptionalDouble.empty(), "Too cold."))));
    }

    @Test
    void limitsStagesAndRepeatsAreToldApart() {
        List<EventKey> keys = EventKey.of(List.of(
                event(EventKind.HEAT_ON, "", ""),
                event(EventKind.HEAT_ON, "", ""),
                event(EventKind.JET_LIT, "top", ""),
                event(EventKind.JET_LIT, "bottom", ""),
                event(EventKind.LIMIT_REACHED, "", "Oil too hot."),
                event(EventKind.LIMIT_REACHED, "", "Cap too hot.")));
        assertThat(keys).doesNotHaveDuplicates();
        assertThat(keys.get(1).occurrence()).isEqualTo(1);
    }
}
