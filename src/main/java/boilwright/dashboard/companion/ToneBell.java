package boilwright.dashboard.companion;

import boilwright.dashboard.text.WindowText;
import java.util.Optional;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.SourceDataLine;

/** Three short tones from the machine's own sound device. */
final class ToneBell implements Bell {
    private static final int RATE = 22_050;
    private static final double TONE_HZ = 880;
    private static final double TONE_S = 0.18;
    private static final double GAP_S = 0.10;
    private static final int TONES = 3;
    private static final double LOUDNESS = 0.7;
    /** Each tone swells and fades for this long, so that it does not click, s. */
    private static final double EDGE_S = 0.01;

    @Override
    public Optional<String> ring() {
        AudioFormat format = new AudioFormat(RATE, 8, 1, true, false);
        try (SourceDataLine line = AudioSystem.getSourceDataLine(format)) {
            line.open(format);
            line.start();
            byte[] tones = samples();
            line.write(tones, 0, tones.length);
            line.drain();
            return Optional.empty();
        } catch (LineUnavailableException e) {
            return Optional.of(WindowText.say("companion.sound.taken"));
        } catch (IllegalArgumentException e) {
            // the sound system's way to say that there is no such device
            return Optional.of(WindowText.say("companion.sound.none"));
        }
    }

    static byte[] samples() {
        int tone = (int) (TONE_S * RATE);
        int gap = (int) (GAP_S * RATE);
        byte[] samples = new byte[TONES * (tone + gap)];
        for (int n = 0; n < TONES; n++) {
            for (int i = 0; i < tone; i++) {
                double edge = Math.min(1, Math.min(i, tone - i) / (EDGE_S * RATE));
                double wave = Math.sin(2 * Math.PI * TONE_HZ * i / RATE);
                samples[n * (tone + gap) + i] = (byte) Math.round(Byte.MAX_VALUE * LOUDNESS * edge * wave);
            }
        }
        return samples;
    }
}
