package boilwright.choice;

import boilwright.answers.Cautions;
import boilwright.answers.CheckAnswer;
import boilwright.answers.Margin;
import boilwright.answers.MarginId;
import boilwright.answers.Questions;
import boilwright.choice.CompareAnswer.Unfit;
import boilwright.errors.ComputationException;
import boilwright.files.ProgramVersion;
import boilwright.fluid.TabulatedFluid;
import boilwright.fluid.WorkingFluid;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.numerics.Roots;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import boilwright.thermal.EventKind;
import boilwright.thermal.StageState;
import boilwright.thermal.SteadySolver;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;

/** What would this rig do with another fluid? */
public final class FluidsQuestion {
    private static final double LEAST_SHARE = 1e-2;
    private static final double MOST_SHARE = 10;
    private static final double TOLERANCE = 1e-4;
    /** Oil over the heated base below which boiling lays it bare (engineering judgement), m. */
    private static final double LEAST_DEPTH_M = 3e-3;

    private final Rig rig;
    private final String dataVersion;
    private final CancelToken cancel;

    private FluidsQuestion(Rig rig, String dataVersion, CancelToken cancel) {
        this.rig = rig;
        this.dataVersion = dataVersion;
        this.cancel = cancel;
    }

    /**
     * Answers it.
     *
     * @param rig the rig; it keeps everything but its fluid, also the volume of its charge
     * @param fluids the fluids by their ids, in the order of the rows
     * @param dataVersion version of the fluid data
     * @param cancel stops the computation
     * @param progress hears how many fluids are done
     * @throws boilwright.errors.CancelledException when cancelled
     */
    public static FluidsAnswer ask(
            Rig rig, Map<String, WorkingFluid> fluids, String dataVersion, CancelToken cancel, ProgressSink progress) {
        FluidsQuestion question = new FluidsQuestion(rig, dataVersion, cancel);
        List<FluidRow> rows = new ArrayList<>();
        List<Unfit> unfit = new ArrayList<>();
        Set<String> cautions = new LinkedHashSet<>();
        int done = 0;
        for (Map.Entry<String, WorkingFluid> one : fluids.entrySet()) {
            WorkingFluid fluid = one.getValue();
            try {
                rows.add(question.row(one.getKey(), fluid));
                cautions.add(Cautions.ofFluid(fluid).sentence());
            } catch (ComputationException e) {
                // a fluid that this pump drives out of its known range must not take the others' answers away
                String reason = ChoiceText.NO_ANSWER.say(e.reason().text());
                unfit.add(new Unfit(one.getKey(), fluid.title(), reason));
            }
            progress.progress((double) ++done / fluids.size(), "fluids");
        }
        return new FluidsAnswer(
                rig, rows, unfit, List.copyOf(cautions), notes(rig), ProgramVersion.current(), dataVersion);
    }

    private FluidRow row(String id, WorkingFluid fluid) {
        Rig filled = rig.withCharge(id, rig.chargeM3());
        CheckAnswer check = Questions.check(filled, fluid, dataVersion, cancel, ProgressSink.NONE);
        double ratio = check.needed().heatAvailableW() / check.needed().heatNeededW();
        OptionalDouble pumping = SourceTrial.time(check.warmup(), EventKind.FULL_PUMPING);
        OptionalDouble heatOn = SourceTrial.time(check.warmup(), EventKind.HEAT_ON);
        OptionalDouble after = pumping.isPresent() && heatOn.isPresent()
                ? OptionalDouble.of(pumping.getAsDouble() - heatOn.getAsDouble())
                : OptionalDouble.empty();
        OptionalDouble least = leastCharge(filled, fluid, check);
        return new FluidRow(
                id,
                fluid.title(),
                check,
                ratio,
                after,
                fluid.vapourPressure(rig.room().temperatureK()),
                least,
                verdict(check, ratio, after));
    }

    /** Films on walls and cap hold the same oil whatever the charge, so a small charge leaves the boiler the emptier. */
    private OptionalDouble leastCharge(Rig filled, WorkingFluid fluid, CheckAnswer check) {
        double wanted = check.margins().stream()
                .filter(m -> m.id() == MarginId.LIQUID)
                .map(Margin::limit)
                .findFirst()
                .orElseThrow()
                .orElseThrow();
        TabulatedFluid tables = Questions.tables(fluid);
        double charge = filled.chargeM3();
        double low = LEAST_SHARE * charge;
        double high = MOST_SHARE * charge;
        if (excess(filled, tables, high, wanted) < 0) {
            return OptionalDouble.empty();
        }
        if (excess(filled, tables, low, wanted) >= 0) {
            return OptionalDouble.of(low);
        }
        return OptionalDouble.of(Math.exp(Roots.bracketed(
                x -> excess(filled, tables, Math.exp(x), wanted),
                Math.log(low),
                Math.log(high),
                0,
                TOLERANCE,
                "the least charge")));
    }

    private double excess(Rig filled, TabulatedFluid tables, double chargeM3, double wanted) {
        cancel.check();
        Rig other = filled.withCharge(filled.fluidId(), chargeM3);
        double left = new SteadySolver(other, tables, ParameterValues.of(other))
                .needed()
                .state()
                .liquidFraction();
        double deep = left * chargeM3 / (LEAST_DEPTH_M * other.boiler().surfaceAreaM2()) - 1;
        return Math.min(left - wanted, deep);
    }

    private String verdict(CheckAnswer check, double ratio, OptionalDouble after) {
        int all = rig.stages().size();
        long full = check.steady().stages().stream().filter(StageState::full).count();
        String times = String.format(Locale.ROOT, "%.2f", ratio);
        String broken = SourceTrial.broken(check.margins());
        if (full < all || after.isEmpty()) {
            return ChoiceText.FLUID_SHORT.say(Long.toString(full), Integer.toString(all), times);
        }
        String time = QuantityWriter.writeAuto(after.getAsDouble(), Dimension.TIME);
        return broken.isEmpty()
                ? ChoiceText.FLUID_FULL.say(times, time)
                : ChoiceText.FLUID_PASSES.say(times, time, broken);
    }

    private static List<String> notes(Rig rig) {
        List<String> notes = new ArrayList<>();
        notes.add(ChoiceText.NOTE_FLUIDS_SAME.say(QuantityWriter.writeAuto(rig.chargeM3(), Dimension.VOLUME)));
        notes.add(
                rig.limits().requiredBoilerPressurePa().isPresent()
                        ? ChoiceText.NOTE_FLUIDS_PRESSURE_RIG.say(QuantityWriter.writeAuto(
                                rig.limits().requiredBoilerPressurePa().getAsDouble(), Dimension.PRESSURE))
                        : ChoiceText.NOTE_FLUIDS_PRESSURE.say());
        notes.add(ChoiceText.NOTE_FLUIDS_CHARGE.say());
        notes.add(ChoiceText.NOTE_FLUIDS_ULTIMATE.say());
        return notes;
    }
}
