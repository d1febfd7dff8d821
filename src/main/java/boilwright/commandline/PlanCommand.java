package boilwright.commandline;

import boilwright.answers.Asked;
import boilwright.answers.Model;
import boilwright.answers.Question;
import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.report.PlanBands;
import boilwright.report.PlanJson;
import boilwright.report.PlanMarkdown;
import boilwright.report.PlanPdf;
import boilwright.report.PlanText;
import boilwright.sequence.Plan;
import boilwright.sequence.PlanAnswer;
import boilwright.sequence.PlanFile;
import boilwright.sequence.PlanQuestion;
import boilwright.sequence.PlanRulesQuestion;
import boilwright.sequence.Variant;
import boilwright.spread.SpreadScope;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The order of work. */
@Command(
        name = "plan",
        description = {
            "In which order to start, run and stop this rig, when each step comes, what must be seen before the next, and the"
                    + " proof that it keeps every rule.",
            "Ends with 1 when there is no safe plan, or when the plan of --check breaks a rule."
        },
        sortOptions = false)
final class PlanCommand extends RigCommand {
    private final Terminal terminal;

    @Option(
            names = "--variant",
            paramLabel = "V",
            description = "first (a fresh charge), normal, standby, quick-stop or emergency; normal unless given.")
    private String variant;

    @Option(
            names = "--check",
            paramLabel = "FILE",
            description = "Hold this plan, as --json writes it, against the rules instead of making one.")
    private Path check;

    @Option(names = "--markdown", paramLabel = "FILE", description = "Write the plan to this file as Markdown.")
    private Path markdown;

    @Option(names = "--pdf", paramLabel = "FILE", description = "Write a sheet for the bench to this file.")
    private Path pdf;

    @Option(
            names = "--paper",
            paramLabel = "SIZE",
            defaultValue = "a4",
            description = "Paper of the sheet: a4 or letter; a4 unless given.")
    private String paper;

    @Mixin
    private AllOption all;

    @Mixin
    private BandsOption bandsOption;

    PlanCommand(Terminal terminal, Model model) {
        super(terminal, model);
        this.terminal = terminal;
    }

    @Override
    void checkOptions() {
        if (variant != null) {
            variant();
        }
        paper();
        bandsOption.check();
    }

    private Variant variant() {
        return Variant.of(variant).orElseThrow(() -> unknown("--variant", variant, String.join(", ", Variant.ids())));
    }

    private PlanPdf.Paper paper() {
        return Arrays.stream(PlanPdf.Paper.values())
                .filter(p -> p.id().equals(paper))
                .findFirst()
                .orElseThrow(() -> unknown(
                        "--paper",
                        paper,
                        Arrays.stream(PlanPdf.Paper.values())
                                .map(PlanPdf.Paper::id)
                                .collect(Collectors.joining(", "))));
    }

    private static InputRefusedException unknown(String option, String found, String accepted) {
        return new InputRefusedException(
                Message.of(MessageKey.PLAN_OPTION, option, found.replaceAll("\\p{Cntrl}", "?"), accepted));
    }

    @Override
    Optional<Path> otherFile() {
        return Optional.ofNullable(check);
    }

    @Override
    Map<String, Path> moreOutputs() {
        Map<String, Path> files = new LinkedHashMap<>();
        if (markdown != null) {
            files.put("--markdown", markdown);
        }
        if (pdf != null) {
            files.put("--pdf", pdf);
        }
        return files;
    }

    @Override
    Answer answer(Asked asked, Model model, CancelToken cancel, ProgressSink progress) {
        Question<PlanAnswer> question = check == null
                ? new PlanQuestion(asked, variant == null ? Variant.NORMAL : variant())
                : new PlanRulesQuestion(asked, given());
        PlanAnswer made = model.answer(question, cancel, progress);
        PlanAnswer answer = PlanBands.with(
                made, bandsOption.bands(made.check().asked(), model, SpreadScope.WARMUP, cancel, progress));
        Map<String, Supplier<byte[]>> sheets = new LinkedHashMap<>();
        if (answer.plan().isPresent()) {
            sheets.put("--markdown", () -> PlanMarkdown.write(answer).getBytes(StandardCharsets.UTF_8));
            sheets.put("--pdf", () -> PlanPdf.write(answer, paper()));
        } else {
            moreOutputs().values().forEach(file -> terminal.say(Message.of(MessageKey.PLAN_NO_SHEET, file.toString())));
        }
        return new Answer(
                        () -> all.isGiven() ? PlanText.write(answer) : PlanText.brief(answer),
                        () -> PlanJson.write(answer),
                        answer.check().warmup(),
                        !answer.safe())
                .with(sheets);
    }

    private Plan given() {
        Plan plan = PlanFile.read(check);
        if (variant != null && variant() != plan.variant()) {
            throw new InputRefusedException(Message.of(
                    MessageKey.PLAN_OTHER_VARIANT,
                    check.toString(),
                    plan.variant().id(),
                    variant));
        }
        return plan;
    }
}
