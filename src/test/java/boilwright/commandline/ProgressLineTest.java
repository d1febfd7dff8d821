package boilwright.commandline;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

class ProgressLineTest {
    private static final long SECOND = 1_000_000_000L;

    private final AtomicLong clock = new AtomicLong();
    private final ByteArrayOutputStream shown = new ByteArrayOutputStream();

    @Test
    void keepsQuietDuringAShortWait() {
        try (ProgressLine line = line()) {
            clock.set(SECOND - 1);
            line.progress(0.5, "warm-up");
        }
        assertThat(text()).isEmpty();
    }

    @Test
    void showsALongWaitNowAndThenAndTakesTheLineAway() {
        try (ProgressLine line = line()) {
            clock.set(SECOND);
            line.progress(0.25, "warm-up");
            clock.addAndGet(1000);
            line.progress(0.26, "warm-up");
            clock.addAndGet(SECOND);
            line.progress(0.5, "warm-up");
        }
        assertThat(text()).contains("25 %  warm-up", "50 %  warm-up").doesNotContain("26 %", "\n");
        assertThat(text()).endsWith("\r" + " ".repeat(60) + "\r");
    }

    private ProgressLine line() {
        return new ProgressLine(new PrintStream(shown, true, StandardCharsets.UTF_8), clock::get);
    }

    private String text() {
        return shown.toString(StandardCharsets.UTF_8);
    }
}
