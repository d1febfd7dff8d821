package boilwright.companion;

import boilwright.errors.Sentences;
import boilwright.sequence.Action;
import boilwright.sequence.Clock;
import java.util.Arrays;
import java.util.Optional;

/** What a person waits to see. Names in files are the constants' names in lower case with hyphens. */
public enum Sight {
    DEGASSED(Action.LOOK_DEGASSED, Clock.FROM_COLD, CompanionText.SIGHT_DEGASSED),
    FIRST_JET(Action.LOOK_FIRST_JET, Clock.FROM_COLD, CompanionText.SIGHT_FIRST_JET),
    TOP_JET(Action.LOOK_TOP_JET, Clock.FROM_COLD, CompanionText.SIGHT_TOP_JET),
    FULL(Action.LOOK_FULL, Clock.FROM_COLD, CompanionText.SIGHT_FULL),
    JETS_GONE(Action.LOOK_JETS_GONE, Clock.FROM_HOT, CompanionText.SIGHT_JETS_GONE),
    COLD(Action.LOOK_COLD, Clock.FROM_HOT, CompanionText.SIGHT_COLD);

    private final Action action;
    private final Clock clock;
    private final CompanionText title;

    Sight(Action action, Clock clock, CompanionText title) {
        this.action = action;
        this.clock = clock;
        this.title = title;
    }

    /** Name in files. */
    public String id() {
        return Sentences.bundleKey(this);
    }

    /** The step that waits for it. */
    public Action action() {
        return action;
    }

    Clock clock() {
        return clock;
    }

    /** What was seen, as a sentence begins. */
    String title() {
        return title.say();
    }

    static Optional<Sight> of(Action action) {
        return Arrays.stream(values()).filter(s -> s.action == action).findFirst();
    }
}
