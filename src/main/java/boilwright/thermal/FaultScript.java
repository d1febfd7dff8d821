package boilwright.thermal;

import boilwright.rig.ForelineKind;
import boilwright.rig.Protection;
import boilwright.rig.Protection.Load;
import boilwright.rig.Rig;
import boilwright.rig.Schedule;
import boilwright.rig.Supply;
import boilwright.rig.SupplyKind;
import boilwright.thermal.RunSimulator.Happening;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What a fault does to a rig: what stops when, and what becomes of its heat. */
final class FaultScript {
    private final Rig rig;
    private final Fault fault;

    FaultScript(Rig rig, Fault fault) {
        this.rig = rig;
        this.fault = fault;
    }

    /** Why there is nothing to play through for this rig, when that is so. */
    Optional<String> notPlayed() {
        Supply supply = rig.cooling().supply();
        boolean fan = supply.isAir();
        return switch (fault) {
            case WATER ->
                fan
                                || supply.givenFlow()
                                        .filter(given -> given.flowM3PerS() == 0)
                                        .isPresent()
                        ? Optional.of(ModelText.FAULT_NO_WATER.say())
                        : Optional.empty();
            case MAINS, HEATER_STUCK -> Optional.empty();
            case BACKING, AIR_INLET ->
                rig.foreline().kind() == ForelineKind.GIVEN_PRESSURE
                        ? Optional.of(ModelText.FAULT_FORELINE_GIVEN.say())
                        : Optional.empty();
            case CARTRIDGE_EMPTY ->
                rig.heatSource().cartridge().isPresent()
                        ? Optional.empty()
                        : Optional.of(ModelText.FAULT_NO_CARTRIDGE.say());
            case CHILLER_TRIP ->
                supply.kind() == SupplyKind.CHILLER ? Optional.empty() : Optional.of(ModelText.FAULT_NO_CHILLER.say());
            case FAN ->
                supply.fins().filter(fins -> fins.airSpeedMPerS() > 0).isPresent()
                        ? Optional.empty()
                        : Optional.of(ModelText.FAULT_NO_FAN.say());
        };
    }

    /** Whether the heat ends with the fault, so that nobody has to cut it. */
    boolean endsHeat() {
        return fault == Fault.CARTRIDGE_EMPTY
                || (fault == Fault.MAINS && !rig.heatSource().isFlame());
    }

    /** The rig as it stands when the fault finds it at rest: at the last level of its schedule that heats. */
    Rig atRest() {
        Schedule.Step level = new Schedule.Power(0, 1);
        for (Schedule.Step step : rig.schedule().steps()) {
            if (step.level() > 0) {
                level = step.at(0);
            }
        }
        return rig.withSchedule(new Schedule(List.of(level)));
    }

    /**
     * The heat through a drill.
     *
     * @param steps the schedule that the rig follows otherwise
     * @param failedS when the fault comes, s
     * @param cutS when the heat is cut, s; empty for never
     */
    List<Schedule.Step> heat(List<Schedule.Step> steps, double failedS, OptionalDouble cutS) {
        double cut = cutS.orElse(Double.POSITIVE_INFINITY);
        if (fault == Fault.MAINS && endsHeat()) {
            cut = Math.min(cut, failedS);
        }
        double until = fault == Fault.HEATER_STUCK ? Math.min(cut, failedS) : cut;
        List<Schedule.Step> kept = new ArrayList<>();
        for (Schedule.Step step : steps) {
            if (step.atS() < until || kept.isEmpty()) {
                kept.add(step);
            }
        }
        if (fault == Fault.HEATER_STUCK && failedS < cut) {
            put(kept, new Schedule.Power(failedS, 1));
        }
        if (cut < Double.POSITIVE_INFINITY) {
            put(kept, new Schedule.Power(cut, 0));
        }
        return kept;
    }

    private static void put(List<Schedule.Step> steps, Schedule.Step step) {
        if (steps.get(steps.size() - 1).atS() == step.atS()) {
            steps.remove(steps.size() - 1);
        }
        steps.add(step);
    }

    /** What fails, and what a battery keeps for a while, from when the fault comes, s. */
    List<Happening> happenings(double failedS) {
        List<Happening> list = new ArrayList<>();
        if (fault != Fault.MAINS) {
            EventKind kind = fault == Fault.WATER ? EventKind.WATER_STOPS : EventKind.FAULT;
            list.add(new Happening(kind, new Running.Change(failedS, Running.after(fault)), sentence()));
            return list;
        }
        Protection.Battery battery = rig.protection().battery();
        boolean kept = battery.forS() > 0 && !battery.keeps().isEmpty();
        list.add(new Happening(EventKind.FAULT, new Running.Change(failedS, withoutMains(kept)), sentence()));
        if (kept) {
            list.add(new Happening(
                    EventKind.BATTERY_ENDS,
                    new Running.Change(failedS + battery.forS(), withoutMains(false)),
                    ModelText.BATTERY_ENDS.say()));
        }
        return list;
    }

    private Running withoutMains(boolean battery) {
        Protection.Battery kept = rig.protection().battery();
        boolean tap = rig.cooling().supply().kind() == SupplyKind.TAP;
        return new Running(
                tap || (battery && kept.keeps().contains(Load.WATER)),
                false,
                battery && kept.keeps().contains(Load.FAN),
                battery && kept.keeps().contains(Load.BACKING_PUMP),
                true,
                true,
                true);
    }

    /** When the water stops after the fault, s; empty when it goes on. */
    OptionalDouble waterStopsS() {
        return happenings(0).stream()
                .filter(h -> !h.change().running().water())
                .mapToDouble(h -> h.change().atS())
                .findFirst();
    }

    private String sentence() {
        return switch (fault) {
            case WATER -> ModelText.WATER_STOPS.say();
            case MAINS -> (endsHeat() ? ModelText.MAINS_FAIL : ModelText.MAINS_FAIL_FLAME).say();
            case HEATER_STUCK -> ModelText.HEATER_STUCK.say();
            case BACKING -> ModelText.BACKING_STOPS.say();
            case CARTRIDGE_EMPTY -> ModelText.CARTRIDGE_EMPTY.say();
            case AIR_INLET -> ModelText.AIR_COMES_IN.say();
            case CHILLER_TRIP -> ModelText.CHILLER_TRIPS.say();
            case FAN -> ModelText.FAN_STOPS.say();
        };
    }
}
