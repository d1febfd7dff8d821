package boilwright.commandline;

import boilwright.answers.Asked;
import boilwright.answers.Model;
import boilwright.drill.DrillQuestion;
import boilwright.drill.DrillSet;
import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.report.DrillJson;
import boilwright.report.DrillText;
import boilwright.report.RunPicture;
import boilwright.thermal.Fault;
import boilwright.thermal.FaultDrill;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Faults, played through. */
@Command(
        name = "drill",
        description = {
            "What a fault does in the next hour, with the heat left on, cut later, and cut at once; what acts by itself, what to"
                    + " do first, and which trips would catch it.",
            "Ends with 1 when something is harmed although all that acts by itself has acted."
        },
        sortOptions = false)
final class DrillCommand extends RigCommand {
    /** Nobody waits longer than this for a fault, s. */
    private static final double LATEST_S = 48 * 3600;

    @Option(
            names = "--fault",
            paramLabel = "FAULT",
            description =
                    "What fails: water, mains, heater-stuck, backing, cartridge-empty, air-inlet, chiller-trip or fan.")
    private String fault;

    @Option(names = "--all", description = "Every fault that this rig can have, and its interlocks.")
    private boolean all;

    @Option(
            names = "--at",
            paramLabel = "TIME",
            description =
                    "When it fails, from cold along the rig's schedule, such as \"20 min\"; else at rest at full power.")
    private String at;

    @Option(
            names = "--cut-after",
            paramLabel = "TIME",
            defaultValue = "2 min",
            description = "How long after the fault the heat is cut late; 2 min unless given.")
    private String cutAfter;

    DrillCommand(Terminal terminal, Model model) {
        super(terminal, model);
    }

    @Override
    void checkOptions() {
        if (all == (fault != null)) {
            throw new InputRefusedException(Message.of(
                    MessageKey.DRILL_WHICH, all ? "both" : "neither", "either --fault with a fault, or --all"));
        }
        if (!all) {
            fault();
        }
        if (at != null) {
            TimeOption.read("--at", at, 0, LATEST_S);
        }
        TimeOption.read("--cut-after", cutAfter, 0, LATEST_S);
    }

    private Fault fault() {
        return Fault.of(fault)
                .orElseThrow(() -> new InputRefusedException(Message.of(
                        MessageKey.DRILL_UNKNOWN,
                        fault.replaceAll("\\p{Cntrl}", "?"),
                        String.join(", ", Fault.ids()))));
    }

    @Override
    Answer answer(Asked asked, Model model, CancelToken cancel, ProgressSink progress) {
        if (!all) {
            Optional<String> reason = FaultDrill.notPlayed(asked.rig(), fault());
            if (reason.isPresent()) {
                throw new InputRefusedException(Message.of(MessageKey.DRILL_NOT_HERE, fault, reason.get()));
            }
        }
        OptionalDouble when =
                at == null ? OptionalDouble.empty() : OptionalDouble.of(TimeOption.read("--at", at, 0, LATEST_S));
        DrillSet set = model.answer(
                new DrillQuestion(
                        asked,
                        all ? List.of(Fault.values()) : List.of(fault()),
                        when,
                        TimeOption.read("--cut-after", cutAfter, 0, LATEST_S)),
                cancel,
                progress);
        if (all || set.played().isEmpty()) {
            return new Answer(
                    () -> DrillText.all(set),
                    () -> DrillJson.all(set),
                    () -> DrillText.csv(set),
                    name -> RunPicture.png(name, set.check().warmup()),
                    set.anyHarms() || set.isWithheld(),
                    false);
        }
        return new Answer(
                () -> DrillText.one(set),
                () -> DrillJson.one(set),
                set.played().get(0).heatOn().run(),
                Optional.empty(),
                set.anyHarms());
    }
}
