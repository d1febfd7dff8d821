package boilwright.estimate;

import boilwright.errors.ComputationException;
import boilwright.errors.InputRefusedException;
import boilwright.fluid.TabulatedFluid;
import boilwright.fluid.WorkingFluid;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.rig.FieldCatalogue;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import boilwright.rig.file.RigEdit;
import boilwright.rig.file.RigFields;
import boilwright.thermal.NeededState;
import boilwright.thermal.SteadySolver;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import boilwright.units.UnitTable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Which guess moves the heat margin most: each is moved to both ends of its range while all others stay. The same rig
 * always gives the same order.
 */
public final class GuessRanking {
    /** How often an end that does not fit the rest of the rig is moved half-way back to the guess. */
    private static final int MOST_HALVINGS = 4;

    private final Rig rig;
    private final TabulatedFluid fluid;
    private final double ratioNow;

    private GuessRanking(Rig rig, TabulatedFluid fluid) {
        this.rig = rig;
        this.fluid = fluid;
        ratioNow = ratio(rig);
    }

    /**
     * The guesses of a rig, the one that moves the heat margin most first. Guessed words (a material, a kind of contact) have
     * no range and are not among them.
     *
     * @param rig the rig with its guesses marked
     * @param fluid its fluid
     * @param cancel stops the computation
     * @param progress hears how far it is
     * @throws ComputationException when the model finds no working state of the rig as it is
     * @throws boilwright.errors.CancelledException when cancelled
     */
    public static List<RankedGuess> of(Rig rig, WorkingFluid fluid, CancelToken cancel, ProgressSink progress) {
        if (rig.guesses().isEmpty()) {
            return List.of();
        }
        GuessRanking ranking = new GuessRanking(rig, TabulatedFluid.of(fluid));
        List<RankedGuess> ranked = new ArrayList<>();
        Map<String, List<GuessRange>> groups = GuessRange.groups(rig);
        for (Map.Entry<String, List<GuessRange>> group : groups.entrySet()) {
            cancel.check();
            progress.progress((double) ranked.size() / groups.size(), "moving each guess");
            ranked.add(ranking.ranked(group.getKey(), group.getValue()));
        }
        // The order of the file decides between equals: the sort is stable.
        ranked.sort(Comparator.comparingDouble(RankedGuess::change).reversed());
        return List.copyOf(ranked);
    }

    /**
     * What the ranking says, for a person.
     *
     * @param rig the rig
     * @param ranked its guesses in order
     */
    public static String sentence(Rig rig, List<RankedGuess> ranked) {
        if (rig.guesses().isEmpty()) {
            return EstimateText.RANKING_NO_GUESSES.say();
        }
        String count = Integer.toString(rig.guesses().size());
        if (ranked.isEmpty() || ranked.get(0).change() == 0) {
            return EstimateText.RANKING_NONE_MOVES.say(count);
        }
        RankedGuess most = ranked.get(0);
        String sentence = EstimateText.RANKING_MOST.say(
                count,
                most.path(),
                quantity(most, most.low()),
                quantity(most, most.high()),
                ratio(most.ratioAtLow()),
                ratio(most.ratioAtHigh()));
        return most.decides() ? sentence + " " + EstimateText.RANKING_DECIDES.say() : sentence;
    }

    /** That the rig has guesses, when it has: a sentence for those who do not want to wait for the ranking. */
    public static Optional<String> reminder(Rig rig) {
        return rig.guesses().isEmpty()
                ? Optional.empty()
                : Optional.of(
                        EstimateText.REMINDER.say(Integer.toString(rig.guesses().size())));
    }

    private static String ratio(OptionalDouble ratio) {
        return ratio.isPresent()
                ? QuantityWriter.write(
                        ratio.getAsDouble(),
                        UnitTable.find("1", Dimension.FRACTION).orElseThrow())
                : EstimateText.RATIO_UNKNOWN.say();
    }

    private static String quantity(RankedGuess guess, double si) {
        String unit = FieldCatalogue.find(guess.path()).orElseThrow().unit();
        return QuantityWriter.write(si, UnitTable.find(unit, guess.dimension()).orElseThrow());
    }

    private RankedGuess ranked(String general, List<GuessRange> ranges) {
        Tried low = tried(ranges, false);
        Tried high = tried(ranges, true);
        GuessRange last = ranges.get(ranges.size() - 1);
        return new RankedGuess(
                ranges.size() == 1 ? last.path() : general,
                ranges.stream().map(GuessRange::path).toList(),
                low.value(),
                high.value(),
                FieldCatalogue.find(general).orElseThrow().dimension().orElseThrow(),
                ratioNow,
                low.ratio(),
                high.ratio());
    }

    /** The value of the last field at which the margin was looked at, and the margin there. */
    private record Tried(double value, OptionalDouble ratio) {}

    private Tried tried(List<GuessRange> ranges, boolean high) {
        GuessRange last = ranges.get(ranges.size() - 1);
        double share = 1;
        for (int i = 0; i <= MOST_HALVINGS; i++, share /= 2) {
            Optional<Rig> moved = moved(ranges, high, share);
            if (moved.isPresent()) {
                return new Tried(last.towards(high ? last.high() : last.low(), share), ratioOrNone(moved.get()));
            }
        }
        return new Tried(last.value(), OptionalDouble.of(ratioNow));
    }

    /** The rig with the fields at that share of the way to an end; empty when its parts do not fit one another then. */
    private Optional<Rig> moved(List<GuessRange> ranges, boolean high, double share) {
        try {
            List<RigEdit> edits = ranges.stream()
                    .map(range -> RigEdit.of(range.path(), range.towards(high ? range.high() : range.low(), share)))
                    .toList();
            return Optional.of(RigFields.of(rig).with(edits).rig(List.of(rig.fluidId())));
        } catch (InputRefusedException e) {
            return Optional.empty(); // the next try is nearer to the guess, where they do fit
        }
    }

    private OptionalDouble ratioOrNone(Rig moved) {
        try {
            return OptionalDouble.of(ratio(moved));
        } catch (ComputationException e) {
            return OptionalDouble.empty(); // said as such by whoever shows the ranking
        }
    }

    private double ratio(Rig other) {
        NeededState needed = new SteadySolver(other, fluid, ParameterValues.of(other)).needed();
        return needed.heatAvailableW() / needed.heatNeededW();
    }
}
