package boilwright.thermal;

import boilwright.rig.Schedule;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/** Turns what was watched in a run into the events that people read, each with its reason. */
final class RunEvents {
    private final PumpModel model;
    private final RunWatches watches;
    private final List<Schedule.Step> steps;
    private final boolean cooling;
    private final double endS;
    private final boolean ended;
    private final List<TimeEvent> events = new ArrayList<>();

    RunEvents(
            PumpModel model,
            RunWatches watches,
            List<Schedule.Step> steps,
            boolean cooling,
            double endS,
            boolean ended) {
        this.model = model;
        this.watches = watches;
        this.steps = steps;
        this.cooling = cooling;
        this.endS = endS;
        this.ended = ended;
    }

    /** Events in order of time; those that do not happen come last. */
    List<TimeEvent> list() {
        if (cooling) {
            coolingEvents();
        } else {
            warmingEvents();
        }
        for (String name : RunLimits.NAMES) {
            OptionalDouble t = watches.first("limit-reached", name, true);
            if (t.isPresent()) {
                events.add(new TimeEvent("limit-reached", "", t, "A limit is passed: " + name + "."));
            }
        }
        if (model.layout.sourceSize == 2 && !cooling) {
            OptionalDouble t = watches.first("fuel-empty", "", false);
            if (t.isPresent()) {
                events.add(new TimeEvent("fuel-empty", "", t, "The cartridge is empty and the flame goes out."));
            }
        }
        events.sort(Comparator.comparingDouble(e -> e.timeS().orElse(Double.MAX_VALUE)));
        return events;
    }

    private void warmingEvents() {
        double before = 0;
        for (Schedule.Step step : steps) {
            double level = step instanceof Schedule.Power power ? power.fraction() : 1;
            if (level > 0 && before == 0) {
                events.add(new TimeEvent("heat-on", "", OptionalDouble.of(step.atS()), "The heat is turned on."));
            } else if (level == 0 && before > 0) {
                events.add(new TimeEvent("heat-off", "", OptionalDouble.of(step.atS()), "The heat is turned off."));
            }
            before = level;
        }
        add(
                "degassed",
                "",
                watches.first("degassed", "", true),
                "The oil has given off its dissolved air; it no longer loads the backing pump.",
                "The oil still holds more than a twentieth of its air at the end of the run.");
        add(
                "first-vapour",
                "",
                watches.first("first-vapour", "", true),
                "The oil's vapour pressure passes the foreline pressure of " + pressure(model.forelinePa) + ".",
                "The oil's vapour pressure never reaches the foreline pressure of " + pressure(model.forelinePa) + ".");
        for (int k = 0; k < model.jets.stages; k++) {
            String stage = watches.stage(k);
            add(
                    "front-at-stage",
                    stage,
                    watches.first("front-at-stage", stage, true),
                    "Hot vapour has reached the throat of jet " + stage + ".",
                    "The vapour front never reaches jet " + stage + ".");
            add("jet-lit", stage, watches.lit(k).first(true), "Jet " + stage + " works.", DarkReason.of(model, k));
            add(
                    "jet-full",
                    stage,
                    watches.full(k).first(true),
                    "Jet " + stage + " carries nine tenths of its full flow or more.",
                    notFull(k));
        }
        OptionalDouble pumping = model.jets.allFull() ? watches.allFull().lastOn() : OptionalDouble.empty();
        add("full-pumping", "", pumping, "All jets carry their full flow.", neverFull());
        add(
                "crossover-allowed",
                "",
                pumping,
                "All jets are full; the chamber may be opened to the pump once it is roughed below "
                        + pressure(CROSSOVER_PA) + ".",
                "Not all jets become full, so the chamber must stay on the backing pump.");
    }

    /** Chamber pressure for crossover before the backing pump is known, Pa. */
    private static final double CROSSOVER_PA = 10;

    private String notFull(int k) {
        if (!model.jets.isLit(k)) {
            return DarkReason.of(model, k);
        }
        return "Jet " + watches.stage(k) + " stays at " + Math.round(100 * model.jets.fraction[k])
                + " % of its full flow; nine tenths are wanted.";
    }

    private String neverFull() {
        List<String> names = new ArrayList<>();
        for (int k = 0; k < model.jets.stages; k++) {
            if (!model.jets.isFull(k)) {
                names.add(watches.stage(k));
            }
        }
        return names.isEmpty() ? "" : "Not full at the end of the run: " + String.join(", ", names) + ".";
    }

    private void coolingEvents() {
        events.add(new TimeEvent("heat-off", "", OptionalDouble.of(0), "The heat is turned off."));
        OptionalDouble gone = OptionalDouble.of(0);
        for (int k = 0; k < model.jets.stages; k++) {
            if (watches.lit(k).first(true).isEmpty()) {
                continue;
            }
            String stage = watches.stage(k);
            OptionalDouble lost = watches.lit(k).first(false);
            add("jet-lost", stage, lost, "Jet " + stage + " goes out.", "Jet " + stage + " is still lit.");
            gone = gone.isPresent() && lost.isPresent()
                    ? OptionalDouble.of(Math.max(gone.getAsDouble(), lost.getAsDouble()))
                    : OptionalDouble.empty();
        }
        add(
                "jets-gone",
                "",
                gone,
                "No jet pumps any more; the high-vacuum valve must be shut by now.",
                "Some jet is still lit.");
        add("flow-zero", "", flowZero(), "No more vapour leaves the oil.", "The oil still gives off vapour.");
        add(
                "air-allowed",
                "",
                watches.first("air-allowed", "", true),
                airReason(),
                model.fluid.airAdmissionLimit().isPresent()
                        ? "The oil is still too hot for air."
                        : "No temperature at which this oil may meet air is known.");
        add(
                "touch-safe",
                "",
                already(watches.first("touch-safe", "", true), "touch-safe"),
                "Every outside face is below 60 degC (metal) or 70 degC (glass).",
                "Some outside face is still too hot to touch.");
        OptionalDouble leave = watches.first("water-may-stop", "", true);
        add(
                "water-may-stop",
                "",
                leave,
                "The oil is below " + leaveTemperature() + " and gives off no vapour: the water may be turned off.",
                "The oil is still too hot to stop the water.");
        add(
                "backing-may-stop",
                "",
                leave,
                "The oil is below " + leaveTemperature() + " and gives off no vapour: the backing pump may be stopped.",
                "The oil is still too hot to stop the backing pump.");
    }

    private OptionalDouble flowZero() {
        return already(watches.first("first-vapour", "", false), "first-vapour");
    }

    /** A condition that already held at the start and was never crossed holds from 0 s. */
    private OptionalDouble already(OptionalDouble crossing, String name) {
        if (crossing.isPresent() || !ended) {
            return crossing;
        }
        return OptionalDouble.of(0);
    }

    private String airReason() {
        return model.fluid.airAdmissionLimit().isPresent()
                ? "The oil is below "
                        + temperature(model.fluid.airAdmissionLimit().getAsDouble())
                        + ": air may be let in, slowly, with the backing pump isolated."
                : "";
    }

    private String leaveTemperature() {
        return temperature(Math.min(RunWatches.LEAVE_OIL_K, model.fluid.saturationTemperature(model.forelinePa)));
    }

    private void add(String id, String stage, OptionalDouble t, String reason, String otherwise) {
        String why = t.isPresent()
                ? reason
                : otherwise
                        + (ended
                                ? ""
                                : " The run was broken off after " + QuantityWriter.writeAuto(endS, Dimension.TIME)
                                        + ".");
        events.add(new TimeEvent(id, stage, t, why));
    }

    private static String pressure(double pa) {
        return QuantityWriter.writeAuto(pa, Dimension.PRESSURE);
    }

    private static String temperature(double k) {
        return QuantityWriter.writeAuto(k, Dimension.TEMPERATURE);
    }
}
