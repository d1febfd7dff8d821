package boilwright.estimate;

import boilwright.fluid.TabulatedFluid;
import boilwright.numerics.Roots;
import boilwright.rig.Column;
import boilwright.rig.HeatSource;
import boilwright.rig.Limits;
import boilwright.rig.Parameter;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import boilwright.thermal.NeededState;
import boilwright.thermal.SteadySolver;
import boilwright.vacuum.BackingSide;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.stream.DoubleStream;

/**
 * Finds the throats with which a pump works: in typical proportions, as wide as lets the heat it works with hold its
 * working pressure. One bracketed root in the top gap; the state is the model's needed state at the working pressure.
 */
final class ThroatSolver {
    /**
     * Working pressure over the least that the jets need. Pumps are run above the minimum: the trade runs oils at 0.5 to 2
     * Torr, where 0.5 Torr is the design minimum, and a pump with the wanted heat margin of 1.25 that loses half of its heat
     * (glass) makes 1.5 times the vapour that it needs, one that loses a quarter 1.33 times. Range 1 to 4; from memory.
     */
    static final double WORKING_FACTOR = 1.5;

    /** Bottom gap over top gap: glass jets are nearly alike, metal ones widen upward; from memory. */
    private static final double GLASS_BOTTOM = 0.75;

    private static final double METAL_BOTTOM = 0.45;
    /** Top gap over bore that is usual; from memory. */
    private static final double GLASS_TOP = 0.01;

    private static final double METAL_TOP = 0.04;
    /** Narrowest over usual throats. */
    private static final double NARROWEST = 0.5;

    private static final double NARROWEST_M = 2e-4;
    private static final double WIDEST_M = 15e-3;
    /** Greatest area of all throats over the column's section: beyond it the column and not the throats would choke. */
    private static final double MOST_OF_COLUMN = 0.8;
    /** Greatest share of the room between column and body that a throat takes. */
    private static final double MOST_OF_ROOM = 0.5;

    private static final double GAP_TOLERANCE = 1e-4;
    private static final double CONTACT_TOLERANCE = 1e-4;

    private final Rig draft;
    private final TabulatedFluid fluid;
    private final double workingPa;
    private final double[] shares;

    ThroatSolver(Rig draft, TabulatedFluid fluid) {
        this.draft = draft;
        this.fluid = fluid;
        double foreline = 2
                * BackingSide.of(draft).restingPa()
                / ParameterValues.of(draft).get(Parameter.CRITICAL_BACKING_RATIO);
        workingPa = WORKING_FACTOR * Math.max(fluid.usualBoilerPressure(), foreline);
        shares = shares(draft.stages().size(), draft.body().material().isGlass());
    }

    /** Gaps over the top one, from the bottom to the top. */
    static double[] shares(int count, boolean glass) {
        double bottom = glass ? GLASS_BOTTOM : METAL_BOTTOM;
        double[] shares = new double[count];
        for (int i = 0; i < count; i++) {
            shares[i] = i == count - 1 ? 1 : bottom + (1 - bottom) * i / (count - 1);
        }
        return shares;
    }

    /** Throats for a net heat, W. */
    ThroatFit forHeat(double netHeatW) {
        return solve(draft.heatSource(), state -> netHeatW);
    }

    /**
     * Throats for a power of this source at which the pump works. The net heat is what the source gives the working pump in
     * the model, held between the least and the greatest believed.
     */
    ThroatFit forSource(HeatSource source, double leastW, double greatestW) {
        return solve(source, between(leastW, greatestW));
    }

    /**
     * The contact conductance with which this source lets the pump work although its throats are the narrowest usual ones.
     *
     * @param source the source with a given conductance, W/(m2 K)
     * @param usual conductance with which it does not work
     * @param best greatest conductance believed
     * @return empty when the pump does not work even with the best
     */
    OptionalDouble contact(
            DoubleFunction<HeatSource> source, double usual, double best, double leastW, double greatestW) {
        NetHeat net = between(leastW, greatestW);
        double top = narrowestTop();
        if (excess(source.apply(best), net, top) >= 0) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(Roots.bracketed(
                conductance -> excess(source.apply(conductance), net, top),
                usual,
                best,
                CONTACT_TOLERANCE,
                0,
                "the contact conductance of the source"));
    }

    private static NetHeat between(double leastW, double greatestW) {
        return state -> Math.max(leastW, Math.min(greatestW, state.heatAvailableW()));
    }

    private interface NetHeat {
        double of(NeededState state);
    }

    private ThroatFit solve(HeatSource source, NetHeat net) {
        double low = narrowestTop();
        double high = widestTop();
        if (high <= low) {
            return fit(source, net, low, ThroatFit.End.WIDEST);
        }
        if (excess(source, net, low) >= 0) {
            return fit(source, net, low, ThroatFit.End.NARROWEST);
        }
        if (excess(source, net, high) <= 0) {
            return fit(source, net, high, ThroatFit.End.WIDEST);
        }
        double top = Roots.bracketed(
                gap -> excess(source, net, gap), low, high, GAP_TOLERANCE, 0, "the gap of the top throat");
        return fit(source, net, top, ThroatFit.End.FOUND);
    }

    private ThroatFit fit(HeatSource source, NetHeat net, double top, ThroatFit.End end) {
        NeededState state = working(source, top);
        List<Double> rounded = gaps(top).stream()
                .map(gap -> GuessBook.usual("stages[].throatGap", gap))
                .toList();
        return new ThroatFit(rounded, workingPa, net.of(state), state.heatNeededW(), end);
    }

    private double excess(HeatSource source, NetHeat net, double top) {
        NeededState state = working(source, top);
        return state.heatNeededW() - net.of(state);
    }

    private NeededState working(HeatSource source, double top) {
        Rig rig = RigParts.with(draft, gaps(top), source, requiring(workingPa));
        return new SteadySolver(rig, fluid, ParameterValues.of(rig)).needed();
    }

    private List<Double> gaps(double top) {
        return DoubleStream.of(shares).map(share -> share * top).boxed().toList();
    }

    private double narrowestTop() {
        double usual = draft.body().innerDiameterM() * (draft.body().material().isGlass() ? GLASS_TOP : METAL_TOP);
        return Math.max(NARROWEST_M / DoubleStream.of(shares).min().orElseThrow(), NARROWEST * usual);
    }

    private double widestTop() {
        Column.Segment segment = draft.column().segments().get(0);
        double section = Math.PI / 4 * segment.innerDiameterM() * segment.innerDiameterM();
        double perGap = 0;
        double room = Double.POSITIVE_INFINITY;
        for (int i = 0; i < shares.length; i++) {
            double diameter = draft.stages().get(i).throatDiameterM();
            perGap += Math.PI * diameter * shares[i];
            room = Math.min(room, Math.min(draft.body().innerDiameterM() - diameter, diameter));
        }
        return Math.min(WIDEST_M, Math.min(MOST_OF_ROOM * room, MOST_OF_COLUMN * section / perGap));
    }

    private static Limits requiring(double pressurePa) {
        OptionalDouble none = OptionalDouble.empty();
        return new Limits(
                OptionalDouble.of(pressurePa),
                none,
                none,
                none,
                none,
                none,
                none,
                none,
                none,
                none,
                none,
                none,
                none,
                none);
    }
}
