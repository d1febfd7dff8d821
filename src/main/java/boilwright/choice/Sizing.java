package boilwright.choice;

import boilwright.answers.Asked;
import boilwright.answers.Cautions;
import boilwright.answers.HeatLimiter;
import boilwright.answers.RestAnswer;
import boilwright.choice.SizeAnswer.Figure;
import boilwright.choice.SizeAnswer.Least;
import boilwright.choice.SizeAnswer.Saved;
import boilwright.choice.SizeAnswer.Setting;
import boilwright.errors.ComputationException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.files.ProgramVersion;
import boilwright.numerics.CancelToken;
import boilwright.rig.Rig;
import boilwright.rig.Schedule;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** Works out how much heat source is enough for one rig; for one thread. */
final class Sizing {
    private final Asked asked;
    /** The rig at the level of heat that is sized. */
    private final Rig rig;

    private final double margin;
    private final double level;
    private final HeatTrial trial;
    private final LeastSearch search;
    private final List<String> notes = new ArrayList<>();

    private Sizing(Asked asked, Rig rig, double margin, double level, CancelToken cancel) {
        this.asked = asked;
        this.rig = rig;
        this.margin = margin;
        this.level = level;
        trial = new HeatTrial(asked, cancel);
        search = new LeastSearch(trial);
    }

    /** For the level at which the rig's schedule ends; for the full power where that level heats nothing, or not by power. */
    static Sizing of(Asked asked, double margin, CancelToken cancel) {
        Rig rig = asked.rig();
        Schedule.Step last = last(rig);
        boolean sized = last.holdK().isEmpty() && last.level() > 0;
        double level = sized ? last.level() : 1;
        Rig full = sized ? rig : rig.withSchedule(new Schedule(List.of(new Schedule.Power(0, 1))));
        Sizing sizing = new Sizing(asked, full, margin, level, cancel);
        if (!sized) {
            sizing.notes.add(
                    last.holdK().isPresent()
                            ? ChoiceText.NOTE_SIZED_NOT_HELD.say()
                            : ChoiceText.NOTE_SIZED_NOT_OFF.say());
        } else if (level < 1) {
            sizing.notes.add(ChoiceText.NOTE_SIZED_AT_LEVEL.say(percent(level)));
        }
        return sizing;
    }

    static Schedule.Step last(Rig rig) {
        return rig.schedule().steps().get(rig.schedule().steps().size() - 1);
    }

    SizeAnswer answer() {
        RestAnswer rest = trial.rest(rig)
                .orElseThrow(() -> new ComputationException(Message.of(MessageKey.CHOICE_NO_REST, rig.name())));
        double ratio = trial.ratio(rig);
        List<Least> least = search.singles(rig, margin);
        PowerWindow window = window();
        List<Setting> settings = settings(window);
        notes.add(ChoiceText.NOTE_SIZE_AREA.say());
        notes.addAll(rest.steady().assumptions());
        return new SizeAnswer(
                asked.rig(),
                asked.fluid().title(),
                margin,
                ratio,
                verdict(ratio, least, window),
                level,
                rest.needed(),
                least,
                search.pairs(rig, margin),
                window,
                settings,
                saved(settings),
                curves(),
                Cautions.placed(rig, asked.fluid(), rest.steady().hottestOutsideK()).stream()
                        .map(Cautions.Caution::sentence)
                        .toList(),
                notes,
                ProgramVersion.current(),
                asked.dataVersion());
    }

    private HeatCurves curves() {
        Optional<RestAnswer> full = trial.rest(atPower(rig.heatSource().ratedPowerW()));
        double upTo = full.map(r -> r.steady().heatDeliveredW()).orElse(0.0);
        return NeedCurve.curves(rig, trial, NeedCurve.of(rig, trial, upTo), full);
    }

    /** The rig with this power set at the last level of its schedule, W. */
    private Rig atPower(double watts) {
        return rig.withHeatSource(rig.heatSource().withRatedPower(watts / level));
    }

    private PowerWindow window() {
        HeatLimiter limiter = trial.limiter(search.atMostPower(rig));
        String shortage = ChoiceText.WINDOW_SHORT.say(limiter.reason(), limiter.cure());
        OptionalDouble rated = search.least(rig, Figure.RATED_POWER, 1);
        OptionalDouble low =
                rated.isPresent() ? OptionalDouble.of(rated.getAsDouble() * level) : OptionalDouble.empty();
        return new WindowSearch(trial, this::atPower).find(low, rig.heatSource().ratedPowerW() * level, shortage);
    }

    private List<Setting> settings(PowerWindow window) {
        double rated = rig.heatSource().ratedPowerW();
        if (!window.isOpen() || window.lowW().getAsDouble() > rated) {
            return List.of();
        }
        double low = window.lowW().getAsDouble();
        double top = Math.min(rated, window.highW().orElse(rated));
        OptionalDouble held = search.least(rig, Figure.RATED_POWER, SourceTrial.HOLDING_RATIO);
        double wanted = held.isPresent() ? held.getAsDouble() * level : Double.POSITIVE_INFINITY;
        // a window too narrow for the reserve: its middle is as far from both ends as can be
        double hold = wanted <= top ? wanted : (low + top) / 2;
        return List.of(setting("warm-up", top), setting("holding", hold));
    }

    private Setting setting(String id, double watts) {
        Rig set = atPower(watts);
        RestAnswer rest = trial.rest(set)
                .orElseThrow(() -> new ComputationException(Message.of(MessageKey.CHOICE_NO_REST, rig.name())));
        return new Setting(
                id,
                watts,
                watts / rig.heatSource().ratedPowerW(),
                trial.ratio(set),
                rest.steady().liquidTemperatureK(),
                rest.steady().sourceInputW(),
                rest.steady().heatToWaterW());
    }

    private Optional<Saved> saved(List<Setting> settings) {
        if (settings.isEmpty()) {
            return Optional.empty();
        }
        Setting hot = settings.get(0);
        Setting held = settings.get(1);
        double flow =
                trial.rest(atPower(hot.powerW())).orElseThrow().steady().flow().volumeFlowM3PerS();
        return Optional.of(new Saved(
                hot.inputW() - held.inputW(),
                hot.toWaterW() - held.toWaterW(),
                flow > 0 && hot.toWaterW() > 0
                        ? OptionalDouble.of(flow * (1 - held.toWaterW() / hot.toWaterW()))
                        : OptionalDouble.empty()));
    }

    private String verdict(double ratio, List<Least> least, PowerWindow window) {
        StringBuilder text = new StringBuilder();
        String name = rig.heatSource().title();
        String asked = times(margin);
        if (ratio >= margin) {
            text.append(ChoiceText.SIZE_ENOUGH.say(name, times(ratio), asked));
        } else {
            text.append(ChoiceText.SIZE_SHORT.say(name, times(ratio), asked));
            if (window.lowW().isPresent()) {
                // else the window's sentence says it
                text.append(' ').append(trial.limiter(rig).reason());
            }
        }
        Least power = least.get(0);
        text.append(' ')
                .append(
                        power.value().isPresent()
                                ? ChoiceText.SIZE_LEAST_POWER.say(
                                        watts(power.value().getAsDouble()), asked)
                                : ChoiceText.SIZE_NO_POWER.say(asked));
        if (power.value().isEmpty()) {
            least.stream()
                    .filter(l -> l.value().isPresent())
                    .findFirst()
                    .ifPresent(l -> text.append(' ')
                            .append(ChoiceText.SIZE_INSTEAD.say(
                                    LeastSearch.name(l.figure()),
                                    QuantityWriter.writeAuto(
                                            l.value().getAsDouble(), l.figure().dimension()),
                                    QuantityWriter.writeAuto(
                                            l.present(), l.figure().dimension()))));
        }
        return text.append(' ').append(window.sentence()).toString();
    }

    private static String watts(double watts) {
        return QuantityWriter.writeAuto(watts, Dimension.POWER);
    }

    private static String times(double ratio) {
        return String.format(Locale.ROOT, "%.2f", ratio);
    }

    private static String percent(double share) {
        return Long.toString(Math.round(100 * share));
    }
}
