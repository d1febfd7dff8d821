package boilwright.drill;

import boilwright.answers.CheckAnswer;
import boilwright.answers.Instructions;
import boilwright.answers.Say;
import boilwright.drill.DrillAnswer.TripTime;
import boilwright.rig.ElementKind;
import boilwright.rig.ForelineKind;
import boilwright.rig.Protection;
import boilwright.rig.Rig;
import boilwright.rig.SupplyKind;
import boilwright.thermal.DrillRun;
import boilwright.thermal.Fault;
import boilwright.thermal.FaultDrill;
import boilwright.thermal.SeriesQuantity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What acts by itself in a drill, what to do first, and what to beware of. */
final class DrillAdvice {
    private final Rig rig;
    private final Instructions what;
    private final Fault fault;
    private final boolean flame;
    private final boolean water;

    DrillAdvice(CheckAnswer check, Fault fault) {
        rig = check.rig();
        what = new Instructions(rig, check.asked().fluid());
        this.fault = fault;
        flame = rig.heatSource().isFlame();
        water = rig.cooling().elements().stream().anyMatch(e -> e.kind() != ElementKind.VALVE);
    }

    List<String> acts(List<TripTime> trips, boolean heatEnds) {
        List<String> list = new ArrayList<>();
        if (fault == Fault.MAINS) {
            list.add((flame ? DrillSentence.ACTS_FLAME_BURNS : DrillSentence.ACTS_HEAT_ENDS).say());
            if (rig.cooling().supply().kind() == SupplyKind.TAP) {
                list.add(DrillSentence.ACTS_TAP.say());
            }
            Protection.Battery battery = rig.protection().battery();
            if (battery.forS() > 0 && !battery.keeps().isEmpty()) {
                list.add(DrillSentence.ACTS_BATTERY.say(DrillWords.kept(battery.keeps()), Say.time(battery.forS())));
            }
        } else if (fault == Fault.CARTRIDGE_EMPTY) {
            list.add(DrillSentence.ACTS_FLAME_OUT.say());
        }
        if (!heatEnds) {
            list.add(trip(trips));
        }
        return list;
    }

    private String trip(List<TripTime> trips) {
        if (trips.isEmpty()) {
            return DrillSentence.ACTS_NO_TRIPS.say();
        }
        Optional<TripTime> soonest = trips.stream()
                .filter(t -> t.actsS().isPresent())
                .min(Comparator.comparingDouble(t -> t.actsS().getAsDouble()));
        return soonest.map(t -> DrillSentence.ACTS_TRIP.say(
                        DrillWords.title(t.trip().kind()),
                        DrillWords.value(t.trip().kind(), t.trip().setPoint()),
                        Say.time(t.actsS().getAsDouble())))
                .orElseGet(DrillSentence.ACTS_TRIP_NONE::say);
    }

    /** What to do, in order; the last line says how long no air may come in. */
    List<String> first(DrillRun cutAtOnce) {
        List<String> list = new ArrayList<>();
        String heat = what.heatOff();
        switch (fault) {
            case WATER -> {
                list.add(heat);
                shutValve(list);
                list.add(what.waterBack());
            }
            case MAINS -> {
                if (flame) {
                    list.add(heat);
                }
                shutValve(list);
                list.add(what.shutBacking());
                if (!flame) {
                    list.add(DrillSentence.FIRST_SWITCH_OFF.say());
                }
                if (water) {
                    list.add(rig.cooling().supply().kind() == SupplyKind.TAP ? what.keepWater() : what.waterBack());
                }
            }
            case HEATER_STUCK -> {
                list.add(flame ? heat : DrillSentence.FIRST_PLUG.say());
                shutValve(list);
                keepWater(list);
            }
            case BACKING -> {
                list.add(heat);
                shutValve(list);
                list.add(what.shutBacking());
                keepWater(list);
            }
            case CARTRIDGE_EMPTY -> {
                shutValve(list);
                list.add(DrillSentence.FIRST_CARTRIDGE.say());
                keepWater(list);
            }
            case AIR_INLET -> {
                list.add(heat);
                shutValve(list);
                list.add(DrillSentence.FIRST_OPENING.say());
                keepWater(list);
            }
            case CHILLER_TRIP -> {
                list.add(heat);
                shutValve(list);
                list.add(DrillSentence.FIRST_TAP.say());
            }
            case FAN -> {
                list.add(heat);
                shutValve(list);
            }
        }
        list.add(what.noAir(coldAfterS(cutAtOnce)));
        return list;
    }

    private void shutValve(List<String> list) {
        what.shutValve().ifPresent(list::add);
    }

    private void keepWater(List<String> list) {
        if (water) {
            list.add(what.keepWater());
        }
    }

    /** When the oil is cold enough for air for good, s after the failure; empty when that is not within the run. */
    private OptionalDouble coldAfterS(DrillRun run) {
        double[] time = run.run().series().column(SeriesQuantity.TIME).values();
        double[] oil =
                run.run().series().column(SeriesQuantity.LIQUID_TEMPERATURE).values();
        int last = time.length - 1;
        if (oil[last] > what.airK()) {
            return OptionalDouble.empty();
        }
        int i = last;
        while (i > 0 && oil[i - 1] <= what.airK()) {
            i--;
        }
        double failed = time[last] - run.watchedS();
        return OptionalDouble.of(Math.max(0, time[i] - failed));
    }

    /** What can hurt someone in this fault, beside the cautions of the rig itself. */
    List<String> cautions(CheckAnswer check) {
        List<String> list = new ArrayList<>();
        if (water && fault != Fault.CARTRIDGE_EMPTY && fault != Fault.AIR_INLET) {
            list.add(DrillSentence.CAUTION_CLOSED.say());
            list.add(what.waterBack());
        }
        if (flame && (fault == Fault.MAINS || fault == Fault.WATER || fault == Fault.BACKING)) {
            list.add(DrillSentence.CAUTION_FLAME.say());
        }
        if (fault == Fault.AIR_INLET || fault == Fault.BACKING || fault == Fault.MAINS) {
            list.add(DrillSentence.CAUTION_AIR.say());
        }
        if (fault == Fault.BACKING || fault == Fault.MAINS) {
            list.add(DrillSentence.CAUTION_SUCK_BACK.say());
        }
        if (fault == Fault.MAINS && !flame) {
            list.add(DrillSentence.CAUTION_RESTART.say());
        }
        list.addAll(check.cautions());
        return list.stream().distinct().toList();
    }

    List<String> notes(OptionalDouble atS) {
        List<String> list = new ArrayList<>();
        if (atS.isPresent()) {
            list.add(DrillSentence.NOTE_AT.say(Say.time(atS.getAsDouble())));
        } else {
            list.add((fault == Fault.HEATER_STUCK ? DrillSentence.NOTE_STUCK : DrillSentence.NOTE_AS_HELD).say());
        }
        list.add(DrillSentence.NOTE_STANDS.say());
        switch (fault) {
            case BACKING -> list.add(DrillSentence.NOTE_BACKING.say());
            case AIR_INLET ->
                list.add(DrillSentence.NOTE_AIR.say(
                        Math.round(FaultDrill.OPENING_M * 1000) + " mm", Say.pressure(FaultDrill.FOLLOWED_PA)));
            case FAN -> list.add(DrillSentence.NOTE_FAN.say());
            case MAINS -> {
                if (rig.cooling().supply().kind() == SupplyKind.GIVEN_FLOW) {
                    list.add(DrillSentence.NOTE_GIVEN_FLOW.say());
                }
                list.add((rig.foreline().kind() == ForelineKind.GIVEN_PRESSURE
                                ? DrillSentence.NOTE_FORELINE_GIVEN
                                : DrillSentence.NOTE_BACKING)
                        .say());
            }
            default -> {}
        }
        list.add(DrillSentence.NOTE_WATCHED.say(Say.time(FaultDrill.WATCHED_S)));
        list.add(DrillSentence.NOTE_LIMITS.say());
        if (!rig.protection().trips().isEmpty()) {
            list.add(DrillSentence.NOTE_TRIPS.say());
        }
        return list;
    }
}
