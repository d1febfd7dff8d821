package boilwright.answers;

import boilwright.answers.WaterAnswer.Element;
import boilwright.answers.WaterAnswer.LeastFlow;
import boilwright.answers.WaterAnswer.Tank;
import boilwright.errors.ComputationException;
import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.fluid.DewPoint;
import boilwright.fluid.Water;
import boilwright.rig.Cooling;
import boilwright.rig.Limits;
import boilwright.rig.Rig;
import boilwright.rig.Room;
import boilwright.rig.Schedule;
import boilwright.rig.Supply;
import boilwright.rig.TypicalValues;
import boilwright.thermal.ElementState;
import boilwright.thermal.RunResult;
import boilwright.thermal.SeriesQuantity;
import boilwright.thermal.StageState;
import boilwright.thermal.SteadyState;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import boilwright.water.ChillerCapacity;
import boilwright.water.CircuitSolver;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The cooling side of one rig that was checked: what flows, what it carries, what it needs. */
final class CoolingSide {
    /** How much more than the least flow a pump should bring. */
    private static final double FLOW_RESERVE = 1.25;

    /** What is held once hot: a tenth more heat than full jets need. */
    private static final double HOLDING = 1.1;

    /** Relative humidity from which a bench is moist (engineering judgement). */
    private static final double MOIST_AIR = 0.7;

    private final CheckAnswer check;
    private final Rig rig;
    private final SteadyState steady;
    /** Whether as described not every jet is full, so that what the rig does now says little of what it needs. */
    private final boolean forFullJets;

    private final WaterSizing sizing;
    private final double roomK;

    CoolingSide(CheckAnswer check, WaterSizing sizing) {
        this.check = check;
        this.sizing = sizing;
        rig = check.rig();
        steady = WaterAnswer.fullJets(check);
        forFullJets = steady != check.steady();
        roomK = rig.room().temperatureK();
    }

    WaterAnswer answer(double sessionS) {
        boolean flows = steady.waterOutK().isPresent();
        double rest = steady.heatToWaterW();
        double peak = flows && !forFullJets
                ? Math.max(
                        rest,
                        Arrays.stream(column(SeriesQuantity.HEAT_TO_WATER))
                                .max()
                                .orElse(rest))
                : flows ? rest : 0;
        double pump = WaterSizing.pumpHeatW(rig);
        OptionalDouble capacity = WaterSizing.capacityW(rig);
        OptionalDouble settles = sizing.settlesAtK(rest + pump);
        List<LeastFlow> least = flows ? leastFlows() : List.of();
        Optional<LeastFlow> governing = governing(least);
        OptionalDouble pumpFlow =
                flows && least.stream().allMatch(l -> l.flowM3PerS().isPresent()) && governing.isPresent()
                        ? OptionalDouble.of(
                                FLOW_RESERVE * governing.get().flowM3PerS().orElseThrow())
                        : OptionalDouble.empty();
        List<Margin> margins = check.margins().stream()
                .filter(m -> m.id() == MarginId.GLASS_BODY || m.id().part() == Part.COOLING)
                .toList();
        return new WaterAnswer(
                check,
                forFullJets,
                check.withElsewhere(
                        fullJetsFirst() + new WaterVerdict(rig, steady, peak, pump, capacity, settles).text(governing),
                        margins),
                elements(),
                peak,
                rest,
                pump,
                capacity,
                settles,
                least,
                governing,
                flows ? OptionalDouble.of(WaterSizing.RESERVE * (peak + pump)) : OptionalDouble.empty(),
                pumpFlow,
                pumpFlow.isPresent()
                        ? OptionalDouble.of(sizing.circuitDropPa(pumpFlow.getAsDouble()))
                        : OptionalDouble.empty(),
                tank(rest + pump),
                sessionS,
                flows ? ice(sessionS, pump) : 0,
                flows ? sizing.turnedRound() : Optional.empty(),
                margins,
                cures(peak + pump, capacity),
                notes());
    }

    private String fullJetsFirst() {
        return forFullJets
                ? AnswerText.WATER_VERDICT_FULL_JETS.say(
                                Say.power(check.steady().heatToWaterW()), Say.power(steady.heatToWaterW()))
                        + " "
                : "";
    }

    private List<Element> elements() {
        List<Element> list = new ArrayList<>();
        for (ElementState state : steady.elements()) {
            var flow = steady.flow().elements().get(state.element());
            list.add(new Element(
                    elementName(rig.cooling().elements().get(state.element())),
                    state.inletK(),
                    state.outletK(),
                    state.massFlowKgPerS(),
                    state.heatW(),
                    state.coefficient(),
                    flow.reynolds(),
                    flow.pressureDropPa()));
        }
        return list;
    }

    private List<LeastFlow> leastFlows() {
        Limits limits = rig.limits();
        List<LeastFlow> list = new ArrayList<>();
        double out = WaterQuestion.outletLimitK(rig);
        list.add(new LeastFlow(
                MarginId.WATER_OUT, sizing.leastFlow(s -> s.hottestWaterK().orElse(Water.HIGHEST_K) - out)));
        if (WaterSizing.filmMarginK(steady).isPresent()) {
            list.add(new LeastFlow(
                    MarginId.FILM_MARGIN,
                    sizing.leastFlow(s -> MarginRules.LEAST_FILM_K
                            - WaterSizing.filmMarginK(s).orElse(0))));
        }
        if (steady.capK().isPresent()) {
            double cap = limits.capK().orElse(TypicalValues.CAP_LIMIT_K);
            list.add(new LeastFlow(MarginId.CAP, sizing.leastFlow(s -> s.capK().orElseThrow() - cap)));
        }
        return list;
    }

    private static Optional<LeastFlow> governing(List<LeastFlow> least) {
        Optional<LeastFlow> never =
                least.stream().filter(l -> l.flowM3PerS().isEmpty()).findFirst();
        return never.isPresent()
                ? never
                : least.stream()
                        .filter(l -> l.flowM3PerS().orElseThrow() > WaterAnswer.HARDLY_ANY_M3_PER_S)
                        .max(Comparator.comparingDouble(l -> l.flowM3PerS().orElseThrow()));
    }

    private double highestInletK() {
        return MarginRules.highestInletK(rig.limits());
    }

    /** From the warm-up as far as it goes, then on with the duty at rest. */
    private Optional<Tank> tank(double dutyW) {
        return rig.cooling().supply().tank().map(tank -> tank(tank, dutyW));
    }

    private Tank tank(Supply.Tank tank, double dutyW) {
        RunResult run = check.warmup();
        double limit = highestInletK();
        if (forFullJets) {
            double startK = Math.max(Water.FREEZING_K, tank.temperatureK());
            return new Tank(lasts(tank, 0, startK, tank.iceKg(), limit, dutyW), limit, tank.iceKg());
        }
        double[] times = column(SeriesQuantity.TIME);
        double[] inlet = column(SeriesQuantity.WATER_IN);
        for (int i = 1; i < times.length; i++) {
            if (inlet[i] > limit) {
                double share = (limit - inlet[i - 1]) / (inlet[i] - inlet[i - 1]);
                double t = times[i - 1] + Math.max(0, share) * (times[i] - times[i - 1]);
                return new Tank(OptionalDouble.of(t), limit, tank.iceKg());
            }
        }
        int last = times.length - 1;
        double ice = tank.iceKg() > 0
                ? Math.max(0, run.series().column(SeriesQuantity.ICE).values()[last])
                : 0;
        return new Tank(lasts(tank, times[last], inlet[last], ice, limit, dutyW), limit, tank.iceKg());
    }

    /** From a time on at a constant duty until the tank's water is at the limit, s; empty when it never is. */
    private OptionalDouble lasts(
            Supply.Tank tank, double fromS, double waterK, double ice, double limitK, double dutyW) {
        double water = tank.volumeM3() * Water.density(tank.temperatureK()) + tank.iceKg() - ice;
        double room = tank.airConductance() * (roomK - (waterK + limitK) / 2);
        double net = dutyW + room;
        double store = water * (Water.enthalpy(limitK) - Water.enthalpy(waterK))
                + ice * (Water.FUSION_HEAT + Water.enthalpy(limitK));
        return net > 0 ? OptionalDouble.of(fromS + Math.max(0, store) / net) : OptionalDouble.empty();
    }

    private double ice(double sessionS, double pumpW) {
        double[] times = column(SeriesQuantity.TIME);
        double[] duty = column(SeriesQuantity.HEAT_TO_WATER);
        double heat = 0;
        double end = forFullJets ? 0 : Math.min(sessionS, times[times.length - 1]);
        for (int i = 1; i < times.length && times[i - 1] < end; i++) {
            heat += (Math.min(end, times[i]) - times[i - 1]) * (duty[i] + duty[i - 1]) / 2;
        }
        heat += Math.max(0, sessionS - end) * steady.heatToWaterW() + sessionS * pumpW;
        double volume = rig.cooling().supply().tank().map(Supply.Tank::volumeM3).orElse(0.0);
        double good = rig.limits().waterInHighK().orElse(MarginRules.WATER_IN_GOOD_K);
        return WaterSizing.iceKg(heat, volume, rig.cooling().inletTemperatureK(), good);
    }

    private double[] column(SeriesQuantity quantity) {
        return check.warmup().series().column(quantity).values();
    }

    /** What would make the chiller enough, with its reserve: a warmer set point, a cooler room, a larger one, less heat. */
    private List<String> cures(double dutyW, OptionalDouble capacity) {
        List<String> cures = new ArrayList<>();
        double wanted = WaterSizing.RESERVE * dutyW;
        if (capacity.isEmpty() || capacity.getAsDouble() >= wanted) {
            return cures;
        }
        cures.add(AnswerText.CURE_CHILLER_LARGER.say(
                Say.power(wanted), Say.temperature(rig.cooling().inletTemperatureK()), Say.temperature(roomK)));
        Optional<Supply.Chiller> described = rig.cooling().supply().chiller();
        if (described.isPresent()) {
            Supply.Chiller chiller = described.get();
            ChillerCapacity known = ChillerCapacity.of(chiller.capacity());
            double warmest = Math.min(known.highestWaterK(), highestInletK());
            double set = chiller.temperatureK();
            double step = 0.5;
            while (set + step <= warmest && known.wattsAt(set, roomK) < wanted) {
                set += step;
            }
            Rig warmer = rig.withCooling(
                    new Cooling(chiller.withTemperature(set), rig.cooling().elements()));
            cures.add(
                    known.wattsAt(set, roomK) >= wanted && works(warmer)
                            ? AnswerText.CURE_CHILLER_WARMER.say(
                                    Say.temperature(set), Say.power(known.wattsAt(set, roomK)))
                            : AnswerText.CURE_CHILLER_WARMER_NOT.say(
                                    Say.temperature(warmest), Say.power(known.wattsAt(warmest, roomK))));
            double room = roomK;
            while (room - step >= known.lowestRoomK() && known.wattsAt(chiller.temperatureK(), room) < wanted) {
                room -= step;
            }
            if (known.wattsAt(chiller.temperatureK(), room) >= wanted
                    && works(rig.withRoom(new Room(room, rig.room().pressurePa())))) {
                cures.add(AnswerText.CURE_CHILLER_ROOM.say(Say.temperature(room)));
            }
        }
        lessHeat().ifPresent(cures::add);
        return cures;
    }

    /** Less heat: only where it still fills every jet with a tenth to spare and the chiller then holds. */
    private Optional<String> lessHeat() {
        double wanted = HOLDING * check.needed().heatNeededW();
        double less = steady.heatDeliveredW() - wanted;
        Schedule.Step last = rig.schedule().last();
        if (forFullJets || less <= 0 || last.holdK().isPresent()) {
            return Optional.empty();
        }
        List<Schedule.Step> steps = new ArrayList<>(rig.schedule().steps());
        steps.set(steps.size() - 1, new Schedule.Power(last.atS(), last.level() * wanted / steady.heatDeliveredW()));
        double saved = less * steady.heatToWaterW() / steady.heatDeliveredW();
        return works(rig.withSchedule(new Schedule(steps)))
                ? Optional.of(AnswerText.CURE_CHILLER_POWER.say(Say.power(less), Say.power(saved)))
                : Optional.empty();
    }

    /** Whether on a changed rig the chiller's margin holds at rest, every jet stays full and nothing fails that holds now. */
    private boolean works(Rig changed) {
        try {
            RestAnswer then =
                    RestAnswer.of(check.asked().with(changed, check.asked().values()));
            return then.steady().stages().stream().allMatch(StageState::full)
                    && then.margins().stream()
                            .anyMatch(m -> m.id() == MarginId.CHILLER && m.status() == Margin.Status.HOLDS)
                    && then.margins().stream()
                            .filter(Margin::fails)
                            .allMatch(m -> check.margins().stream().anyMatch(now -> now.id() == m.id() && now.fails()));
        } catch (InputRefusedException | ComputationException e) {
            // a rig that cannot be, or with which no state of rest is found, is no remedy
            return false;
        }
    }

    private List<String> notes() {
        List<String> notes = new ArrayList<>();
        CircuitSolver.solve(rig).notes().stream().map(Message::text).forEach(notes::add);
        notes.add(AnswerText.WATER_NOTE_FLOW.say());
        notes.add(AnswerText.WATER_NOTE_PLAIN.say());
        double coldK = Math.min(rig.cooling().inletTemperatureK(), roomK);
        if (roomK < DewPoint.HIGHEST_K && coldK < DewPoint.temperature(roomK, MOIST_AIR)) {
            double humidity = DewPoint.saturationPressure(coldK) / DewPoint.saturationPressure(roomK);
            notes.add(AnswerText.WATER_NOTE_DEW.say(Say.temperature(coldK), Say.percent(humidity)));
        }
        if (rig.cooling().elements().stream()
                .anyMatch(element -> element.cooledPart().isPresent())) {
            notes.add(AnswerText.WATER_NOTE_LOADS.say());
        }
        check.steady().assumptions().stream().filter(a -> !notes.contains(a)).forEach(notes::add);
        return notes;
    }

    /** Its own name, or its kind with the stages that it covers; with its branch where there are several. */
    static String elementName(Cooling.Element element) {
        String name = element.place().name();
        if (name.isEmpty()) {
            name = element.kind().id().replace('-', ' ');
            if (!element.covers().isEmpty()) {
                name += " " + String.join(", ", element.covers());
            }
        }
        String branch = element.place().branch();
        return branch.isEmpty() ? name : branch + ": " + name;
    }

    /** The cooling in a few sentences. */
    private static final class WaterVerdict {
        private final Rig rig;
        private final SteadyState steady;
        private final double peakW;
        private final double pumpW;
        private final OptionalDouble capacityW;
        private final OptionalDouble settlesAtK;

        WaterVerdict(
                Rig rig,
                SteadyState steady,
                double peakW,
                double pumpW,
                OptionalDouble capacityW,
                OptionalDouble settlesAtK) {
            this.rig = rig;
            this.steady = steady;
            this.peakW = peakW;
            this.pumpW = pumpW;
            this.capacityW = capacityW;
            this.settlesAtK = settlesAtK;
        }

        String text(Optional<LeastFlow> governing) {
            if (rig.cooling().supply().isAir()) {
                return AnswerText.WATER_VERDICT_FAN.say(Say.power(steady.heatToAirW()));
            }
            if (steady.waterOutK().isEmpty()) {
                return AnswerText.WATER_VERDICT_NONE.say();
            }
            StringBuilder text = new StringBuilder(AnswerText.WATER_VERDICT_FLOW.say(
                    flow(steady.flow().volumeFlowM3PerS()),
                    Say.power(steady.heatToWaterW()),
                    Say.temperature(rig.cooling().inletTemperatureK()),
                    Say.temperature(steady.waterOutK().getAsDouble())));
            if (capacityW.isPresent()) {
                text.append(' ').append(chiller(capacityW.getAsDouble()));
            }
            governing.ifPresent(least -> text.append(' ')
                    .append(
                            least.flowM3PerS().isPresent()
                                    ? AnswerText.WATER_VERDICT_LEAST.say(
                                            flow(least.flowM3PerS().getAsDouble()),
                                            least.limit().title())
                                    : AnswerText.WATER_VERDICT_NO_FLOW.say(
                                            least.limit().title())));
            return text.toString();
        }

        private String chiller(double capacity) {
            double duty = steady.heatToWaterW() + pumpW;
            if (capacity < duty) {
                String text = AnswerText.WATER_VERDICT_SHORT.say(
                        Say.power(capacity), Say.power(duty), Say.power(duty - capacity));
                return settlesAtK.isPresent()
                        ? text + " " + AnswerText.WATER_VERDICT_SETTLES.say(Say.temperature(settlesAtK.getAsDouble()))
                        : text;
            }
            double peak = peakW + pumpW;
            if (capacity < peak) {
                return AnswerText.WATER_VERDICT_PEAK.say(Say.power(capacity), Say.power(duty), Say.power(peak));
            }
            return capacity < WaterSizing.RESERVE * peak
                    ? AnswerText.WATER_VERDICT_TIGHT.say(Say.power(capacity), Say.power(peak))
                    : AnswerText.WATER_VERDICT_ENOUGH.say(Say.power(capacity), Say.power(peak));
        }

        private static String flow(double m3PerS) {
            return QuantityWriter.writeAuto(m3PerS, Dimension.VOLUME_FLOW);
        }
    }
}
