package boilwright.sequence;

import boilwright.answers.Cautions;
import boilwright.answers.Instructions;
import boilwright.answers.Say;
import boilwright.answers.VacuumText;
import boilwright.rig.ForelineKind;
import boilwright.thermal.EventKind;
import boilwright.units.Dimension;
import boilwright.vacuum.PumpDown;
import java.util.ArrayList;
import java.util.List;

/** What stands beside the steps of a plan: limits, what comes first in an emergency, what can't be promised, cautions. */
final class PlanWords {
    private final SimulatedRun run;
    private final PumpSetup setup;

    PlanWords(SimulatedRun run) {
        this.run = run;
        setup = PumpSetup.of(run.rig());
    }

    /** What to keep an eye on; a stop has no crossover. */
    List<PlanLimit> limits(Variant variant) {
        List<PlanLimit> list = new ArrayList<>();
        add(list, "foreline", SequenceText.LIMIT_FORELINE, setup.forelineLimitPa(), Dimension.PRESSURE);
        double bears = run.check().steady().criticalBackingPa();
        add(list, "foreline-of-jets", SequenceText.LIMIT_CRITICAL, bears, Dimension.PRESSURE);
        if (setup.hasWater()) {
            add(list, "water-out", SequenceText.LIMIT_WATER_OUT, setup.waterOutLimitK(), Dimension.TEMPERATURE);
        }
        setup.oilLimitK(run.fluid()).ifPresent(k -> add(list, "oil", SequenceText.LIMIT_OIL, k, Dimension.TEMPERATURE));
        add(list, "air", SequenceText.LIMIT_AIR_IN, run.airK(), Dimension.TEMPERATURE);
        add(list, "leave", SequenceText.LIMIT_LEAVE, run.leaveK(), Dimension.TEMPERATURE);
        if (setup.isRoughedApart() && variant != Variant.QUICK_STOP && variant != Variant.EMERGENCY) {
            double allowed =
                    run.vacuum().map(v -> v.timeline().crossover().allowedPa()).orElse(PumpDown.HIGHEST_CROSSOVER_PA);
            add(list, "crossover", SequenceText.LIMIT_CROSSOVER, allowed, Dimension.PRESSURE);
        }
        if (setup.coolsGlass()) {
            add(list, "glass", SequenceText.LIMIT_GLASS, Instructions.SHOCK_K, Dimension.TEMPERATURE_DIFFERENCE);
        }
        return list;
    }

    private static void add(List<PlanLimit> list, String id, SequenceText title, double value, Dimension dimension) {
        list.add(new PlanLimit(id, title.say(), value, dimension));
    }

    List<String> emergency() {
        List<String> list = new ArrayList<>();
        Instructions what = run.instructions();
        list.add(what.heatOff());
        what.shutValve().ifPresent(list::add);
        list.add(what.noAir(run.downS(EventKind.AIR_ALLOWED)));
        if (setup.hasWater()) {
            list.add(SequenceText.EMERGENCY_WATER.say(what.waterBack()));
        }
        list.add(
                setup.hasWater()
                        ? SequenceText.EMERGENCY_BACKING.say(what.shutBacking(), what.keepWater())
                        : SequenceText.EMERGENCY_BACKING_DRY.say(what.shutBacking()));
        run.firstLostS().ifPresent(t -> list.add(SequenceText.EMERGENCY_JETS.say(Say.time(t))));
        run.downS(EventKind.WATER_MAY_STOP).ifPresent(t -> list.add(SequenceText.EMERGENCY_STAY.say(Say.time(t))));
        list.add(SequenceText.EMERGENCY_LEAVE.say());
        return list;
    }

    List<String> unproven() {
        List<String> list = new ArrayList<>();
        if (!setup.readsForeline()) {
            list.add(SequenceText.PROMISE_FORELINE.say());
        }
        if (run.rig().foreline().kind() == ForelineKind.GIVEN_PRESSURE) {
            list.add(SequenceText.PROMISE_FORELINE_GIVEN.say());
        }
        if (!setup.isCooled()) {
            list.add(SequenceText.PROMISE_WATER.say());
        }
        if (run.fluid().airAdmissionLimit().isEmpty()) {
            list.add(SequenceText.PROMISE_AIR.say(run.fluid().title()));
        }
        if (run.rig().vacuum().isEmpty()) {
            list.add(SequenceText.PROMISE_CHAMBER.say(Say.pressure(PumpDown.HIGHEST_CROSSOVER_PA)));
        }
        if (!setup.hasValve()) {
            list.add(SequenceText.PROMISE_VALVE.say());
        }
        return list;
    }

    List<String> cautions() {
        List<String> list = new ArrayList<>();
        Cautions.placed(run.rig(), run.fluid(), run.check().steady().hottestOutsideK())
                .forEach(c -> list.add(c.sentence()));
        if (run.rig().vacuum().isPresent()) {
            list.add(VacuumText.CAUTION_AIR.say());
        }
        return list;
    }
}
