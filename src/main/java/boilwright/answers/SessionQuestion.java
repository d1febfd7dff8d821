package boilwright.answers;

import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;

/**
 * How long may a session of a rig be?
 *
 * @param asked the rig, with the session that is meant
 */
public record SessionQuestion(Asked asked) implements Question<SessionOutlook> {
    @Override
    public SessionOutlook answer(Model model, CancelToken cancel, ProgressSink progress) {
        return SessionJudge.of(asked, cancel);
    }
}
