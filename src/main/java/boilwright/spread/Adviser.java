package boilwright.spread;

import boilwright.answers.Margin;
import boilwright.answers.MarginId;
import boilwright.numerics.FirstOrderShares;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import boilwright.units.UnitTable;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Says for a margin that fails or is tight what to find out first. */
final class Adviser {
    /** A margin that fails more often than this is worth a word, although it holds in the rig as it stands. */
    private static final double SELDOM = 0.05;
    /** From this share on one input is the one to measure. */
    private static final double STANDS_OUT = 0.3;
    /** Below this share a measurement changes next to nothing. */
    private static final double COUNTS = 0.05;

    private final Map<String, SpreadInput> inputs;

    Adviser(List<SpreadInput> inputs) {
        this.inputs = inputs.stream().collect(Collectors.toMap(SpreadInput::id, Function.identity()));
    }

    List<Advice> of(List<MarginSpread> margins) {
        return margins.stream().filter(Adviser::isWorthAWord).map(this::of).toList();
    }

    private static boolean isWorthAWord(MarginSpread margin) {
        boolean wanting = margin.nominal()
                .map(Margin::status)
                .filter(s -> s == Margin.Status.FAILS || s == Margin.Status.TIGHT)
                .isPresent();
        Chance failing = margin.band().failing();
        return failing.isKnown() && (wanting || failing.share() >= SELDOM);
    }

    private Advice of(MarginSpread margin) {
        Chance failing = margin.band().failing();
        List<InputShare> shares = margin.shares();
        if (failing.cases() == failing.samples()) {
            // that of the jets only points to the heat, whose own cure stands beside it
            String cure = margin.id() == MarginId.JETS
                    ? ""
                    : margin.nominal().map(Margin::cure).orElse("");
            return none(
                    margin,
                    SpreadSentence.MEASURE_NO_HELP.say(margin.title(), cure).strip());
        }
        if (shares.isEmpty()) {
            return none(
                    margin,
                    failing.samples() < FirstOrderShares.LEAST_SAMPLES
                            ? SpreadSentence.MEASURE_TOO_FEW.say(
                                    margin.title(), Integer.toString(FirstOrderShares.LEAST_SAMPLES))
                            : SpreadSentence.MEASURE_CONSTANT.say(margin.title()));
        }
        InputShare first = shares.get(0);
        String fails = failing.cases() == 0
                ? SpreadSentence.FAILS_NEVER.say()
                : SpreadSentence.FAILS_IN.say(Percent.of(failing.share()));
        if (first.share() < Math.max(COUNTS, margin.noise())) {
            return none(margin, SpreadSentence.MEASURE_NONE_STANDS_OUT.say(margin.title(), fails));
        }
        SpreadInput input = inputs.get(first.inputId());
        boolean alone = first.share() >= STANDS_OUT
                || shares.size() < 2
                || shares.get(1).share() < Math.max(COUNTS, margin.noise());
        String sentence = alone
                ? SpreadSentence.MEASURE_FIRST.say(
                        margin.title(),
                        name(input),
                        Percent.of(first.share()),
                        quantity(input, input.low()),
                        quantity(input, input.high()),
                        fails)
                : SpreadSentence.MEASURE_SEVERAL.say(
                        margin.title(),
                        name(input),
                        Percent.of(first.share()),
                        name(inputs.get(shares.get(1).inputId())),
                        Percent.of(shares.get(1).share()),
                        fails);
        return new Advice(margin.id(), Optional.of(input.id()), sentence);
    }

    private static Advice none(MarginSpread margin, String sentence) {
        return new Advice(margin.id(), Optional.empty(), sentence);
    }

    /** Factors stay plain: half of a usual value to twice of it is no percentage. */
    private static String quantity(SpreadInput input, double si) {
        return input.dimension() == Dimension.FRACTION
                ? QuantityWriter.write(
                        si, UnitTable.find("1", Dimension.FRACTION).orElseThrow())
                : QuantityWriter.writeAuto(si, input.dimension());
    }

    private static String name(SpreadInput input) {
        return input.title() + " (" + input.id() + ")";
    }
}
