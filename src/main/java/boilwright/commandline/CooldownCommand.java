package boilwright.commandline;

import boilwright.answers.Asked;
import boilwright.answers.CooldownQuestion;
import boilwright.answers.Model;
import boilwright.answers.RunAnswer;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.report.RunJson;
import boilwright.report.RunText;
import picocli.CommandLine.Command;

/** The way from full pumping to a rig that is safe to open. */
@Command(
        name = "cooldown",
        description = "What happens when after heat off: jets lost, air may be let in, water may stop.",
        sortOptions = false)
final class CooldownCommand extends RigCommand {
    CooldownCommand(Terminal terminal, Model model) {
        super(terminal, model);
    }

    @Override
    Answer answer(Asked asked, Model model, CancelToken cancel, ProgressSink progress) {
        RunAnswer answer = model.answer(new CooldownQuestion(asked), cancel, progress);
        return new Answer(() -> RunText.write(answer), () -> RunJson.write(answer), answer.run(), answer.anyFails());
    }
}
