package boilwright.commandline;

import boilwright.answers.Asked;
import boilwright.answers.Model;
import boilwright.choice.SizeAnswer;
import boilwright.choice.SizeQuestion;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.report.HeatPicture;
import boilwright.report.HeatSpread;
import boilwright.report.SizeJson;
import boilwright.report.SizeText;
import boilwright.spread.SpreadScope;
import boilwright.units.Dimension;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** How much heat source is enough. */
@Command(
        name = "size",
        description =
                "The least rating, contact, temperature and area that drive every jet with a margin, the powers between"
                        + " full jets and the first limit, and what to set. --png draws source and pump against wall temperature.",
        sortOptions = false)
final class SizeCommand extends RigCommand {
    private static final double LEAST = 0.5;
    private static final double MOST = 10;

    @Option(
            names = "--margin",
            paramLabel = "M",
            defaultValue = "1.25",
            description = "Heat available over heat needed that is wanted; 1.25 unless given.")
    private String margin;

    @Mixin
    private BandsOption bandsOption;

    SizeCommand(Terminal terminal, Model model) {
        super(terminal, model);
    }

    @Override
    void checkOptions() {
        NumberOption.read("--margin", margin, Dimension.FRACTION, LEAST, MOST);
        bandsOption.check();
    }

    @Override
    Answer answer(Asked asked, Model model, CancelToken cancel, ProgressSink progress) {
        double wanted = NumberOption.read("--margin", margin, Dimension.FRACTION, LEAST, MOST);
        SizeAnswer answer = model.answer(new SizeQuestion(asked, wanted), cancel, progress);
        HeatSpread spread = HeatSpread.of(bandsOption.bands(asked, model, SpreadScope.REST, cancel, progress));
        return new Answer(
                () -> SizeText.write(answer, spread),
                () -> SizeJson.write(answer, spread),
                () -> SizeText.csv(answer),
                name -> HeatPicture.png(name, answer),
                !answer.isEnough() || !answer.window().isOpen(),
                false);
    }
}
