package boilwright.dashboard.model;

import boilwright.thermal.*;

public record RunTimeline(double endS, java.util.List<TimeEvent> marks) {
    public static RunTimeline of(RunResult warmup, SteadyState steady, RunResult cooldown) {
        double[] t = warmup.series().column("timeS").values();
        return new RunTimeline(t[t.length - 1], warmup.events());
    }

    public MomentState at(double s) {
        return new MomentState(s);
    }
}
