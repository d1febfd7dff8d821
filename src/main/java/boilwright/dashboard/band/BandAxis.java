package boilwright.dashboard.band;

import boilwright.dashboard.model.RunPart;
import boilwright.dashboard.model.RunTimeline;
import boilwright.dashboard.text.WindowText;
import boilwright.report.EventWords;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * A run as the band lays it out. Never changed.
 *
 * @param line the run
 * @param stretches its named pieces, in order and without gaps
 * @param scale where times lie along the band
 * @param marks what happens, in order of time
 */
record BandAxis(RunTimeline line, List<Stretch> stretches, AxisScale scale, List<BandMark> marks) {
    /** Steps that a clock is moved by, s. */
    private static final double[] STEPS = {1, 2, 5, 10, 20, 30, 60, 120, 300, 600, 1200, 1800, 3600};
    /** A stretch takes at most this many steps. */
    private static final double MOST_STEPS = 100;
    /** Times nearer than this are the same, s. */
    private static final double SAME_S = 1e-3;

    /** Lays a run out. */
    static BandAxis of(RunTimeline line) {
        List<Stretch> stretches = Stretch.of(line);
        return new BandAxis(line, stretches, new AxisScale(stretches), BandMark.of(line));
    }

    double endS() {
        return line.endS();
    }

    /** The stretch at a place, s. */
    Stretch stretchAt(double axisS) {
        return stretches.stream().filter(s -> axisS < s.endS()).findFirst().orElse(stretches.get(stretches.size() - 1));
    }

    /** The next place on the grid of steps, s: the clock shows a round time there. Long stretches have long steps. */
    double stepAfter(double axisS) {
        Stretch stretch = stretchAt(axisS + SAME_S);
        double step = step(stretch);
        double zero = zeroOf(stretch);
        return Math.min(endS(), zero + (Math.floor((axisS - zero + SAME_S) / step) + 1) * step);
    }

    /** The place on the grid of steps before, s. */
    double stepBefore(double axisS) {
        Stretch stretch = stretchAt(Math.max(0, axisS - SAME_S));
        double step = step(stretch);
        double zero = zeroOf(stretch);
        return Math.max(0, zero + (Math.ceil((axisS - zero - SAME_S) / step) - 1) * step);
    }

    private static double step(Stretch stretch) {
        for (double step : STEPS) {
            if (stretch.lengthS() <= MOST_STEPS * step) {
                return step;
            }
        }
        return STEPS[STEPS.length - 1];
    }

    private double zeroOf(Stretch stretch) {
        return line.partAt(stretch.startS()) == RunPart.COOLDOWN ? line.cooldownStartS() : 0;
    }

    /** The next mark after a place, s; the end when none is left. */
    double markAfter(double axisS) {
        return marks.stream()
                .mapToDouble(BandMark::axisS)
                .filter(s -> s > axisS + SAME_S)
                .findFirst()
                .orElse(endS());
    }

    /** The last mark before a place, s; the start when there is none. */
    double markBefore(double axisS) {
        return marks.stream()
                .mapToDouble(BandMark::axisS)
                .filter(s -> s < axisS - SAME_S)
                .reduce((before, later) -> later)
                .orElse(0);
    }

    /**
     * The marks that lie at a place: the nearest one, with those of the same instant.
     *
     * @param axisS the place, s
     * @param within greatest distance, as a share of the band's width
     * @return in order; empty when none is so near
     */
    List<BandMark> marksAt(double axisS, double within) {
        double at = scale.share(axisS);
        return marks.stream()
                .min(Comparator.comparingDouble(mark -> Math.abs(scale.share(mark.axisS()) - at)))
                .filter(mark -> Math.abs(scale.share(mark.axisS()) - at) <= within)
                .map(nearest -> marks.stream()
                        .filter(mark -> Math.abs(mark.axisS() - nearest.axisS()) <= SAME_S)
                        .toList())
                .orElse(List.of());
    }

    /** What the clock shows, as h:mm:ss. */
    String clock(double axisS) {
        return EventWords.clock(line.clockS(axisS));
    }

    /** Which clock that is. */
    String clockName(double axisS) {
        return clockName(line.partAt(axisS));
    }

    /** What the clock of a part of the run is called. */
    static String clockName(RunPart part) {
        return WindowText.say("band.clock." + part.name().toLowerCase(Locale.ROOT));
    }
}
