package boilwright.bench;

import boilwright.answers.CheckAnswer;
import boilwright.answers.Questions;
import boilwright.answers.RunAnswer;
import boilwright.drill.DrillQuestion;
import boilwright.drill.DrillSet;
import boilwright.fluid.FluidLibrary;
import boilwright.fluid.WorkingFluid;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.report.PlanPdf;
import boilwright.rig.Rig;
import boilwright.rig.file.RigReader;
import boilwright.sequence.PlanAnswer;
import boilwright.sequence.PlanQuestion;
import boilwright.sequence.Variant;
import boilwright.thermal.Fault;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The answers to the questions of the command line, each as a whole. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
public class AnswersBench {
    @Param({"neon-workshop", "mirror-club", "teaching-lab"})
    public String demo;

    private final FluidLibrary fluids = FluidLibrary.builtIn();
    private final CancelToken never = new CancelToken();
    private Rig rig;
    private WorkingFluid fluid;

    @Setup
    public void read() {
        rig = RigReader.readDemo(demo, fluids.ids(), Set.of());
        fluid = fluids.find(rig.fluidId());
    }

    @Benchmark
    public CheckAnswer check() {
        return Questions.check(rig, fluid, fluids.dataVersion(), never, ProgressSink.NONE);
    }

    @Benchmark
    public RunAnswer warmup() {
        return Questions.warmup(rig, fluid, fluids.dataVersion(), never, ProgressSink.NONE);
    }

    @Benchmark
    public RunAnswer cooldown() {
        return Questions.cooldown(rig, fluid, fluids.dataVersion(), never, ProgressSink.NONE);
    }

    /** A plan with its check against the rules, once the rig is checked. */
    @Benchmark
    public PlanAnswer plan(Checked checked) {
        return PlanQuestion.of(checked.answer(this), fluid, Variant.NORMAL, never);
    }

    /** Every fault that the rig can have, and the interlocks. */
    @Benchmark
    public DrillSet drills(Checked checked) {
        return DrillQuestion.ask(
                checked.answer(this),
                fluid,
                List.of(Fault.values()),
                OptionalDouble.empty(),
                DrillQuestion.LATE_S,
                never,
                ProgressSink.NONE);
    }

    /** The sheet of a stop, which every rig has. */
    @Benchmark
    public byte[] sheet(Checked checked) {
        return PlanPdf.write(checked.stop(this), PlanPdf.Paper.A4);
    }

    /** What is there before the question. */
    @State(Scope.Benchmark)
    public static class Checked {
        private CheckAnswer check;
        private PlanAnswer stop;

        CheckAnswer answer(AnswersBench bench) {
            if (check == null) {
                check = bench.check();
            }
            return check;
        }

        PlanAnswer stop(AnswersBench bench) {
            if (stop == null) {
                stop = PlanQuestion.of(answer(bench), bench.fluid, Variant.QUICK_STOP, bench.never);
            }
            return stop;
        }
    }
}
