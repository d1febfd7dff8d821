package boilwright.dashboard.band;

import boilwright.dashboard.model.JetState;
import boilwright.dashboard.model.RunTimeline;
import boilwright.dashboard.text.WindowText;
import boilwright.report.EventWords;
import boilwright.thermal.EventKind;
import boilwright.thermal.TimeEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * Something that happens, as the band shows it.
 *
 * @param axisS when, on the axis, s
 * @param sign the sign before its label
 * @param label one or two words, or the number of the jet
 * @param when its time by its own clock, in words
 * @param title what it is, in a few words
 * @param reason what it means, a whole sentence
 */
record BandMark(double axisS, Sign sign, String label, String when, String title, String reason) {
    /** Signs that tell marks apart without colour. */
    enum Sign {
        /** No sign: the label says it all. */
        NONE,
        /** Vapour has reached a jet. */
        FRONT,
        /** A jet lights. */
        LIT,
        /** A jet carries its full flow. */
        FULL,
        /** A jet goes out. */
        LOST,
        /** A limit is reached. */
        LIMIT;

        /** Whether it is one of a jet, labelled with the jet's number. */
        boolean isOfJet() {
            return this == FRONT || this == LIT || this == FULL || this == LOST;
        }

        /** How the style sheet spells it. */
        String id() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** All marks of an axis, in order. */
    static List<BandMark> of(RunTimeline line) {
        List<String> jets = line.at(0).jets().stream().map(JetState::name).toList();
        List<BandMark> all = new ArrayList<>();
        for (TimeEvent event : line.marks()) {
            all.add(of(line, event, jets.indexOf(event.stage()) + 1));
        }
        return List.copyOf(all);
    }

    private static BandMark of(RunTimeline line, TimeEvent event, int jet) {
        double axisS = event.timeS().orElseThrow();
        Sign sign = sign(event.kind());
        boolean ofJet = sign.isOfJet() && jet > 0;
        String title = ofJet
                ? WindowText.say("band.title." + event.kind().id(), Integer.toString(jet), event.stage())
                : EventWords.title(event);
        return new BandMark(
                axisS, sign, ofJet ? Integer.toString(jet) : label(event), when(line, event), title, event.reason());
    }

    /** What it is and what it means, with its time; whole sentences. */
    String words() {
        return WindowText.say("band.mark.words", when, title, reason);
    }

    /** Marks in words; of several only what they are. */
    static String words(List<BandMark> marks) {
        BandMark first = marks.get(0);
        if (marks.size() == 1) {
            return first.words();
        }
        boolean together = marks.stream().allMatch(mark -> mark.when().equals(first.when()));
        return WindowText.say(
                together ? "band.mark.together" : "band.mark.from",
                first.when(),
                marks.stream().map(BandMark::title).collect(Collectors.joining(", ")));
    }

    /** The clock of the run that the event belongs to; at heat-off the two runs meet. */
    private static String when(RunTimeline line, TimeEvent event) {
        double axisS = event.timeS().orElseThrow();
        boolean cooling = axisS >= line.cooldownStartS() && line.cooldownStartS() < line.endS();
        return WindowText.say(
                cooling ? "band.mark.when.cooldown" : "band.mark.when.warmup", EventWords.clock(line.clockS(axisS)));
    }

    private static Sign sign(EventKind kind) {
        return switch (kind) {
            case FRONT_AT_STAGE -> Sign.FRONT;
            case JET_LIT -> Sign.LIT;
            case JET_FULL -> Sign.FULL;
            case JET_LOST -> Sign.LOST;
            case LIMIT_REACHED, FUEL_EMPTY -> Sign.LIMIT;
            case HEAT_ON,
                    DEGASSED,
                    FIRST_VAPOUR,
                    FULL_PUMPING,
                    CROSSOVER_ALLOWED,
                    HEAT_OFF,
                    FLOW_ZERO,
                    JETS_GONE,
                    AIR_ALLOWED,
                    TOUCH_SAFE,
                    WATER_MAY_STOP,
                    BACKING_MAY_STOP,
                    FAULT,
                    WATER_STOPS,
                    BATTERY_ENDS -> Sign.NONE;
        };
    }

    /** What stands at the mark where no number of a jet does. */
    private static String label(TimeEvent event) {
        return switch (event.kind()) {
            case HEAT_ON,
                    DEGASSED,
                    FIRST_VAPOUR,
                    FULL_PUMPING,
                    CROSSOVER_ALLOWED,
                    LIMIT_REACHED,
                    FUEL_EMPTY,
                    HEAT_OFF,
                    FLOW_ZERO,
                    JETS_GONE,
                    AIR_ALLOWED,
                    TOUCH_SAFE,
                    WATER_MAY_STOP,
                    BACKING_MAY_STOP ->
                WindowText.say("band.label." + event.kind().id());
            case FRONT_AT_STAGE, JET_LIT, JET_FULL, JET_LOST, FAULT, WATER_STOPS, BATTERY_ENDS ->
                EventWords.title(event);
        };
    }
}
