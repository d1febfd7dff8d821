package boilwright.commandline;

import boilwright.answers.Asked;
import boilwright.answers.Model;
import boilwright.answers.RunAnswer;
import boilwright.answers.WarmupQuestion;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.report.RunJson;
import boilwright.report.RunText;
import boilwright.spread.Bands;
import boilwright.spread.SpreadScope;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** The way from cold to full pumping. */
@Command(name = "warmup", description = "What happens when, from cold to every jet at full flow.", sortOptions = false)
final class WarmupCommand extends RigCommand {
    @Mixin
    private BandsOption bandsOption;

    WarmupCommand(Terminal terminal, Model model) {
        super(terminal, model);
    }

    @Override
    void checkOptions() {
        bandsOption.check();
    }

    @Override
    Answer answer(Asked asked, Model model, CancelToken cancel, ProgressSink progress) {
        RunAnswer answer = model.answer(new WarmupQuestion(asked), cancel, progress);
        Bands bands = bandsOption.bands(asked, model, SpreadScope.WARMUP, cancel, progress);
        return new Answer(
                () -> RunText.write(answer, bands),
                () -> RunJson.write(answer, bands),
                answer.run(),
                answer.anyFails());
    }
}
