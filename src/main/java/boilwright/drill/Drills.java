package boilwright.drill;

import boilwright.answers.CheckAnswer;
import boilwright.drill.DrillAnswer.TripTime;
import boilwright.errors.ComputationException;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.rig.Protection;
import boilwright.rig.Protection.Load;
import boilwright.rig.Rig;
import boilwright.thermal.DrillLimit;
import boilwright.thermal.DrillRun;
import boilwright.thermal.DrillRun.LimitTime;
import boilwright.thermal.EventKind;
import boilwright.thermal.Fault;
import boilwright.thermal.FaultDrill;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** One fault played through on paper, so that nobody has to see it first at the bench. */
final class Drills {
    /** A trip's longest delay is told to this, s. */
    private static final double DELAY_TOLERANCE_S = 1;
    /** How long a battery must last is told to this, s. */
    private static final double BATTERY_TOLERANCE_S = 10;

    private final CheckAnswer check;
    private final Fault fault;
    private final OptionalDouble atS;
    private final CancelToken cancel;
    private final ProgressSink progress;
    private final FaultDrill drill;

    private Drills(CheckAnswer check, Fault fault, OptionalDouble atS, CancelToken cancel, ProgressSink progress) {
        this.check = check;
        this.fault = fault;
        this.atS = atS;
        this.cancel = cancel;
        this.progress = progress;
        drill = drill(check.rig());
    }

    private FaultDrill drill(Rig rig) {
        return new FaultDrill(rig, check.asked().tables(), check.parameters(), fault, atS, cancel, progress);
    }

    /**
     * Plays a fault through.
     *
     * @param check the rig, checked
     * @param fault what fails; one that the rig can have, see {@link FaultDrill#notPlayed}
     * @param atS when, s from cold along the schedule; empty: at rest
     * @param lateS how long after it the heat is cut late, s
     * @param cancel stops the computation
     * @param progress hears how far it is
     * @throws ComputationException when no answer can be stood behind
     */
    static DrillAnswer play(
            CheckAnswer check,
            Fault fault,
            OptionalDouble atS,
            double lateS,
            CancelToken cancel,
            ProgressSink progress) {
        return new Drills(check, fault, atS, cancel, progress).play(lateS);
    }

    private DrillAnswer play(double lateS) {
        boolean heatEnds = drill.endsHeat();
        DrillRun on = drill.run(OptionalDouble.empty());
        DrillRun late = heatEnds ? on : drill.run(OptionalDouble.of(lateS));
        DrillRun now = heatEnds ? on : drill.run(OptionalDouble.of(0));
        List<DrillLimit> notKept =
                DrillWords.passed(now).stream().map(LimitTime::limit).toList();
        OptionalDouble delay = OptionalDouble.empty();
        Optional<DrillLimit> governing = Optional.empty();
        double reached = firstKeepable(on, notKept);
        if (!heatEnds && reached < Double.POSITIVE_INFINITY) {
            double low = 0;
            double high = reached;
            DrillRun tooLate = on;
            while (high - low > DELAY_TOLERANCE_S) {
                double middle = (low + high) / 2;
                DrillRun run = drill.run(OptionalDouble.of(middle));
                if (firstKeepable(run, notKept) < Double.POSITIVE_INFINITY) {
                    high = middle;
                    tooLate = run;
                } else {
                    low = middle;
                }
            }
            delay = OptionalDouble.of(Math.floor(low));
            double first = firstKeepable(tooLate, notKept);
            governing = tooLate.limits().stream()
                    .filter(l -> keepable(l, notKept) && l.orNever() == first)
                    .map(LimitTime::limit)
                    .findFirst();
        }
        List<TripTime> trips = trips(on);
        Optional<DrillRun> byItself = Optional.empty();
        OptionalDouble trip = trips.stream()
                .filter(t -> t.actsS().isPresent())
                .mapToDouble(t -> t.actsS().getAsDouble())
                .min();
        if (!heatEnds && trip.isPresent()) {
            byItself = Optional.of(drill.run(trip));
        }
        DrillAdvice advice = new DrillAdvice(check, fault);
        return new DrillAnswer(
                check,
                fault,
                atS,
                DrillWords.verdict(failing(on), on, heatEnds, delay, governing, notKept),
                on,
                late,
                now,
                byItself,
                trips,
                drill.waterStopsS(),
                heatEnds,
                delay,
                governing,
                notKept,
                thereIs(byItself.orElse(on)),
                battery(on),
                advice.acts(trips, heatEnds),
                advice.first(now),
                advice.cautions(check),
                advice.notes(atS));
    }

    /** The sentence that says what failed. */
    private static String failing(DrillRun run) {
        return run.run().events().stream()
                .filter(e -> e.kind() == EventKind.FAULT || e.kind() == EventKind.WATER_STOPS)
                .findFirst()
                .orElseThrow()
                .reason();
    }

    /** When the rig's own trips would act; none is asked where the heat ends anyway. */
    private List<TripTime> trips(DrillRun on) {
        List<TripTime> list = new ArrayList<>();
        if (!drill.endsHeat()) {
            TripClock clock = clock();
            for (Protection.Trip trip : check.rig().protection().trips()) {
                list.add(new TripTime(trip, clock.actsS(trip.kind(), trip.setPoint(), trip.delayS(), on)));
            }
        }
        return list;
    }

    private TripClock clock() {
        return new TripClock(atS.orElse(0), check.steady().flow().volumeFlowM3PerS(), drill.waterStopsS());
    }

    private static OptionalDouble thereIs(DrillRun run) {
        double first = DrillWords.passed(run).stream()
                .mapToDouble(LimitTime::orNever)
                .min()
                .orElse(Double.POSITIVE_INFINITY);
        first = Math.min(first, run.firstJetLostS().orElse(Double.POSITIVE_INFINITY));
        return first < Double.POSITIVE_INFINITY ? OptionalDouble.of(first) : OptionalDouble.empty();
    }

    /** How long a battery must keep water and backing pump so that the mains' failure harms nothing. */
    private OptionalDouble battery(DrillRun on) {
        if (fault != Fault.MAINS || !drill.endsHeat()) {
            return OptionalDouble.empty();
        }
        if (!harmed(0)) {
            return OptionalDouble.of(0);
        }
        double high = FaultDrill.WATCHED_S;
        if (harmed(high)) {
            return OptionalDouble.empty();
        }
        double low = 0;
        while (high - low > BATTERY_TOLERANCE_S) {
            double middle = (low + high) / 2;
            if (harmed(middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return OptionalDouble.of(Math.ceil(high));
    }

    private boolean harmed(double batteryS) {
        Protection own = check.rig().protection();
        Protection.Battery battery = new Protection.Battery(EnumSet.allOf(Load.class), batteryS);
        Rig rig = check.rig().withProtection(new Protection(own.trips(), battery));
        return !DrillWords.passed(drill(rig).run(OptionalDouble.empty())).isEmpty();
    }

    private static boolean keepable(LimitTime l, List<DrillLimit> notKept) {
        return l.limit().harms() && !l.before() && !notKept.contains(l.limit());
    }

    private static double firstKeepable(DrillRun run, List<DrillLimit> notKept) {
        return run.limits().stream()
                .filter(l -> keepable(l, notKept))
                .mapToDouble(LimitTime::orNever)
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }
}
