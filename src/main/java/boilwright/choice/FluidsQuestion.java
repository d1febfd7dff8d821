package boilwright.choice;

import boilwright.answers.Asked;
import boilwright.answers.Cautions;
import boilwright.answers.CheckAnswer;
import boilwright.answers.CheckQuestion;
import boilwright.answers.Margin;
import boilwright.answers.MarginId;
import boilwright.answers.Model;
import boilwright.answers.Question;
import boilwright.choice.CompareAnswer.Unfit;
import boilwright.errors.ComputationException;
import boilwright.files.ProgramVersion;
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
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * What would this rig do with another fluid?
 *
 * @param asked the rig; it keeps everything but its fluid, also the volume of its charge
 * @param fluids the fluids by their ids, in the order of the rows
 */
public record FluidsQuestion(Asked asked, Map<String, WorkingFluid> fluids) implements Question<FluidsAnswer> {
    private static final double LEAST_SHARE = 1e-2;
    private static final double MOST_SHARE = 10;
    private static final double TOLERANCE = 1e-4;
    /** Oil over the heated base below which boiling lays it bare (engineering judgement), m. */
    private static final double LEAST_DEPTH_M = 3e-3;

    public FluidsQuestion {
        fluids = Collections.unmodifiableMap(new LinkedHashMap<>(fluids));
    }

    @Override
    public FluidsAnswer answer(Model model, CancelToken cancel, ProgressSink progress) {
        List<FluidRow> rows = new ArrayList<>();
        List<Unfit> unfit = new ArrayList<>();
        Set<String> cautions = new LinkedHashSet<>();
        int done = 0;
        for (Map.Entry<String, WorkingFluid> one : fluids.entrySet()) {
            WorkingFluid fluid = one.getValue();
            try {
                Rig filled = asked.rig().withCharge(one.getKey(), asked.rig().chargeM3());
                Asked other = new Asked(filled, fluid, asked.dataVersion(), ParameterValues.of(filled));
                rows.add(row(model.answer(new CheckQuestion(other), cancel, ProgressSink.NONE), cancel));
                cautions.add(Cautions.ofFluid(fluid).sentence());
            } catch (ComputationException e) {
                // a fluid that this pump drives out of its known range must not take the others' answers away
                String reason = ChoiceText.NO_ANSWER.say(e.reason().text());
                unfit.add(new Unfit(one.getKey(), fluid.title(), reason));
            }
            progress.progress((double) ++done / fluids.size(), "fluids");
        }
        return new FluidsAnswer(
                asked.rig(),
                rows,
                unfit,
                List.copyOf(cautions),
                notes(asked.rig()),
                ProgramVersion.current(),
                asked.dataVersion());
    }

    private FluidRow row(CheckAnswer check, CancelToken cancel) {
        Rig filled = check.rig();
        WorkingFluid fluid = check.asked().fluid();
        double ratio = check.needed().heatAvailableW() / check.needed().heatNeededW();
        OptionalDouble pumping = SourceTrial.time(check.warmup(), EventKind.FULL_PUMPING);
        OptionalDouble heatOn = SourceTrial.time(check.warmup(), EventKind.HEAT_ON);
        OptionalDouble after = pumping.isPresent() && heatOn.isPresent()
                ? OptionalDouble.of(pumping.getAsDouble() - heatOn.getAsDouble())
                : OptionalDouble.empty();
        OptionalDouble least = leastCharge(check, cancel);
        return new FluidRow(
                filled.fluidId(),
                fluid.title(),
                check,
                ratio,
                after,
                fluid.vapourPressure(filled.room().temperatureK()),
                least,
                verdict(check, ratio, after));
    }

    /** Films on walls and cap hold the same oil whatever the charge, so a small charge leaves the boiler the emptier. */
    private OptionalDouble leastCharge(CheckAnswer check, CancelToken cancel) {
        double wanted = check.margins().stream()
                .filter(m -> m.id() == MarginId.LIQUID)
                .map(Margin::limit)
                .findFirst()
                .orElseThrow()
                .orElseThrow();
        Asked filled = check.asked();
        double charge = filled.rig().chargeM3();
        double low = LEAST_SHARE * charge;
        double high = MOST_SHARE * charge;
        if (excess(filled, high, wanted, cancel) < 0) {
            return OptionalDouble.empty();
        }
        if (excess(filled, low, wanted, cancel) >= 0) {
            return OptionalDouble.of(low);
        }
        return OptionalDouble.of(Math.exp(Roots.bracketed(
                x -> excess(filled, Math.exp(x), wanted, cancel),
                Math.log(low),
                Math.log(high),
                0,
                TOLERANCE,
                "the least charge")));
    }

    private double excess(Asked filled, double chargeM3, double wanted, CancelToken cancel) {
        cancel.check();
        Rig other = filled.rig().withCharge(filled.rig().fluidId(), chargeM3);
        double left = new SteadySolver(other, filled.tables(), filled.values())
                .needed()
                .state()
                .liquidFraction();
        double deep = left * chargeM3 / (LEAST_DEPTH_M * other.boiler().surfaceAreaM2()) - 1;
        return Math.min(left - wanted, deep);
    }

    private static String verdict(CheckAnswer check, double ratio, OptionalDouble after) {
        int all = check.rig().stages().size();
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
