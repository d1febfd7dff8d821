package boilwright.answers;

import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.fluid.WorkingFluid;
import boilwright.gasflow.Gas;
import boilwright.heattransfer.EvaporationFlux;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.outgassing.MaterialLibrary;
import boilwright.rig.Foreline;
import boilwright.rig.GasSide;
import boilwright.rig.Parameter;
import boilwright.rig.Rig;
import boilwright.thermal.SteadyState;
import boilwright.vacuum.BuiltInRates;
import boilwright.vacuum.JetAction;
import boilwright.vacuum.PumpDown;
import boilwright.vacuum.SteadyVacuum;
import boilwright.vacuum.VacuumState;
import boilwright.vacuum.VacuumTimeline;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What should the gauge read, where is the speed lost, and what would help most? Refused for a rig without a chamber.
 *
 * @param asked a rig with chamber and line
 * @param gas what flows
 * @param lookS how long after the foreline is down to look, s
 */
public record VacuumQuestion(Asked asked, Gas gas, double lookS) implements Question<VacuumAnswer> {
    private static final double LONGEST_OVERLOAD_S = 30;

    @Override
    public VacuumAnswer answer(Model model, CancelToken cancel, ProgressSink progress) {
        requireVacuum(asked.rig());
        return of(model.answer(new CheckQuestion(asked), cancel, progress), gas, lookS, cancel);
    }

    private static void requireVacuum(Rig rig) {
        if (rig.vacuum().isEmpty()) {
            throw new InputRefusedException(Message.of(MessageKey.RIG_WITHOUT_VACUUM, rig.name()));
        }
    }

    /** The gas side along the warm-up of a check, whatever schedule that run follows; otherwise as {@link #answer}. */
    public static VacuumAnswer of(CheckAnswer check, Gas gas, double lookS, CancelToken cancel) {
        Rig rig = check.rig();
        requireVacuum(rig);
        WorkingFluid fluid = check.asked().fluid();
        GasSide side = rig.vacuum().get();
        SteadyState steady = check.steady();
        JetGas jetGas = new JetGas(rig, fluid, check.parameters(), steady);
        double dissolved = rig.chargeM3()
                * fluid.dissolvedAir().orElse(check.parameters().get(Parameter.DISSOLVED_AIR))
                * rig.room().pressurePa();
        RunJets jets = new RunJets(check.warmup(), rig.stages().size(), jetGas, dissolved);
        VacuumTimeline timeline = PumpDown.of(rig, jets, BuiltInRates.INSTANCE, gas, lookS, cancel);
        JetAction rest = jetGas.atRest();
        double air =
                side.chamber().sinceAirS() + Math.max(0, -timeline.crossover().roughingFromS());
        double since = air + lookS;
        VacuumState end = SteadyVacuum.of(rig, rest, since, BuiltInRates.INSTANCE, gas);
        double startS = jets.allFullS().orElse(0);
        VacuumState before = SteadyVacuum.of(rig, rest, air + startS, BuiltInRates.INSTANCE, gas);
        List<Fix> fixes = VacuumFixes.of(rig, rest, since, gas, end.gaugePa());
        boolean known = rig.foreline() instanceof Foreline.Backing;
        return new VacuumAnswer(
                check,
                VacuumWords.verdict(rig, steady, end, lookS, fixes),
                lookS,
                gas.id(),
                before,
                end,
                timeline,
                fixes,
                VacuumWords.crossover(timeline.crossover(), known),
                EvaporationFlux.flux(1, rest.oilVapourPa(), 0, jetGas.seenK(), fluid.specificGasConstant()),
                margins(check, end, timeline, rest),
                cautions(check),
                notes(rig, gas, jetGas));
    }

    private static List<Margin> margins(CheckAnswer check, VacuumState end, VacuumTimeline timeline, JetAction rest) {
        GasSide side = check.rig().vacuum().orElseThrow();
        List<Margin> margins = new ArrayList<>();
        check.margins().stream()
                .filter(m -> m.id() == MarginId.JETS || m.id() == MarginId.FORELINE)
                .forEach(margins::add);
        margins.add(target(MarginMaker.of(MarginId.GAUGE).value(end.gaugePa()), side.targetPa())
                .cure(VacuumText.CURE_GAUGE.say())
                .make());
        margins.add(target(MarginMaker.of(MarginId.OIL_VAPOUR).value(rest.oilVapourPa()), side.targetPa())
                .cure(VacuumText.CURE_GAUGE.say())
                .make());
        margins.add(MarginMaker.of(MarginId.THROUGHPUT)
                .value(end.gasPaM3PerS())
                .atMost(rest.throughput())
                .tightBelow(2)
                .basis(VacuumText.BASIS_THROUGHPUT.say())
                .cure(VacuumText.CURE_THROUGHPUT.say())
                .make());
        if (timeline.crossover().timeS().isPresent()) {
            margins.add(MarginMaker.of(MarginId.OVERLOAD)
                    .value(timeline.crossover().overloadS())
                    .atMost(LONGEST_OVERLOAD_S)
                    .basis(VacuumText.BASIS_OVERLOAD.say())
                    .cure(VacuumText.CURE_OVERLOAD.say())
                    .make());
        }
        side.gauge().ifPresent(gauge -> margins.add(trusted(gauge, end)));
        return Margins.worstFirst(margins);
    }

    private static MarginMaker target(MarginMaker maker, OptionalDouble target) {
        return target.isPresent()
                ? maker.atMost(target.getAsDouble()).basis(VacuumText.BASIS_TARGET.say())
                : maker.side(Margin.Side.AT_MOST).basis(VacuumText.BASIS_NO_TARGET.say());
    }

    private static Margin trusted(GasSide.Gauge gauge, VacuumState end) {
        boolean high = end.readingPa() > Math.sqrt(gauge.lowestPa() * gauge.highestPa());
        MarginMaker maker = MarginMaker.of(MarginId.GAUGE_RANGE)
                .value(end.readingPa())
                .tightBelow(1)
                .basis(VacuumText.BASIS_TRUSTED.say())
                .cure(VacuumText.CURE_TRUSTED.say());
        return (high ? maker.atMost(gauge.highestPa()) : maker.atLeast(gauge.lowestPa())).make();
    }

    private static List<String> cautions(CheckAnswer check) {
        List<String> cautions = new ArrayList<>(check.cautions());
        cautions.add(VacuumText.CAUTION_AIR.say());
        boolean glass = check.rig().body().material().isGlass()
                || check.rig().vacuum().orElseThrow().chamber().surfaces().stream()
                        .anyMatch(surface -> surface.material().equals("borosilicate"));
        if (glass) {
            cautions.add(VacuumText.CAUTION_GLASS.say());
        }
        return cautions;
    }

    private static List<String> notes(Rig rig, Gas gas, JetGas jetGas) {
        List<String> notes = new ArrayList<>();
        notes.add(VacuumText.NOTE_GAS.say(gas.id().replace('-', ' ')));
        notes.add(VacuumText.NOTE_SPREAD.say());
        notes.add(VacuumText.NOTE_OIL_WARM.say(Say.temperature(jetGas.seenK())));
        GasSide side = rig.vacuum().orElseThrow();
        if (!side.roughing().isEmpty()) {
            notes.add(VacuumText.NOTE_FORELINE_SHUT.say());
        }
        side.chamber().surfaces().stream()
                .filter(GasSide.Surface::baked)
                .map(surface -> MaterialLibrary.builtIn().find(surface.material()))
                .filter(material -> material.baked().isEmpty())
                .map(material -> VacuumText.NOTE_BAKED.say(material.title()))
                .distinct()
                .forEach(notes::add);
        return notes;
    }
}
