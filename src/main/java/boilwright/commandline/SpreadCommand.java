package boilwright.commandline;

import boilwright.answers.Asked;
import boilwright.answers.Model;
import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.report.SpreadCsv;
import boilwright.report.SpreadJson;
import boilwright.report.SpreadPicture;
import boilwright.report.SpreadText;
import boilwright.rig.Field;
import boilwright.rig.FieldCatalogue;
import boilwright.rig.Parameter;
import boilwright.spread.SpreadAnswer;
import boilwright.spread.SpreadPlan;
import boilwright.spread.SpreadQuestion;
import boilwright.spread.SpreadRange;
import boilwright.spread.SpreadScope;
import boilwright.units.Dimension;
import boilwright.units.QuantityReader;
import boilwright.units.QuantityWriter;
import boilwright.units.Reading;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** How sure the answers for a rig are. */
@Command(
        name = "spread",
        description =
                "How sure are the answers: bands and chances over many samples of what is uncertain, and what to measure first."
                        + " --csv writes bands and shares, --png draws the bands. Stopped early, it answers from the samples done.",
        sortOptions = false)
final class SpreadCommand extends RigCommand {
    /** More samples than this take minutes. */
    private static final int MANY_AT_REST = 50_000;

    private static final int MANY_THROUGH_TIME = 5000;
    /** Samples from which the time for all of them is told. */
    private static final int TRIED_AT_REST = 500;

    private static final int TRIED_THROUGH_TIME = 50;

    @Option(names = "--runs", paramLabel = "N", description = "Number of samples; 1000 unless given.")
    private int runs = 1000;

    @Option(
            names = "--seed",
            paramLabel = "S",
            description = "Which samples: the same number gives the same answer to the last digit; 1 unless given.")
    private long seed = BandsOption.USUAL_SEED;

    @Option(
            names = "--threads",
            paramLabel = "T",
            description = "How many samples are computed at a time; as many as there are processors unless given.")
    private int threads = SpreadPlan.usualThreads();

    @Option(names = "--steady", description = "Margins at rest only, without the warm-up: much faster.")
    private boolean steady;

    @Option(
            names = "--range",
            paramLabel = "ID=LOW..HIGH",
            description = "Range of an uncertain default or of a field of the rig, such as"
                    + " \"heatSource.ratedPower=1.4 kW..1.5 kW\"; repeat it for several.")
    private List<String> ranges = List.of();

    @Option(names = "--yes", description = "Go on although it takes long.")
    private boolean yes;

    SpreadCommand(Terminal terminal, Model model) {
        super(terminal, model);
    }

    @Override
    void checkOptions() {
        NumberOption.require("--runs", runs, SpreadPlan.FEWEST_RUNS, SpreadPlan.MOST_RUNS);
        NumberOption.require("--threads", threads, 1, SpreadPlan.MOST_THREADS);
        ranges.forEach(RangeOption::read);
    }

    @Override
    Answer answer(Asked asked, Model model, CancelToken cancel, ProgressSink progress) {
        if (!yes && runs > (steady ? MANY_AT_REST : MANY_THROUGH_TIME)) {
            throw new InputRefusedException(Message.of(
                    MessageKey.SPREAD_TAKES_LONG,
                    Integer.toString(runs),
                    Integer.toString(threads),
                    QuantityWriter.writeAuto(estimateS(asked, model, cancel), Dimension.TIME)));
        }
        SpreadAnswer answer = model.answer(new SpreadQuestion(asked, plan(runs)), cancel, progress);
        return new Answer(
                () -> SpreadText.write(answer),
                () -> SpreadJson.write(answer),
                () -> SpreadCsv.write(answer),
                name -> SpreadPicture.png(answer),
                answer.mostlyFails(),
                answer.isPartial());
    }

    private SpreadPlan plan(int samples) {
        return new SpreadPlan(
                samples,
                seed,
                threads,
                steady ? SpreadScope.REST : SpreadScope.CHECK,
                ranges.stream().map(RangeOption::read).toList());
    }

    /** How long all samples will take, s, by the second of two tries: the first one also warms the program up. */
    private double estimateS(Asked asked, Model model, CancelToken cancel) {
        int tried = steady ? TRIED_AT_REST : TRIED_THROUGH_TIME;
        model.answer(new SpreadQuestion(asked, plan(tried)), cancel, ProgressSink.NONE);
        long start = System.nanoTime();
        model.answer(new SpreadQuestion(asked, plan(tried)), cancel, ProgressSink.NONE);
        cancel.check();
        return (System.nanoTime() - start) * 1e-9 / tried * runs;
    }

    /** Reads a range of one input that stands on the command line: {@code ID=LOW..HIGH}. */
    private static final class RangeOption {
        private static final String NAME = "--range";
        private static final Pattern FORM = Pattern.compile("([^=]+)=(.+?)\\.\\.(?!\\.)(.+)");

        private RangeOption() {}

        /**
         * The range.
         *
         * @throws InputRefusedException when it is not understood; whether it makes sense for a rig is another matter
         */
        static SpreadRange read(String text) {
            Matcher matcher = FORM.matcher(text);
            if (!matcher.matches()) {
                throw new InputRefusedException(Message.of(MessageKey.SPREAD_RANGE_FORM, shown(text)));
            }
            String id = matcher.group(1).strip();
            Dimension dimension = dimension(id)
                    .orElseThrow(
                            () -> new InputRefusedException(Message.of(MessageKey.SPREAD_RANGE_UNKNOWN, shown(id))));
            return new SpreadRange(
                    id, quantity(id, matcher.group(2), dimension), quantity(id, matcher.group(3), dimension));
        }

        private static Optional<Dimension> dimension(String id) {
            Optional<Dimension> parameter = Parameter.find(id).map(Parameter::dimension);
            return parameter.isPresent() ? parameter : FieldCatalogue.find(id).flatMap(Field::dimension);
        }

        private static double quantity(String id, String text, Dimension dimension) {
            Reading reading = QuantityReader.read(text, dimension);
            if (reading instanceof Reading.Refused refused) {
                throw new InputRefusedException(Message.of(
                        MessageKey.OPTION_NOT_UNDERSTOOD,
                        NAME + " " + id,
                        shown(text),
                        refused.fault().text()));
            }
            return ((Reading.Read) reading).si();
        }

        private static String shown(String text) {
            return text.replaceAll("\\p{Cntrl}", "?");
        }
    }
}
