package boilwright.spread;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.thermal.TimeEvent;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class EventKeyTest {
    private static TimeEvent event(String id, String stage, String reason) {
        return new TimeEvent(id, stage, OptionalDouble.of(1), reason);
    }

    @Test
    void theSameEventHasTheSameKeyWhateverItsTimeAndReason() {
        assertThat(EventKey.of(List.of(event("jet-lit", "top", "It is lit."))))
                .isEqualTo(EventKey.of(List.of(new TimeEvent("jet-lit", "top", OptionalDouble.empty(), "Too cold."))));
    }

    @Test
    void limitsStagesAndRepeatsAreToldApart() {
        List<EventKey> keys = EventKey.of(List.of(
                event("heat-on", "", ""),
                event("heat-on", "", ""),
                event("jet-lit", "top", ""),
                event("jet-lit", "bottom", ""),
                event("limit-reached", "", "Oil too hot."),
                event("limit-reached", "", "Cap too hot.")));
        assertThat(keys).doesNotHaveDuplicates();
        assertThat(keys.get(1).occurrence()).isEqualTo(1);
        assertThat(keys.get(4).isLimit()).isTrue();
    }
}
