package boilwright.bench;

import boilwright.answers.Asked;
import boilwright.answers.CheckAnswer;
import boilwright.answers.CheckQuestion;
import boilwright.answers.CooldownQuestion;
import boilwright.answers.Model;
import boilwright.answers.Question;
import boilwright.answers.RememberingModel;
import boilwright.answers.RunAnswer;
import boilwright.answers.WarmupQuestion;
import boilwright.drill.DrillQuestion;
import boilwright.drill.DrillSet;
import boilwright.fluid.FluidLibrary;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.report.PlanPdf;
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
    private Asked asked;

    @Setup
    public void read() {
        asked = Asked.of(RigReader.readDemo(demo, fluids.ids(), Set.of()), fluids);
    }

    @Benchmark
    public CheckAnswer check() {
        return Model.COMPUTING.answer(new CheckQuestion(asked), never, ProgressSink.NONE);
    }

    @Benchmark
    public RunAnswer warmup() {
        return Model.COMPUTING.answer(new WarmupQuestion(asked), never, ProgressSink.NONE);
    }

    @Benchmark
    public RunAnswer cooldown() {
        return Model.COMPUTING.answer(new CooldownQuestion(asked), never, ProgressSink.NONE);
    }

    /** A plan with its check against the rules, once the rig is checked and cooled down. */
    @Benchmark
    public PlanAnswer plan(Checked checked) {
        return checked.answer(new PlanQuestion(asked, Variant.NORMAL), this);
    }

    /** Every fault that the rig can have, and the interlocks. */
    @Benchmark
    public DrillSet drills(Checked checked) {
        return checked.answer(
                new DrillQuestion(asked, List.of(Fault.values()), OptionalDouble.empty(), DrillQuestion.LATE_S), this);
    }

    /** The sheet of a stop, which every rig has. */
    @Benchmark
    public byte[] sheet(Checked checked) {
        return PlanPdf.write(checked.stop(this), PlanPdf.Paper.A4);
    }

    /** What is there before the question. */
    @State(Scope.Benchmark)
    public static class Checked {
        private Model model;
        private PlanAnswer stop;

        /** Answers anew with the check and the cool-down that are there already. */
        <A> A answer(Question<A> question, AnswersBench bench) {
            if (model == null) {
                model = new RememberingModel(2);
                model.answer(new CheckQuestion(bench.asked), bench.never, ProgressSink.NONE);
                model.answer(new CooldownQuestion(bench.asked), bench.never, ProgressSink.NONE);
            }
            return question.answer(model, bench.never, ProgressSink.NONE);
        }

        PlanAnswer stop(AnswersBench bench) {
            if (stop == null) {
                stop = answer(new PlanQuestion(bench.asked, Variant.QUICK_STOP), bench);
            }
            return stop;
        }
    }
}
