package boilwright.drill;

import boilwright.answers.CheckAnswer;
import boilwright.answers.Say;
import boilwright.drill.DrillAnswer.TripTime;
import boilwright.fluid.WorkingFluid;
import boilwright.rig.Cooling;
import boilwright.rig.Foreline;
import boilwright.rig.HeatSource;
import boilwright.rig.LinePiece;
import boilwright.rig.Protection;
import boilwright.rig.Rig;
import boilwright.rig.Supply;
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
    private final WorkingFluid fluid;
    private final Fault fault;
    private final boolean flame;
    private final boolean water;

    DrillAdvice(CheckAnswer check, Fault fault) {
        rig = check.rig();
        fluid = check.asked().fluid();
        this.fault = fault;
        flame = rig.heatSource() instanceof HeatSource.GasBurner;
        water = rig.cooling().elements().stream().anyMatch(e -> !(e instanceof Cooling.Valve));
    }

    List<String> acts(List<TripTime> trips, boolean heatEnds) {
        List<String> list = new ArrayList<>();
        if (fault == Fault.MAINS) {
            list.add((flame ? DrillSentence.ACTS_FLAME_BURNS : DrillSentence.ACTS_HEAT_ENDS).say());
            if (rig.cooling().supply() instanceof Supply.Tap) {
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
        List<DrillSentence> list = new ArrayList<>();
        DrillSentence heat = flame ? DrillSentence.FIRST_GAS_OFF : DrillSentence.FIRST_HEAT_OFF;
        switch (fault) {
            case WATER -> list.addAll(List.of(heat, DrillSentence.FIRST_VALVE, DrillSentence.FIRST_WATER_STAYS_OFF));
            case MAINS -> {
                list.addAll(List.of(
                        flame ? DrillSentence.FIRST_GAS_OFF : DrillSentence.FIRST_VALVE,
                        flame ? DrillSentence.FIRST_VALVE : DrillSentence.FIRST_BACKING_SHUT,
                        flame ? DrillSentence.FIRST_BACKING_SHUT : DrillSentence.FIRST_SWITCH_OFF));
                if (water) {
                    list.add(
                            rig.cooling().supply() instanceof Supply.Tap
                                    ? DrillSentence.FIRST_WATER_ON
                                    : DrillSentence.FIRST_WATER_STAYS_OFF);
                }
            }
            case HEATER_STUCK -> {
                list.addAll(List.of(
                        flame ? DrillSentence.FIRST_GAS_OFF : DrillSentence.FIRST_PLUG, DrillSentence.FIRST_VALVE));
                waterOn(list);
            }
            case BACKING -> {
                list.addAll(List.of(heat, DrillSentence.FIRST_VALVE, DrillSentence.FIRST_BACKING_SHUT));
                waterOn(list);
            }
            case CARTRIDGE_EMPTY -> {
                list.addAll(List.of(DrillSentence.FIRST_VALVE, DrillSentence.FIRST_CARTRIDGE));
                waterOn(list);
            }
            case AIR_INLET -> {
                list.addAll(List.of(heat, DrillSentence.FIRST_VALVE, DrillSentence.FIRST_OPENING));
                waterOn(list);
            }
            case CHILLER_TRIP -> list.addAll(List.of(heat, DrillSentence.FIRST_VALVE, DrillSentence.FIRST_TAP));
            case FAN -> list.addAll(List.of(heat, DrillSentence.FIRST_VALVE));
        }
        if (!hasValve()) {
            list.remove(DrillSentence.FIRST_VALVE);
        }
        List<String> said = new ArrayList<>(list.stream().map(s -> s.say()).toList());
        said.add(noAir(cutAtOnce));
        return said;
    }

    /** Whether there is a valve to shut; a rig whose chamber is not described may have one. */
    private boolean hasValve() {
        return rig.vacuum()
                .map(side -> side.line().stream().anyMatch(p -> p.shape() instanceof LinePiece.Valve))
                .orElse(true);
    }

    private void waterOn(List<DrillSentence> list) {
        if (water) {
            list.add(DrillSentence.FIRST_WATER_ON);
        }
    }

    private String noAir(DrillRun run) {
        double airK = fluid.airAdmissionLimit().orElse(rig.room().temperatureK() + 5);
        double[] time = run.run().series().column(SeriesQuantity.TIME).values();
        double[] oil =
                run.run().series().column(SeriesQuantity.LIQUID_TEMPERATURE).values();
        int last = time.length - 1;
        if (oil[last] > airK) {
            return DrillSentence.FIRST_NO_AIR_LONG.say();
        }
        int i = last;
        while (i > 0 && oil[i - 1] <= airK) {
            i--;
        }
        double failed = time[last] - run.watchedS();
        return DrillSentence.FIRST_NO_AIR.say(Say.time(Math.max(0, time[i] - failed)));
    }

    /** What can hurt someone in this fault, beside the cautions of the rig itself. */
    List<String> cautions(CheckAnswer check) {
        List<String> list = new ArrayList<>();
        if (water && fault != Fault.CARTRIDGE_EMPTY && fault != Fault.AIR_INLET) {
            list.add(DrillSentence.CAUTION_CLOSED.say());
            list.add(DrillSentence.CAUTION_BACK.say());
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
            list.add((fault == Fault.HEATER_STUCK ? DrillSentence.NOTE_STUCK : DrillSentence.NOTE_FULL_POWER).say());
        }
        list.add(DrillSentence.NOTE_STANDS.say());
        switch (fault) {
            case BACKING -> list.add(DrillSentence.NOTE_BACKING.say());
            case AIR_INLET ->
                list.add(DrillSentence.NOTE_AIR.say(
                        Math.round(FaultDrill.OPENING_M * 1000) + " mm", Say.pressure(FaultDrill.FOLLOWED_PA)));
            case FAN -> list.add(DrillSentence.NOTE_FAN.say());
            case MAINS -> {
                if (rig.cooling().supply() instanceof Supply.GivenFlow) {
                    list.add(DrillSentence.NOTE_GIVEN_FLOW.say());
                }
                list.add((rig.foreline() instanceof Foreline.GivenPressure
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
