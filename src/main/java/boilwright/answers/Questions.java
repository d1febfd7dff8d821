package boilwright.answers;

import boilwright.errors.ComputationException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.estimate.GuessRanking;
import boilwright.files.ProgramVersion;
import boilwright.fluid.FluidRecord;
import boilwright.fluid.TabulatedFluid;
import boilwright.fluid.WorkingFluid;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import boilwright.thermal.EventKind;
import boilwright.thermal.NeededState;
import boilwright.thermal.RunResult;
import boilwright.thermal.RunSimulator;
import boilwright.thermal.SeriesQuantity;
import boilwright.thermal.SteadySolver;
import boilwright.thermal.SteadyState;
import boilwright.water.CircuitSolver;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/** The questions a person asks of a rig, each answered by one immutable value. */
public final class Questions {
    private Questions() {}

    /**
     * Is the heat enough, what are the margins, how long is warm-up?
     *
     * @param rig the rig
     * @param fluid its fluid
     * @param dataVersion version of the fluid data
     * @param cancel stops the computation
     * @param progress hears how far it is
     * @throws ComputationException when no answer can be stood behind
     * @throws boilwright.errors.CancelledException when cancelled
     */
    public static CheckAnswer check(
            Rig rig, WorkingFluid fluid, String dataVersion, CancelToken cancel, ProgressSink progress) {
        TabulatedFluid tables = tables(fluid);
        ParameterValues values = ParameterValues.of(rig);
        SteadySolver solver = new SteadySolver(rig, tables, values);
        SteadyState steady = solver.steady();
        requireClosed("the steady state", steady.closureRelative());
        cancel.check();
        NeededState needed = solver.needed();
        requireClosed("the needed state", needed.state().closureRelative());
        cancel.check();
        RunResult warmup = RunSimulator.warmup(rig, tables, values, cancel, progress);
        List<Margin> margins = Margins.of(rig, fluid, values, steady, needed, warmup);
        List<String> notes = new ArrayList<>(steady.assumptions());
        warmup.assumptions().stream().filter(a -> !notes.contains(a)).forEach(notes::add);
        notes.addAll(rangeNotes(fluid, rig, Math.max(steady.innerFaceK(), steady.liquidTemperatureK())));
        GuessRanking.reminder(rig).ifPresent(notes::add);
        return new CheckAnswer(
                rig,
                fluid.title(),
                values,
                Verdict.ofCheck(rig, values, steady, needed, warmup, margins),
                steady,
                needed,
                warmup,
                margins,
                Cautions.of(rig, fluid, steady.hottestOutsideK(), false),
                notes,
                ProgramVersion.current(),
                dataVersion);
    }

    /**
     * The check with one note more: which guess of the rig moves the heat margin most. It takes two needed states for each
     * guess, more time than the rest of a check. Arguments and errors as for {@link #check}.
     */
    public static CheckAnswer checkRankingGuesses(
            Rig rig, WorkingFluid fluid, String dataVersion, CancelToken cancel, ProgressSink progress) {
        CheckAnswer answer = check(rig, fluid, dataVersion, cancel, progress);
        List<String> notes = new ArrayList<>(answer.notes());
        GuessRanking.reminder(rig).ifPresent(notes::remove);
        notes.add(GuessRanking.sentence(rig, GuessRanking.of(rig, fluid, cancel, progress)));
        return new CheckAnswer(
                answer.rig(),
                answer.fluidTitle(),
                answer.parameters(),
                answer.verdict(),
                answer.steady(),
                answer.needed(),
                answer.warmup(),
                answer.margins(),
                answer.cautions(),
                notes,
                answer.programVersion(),
                answer.dataVersion());
    }

    /** How long until each jet lights? Arguments and errors as for {@link #check}. */
    public static RunAnswer warmup(
            Rig rig, WorkingFluid fluid, String dataVersion, CancelToken cancel, ProgressSink progress) {
        ParameterValues values = ParameterValues.of(rig);
        RunResult run = RunSimulator.warmup(rig, tables(fluid), values, cancel, progress);
        List<Margin> sorted = Margins.worstFirst(alongWarmup(rig, fluid, run));
        return answer(rig, fluid, dataVersion, values, run, Verdict.ofWarmup(rig, run, sorted), sorted, false);
    }

    /** How long until the pump may be left, and in which order? Arguments and errors as for {@link #check}. */
    public static RunAnswer cooldown(
            Rig rig, WorkingFluid fluid, String dataVersion, CancelToken cancel, ProgressSink progress) {
        ParameterValues values = ParameterValues.of(rig);
        RunResult run = RunSimulator.cooldown(rig, tables(fluid), values, cancel, progress);
        List<Margin> sorted = Margins.worstFirst(alongRun(rig, fluid, run));
        return answer(rig, fluid, dataVersion, values, run, Verdict.ofCooldown(run), sorted, true);
    }

    private static RunAnswer answer(
            Rig rig,
            WorkingFluid fluid,
            String dataVersion,
            ParameterValues values,
            RunResult run,
            String verdict,
            List<Margin> margins,
            boolean cooling) {
        double hottest =
                Math.max(highest(run, SeriesQuantity.BOILER_WALL), highest(run, SeriesQuantity.LIQUID_TEMPERATURE));
        List<String> notes = new ArrayList<>(run.assumptions());
        notes.addAll(rangeNotes(fluid, rig, hottest));
        return new RunAnswer(
                rig,
                fluid.title(),
                values,
                verdict,
                run,
                margins,
                Cautions.of(rig, fluid, highest(run, SeriesQuantity.BOILER_WALL), cooling),
                notes,
                ProgramVersion.current(),
                dataVersion);
    }

    /** The fluid as the model uses it: tables of its relations. */
    public static TabulatedFluid tables(WorkingFluid fluid) {
        return fluid instanceof FluidRecord file
                ? TabulatedFluid.of(file)
                : new TabulatedFluid(fluid, TabulatedFluid.LOWEST_K, TabulatedFluid.HIGHEST_K);
    }

    static void requireClosed(String what, double closure) {
        if (!(closure <= SteadySolver.CLOSURE_LIMIT)) {
            throw new ComputationException(Message.of(
                    MessageKey.ENERGY_NOT_CLOSED,
                    what,
                    Double.toString(closure),
                    Double.toString(SteadySolver.CLOSURE_LIMIT)));
        }
    }

    /** What a warm-up comes near to on its way, in no order. */
    static List<Margin> alongWarmup(Rig rig, WorkingFluid fluid, RunResult run) {
        List<Margin> margins = alongRun(rig, fluid, run);
        margins.add(jetsFull(rig, run));
        return margins;
    }

    private static List<Margin> alongRun(Rig rig, WorkingFluid fluid, RunResult run) {
        List<Margin> margins = new ArrayList<>();
        margins.add(Margins.oilBulk(rig, fluid, highest(run, SeriesQuantity.LIQUID_TEMPERATURE))
                .make());
        boolean flows = CircuitSolver.operatingPoint(rig).volumeFlowM3PerS() > 0
                && !rig.cooling().elements().isEmpty();
        OptionalDouble out = flows ? OptionalDouble.of(highest(run, SeriesQuantity.WATER_OUT)) : OptionalDouble.empty();
        margins.add(CoolingMargins.waterOut(rig, out).make());
        return margins;
    }

    private static Margin jetsFull(Rig rig, RunResult run) {
        long full = run.events().stream()
                .filter(e -> e.kind() == EventKind.JET_FULL && e.timeS().isPresent())
                .count();
        return MarginMaker.of(MarginId.JETS)
                .value(full)
                .atLeast(rig.stages().size())
                .tightBelow(1)
                .basis(AnswerText.BASIS_JETS.say())
                .cure(AnswerText.CURE_JETS)
                .make();
    }

    private static double highest(RunResult run, SeriesQuantity quantity) {
        return Arrays.stream(run.series().column(quantity).values()).max().orElseThrow();
    }

    private static List<String> rangeNotes(WorkingFluid fluid, Rig rig, double hottestK) {
        if (!(fluid instanceof FluidRecord file)) {
            return List.of();
        }
        double coldest = Math.min(rig.room().temperatureK(), rig.cooling().inletTemperatureK());
        return file.rangeNotes(coldest, hottestK).stream().map(Message::text).toList();
    }
}
