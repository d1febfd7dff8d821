package boilwright.answers;

import boilwright.errors.ComputationException;
import boilwright.files.ProgramVersion;
import boilwright.fluid.WorkingFluid;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.rig.Cooling;
import boilwright.rig.HeatSource;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import boilwright.thermal.DrillLimit;
import boilwright.thermal.DrillRun;
import boilwright.thermal.DrillRun.LimitTime;
import boilwright.thermal.WaterDrill;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Faults played through on paper, so that nobody has to see them first at the bench. */
public final class Drills {
    /** A trip's longest delay is told to this, s. */
    private static final double DELAY_TOLERANCE_S = 1;

    private Drills() {}

    /**
     * The water stops.
     *
     * @param rig the rig
     * @param fluid its fluid
     * @param dataVersion version of the fluid data
     * @param atS when, s from cold along the schedule; empty: at rest at full power
     * @param lateS how long after it the heat is cut late, s
     * @param cancel stops the computation
     * @param progress hears how far it is
     * @throws ComputationException when no answer can be stood behind
     */
    public static DrillAnswer water(
            Rig rig,
            WorkingFluid fluid,
            String dataVersion,
            OptionalDouble atS,
            double lateS,
            CancelToken cancel,
            ProgressSink progress) {
        ParameterValues values = ParameterValues.of(rig);
        WaterDrill drill = new WaterDrill(rig, Questions.tables(fluid), values, atS, cancel, progress);
        DrillRun on = drill.run(OptionalDouble.empty());
        DrillRun late = drill.run(OptionalDouble.of(lateS));
        DrillRun now = drill.run(OptionalDouble.of(0));
        List<DrillLimit> notKept = now.limits().stream()
                .filter(l -> l.limit().harms() && l.passedS().isPresent())
                .map(LimitTime::limit)
                .toList();
        double reached = firstKeepable(on, notKept);
        OptionalDouble delay = OptionalDouble.empty();
        Optional<DrillLimit> governing = Optional.empty();
        if (reached < Double.POSITIVE_INFINITY) {
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
        return new DrillAnswer(
                rig,
                fluid.title(),
                values,
                "water",
                atS,
                DrillWords.verdict(on, delay, governing, notKept),
                on,
                late,
                now,
                delay,
                governing,
                notKept,
                cautions(rig, fluid, now, on),
                notes(rig, atS),
                ProgramVersion.current(),
                dataVersion);
    }

    private static boolean keepable(LimitTime l, List<DrillLimit> notKept) {
        return l.limit().harms() && !notKept.contains(l.limit());
    }

    private static double firstKeepable(DrillRun run, List<DrillLimit> notKept) {
        return run.limits().stream()
                .filter(l -> keepable(l, notKept))
                .mapToDouble(LimitTime::orNever)
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    private static List<String> cautions(Rig rig, WorkingFluid fluid, DrillRun now, DrillRun on) {
        List<String> list = new ArrayList<>();
        if (rig.cooling().elements().stream().anyMatch(e -> !(e instanceof Cooling.Valve))) {
            list.add(AnswerText.DRILL_CAUTION_CLOSED.say());
            list.add(AnswerText.DRILL_CAUTION_BACK.say());
        }
        if (rig.heatSource() instanceof HeatSource.GasBurner) {
            list.add(AnswerText.DRILL_CAUTION_FLAME.say());
        }
        double hottest = 0;
        for (double k : on.run().series().column("boilerWallK").values()) {
            hottest = Math.max(hottest, k);
        }
        list.addAll(Cautions.of(rig, fluid, hottest, false));
        return list;
    }

    private static List<String> notes(Rig rig, OptionalDouble atS) {
        List<String> list = new ArrayList<>();
        list.add(
                atS.isPresent()
                        ? AnswerText.DRILL_NOTE_AT.say(Say.time(atS.getAsDouble()))
                        : AnswerText.DRILL_NOTE_FULL_POWER.say());
        list.add(AnswerText.DRILL_NOTE_STANDS.say());
        list.add(AnswerText.DRILL_NOTE_WATCHED.say(Say.time(WaterDrill.WATCHED_S)));
        list.add(AnswerText.DRILL_NOTE_LIMITS.say());
        return list;
    }
}
