package boilwright.invariants;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.Counts;
import boilwright.answers.Asked;
import boilwright.answers.CheckAnswer;
import boilwright.answers.CheckQuestion;
import boilwright.answers.CooldownQuestion;
import boilwright.answers.Margin;
import boilwright.answers.MarginId;
import boilwright.answers.RememberingModel;
import boilwright.answers.RestAnswer;
import boilwright.answers.RunAnswer;
import boilwright.answers.Say;
import boilwright.answers.WarmupQuestion;
import boilwright.answers.WaterAnswer;
import boilwright.answers.WaterQuestion;
import boilwright.errors.CancelledException;
import boilwright.errors.ComputationException;
import boilwright.fluid.FluidLibrary;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.rig.Rig;
import boilwright.sequence.PlanAnswer;
import boilwright.sequence.PlanQuestion;
import boilwright.sequence.Variant;
import boilwright.thermal.EventKind;
import boilwright.thermal.RunResult;
import boilwright.units.Dimension;
import boilwright.units.QuantityReader;
import boilwright.units.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** No two answers about one rig disagree: what one command says of it, every other command says too. */
class OneTruthTest {
    private static final long SEED = 20261202;
    private static final int USUAL = 40;
    private static final int DEEP = 1000;
    private static final int MOST_STEPS = Counts.of(600, 10_000);
    private static final FluidLibrary FLUIDS = FluidLibrary.builtIn();
    private static final Pattern RATING = Pattern.compile("A rating of (.+?): tried");
    private static final Pattern CONTACT = Pattern.compile("A contact of (.+?) or better: tried");

    private final List<String> faults = new ArrayList<>();
    private int answered;
    private int holding;
    private int planned;
    private String what = "";

    @Test
    void randomRigs() {
        int count = Counts.of(USUAL, Integer.getInteger("boilwright.rigs", DEEP));
        for (int index = 0; index < count; index++) {
            what = "rig " + index;
            look(RandomRigs.of(SEED, index).rig());
        }
        System.out.printf(
                Locale.ROOT,
                "one truth: %d of %d random rigs of seed %d answered, %d hold every margin, %d of them have a safe plan%n",
                answered,
                count,
                SEED,
                holding,
                planned);
        assertThat(faults).isEmpty();
        assertThat(planned).isGreaterThanOrEqualTo((int) Math.ceil(0.95 * holding));
    }

    private void look(Rig rig) {
        CancelToken cancel = new CancelToken();
        int[] steps = new int[1];
        ProgressSink counting = (share, phase) -> {
            if (++steps[0] > MOST_STEPS) {
                cancel.cancel();
            }
        };
        try {
            look(Asked.of(rig, FLUIDS), new RememberingModel(8), cancel, counting);
        } catch (ComputationException | CancelledException e) {
            // refused or slow: other tests look at these
        }
    }

    private void look(Asked asked, RememberingModel model, CancelToken cancel, ProgressSink progress) {
        CheckAnswer check = model.answer(new CheckQuestion(asked), cancel, progress);
        RunAnswer warmup = model.answer(new WarmupQuestion(asked), cancel, progress);
        RunAnswer cooldown = model.answer(new CooldownQuestion(asked), cancel, progress);
        WaterAnswer water = model.answer(new WaterQuestion(asked), cancel, progress);
        answered++;
        aLimitInATimeLineIsAFailingMargin(check.warmup(), warmup.margins());
        aLimitInATimeLineIsAFailingMargin(cooldown.run(), cooldown.margins());
        whatFailsAnywhereIsNamedEverywhere(check, warmup.margins(), warmup.verdict());
        whatFailsAnywhereIsNamedEverywhere(check, water.margins(), water.verdict());
        theStopIsNoWorseThanTheRest(check, cooldown);
        theHeadlineHasTheLedgersNumbers(check);
        thePrintedRemedyWorks(asked, check);
        PlanAnswer plan = model.answer(new PlanQuestion(asked, Variant.NORMAL), cancel, progress);
        List<Margin> failing =
                plan.check().margins().stream().filter(Margin::fails).toList();
        expect(!plan.safe() || failing.isEmpty(), "a safe plan past " + names(failing));
        if (!check.anyFails()) {
            holding++;
            planned += plan.safe() ? 1 : 0;
            if (!plan.safe()) {
                System.out.println(what + " holds but has no plan: " + plan.verdict());
            }
        }
    }

    private void aLimitInATimeLineIsAFailingMargin(RunResult run, List<Margin> margins) {
        run.events().stream()
                .filter(e -> e.kind() == EventKind.LIMIT_REACHED && e.timeS().isPresent())
                .forEach(e -> expect(
                        margins.stream().anyMatch(Margin::fails),
                        run.kind() + ": " + e.reason() + " above \"no margin fails\""));
    }

    private void whatFailsAnywhereIsNamedEverywhere(CheckAnswer check, List<Margin> shown, String verdict) {
        for (Margin margin : check.margins()) {
            boolean own = shown.stream().anyMatch(m -> m.id() == margin.id() && m.fails());
            expect(
                    !margin.fails() || own || verdict.contains(margin.title()),
                    margin.title() + " fails in check and is not named in: " + verdict);
        }
    }

    /** Why a check need not follow a stop: nothing gets worse once the heat is off. */
    private void theStopIsNoWorseThanTheRest(CheckAnswer check, RunAnswer cooldown) {
        for (Margin margin : cooldown.margins()) {
            expect(
                    !margin.fails() || check.findings().stream().anyMatch(m -> m.id() == margin.id() && m.fails()),
                    "only in the stop: " + margin.title() + " " + margin.value() + " at " + margin.atS());
        }
    }

    private void theHeadlineHasTheLedgersNumbers(CheckAnswer check) {
        Margin heat = check.findings().stream()
                .filter(m -> m.id() == MarginId.HEAT)
                .findFirst()
                .orElseThrow();
        expect(heat.value().getAsDouble() == check.needed().heatAvailableW(), "heat's value");
        for (double watts : new double[] {
            heat.value().getAsDouble(),
            heat.limit().getAsDouble(),
            check.steady().heatDeliveredW()
        }) {
            expect(check.verdict().contains(Say.power(watts)), Say.power(watts) + " is not in: " + check.verdict());
        }
        expect(
                check.verdict().contains("Too little heat") == (heat.fails() && !full(check)),
                "too little heat or not: " + check.verdict());
    }

    private static boolean full(CheckAnswer check) {
        return check.steady().stages().stream().allMatch(stage -> stage.full());
    }

    private void thePrintedRemedyWorks(Asked asked, CheckAnswer check) {
        String cure = check.margins().stream()
                .filter(m -> m.id() == MarginId.HEAT)
                .map(Margin::cure)
                .collect(Collectors.joining());
        Rig rig = asked.rig();
        Matcher rating = RATING.matcher(cure);
        Matcher contact = CONTACT.matcher(cure);
        if (rating.find()) {
            works(asked, rig.withHeatSource(rig.heatSource().withRatedPower(si(rating.group(1), Dimension.POWER))));
        } else if (contact.find()) {
            double h = si(contact.group(1), Dimension.HEAT_TRANSFER_COEFFICIENT);
            works(asked, rig.withHeatSource(rig.heatSource().withBody(body -> body.withConductance(h))));
        }
    }

    private void works(Asked asked, Rig remedied) {
        Margin heat = RestAnswer.of(asked.with(remedied, asked.values())).margins().stream()
                .filter(m -> m.id() == MarginId.HEAT)
                .findFirst()
                .orElseThrow();
        expect(heat.status() == Margin.Status.HOLDS, "the remedy leaves the heat at " + heat.ratio());
    }

    private static double si(String text, Dimension dimension) {
        return ((Reading.Read) QuantityReader.read(text, dimension)).si();
    }

    private void expect(boolean holds, String fault) {
        if (!holds) {
            faults.add(what + ": " + fault);
        }
    }

    private static String names(List<Margin> margins) {
        return margins.stream().map(Margin::when).collect(Collectors.joining(", "));
    }
}
