package boilwright.commandline;

import boilwright.answers.RunAnswer;
import boilwright.fluid.WorkingFluid;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.report.RunJson;
import boilwright.report.RunText;
import boilwright.rig.Rig;
import picocli.CommandLine.Command;

/** The way from cold to full pumping. */
@Command(name = "warmup", description = "What happens when, from cold to every jet at full flow.", sortOptions = false)
final class WarmupCommand extends RigCommand {
    private final AnswerSource source;

    WarmupCommand(Terminal terminal, AnswerSource source) {
        super(terminal);
        this.source = source;
    }

    @Override
    Answer answer(Rig rig, WorkingFluid fluid, String dataVersion, CancelToken cancel, ProgressSink progress) {
        RunAnswer answer = source.warmup(rig, fluid, dataVersion, cancel, progress);
        return new Answer(
                () -> RunText.write(answer), () -> RunJson.write(answer), answer.run(), anyFails(answer.margins()));
    }
}
