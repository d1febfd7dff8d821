package boilwright.answers;

import boilwright.answers.Margin.Side;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.rig.HeatSource;
import boilwright.rig.Rig;
import boilwright.rig.SupplyKind;
import boilwright.thermal.EventKind;
import boilwright.thermal.RunResult;
import boilwright.thermal.RunSimulator;
import boilwright.thermal.SeriesQuantity;
import boilwright.thermal.TimeEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Follows a session of a rig in which something warms or runs out, and finds the longest that holds. */
final class SessionJudge {
    /** The longest session is found to the minute. */
    private static final double NEAR_S = 60;

    private final Asked asked;
    private final CancelToken cancel;

    private SessionJudge(Asked asked, CancelToken cancel) {
        this.asked = asked;
        this.cancel = cancel;
    }

    /** Margins along the session of a rig, without the search for the longest; none where nothing runs out. */
    static List<Margin> along(Asked asked, CancelToken cancel) {
        return runsOut(asked.rig())
                ? new SessionJudge(asked, cancel).margins(asked.rig().sessionS())
                : List.of();
    }

    private static boolean runsOut(Rig rig) {
        return rig.cooling().supply().kind() == SupplyKind.TANK
                || rig.heatSource().cartridge().isPresent();
    }

    static SessionOutlook of(Asked asked, CancelToken cancel) {
        double lengthS = asked.rig().sessionS();
        return runsOut(asked.rig())
                ? new SessionJudge(asked, cancel).followed(lengthS)
                : new SessionOutlook(lengthS, OptionalDouble.empty());
    }

    private SessionOutlook followed(double lengthS) {
        boolean holds = holds(lengthS);
        double low = holds ? lengthS : 0;
        double high = holds ? SessionOutlook.LONGEST_S : lengthS;
        if (holds && holds(high)) {
            low = high;
        } else if (!holds && holds(SessionOutlook.SHORTEST_S)) {
            low = SessionOutlook.SHORTEST_S;
        } else if (!holds) {
            high = 0;
        }
        while (high - low > NEAR_S) {
            double middle = (low + high) / 2;
            if (holds(middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return new SessionOutlook(lengthS, OptionalDouble.of(low));
    }

    private boolean holds(double lengthS) {
        return margins(lengthS).stream().noneMatch(Margin::fails);
    }

    private List<Margin> margins(double lengthS) {
        cancel.check();
        RunResult run = RunSimulator.session(
                smooth(asked.rig()), asked.tables(), asked.values(), lengthS, cancel, ProgressSink.NONE);
        List<Margin> margins = new ArrayList<>(RunMargins.of(asked, run, Moment.SESSION));
        asked.rig().heatSource().cartridge().ifPresent(cartridge -> margins.add(fuel(run, lengthS)));
        return margins;
    }

    /**
     * With a thermostat that does not switch: over hours its mean heat counts, and what a tank or a cartridge has left follows that; how far a
     * switching one overshoots the warm-up shows.
     */
    private static Rig smooth(Rig rig) {
        return rig.heatSource().body().isEmpty()
                ? rig
                : rig.withHeatSource(
                        rig.heatSource().withBody(body -> body.withThermostat(HeatSource.Thermostat.PROPORTIONAL)));
    }

    /** How long the cartridge gives gas, against the session; it holds when it is not empty at heat-off. */
    private Margin fuel(RunResult run, double lengthS) {
        double onS = asked.rig().schedule().heatOnS();
        OptionalDouble empty = run.events().stream()
                .filter(e -> e.kind() == EventKind.FUEL_EMPTY)
                .map(TimeEvent::timeS)
                .findFirst()
                .orElse(OptionalDouble.empty());
        double fuelKg = asked.rig().heatSource().cartridge().orElseThrow().fuelMassKg();
        double[] left = run.series().column(SeriesQuantity.FUEL_MASS).values();
        double used = fuelKg - left[left.length - 1];
        // an empty cartridge gave all that it had before the session was over: what the rest would take is added at the
        // same rate
        double wanted = empty.isPresent() ? used * Math.max(1, lengthS / Math.max(1, empty.getAsDouble() - onS)) : used;
        return MarginMaker.of(MarginId.FUEL)
                .value(fuelKg)
                .side(Side.AT_LEAST)
                .atLeast(wanted)
                .tightBelow(1.1)
                .basis(AnswerText.BASIS_FUEL.say())
                .cure(AnswerText.CURE_FUEL)
                .at(Moment.SESSION, empty.orElse(onS + lengthS))
                .make();
    }
}
