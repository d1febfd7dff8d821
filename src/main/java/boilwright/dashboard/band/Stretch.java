package boilwright.dashboard.band;

import boilwright.dashboard.model.RunPhase;
import boilwright.dashboard.model.RunTimeline;
import boilwright.dashboard.text.WindowText;
import boilwright.report.EventWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A named piece of the band: a phase, or the plateau that is cut out of the phase in which the pump comes to rest.
 *
 * @param kind what goes on
 * @param plateau whether the pump is at rest: as long as one likes, so its length on the axis means nothing
 * @param startS where it starts on the axis, s
 * @param endS where it ends, s; above startS
 */
record Stretch(RunPhase.Kind kind, boolean plateau, double startS, double endS) {
    /** The pieces of an axis, in order and without gaps. */
    static List<Stretch> of(RunTimeline line) {
        List<Stretch> all = new ArrayList<>();
        for (RunPhase phase : line.phases()) {
            double restS = Math.max(phase.startS(), Math.min(phase.endS(), line.restStartS()));
            double coolS = Math.max(phase.startS(), Math.min(phase.endS(), line.cooldownStartS()));
            add(all, phase.kind(), false, phase.startS(), restS);
            add(all, phase.kind(), true, restS, coolS);
            add(all, phase.kind(), false, coolS, phase.endS());
        }
        return List.copyOf(all);
    }

    private static void add(List<Stretch> all, RunPhase.Kind kind, boolean plateau, double startS, double endS) {
        if (endS > startS) {
            all.add(new Stretch(kind, plateau, startS, endS));
        }
    }

    double lengthS() {
        return endS - startS;
    }

    /** What it is called. */
    String name() {
        return WindowText.say(plateau ? "band.plateau" : "band.phase." + id());
    }

    /** How long it takes, in words; empty for the plateau, which takes any time. */
    String length() {
        return plateau ? "" : EventWords.clock(lengthS());
    }

    /** What goes on in it, a whole sentence. */
    String sentence() {
        String doing = WindowText.say("band.phase." + id() + ".sentence");
        return plateau ? WindowText.say("band.plateau.sentence", doing) : doing;
    }

    /** How style sheet and bundle spell its kind. */
    String id() {
        return kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
