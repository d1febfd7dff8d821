package boilwright.answers;

import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.rise.RiseAnswer;
import boilwright.rise.RiseRecord;
import boilwright.rise.RiseTest;

/**
 * Does a chamber that is shut off leak, or do its surfaces give off gas? Needs no rig.
 *
 * @param record the pressure in it against time
 * @param volumeM3 its volume, m3, above 0
 */
public record RiseQuestion(RiseRecord record, double volumeM3) implements Question<RiseAnswer> {
    @Override
    public RiseAnswer answer(Model model, CancelToken cancel, ProgressSink progress) {
        return RiseTest.of(record, volumeM3);
    }
}
