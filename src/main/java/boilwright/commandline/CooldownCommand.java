package boilwright.commandline;

import boilwright.answers.RunAnswer;
import boilwright.fluid.WorkingFluid;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.report.RunJson;
import boilwright.report.RunText;
import boilwright.rig.Rig;
import picocli.CommandLine.Command;

/** The way from full pumping to a rig that is safe to open. */
@Command(
        name = "cooldown",
        description = "What happens when after heat off: jets lost, air may be let in, water may stop.",
        sortOptions = false)
final class CooldownCommand extends RigCommand {
    private final AnswerSource source;

    CooldownCommand(Terminal terminal, AnswerSource source) {
        super(terminal);
        this.source = source;
    }

    @Override
    Answer answer(Rig rig, WorkingFluid fluid, String dataVersion, CancelToken cancel, ProgressSink progress) {
        RunAnswer answer = source.cooldown(rig, fluid, dataVersion, cancel, progress);
        return new Answer(
                () -> RunText.write(answer), () -> RunJson.write(answer), answer.run(), anyFails(answer.margins()));
    }
}
