package boilwright.dashboard.companion;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ToneBellTest {
    @Test
    void theToneIsAToneAndDoesNotClick() {
        byte[] samples = ToneBell.samples();
        assertThat(samples[0]).isZero();
        int highest = 0;
        int steepest = 0;
        for (int i = 1; i < samples.length; i++) {
            highest = Math.max(highest, samples[i]);
            steepest = Math.max(steepest, Math.abs(samples[i] - samples[i - 1]));
        }
        assertThat(highest).isBetween(80, 127);
        // a full wave of 880 Hz moves by at most a quarter of its height from sample to sample
        assertThat(steepest).isLessThan(25);
    }
}
