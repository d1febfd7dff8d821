package boilwright.dashboard.model;

import boilwright.answers.CheckAnswer;
import boilwright.answers.CooldownQuestion;
import boilwright.answers.RunAnswer;
import boilwright.answers.Stored;
import boilwright.rig.Rig;
import boilwright.rig.file.RigReader;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/** Runs of the demo rigs, worked out once for all tests. */
public final class Timelines {
    private static final Map<String, RunTimeline> DEMOS = new ConcurrentHashMap<>();

    private Timelines() {}

    /** Warm-up, rest and cool-down of a demo rig. */
    public static RunTimeline demo(String name) {
        return DEMOS.computeIfAbsent(name, Timelines::make);
    }

    private static RunTimeline make(String name) {
        Rig rig = RigReader.readDemo(name, Stored.FLUIDS.workingFluids(), Set.of());
        CheckAnswer check = Stored.check(rig);
        RunAnswer cooldown = Stored.answer(new CooldownQuestion(Stored.asked(rig)));
        return RunTimeline.of(check.warmup(), check.steady(), cooldown.run());
    }
}
