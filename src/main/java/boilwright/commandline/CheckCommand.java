package boilwright.commandline;

import boilwright.answers.Asked;
import boilwright.answers.CheckAnswer;
import boilwright.answers.CheckQuestion;
import boilwright.answers.Model;
import boilwright.answers.SessionOutlook;
import boilwright.answers.SessionQuestion;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.report.CheckJson;
import boilwright.report.CheckText;
import boilwright.spread.Bands;
import boilwright.spread.Certainty;
import boilwright.spread.CertaintyQuestion;
import boilwright.spread.SpreadScope;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The whole check of a rig. */
@Command(
        name = "check",
        description =
                "Does the heat drive every jet, does the cooling carry it, what is near a limit, how long is warm-up.",
        sortOptions = false)
final class CheckCommand extends RigCommand {
    @Option(
            names = "--rank-guesses",
            description = "Find out which guess of the rig moves the heat margin most; takes a little longer.")
    private boolean rankGuesses;

    @Mixin
    private AllOption all;

    @Mixin
    private BandsOption bandsOption;

    CheckCommand(Terminal terminal, Model model) {
        super(terminal, model);
    }

    @Override
    void checkOptions() {
        bandsOption.check();
    }

    @Override
    Answer answer(Asked asked, Model model, CancelToken cancel, ProgressSink progress) {
        CheckAnswer answer = model.answer(new CheckQuestion(asked, rankGuesses), cancel, progress);
        Bands bands = bandsOption.bands(asked, model, SpreadScope.CHECK, cancel, progress);
        SessionOutlook session = model.answer(new SessionQuestion(asked), cancel, progress);
        Certainty certainty = model.answer(new CertaintyQuestion(asked), cancel, progress);
        return new Answer(
                () -> all.isGiven()
                        ? CheckText.write(answer, bands, certainty, session)
                        : CheckText.brief(answer, bands, certainty, session),
                () -> CheckJson.write(answer, bands, certainty, session),
                answer.warmup(),
                answer.anyFails());
    }
}
