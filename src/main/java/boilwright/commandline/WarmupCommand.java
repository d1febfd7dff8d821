package boilwright.commandline;

import boilwright.answers.RunAnswer;
import boilwright.fluid.WorkingFluid;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.report.RunJson;
import boilwright.report.RunText;
import boilwright.rig.Rig;
import boilwright.spread.Bands;
import boilwright.spread.SpreadScope;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** The way from cold to full pumping. */
@Command(name = "warmup", description = "What happens when, from cold to every jet at full flow.", sortOptions = false)
final class WarmupCommand extends RigCommand {
    private final AnswerSource source;

    @Mixin
    private BandsOption bandsOption;

    WarmupCommand(Terminal terminal, AnswerSource source) {
        super(terminal);
        this.source = source;
    }

    @Override
    void checkOptions() {
        bandsOption.check();
    }

    @Override
    Answer answer(Rig rig, WorkingFluid fluid, String dataVersion, CancelToken cancel, ProgressSink progress) {
        RunAnswer answer = source.warmup(rig, fluid, dataVersion, cancel, progress);
        Bands bands = bandsOption.bands(source, rig, fluid, dataVersion, SpreadScope.WARMUP, cancel, progress);
        return new Answer(
                () -> RunText.write(answer, bands),
                () -> RunJson.write(answer, bands),
                answer.run(),
                anyFails(answer.margins()));
    }
}
