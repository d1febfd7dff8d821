package boilwright.commandline;

import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.fluid.WorkingFluid;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.rig.Rig;
import boilwright.spread.Bands;
import boilwright.spread.SpreadPlan;
import boilwright.spread.SpreadScope;
import picocli.CommandLine.Option;

/** Bands beside the values of an answer, for the commands that show margins and events. */
final class BandsOption {
    /** Which shift is used where none can be chosen. */
    static final long USUAL_SEED = 1;

    private static final int MOST = 2000;

    @Option(
            names = "--spread",
            paramLabel = "N",
            description = "Show beside each value how far it spreads over N samples of what is uncertain, such as 200.")
    private Integer samples;

    /**
     * @throws InputRefusedException when the number makes no sense
     */
    void check() {
        if (samples == null) {
            return;
        }
        if (samples > MOST) {
            throw new InputRefusedException(
                    Message.of(MessageKey.SPREAD_BANDS_TOO_MANY, Integer.toString(samples), Integer.toString(MOST)));
        }
        NumberOption.require("--spread", samples, SpreadPlan.FEWEST_RUNS, MOST);
    }

    /** The bands, or none when they were not asked for. */
    Bands bands(
            AnswerSource source,
            Rig rig,
            WorkingFluid fluid,
            String dataVersion,
            SpreadScope scope,
            CancelToken cancel,
            ProgressSink progress) {
        if (samples == null) {
            return Bands.NONE;
        }
        SpreadPlan plan = SpreadPlan.of(samples, USUAL_SEED, scope);
        return source.spread(rig, fluid, dataVersion, plan, cancel, progress).bands();
    }
}
