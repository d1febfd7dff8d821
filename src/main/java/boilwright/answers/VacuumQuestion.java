package boilwright.answers;

import boilwright.answers.VacuumStage.Step;
import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.fluid.WorkingFluid;
import boilwright.gasflow.Gas;
import boilwright.heattransfer.EvaporationFlux;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.outgassing.MaterialLibrary;
import boilwright.rig.ForelineKind;
import boilwright.rig.GasSide;
import boilwright.rig.Parameter;
import boilwright.rig.Rig;
import boilwright.thermal.StageState;
import boilwright.thermal.SteadyState;
import boilwright.vacuum.BuiltInRates;
import boilwright.vacuum.JetAction;
import boilwright.vacuum.PumpDown;
import boilwright.vacuum.SteadyVacuum;
import boilwright.vacuum.VacuumState;
import boilwright.vacuum.VacuumTimeline;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
        List<Fix> all = VacuumFixes.of(rig, rest, since, gas, end.gaugePa());
        List<Fix> waiting = all.stream().filter(Fix::isWaiting).toList();
        List<Fix> fixes = all.stream().filter(fix -> !fix.isWaiting()).toList();
        List<VacuumStage> stages = stages(check, end, fixes, since, gas);
        List<Margin> margins = margins(check, end, timeline, rest);
        boolean known = rig.foreline().kind() == ForelineKind.BACKING_PUMP;
        return new VacuumAnswer(
                check,
                check.withElsewhere(new VacuumVerdict(check, end, lookS, stages, fixes).text(), margins),
                lookS,
                gas.id(),
                before,
                end,
                timeline,
                stages,
                fixes,
                waiting,
                VacuumWords.crossover(timeline.crossover(), known),
                EvaporationFlux.flux(1, rest.oilVapourPa(), 0, jetGas.seenK(), fluid.specificGasConstant()),
                margins,
                cautions(check),
                notes(rig, gas, jetGas));
    }

    /** The gauge now and with what may be put right, each by the same computation. */
    private static List<VacuumStage> stages(
            CheckAnswer check, VacuumState end, List<Fix> fixes, double sinceS, Gas gas) {
        Rig rig = check.rig();
        OptionalDouble target = rig.vacuum().orElseThrow().targetPa();
        List<VacuumStage> stages = new ArrayList<>();
        stages.add(stage(Step.NOW, end.gaugePa(), target));
        fixes.stream().findFirst().ifPresent(fix -> stages.add(stage(Step.BEST_CHANGE, fix.gaugePa(), target)));
        if (check.steady().stages().stream().allMatch(StageState::full)) {
            return stages;
        }
        JetAction full = new JetGas(
                        rig,
                        check.asked().fluid(),
                        check.parameters(),
                        check.needed().state())
                .atRest();
        double gaugePa =
                SteadyVacuum.of(rig, full, sinceS, BuiltInRates.INSTANCE, gas).gaugePa();
        stages.add(stage(Step.JETS_FULL, gaugePa, target));
        VacuumFixes.of(rig, full, sinceS, gas, gaugePa).stream()
                .filter(fix -> !fix.isWaiting())
                .findFirst()
                .ifPresent(fix -> stages.add(stage(Step.BOTH, fix.gaugePa(), target)));
        return stages;
    }

    private static VacuumStage stage(Step step, double gaugePa, OptionalDouble target) {
        return new VacuumStage(
                step, gaugePa, target.isPresent() ? Optional.of(gaugePa <= target.getAsDouble()) : Optional.empty());
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
